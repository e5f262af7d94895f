import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Packages resolve to their TypeScript source, so no test runs against a stale build.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source', 'node', 'import', 'default'] } },
  test: {
    include: ['packages/*/src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    exclude: ['**/dist/**', '**/node_modules/**', 'tests/host/suite/**', '**/out/**'],
    globalSetup: ['tests/bundles-of-one-run.ts'],
    setupFiles: ['tests/random-seed.ts', 'tests/loud-messages.ts'],
    passWithNoTests: false,
    // Nothing is measured by these: they end what hangs, on a machine however busy.
    testTimeout: 1_200_000,
    hookTimeout: 1_200_000,
  },
});
