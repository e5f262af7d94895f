import { join } from 'node:path';
import { build } from 'esbuild';
import { root } from './vscode-server.js';

/**
 * Bundles the suite for the host that runs it, and gives the path of the file, extension and all.
 *
 * @param only names of files of the suite, to run these alone
 */
export const bundleSuite = async (host: 'node' | 'web', only: readonly string[] = []): Promise<string> => {
  const outfile = join(root, 'tests/host/out', `suite.${host}.${host === 'node' ? 'cjs' : 'js'}`);
  const parts = ['mocha-setup', ...only].map((name) => `import './${name}.js';`);
  const whole = host === 'node' ? './on-node.js' : './index.js';
  await build({
    absWorkingDir: root,
    stdin: {
      contents:
        only.length === 0
          ? `export { run } from '${whole}';`
          : `${parts.join('\n')}\nimport { runMocha } from './run-mocha.js';\nexport const run = () => runMocha();`,
      resolveDir: join(root, 'tests/host/suite'),
      loader: 'ts',
    },
    outfile,
    bundle: true,
    format: 'iife',
    globalName: 'suite',
    // Mocha's browser build also puts itself into `module.exports`. Ours comes last.
    footer: { js: 'module.exports = suite;' },
    platform: host === 'node' ? 'node' : 'browser',
    target: 'es2022',
    conditions: ['source'],
    external: ['vscode'],
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return outfile;
};
