import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../../', import.meta.url));
const out = `${root}tests/protocol/out`;

let ready: Promise<string> | undefined;

/**
 * Bundles the language server from source as the extension does, and gives the path. Once per test file, so a
 * test never runs against a stale build; named by what is in it, so that equal bundles are one file.
 */
export function serverBundle(): Promise<string> {
  ready ??= bundle();
  return ready;
}

async function bundle(): Promise<string> {
  const made = await build({
    entryPoints: [`${root}packages/server/src/main.ts`],
    write: false,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    conditions: ['source'],
    define: { 'process.env.NODE_ENV': '"production"' },
    logLevel: 'error',
  });
  return keep('server', made.outputFiles[0]?.text ?? '');
}

/** Writes a bundle under its own hash, and clears away those that no test can still be starting from. */
export function keep(kind: string, text: string): string {
  mkdirSync(out, { recursive: true });
  const name = `${kind}-${createHash('sha256').update(text).digest('hex').slice(0, 16)}.cjs`;
  const path = `${out}/${name}`;
  if (!existsSync(path)) {
    // Whole or not at all: another test file may be looking for it.
    writeFileSync(`${path}.${process.pid}`, text);
    renameSync(`${path}.${process.pid}`, path);
  }
  for (const other of readdirSync(out)) {
    const old = `${out}/${other}`;
    if (other !== name && other.startsWith(kind) && tooOld(old)) rmSync(old, { force: true });
  }
  return path;
}

const tenMinutes = 10 * 60 * 1000;

function tooOld(path: string): boolean {
  try {
    return Date.now() - statSync(path).mtimeMs > tenMinutes;
  } catch {
    return false;
  }
}
