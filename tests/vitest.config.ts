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
    passWithNoTests: false,
    testTimeout: 30_000,
  },
});
