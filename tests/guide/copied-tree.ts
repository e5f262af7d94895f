import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What generators read and write, from the top. */
const parts = ['.ci', '.biome.json', 'package.json', 'packages', 'syntaxes', 'tsconfig.json'];
const left = new Set(['dist', 'node_modules']);

/** A copy of the project's sources in a folder of its own, to be changed and generated again. */
export class CopiedTree {
  readonly root = mkdtempSync(join(tmpdir(), 'cribwright-tree-'));

  constructor() {
    for (const part of parts)
      cpSync(join(root, part), join(this.root, part), {
        recursive: true,
        filter: (path) => !left.has(basename(path)),
      });
    this.link();
  }

  /** Packages of others as they are installed, those of this project from the copy. */
  private link(): void {
    const modules = join(this.root, 'node_modules');
    mkdirSync(join(modules, '@cribwright'), { recursive: true });
    for (const name of readdirSync(join(root, 'node_modules')))
      if (name !== '@cribwright')
        symlinkSync(join(root, 'node_modules', name), join(modules, name), 'junction');
    for (const name of readdirSync(join(this.root, 'packages')))
      symlinkSync(join(this.root, 'packages', name), join(modules, '@cribwright', name), 'junction');
  }

  /** Every file by its path from the top, with a digest of what is in it. */
  files(): ReadonlyMap<string, string> {
    const found = parts.flatMap((part) => {
      const path = join(this.root, part);
      return part.includes('.') ? (part === '.ci' ? within(path) : [path]) : within(path);
    });
    return new Map(
      found.map((path) => [
        relative(this.root, path).replaceAll('\\', '/'),
        createHash('sha256').update(readFileSync(path)).digest('hex'),
      ]),
    );
  }

  /** Runs Node in the copy and gives what it prints. */
  node(...args: readonly string[]): string {
    const { status, stdout, stderr } = spawnSync(process.execPath, args, {
      cwd: this.root,
      encoding: 'utf8',
      env: { ...process.env, NODE_OPTIONS: '' },
    });
    if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}\n${stdout}\n${stderr}`);
    return stdout;
  }

  remove(): void {
    rmSync(this.root, { recursive: true, force: true });
  }
}

const within = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((f) => f.isFile())
    .map((f) => join(f.parentPath, f.name));
