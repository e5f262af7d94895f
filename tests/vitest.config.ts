import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['packages/*/src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    exclude: ['**/dist/**', '**/node_modules/**', 'tests/host/suite/**', '**/out/**'],
    globalSetup: ['tests/bundles-of-one-run.mjs'],
    setupFiles: ['tests/random-seed.ts', 'tests/loud-messages.ts'],
    passWithNoTests: false,
    // Node itself loads the tests and what they test: the runner of Vite makes arithmetic several times slower. Packages
    // resolve to their TypeScript source, so no test runs against a stale build. What is mocked would not be: a test
    // that needs another part in the place of one hands it over.
    experimental: { viteModuleRunner: false, nodeLoader: false },
    execArgv: ['--conditions=source', '--import=tsx'],
    // A process loads each module once for all its test files. A test leaves nothing changed behind.
    pool: 'forks',
    isolate: false,
    // As many as there are processors: most of the time is spent computing.
    maxWorkers: '100%',
    // Nothing is measured by these: they end what hangs, on a machine however busy.
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
