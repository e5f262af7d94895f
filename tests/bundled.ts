import { existsSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BuildOptions, build, type OutputFile } from 'esbuild';

const { bundleOptions } = (await import(
  new URL('../packages/extension/build/bundles.mjs', import.meta.url).href
)) as { bundleOptions: (name: string) => BuildOptions };

/** The files of a bundle, made from source as the package makes it, so that no test runs against a stale one. */
export const bundleFiles = async (name: string): Promise<readonly OutputFile[]> => {
  const { outputFiles } = await build({ ...bundleOptions(name), minify: true, write: false });
  return outputFiles;
};

/** Where bundles of this run of the tests are kept. */
const folder = process.env.CRIBWRIGHT_TEST_BUNDLES ?? join(tmpdir(), `cribwright-bundles-${process.pid}`);

/** The path of a bundle that is one file for Node. It is made once in a run of the tests. */
export const bundled = async (name: 'server' | 'server.worker' | 'cli'): Promise<string> => {
  const path = join(folder, `${name}.cjs`);
  if (existsSync(path)) return path;
  const [file] = await bundleFiles(name);
  if (file === undefined) throw new Error(`${name} could not be bundled.`);
  mkdirSync(folder, { recursive: true });
  // Whole or not at all: another test file may be looking for it.
  writeFileSync(`${path}.${process.pid}`, file.contents);
  renameSync(`${path}.${process.pid}`, path);
  return path;
};
