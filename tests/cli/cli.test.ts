import { spawnSync } from 'node:child_process';
import {
  closeSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { caution } from '@cribwright/engine';
import { Ajv } from 'ajv';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundled } from '../bundled.js';
import { type Ended, root, runCommand, runHere } from './command.js';

const good = 'examples/plans/trailer-on-car.crib';
const faulty = 'examples/plans/trailer-on-car-faulty.crib';
const folder = mkdtempSync(join(tmpdir(), 'cribwright-plans-'));
let command = '';
beforeAll(async () => {
  command = await bundled('cli');
});

/** A plan that is understood, and in which something is unsafe: nothing holds its wheels. */
const bare = `use "library/vehicles.crib"
plan "Bare" {
  ground { surface asphalt; grade 1 % toward rear }
  vehicle trailer : VanTrailer53 { cargo 20,000 lb from 4 ft to 48 ft height 72 to 96 in }
}
`;

const runs = new Map<string, Promise<Ended>>();

/** Runs it in the repository, whose files do not change: the same words come to the same, and are run once. */
const run = (...args: string[]): Promise<Ended> => {
  const words = JSON.stringify(args);
  const ended = runs.get(words) ?? runHere(args);
  runs.set(words, ended);
  return ended;
};

describe('as a process of its own', () => {
  it.each([
    [['check', good]],
    [['check', faulty, '-f', 'json']],
    [['check', good, 'gone.crib']],
    [['check', '-l', 'es', '-u', 'si', faulty]],
    [['materials', good]],
    [['explain', 'crib-height']],
    [['draw', '--help']],
    [['chekc']],
    [[]],
  ])('does and says the same: %j', async (args) => {
    expect(runCommand(command, args)).toEqual(await run(...args));
  });

  it.each([bare, '', 'plan "Piped" {'])('reads the standard input: %j', async (input) => {
    expect(runCommand(command, ['check', '-'], { input })).toEqual(await runHere(['check', '-'], { input }));
  });
});

describe('check', () => {
  it('ends with 0 on a plan in which nothing is unsafe', async () => {
    expect(await run('check', good)).toMatchObject({ code: 0, err: '' });
  });

  it('ends with 1 on a faulty one, quotes the line, and gives the sum', async () => {
    const { code, out } = await run('check', faulty);
    expect(code).toBe(1);
    expect(out).toMatch(
      /DANGER {2}crib-height {2}crib A {2}examples\/plans\/trailer-on-car-faulty\.crib:\d+:\d+/,
    );
    expect(out).toMatch(/\d+ \| +courses +14\n +\| +\^+/);
    expect(out).toContain('14 × 3.5 in');
    expect(out).toContain('1.5 × 16 in');
  });

  it('says the caution last, in every way a run can end', async () => {
    for (const args of [[good], [faulty], ['gone.crib']]) {
      expect((await run('check', ...args)).out.trimEnd().endsWith(caution)).toBe(true);
    }
  });

  it('ends with 2 where a file is not there', async () => {
    const { code, out } = await run('check', good, 'gone.crib');
    expect(code).toBe(2);
    expect(out).toContain('COULD NOT READ  gone.crib: there is no such file or folder');
  });

  it('ends with 1 on a text that is broken, and names the place', async () => {
    const file = join(folder, 'broken.crib');
    writeFileSync(file, 'plan "Broken" {\n  crib A {\n    courses 48 parsecs\n');
    const { code, out } = await runHere(['check', 'broken.crib'], { cwd: folder });
    expect(code).toBe(1);
    expect(out).toContain('broken.crib:3:');
  });

  it('stays readable on a megabyte of braces', async () => {
    writeFileSync(join(folder, 'braces.crib'), '{'.repeat(1_000_000));
    writeFileSync(join(folder, 'lines.crib'), '} plan {\n'.repeat(20_000));
    for (const name of ['braces.crib', 'lines.crib']) {
      const { code, out } = await runHere(['check', name], { cwd: folder });
      expect(code).toBe(1);
      expect(out.split('\n').length).toBeLessThan(200);
      expect(out.length).toBeLessThan(60_000);
      const json = JSON.parse((await runHere(['check', name, '-f', 'json'], { cwd: folder })).out);
      expect(json.files[0].problems.length).toBeLessThanOrEqual(30);
      expect(json.files[0].problems.length + json.files[0].problemsLeftOut).toBe(
        json.outcome.danger + json.outcome.warning + json.outcome.note,
      );
    }
  });

  it('reads a plan from the standard input', () => {
    const text = 'plan "Piped" {\n  policy Nobody\n}\n';
    const { code, out } = runCommand(command, ['check', '-'], { input: text });
    expect(code).toBe(1);
    expect(out).toContain('Nobody');
  });

  it('uses color only where it is asked for in a pipe', async () => {
    expect((await run('check', faulty)).out).not.toContain('\u001b[');
    const colored = runCommand(command, ['check', faulty], { env: { FORCE_COLOR: '1' } });
    expect(colored.out).toContain('\u001b[31m');
  });

  it('prints JSON that keeps to the published schema', async () => {
    const { code, out } = await run('check', faulty, '--format', 'json');
    expect(code).toBe(1);
    const schema = JSON.parse(readFileSync(join(root, 'packages/cli/schema/check.schema.json'), 'utf8'));
    const valid = new Ajv({ allErrors: true, strict: true, strictRequired: false }).compile(schema);
    const value = JSON.parse(out);
    expect(valid(value), JSON.stringify(valid.errors?.slice(0, 3))).toBe(true);
    const support = value.files[0].plans[0].supports.find((s: { name: string }) => s.name === 'A');
    for (const key of ['height', 'heightLimit', 'capacity', 'load', 'use']) {
      expect(support.figures).toHaveProperty(key);
    }
    expect(support.figures.height).toMatchObject({ value: 49, unit: 'in' });
  });

  it('prints SARIF with the finding, its page and its fix', async () => {
    const { out } = await run('check', faulty, '--format', 'sarif');
    const log = JSON.parse(out);
    expect(log.version).toBe('2.1.0');
    const result = log.runs[0].results.find((r: { ruleId: string }) => r.ruleId === 'crib-height');
    expect(result.fixes.length).toBeGreaterThan(0);
    const rule = log.runs[0].tool.driver.rules[result.ruleIndex];
    expect(rule).toMatchObject({ id: 'crib-height', helpUri: 'cribwright:/rules/crib-height.md' });
  });
});

it('prints what the README shows, word for word', async () => {
  const readme = readFileSync(join(root, 'README.md'), 'utf8');
  const shown = /```\n(DANGER[\s\S]*?)```/.exec(readme)?.[1] ?? '';
  expect(shown).toContain('crib A');
  expect((await run('check', faulty)).out).toContain(shown);
});

describe('what cannot be read', () => {
  const bad = mkdtempSync(join(tmpdir(), 'cribwright-bad-'));
  const secret = 'root:';
  beforeAll(() => {
    writeFileSync(join(bad, 'good.crib'), bare);
    writeFileSync(join(bad, 'utf-16.crib'), Buffer.from('\ufeffplan "x" {}', 'utf16le'));
    symlinkSync('/etc/passwd', join(bad, 'system.crib'));
    symlinkSync(join(bad, 'loop.crib'), join(bad, 'loop.crib'));
  });
  const inBad = (...args: string[]) => runHere(args, { cwd: bad });

  it('is told, the rest of a folder is checked, and it ends with 2', async () => {
    const { code, out } = await inBad('check', '.');
    expect(code).toBe(2);
    expect(out).toContain('loop.crib: it is a link that leads back to itself');
    expect(out).toContain('system.crib: it is a link that leads outside this folder');
    expect(out).toContain('utf-16.crib: it is not text in UTF-8');
    expect(out).toContain('Bare');
    expect(out).toContain('1 plan,');
    expect(out).not.toContain(secret);
  });

  it('behind a link is not used either', async () => {
    for (const [used, said] of [
      ['system.crib', 'leads outside this folder'],
      ['loop.crib', 'leads back to itself'],
      ['utf-16.crib', 'is not UTF-8 text'],
    ]) {
      const { code, out } = await runHere(['check', '-'], {
        cwd: bad,
        input: `use "${used}"\n${bare}`,
      });
      expect(code).toBe(1);
      expect(out).toContain(said);
      expect(out).not.toContain(secret);
    }
  });

  it('in SARIF is a run that did not succeed', async () => {
    const { code, out } = await inBad('check', '.', '-f', 'sarif');
    expect(code).toBe(2);
    const [{ invocations }] = JSON.parse(out).runs;
    expect(invocations[0].executionSuccessful).toBe(false);
    expect(JSON.stringify(invocations)).toContain('loop.crib could not be read');
  });
});

describe('where there is nothing to check', () => {
  it.each(['', ' \n\t'])('ends with 2 on a standard input of %j', async (input) => {
    for (const name of ['check', 'test', 'materials'])
      for (const form of name === 'check' ? [[], ['-f', 'json'], ['-f', 'sarif']] : [[]]) {
        const { code, out, err } = await runHere([name, '-', ...form], { input });
        expect(code).toBe(2);
        expect(out + err).toContain('the standard input is empty');
      }
  });

  it.each(['// only a comment', 'cache A { staffing 4 }'])(
    'ends with 2 on %j, and says so',
    async (input) => {
      for (const name of ['check', 'test', 'materials']) {
        const { code, out, err } = await runHere([name, '-'], { input });
        expect(code).toBe(2);
        expect(out + err).toContain('there is no plan in it, so nothing was checked');
      }
    },
  );

  it('is content with files that hold no plan beside one that does', async () => {
    const some = mkdtempSync(join(tmpdir(), 'cribwright-some-'));
    writeFileSync(join(some, 'a.crib'), 'cache A { staffing 4 }');
    cpSync(join(root, 'examples'), join(some, 'examples'), { recursive: true });
    expect((await runHere(['check', 'a.crib', good], { cwd: some })).code).toBe(0);
  });
});

it.each(['\v', '\f', '\u0085', '\u2028', '\u2029'])(
  'reads the plan after a comment that %j ends',
  async (line) => {
    const { code, out } = await runHere(['check', '-'], { input: `// a note${line}${bare}` });
    expect(out).toContain('1 plan,');
    expect(code).toBe(1);
  },
);

describe('where the output fails', () => {
  const into = (
    file: string,
    stdio: (full: number) => ['ignore', number | 'pipe', number | 'pipe'],
  ): number | null => {
    const full = openSync('/dev/full', 'w');
    const ended = spawnSync(process.execPath, [command, 'check', file], { cwd: root, stdio: stdio(full) });
    closeSync(full);
    return ended.status;
  };

  const unsafe = join(folder, 'unsafe.crib');
  beforeAll(() => writeFileSync(unsafe, bare));

  it('ends with 2 on a full disk, whether the plan is safe or not', () => {
    expect(into(good, (full) => ['ignore', full, 'pipe'])).toBe(2);
    expect(into(unsafe, (full) => ['ignore', full, full])).toBe(2);
  });

  it('ends as it would where messages alone cannot be written', () => {
    expect(into(unsafe, (full) => ['ignore', 'pipe', full])).toBe(1);
    expect(into('gone.crib', (full) => ['ignore', 'pipe', full])).toBe(2);
    expect(into('--no-such-thing', (full) => ['ignore', 'pipe', full])).toBe(2);
  });

  it.each(['2>&-', '>&- 2>&-', '2> >(exec 2>&-)', '> >(exec >&-)'])(
    'ends as it would where nobody reads it: %s',
    (closed) => {
      for (const [file, code] of [
        [unsafe, 1],
        ['--no-such-thing', 2],
      ]) {
        const line = `"${process.execPath}" "${command}" check "${file}" ${closed}`;
        expect(spawnSync('bash', ['-c', line], { cwd: root }).status).toBe(code);
      }
    },
  );
});

describe('test', () => {
  it('ends with 0 where every plan comes out as its expect lines say, faulty ones too', async () => {
    const { code, out } = await run('test', '--quiet', good, faulty);
    expect(out).toContain('as expected  nothing unsafe');
    expect(code).toBe(0);
  });

  it('ends with 1 where a danger comes that no expect names', async () => {
    const text = readFileSync(join(root, faulty), 'utf8').replace(/^\s*expect .*$/gm, '');
    writeFileSync(join(folder, 'surprise.crib'), text.replaceAll('"../', `"${join(root, 'examples')}/`));
    const { code, out } = await runHere(['test', '-q', 'surprise.crib'], { cwd: folder });
    expect(code).toBe(1);
    expect(out).toContain('NOT EXPECTED');
  });
});

describe('draw', () => {
  it('writes a drawing, the same bytes each time', async () => {
    const [one, two] = ['one.svg', 'two.svg'].map((name) => join(folder, name));
    expect((await run('draw', good, '-o', one ?? '')).code).toBe(0);
    await run('draw', good, '-o', two ?? '');
    const svg = readFileSync(one ?? '', 'utf8');
    expect(svg).toMatch(/^<svg /);
    expect(svg).toContain('planning and teaching aid');
    expect(readFileSync(two ?? '', 'utf8')).toBe(svg);
  });

  it('draws every view into a folder', async () => {
    const { out } = await run('draw', good, '--every', '-o', folder);
    const files = out.trim().split('\n');
    expect(files.length).toBeGreaterThan(3);
    expect(files.every((f) => existsSync(f))).toBe(true);
  });

  it('gives each drawing a file of its own, and names as many as it wrote', async () => {
    const path = join(folder, 'alike.crib');
    writeFileSync(
      path,
      ['Car, truck', 'Car; truck', 'CAR TRUCK', '!'].map((t) => bare.replace('Bare', t)).join(''),
    );
    const to = mkdtempSync(join(tmpdir(), 'cribwright-alike-'));
    const { code, out } = await run('draw', path, '--every', '-o', to);
    const named = out.trim().split('\n');
    expect(code).toBe(0);
    expect(named.length % 4).toBe(0);
    expect(readdirSync(to).sort()).toEqual(named.map((n) => basename(n)).sort());
  });

  it('says in the drawing and on the sheet where the text was not read whole', async () => {
    cpSync(join(root, 'examples'), join(folder, 'examples'), { recursive: true });
    const path = join(folder, 'examples/plans/not-whole.crib');
    writeFileSync(path, readFileSync(join(root, good), 'utf8').replace('16,000 to', 'many to'));
    for (const command of ['draw', 'sheet']) {
      const { code, out, err } = await run(command, path);
      expect(code).toBe(2);
      expect(out).toContain('NOT READ WHOLE');
      expect(err).toMatch(/not-whole\.crib:\d+: /);
      expect((await run(command, good)).out).not.toContain('NOT READ WHOLE');
    }
  });

  it('says which views there are', async () => {
    const { code, err } = await run('draw', good, '--view', 'sidee');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean side?');
  });
});

describe('sheet', () => {
  it('writes the page that a crew carries, whole and without anything from elsewhere', async () => {
    const { code, out } = await run('sheet', good);
    expect(code).toBe(0);
    expect(out).toMatch(/^<!doctype html>/);
    expect(out).toContain('crib A');
    expect(out).toContain(caution);
    expect(out).not.toMatch(/(src|href)="|@import|url\(/);
  });
});

describe('materials', () => {
  it('ends with 0 where the units carry all that is needed', async () => {
    const { code, out } = await run('materials', good);
    expect(out).toMatch(/Fir4x4 .*\d/);
    expect(out).not.toContain('SHORT');
    expect(code).toBe(0);
  });

  it('ends with 1 where something is short, and marks it', async () => {
    const lean = readFileSync(join(root, good), 'utf8').replace('Rescue12, Engine4', 'Engine4');
    writeFileSync(join(folder, 'lean.crib'), lean);
    for (const used of ['caches/rescue-12.crib', 'caches/engine-4.crib', 'policy/alder-ridge.crib']) {
      mkdirSync(join(folder, used, '..'), { recursive: true });
      writeFileSync(join(folder, used), readFileSync(join(root, 'examples', used)));
    }
    const { code, out } = await runHere(['materials', 'lean.crib'], { cwd: folder });
    expect(out).toContain('SHORT');
    expect(code).toBe(1);
  });
});

describe('lesson', () => {
  const file = 'examples/lessons/how-high-may-it-stand.crib';
  it('hands out the questions, and keeps the answers for the key', async () => {
    const handed = await run('lesson', file);
    const key = await run('lesson', file, '--key');
    expect([handed.code, key.code]).toEqual([0, 0]);
    expect(handed.out).toContain('How wide is crib A');
    expect(handed.out).not.toContain('Use 6 courses');
    expect(key.out).toContain('Use 6 courses');
    expect(key.out).toContain('1.5 × 16 in');
  });

  it('ends with 2 where there is no lesson', async () => {
    expect(await run('lesson', good)).toMatchObject({ code: 2, err: expect.stringContaining('no lesson') });
  });
});

describe('explain', () => {
  it('prints the page of a rule', async () => {
    const { code, out } = await run('explain', 'crib-height');
    expect(code).toBe(0);
    expect(out).toContain('What it protects against');
  });

  it('suggests the nearest rule', async () => {
    expect(await run('explain', 'crib-heigth')).toMatchObject({
      code: 2,
      err: expect.stringContaining('Did you mean crib-height?'),
    });
  });
});

it('ends with 2 on words that it does not know, and names the help', async () => {
  expect(await run('chekc')).toMatchObject({ code: 2, err: expect.stringContaining('--help') });
});

describe('language and units', () => {
  it('reports in Spanish and in SI where asked for', async () => {
    const said = await run('check', '--language', 'es', '--units', 'si', faulty);
    expect(said).toMatchObject({ code: 1, err: '' });
    expect(said.out).toContain('PELIGRO');
    expect(said.out).toMatch(/de alto\. El límite es [\d,]+ mm/);
    const json = JSON.parse((await run('check', '-f', 'json', '--units', 'si', faulty)).out);
    const units = JSON.stringify(json.files[0].plans[0].findings).match(/"unit":"[^"]*"/g) ?? [];
    expect(units).toContain('"unit":"mm"');
    expect(units.filter((u) => /"(in|ft|lb|psi)"/.test(u))).toEqual([]);
  });

  it('writes the materials, the expectations and the list of rules in Spanish', async () => {
    expect((await run('materials', '-l', 'es', good)).out).toMatch(/necesario +traído +falta/);
    expect((await run('test', '-q', '-l', 'es', good)).out).toContain('como se preveía');
    expect((await run('explain', '-l', 'es')).out).toContain('Crib demasiado alto para su ancho');
    expect((await run('explain', '-l', 'es')).out).toContain('Madera y cribs');
    expect((await run('explain', '-l', 'es', 'crib-height')).out).toMatch(
      /^crib-height: crib demasiado alto/,
    );
    expect((await run('explain', '-l', 'es', 'crib-heigth')).err).toContain('¿Quiso decir crib-height?');
  });

  it('names the languages that it knows', async () => {
    const said = await run('check', '--language', 'fr', good);
    expect(said).toMatchObject({ code: 2, out: '', err: expect.stringContaining('en, es') });
  });
});

describe('in Spanish', () => {
  const english = /\b(the|and|with|file|plan files|show|print|read|when|which)\b/i;
  const commands = ['check', 'test', 'draw', 'sheet', 'materials', 'lesson', 'explain'];

  it.each([[], ...commands.map((c) => [c])])('prints the help of the command %s', async (...args) => {
    for (const asked of [['-l', 'es'], ['--language', 'es'], ['--language=es'], ['-les']]) {
      const { code, out } = await run(...args, '--help', ...asked);
      expect(code).toBe(0);
      expect(out).toMatch(/^Uso: cribwright .*\[opciones\]/);
      expect(out).toContain('Opciones:');
      expect(out.replace(/--?[a-z-]+|"side push"/g, '').match(english)?.[0]).toBeUndefined();
      expect(out).not.toContain('planning and teaching aid');
    }
  });

  it.each([
    [['chekc'], 'No hay ninguna orden “chekc”. ¿Quiso decir check?'],
    [['check', '--formt', 'json', good], 'Aquí no hay ninguna opción --formt. ¿Quiso decir --format?'],
    [['check'], 'La orden no está completa. Agregue: ruta.'],
    [['check', good, '-f'], 'necesita un valor'],
    [['check', good, '-f', 'pdf'], '“pdf” no es un valor de -f, --format. Use uno de: text, json, sarif.'],
    [['sheet', good, good], 'más argumentos de los que admite'],
    [['draw', good, '--view', 'sidee'], 'No hay ninguna vista “sidee”. ¿Quiso decir side? Hay: '],
    [['draw', good, '--plan', 'Nada'], 'No hay ningún plan “Nada” en este archivo.'],
    [['lesson', good], 'No hay ninguna lección en '],
    [['lesson', 'gone.crib'], 'gone.crib no se pudo leer: no existe'],
  ])('says what is wrong with %j', async (args, words) => {
    const { code, out, err } = await run('-l', 'es', ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(words);
  });

  it('reports in every format, with the limits of the tool', async () => {
    for (const format of ['text', 'json', 'sarif']) {
      const { code, out } = await run('check', '-l', 'es', '-f', format, faulty);
      expect(code).toBe(1);
      expect(out).toContain('El límite es');
      expect(out).not.toMatch(/The limit is|planning and teaching aid/);
    }
  });

  it('hands out a lesson and its key, in the units asked for', async () => {
    const file = 'examples/lessons/how-high-may-it-stand.crib';
    const handed = await run('lesson', '-l', 'es', file);
    const key = await run('lesson', '-l', 'es', '-u', 'si', '-k', file);
    expect([handed.code, key.code]).toEqual([0, 0]);
    expect(handed.out).toContain('Nombre ____');
    expect(key.out).toContain('respuestas');
    expect(key.out).toMatch(/<strong>\d+ mm<\/strong>/);
  });
});
