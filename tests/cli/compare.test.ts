import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { caution } from '@cribwright/engine';
import { Ajv } from 'ajv';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundled } from '../bundled.js';
import { root, runCommand, runHere } from './command.js';

let command = '';
beforeAll(async () => {
  command = await bundled('cli');
});

interface Block {
  readonly kind: string;
  readonly keyword: string;
  readonly name: string;
  readonly renamedFrom?: string;
  readonly movedFrom?: string;
  readonly lines: readonly { readonly before?: string; readonly after?: string }[];
  readonly blocks: readonly Block[];
}

interface Compared {
  readonly exit: number;
  readonly compared: number;
  readonly plans: readonly {
    readonly title: string;
    readonly worse: boolean;
    readonly limits: readonly { readonly limit: string; readonly looser: boolean | null }[];
    readonly findings: readonly { readonly kind: string; readonly rule: string; readonly element: string }[];
  }[];
  readonly changes: readonly Block[];
}

/** A repository of plans, with one commit on `main`. Its commands run in it. */
function repository() {
  const folder = mkdtempSync(join(tmpdir(), 'cribwright-compare-'));
  const git = (...args: string[]) =>
    execFileSync(
      'git',
      ['-c', 'user.name=instructor', '-c', 'user.email=instructor@alder-ridge.invalid', ...args],
      {
        cwd: folder,
        stdio: ['ignore', 'pipe', 'pipe'],
      },
    );
  git('init', '-q', '-b', 'main');
  cpSync(join(root, 'examples'), folder, { recursive: true });
  git('add', '-A');
  git('commit', '-q', '-m', 'Plans as they were');
  return {
    folder,
    git,
    run: (...args: string[]) => runHere(args, { cwd: folder }),
    edit: (path: string, change: (text: string) => string) => {
      const full = join(folder, path);
      const [before, after] = [readFileSync(full, 'utf8')].flatMap((text) => [text, change(text)]);
      // An edit that finds nothing to change would show nothing.
      expect(after).not.toBe(before);
      writeFileSync(full, after ?? '');
    },
    move: (from: string, to: string) => {
      mkdirSync(join(folder, to, '..'), { recursive: true });
      renameSync(join(folder, from), join(folder, to));
    },
  };
}

/** One change in a row: what a reviewer reads. */
const rows = (blocks: readonly Block[], within = ''): readonly string[] =>
  blocks.flatMap((b) => {
    const at = `${within}${b.keyword} ${b.name}`.trim();
    if (b.kind !== 'changed') return [`${at}: ${b.kind}`];
    return [
      ...(b.renamedFrom === undefined ? [] : [`${at}: was ${b.renamedFrom}`]),
      ...(b.movedFrom === undefined ? [] : [`${at}: was in ${b.movedFrom}`]),
      ...b.lines.map((l) => `${at}: ${l.before ?? ''} -> ${l.after ?? ''}`),
      ...rows(b.blocks, `${at} / `),
    ];
  });

const json = (out: string): Compared => JSON.parse(out) as Compared;

describe('compare, over a branch of a colleague', () => {
  it('names what changed in meaning and nothing else', async () => {
    const { git, run, edit, move } = repository();
    git('switch', '-q', '-c', 'colleague');
    // Lowers a crib.
    edit('plans/trailer-on-car.crib', (t) => t.replace('courses   11', 'courses   9'));
    // Renames a support, everywhere.
    edit('plans/trailer-on-car.crib', (t) =>
      t
        .replace('crib D', 'crib RearPassenger')
        .replace('B, D ', 'B, RearPassenger ')
        .replace('A, B, C, D', 'A, B, C, RearPassenger'),
    );
    // Loosens a limit.
    edit('policy/alder-ridge.crib', (t) => t.replace(/use limit +90 %/, 'use limit  95 %'));
    // Removes a strap.
    const strap = /\n {2}strap T2[^\n]*(\{[^}]*\})?/;
    edit('plans/trailer-on-car.crib', (t) => t.replace(strap, '').replace('T1, T2', 'T1'));
    // Lays a plan out anew, and comments it.
    edit(
      'plans/si-trailer.crib',
      (t) => `// Read again in the spring.\n${t.replaceAll(/ {2,}(?=\S)/g, '   ')}`,
    );
    // Moves a file.
    const moved = 'two-pairs.crib';
    move(`plans/${moved}`, `yard/${moved}`);
    git('add', '-A');
    git('commit', '-q', '-m', 'Work of a colleague');

    const { code, out } = await run('compare', 'main', 'colleague', '--format', 'json');
    const found = json(out);
    const plan = 'plan Car under the bottom rail of a loaded van trailer';
    const told = rows(found.changes);
    expect(told.filter((r) => !r.includes('was in'))).toEqual([
      `${plan} / crib A: courses 11 -> courses 9`,
      `${plan} / crib RearPassenger: was D`,
      `${plan} / strap T2: removed`,
      `${plan} / steps: 10 tension T1, T2 crew 2 takes 2 min -> 10 tension T1 crew 2 takes 2 min`,
      'policy Alder Ridge County: use limit 90 % source invented -> use limit 95 % source invented',
    ]);
    expect(told.filter((r) => r.includes('was in'))).toEqual([
      expect.stringMatching(new RegExp(`was in plans/${moved.replaceAll('.', '\\.')}$`)),
    ]);
    expect(code).toBe(1);
    expect(found.plans.find((p) => plan.endsWith(p.title))).toMatchObject({ worse: true });
    const dangers = found.plans.flatMap((p) => p.findings.filter((f) => f.kind === 'new').map((f) => f.rule));
    expect(dangers).toContain('crib-reach');
    const looser = found.plans.flatMap((p) => p.limits.filter((l) => l.looser).map((l) => l.limit));
    expect(new Set(looser)).toEqual(new Set(['use limit']));
  });

  it('ends with 0 and says so where only layout and comments changed', async () => {
    const { folder, run, edit } = repository();
    edit('plans/trailer-on-car.crib', (t) => `// A note.\n\n${t}`);
    const ended = await run('compare', 'main');
    expect(runCommand(command, ['compare', 'main'], { cwd: folder })).toEqual(ended);
    const { code, out } = ended;
    expect(code).toBe(0);
    expect(out).toContain('Nothing changed in meaning.');
    expect(out.trimEnd().endsWith(caution)).toBe(true);
  });

  it('ends with 2 where a revision, a file or a folder is not there, and says which', async () => {
    const { run } = repository();
    const { code, err } = await run('compare', 'no-such-branch');
    expect(code).toBe(2);
    expect(err).toContain('no-such-branch: There is no such file, folder or git revision.');
    // A word that git would take for an option is a name like any other.
    expect((await run('compare', 'main', 'gone.crib')).code).toBe(2);
  });

  it('compares two files whatever they are called, and two folders', async () => {
    const { run } = repository();
    const files = await run(
      'compare',
      'plans/trailer-on-car.crib',
      'plans/trailer-on-car-faulty.crib',
      '-f',
      'json',
    );
    expect(json(files.out).changes.every((b) => b.movedFrom === undefined)).toBe(true);
    expect(files.code).toBe(1);
    const folders = await run('compare', 'plans', 'plans', '-f', 'json');
    expect(json(folders.out)).toMatchObject({ exit: 0, changes: [], plans: [] });
  });
});

describe('compare, in every form', () => {
  it('keeps its JSON schema', async () => {
    const { run, edit } = repository();
    edit('plans/trailer-on-car.crib', (t) => t.replace('courses   11', 'courses   9'));
    const schemas = ['check', 'compare'].map(
      (name) =>
        JSON.parse(readFileSync(join(root, `packages/cli/schema/${name}.schema.json`), 'utf8')) as object,
    );
    const ajv = new Ajv({ schemas, allowUnionTypes: true });
    const value: unknown = JSON.parse((await run('compare', 'main', '-f', 'json')).out);
    const fits = ajv.validate('urn:cribwright:compare:1', value);
    expect(ajv.errors ?? []).toEqual([]);
    expect(fits).toBe(true);
  });

  it('says the same in Markdown, on a page with both drawings, and in Spanish', async () => {
    const { run, edit } = repository();
    edit('plans/trailer-on-car.crib', (t) => t.replace('courses   11', 'courses   9'));
    const markdown = (await run('compare', 'main', '-f', 'markdown')).out;
    expect(markdown).toContain('`courses 11 → 9`');
    expect(markdown).toMatch(/\*\*DANGER\*\* `crib-reach`/);
    const page = (await run('compare', 'main', '-f', 'html')).out;
    expect(page.match(/<svg /g)).toHaveLength(2);
    expect(page).toContain('courses 11 → 9');
    expect(page).toContain('.plan-0-after [data-key="crib/A"]{outline');
    const spanish = (await run('compare', 'main', '-l', 'es')).out;
    expect(spanish).toContain('Cambios de main a los archivos de aquí');
    expect(spanish).toContain('sin peligro encontrado → INSEGURO');
  });

  it('lets no sign of a plan become part of Markdown or of a page', async () => {
    const { run, edit } = repository();
    const title = 'x | `y` <b>@all</b> [z](u) \\*';
    edit('plans/trailer-on-car.crib', (t) =>
      t.replace(/plan "[^"]*"/, `plan "${title}"`).replace('courses   11', 'courses   9'),
    );
    const page = (await run('compare', 'main', '-f', 'html')).out;
    expect(page).not.toContain('<b>');
    const markdown = (await run('compare', 'main', '-f', 'markdown')).out;
    expect(markdown).not.toContain('<b>');
    expect(markdown).not.toContain('[z](u)');
    expect(markdown).not.toContain(' @all');
  });
});
