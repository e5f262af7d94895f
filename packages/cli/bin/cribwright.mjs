#!/usr/bin/env node
import { existsSync } from 'node:fs';

const built = new URL('../dist/cribwright.cjs', import.meta.url);
if (existsSync(built)) await import(built.href);
else {
  console.error('The command line is not built yet. Run: npm run build');
  process.exitCode = 2;
}
