import { expect, it } from 'vitest';
import { ran, safeFiles, withSlip } from './files.js';

/** Slips in the plan and in what it reads from, each with a place that must be named. */
const slips: readonly (readonly [what: string, file: string, from: string, to: string])[] = [
  ['a number that cannot be read in a `let`', 'fleet.crib', 'usual = 4,000 lb', 'usual = 70,0000 lb'],
  ['a `let` two files away', 'weights.crib', '8,000 lb', '70,0000 lb'],
  ['a misspelled line of a vehicle type', 'fleet.crib', 'track       6 ft', 'trackk      6 ft'],
  [
    'a misspelled cargo line of a vehicle type',
    'fleet.crib',
    '  axle 1 {',
    '  cargoo 40,000 lb from 4 ft to 20 ft\n  axle 1 {',
  ],
  [
    'a misspelled limit of a policy',
    'policy.crib',
    '  authority',
    '  crossing stres 100 psi  reason "old wood"\n  authority',
  ],
  [
    'a limit that cannot be read',
    'policy.crib',
    '  authority',
    '  crossing stress 1,00 psi  reason "old wood"\n  authority',
  ],
  ['a file that is not there', 'fleet.crib', 'use "weights.crib"', 'use "weights.crib"\nuse "gone.crib"'],
  ['a misspelled line of the plan', 'plan.crib', '  expect safe', '  accep nothing\n  expect safe'],
  ['a number that cannot be read in the plan', 'plan.crib', '0 %', '1,5 %'],
  ['a policy that is not there', 'plan.crib', 'policy  AlderRidge', 'policy  AlderRige'],
];

it('finds the plan safe as it is written right', async () => {
  expect(await ran(safeFiles, 'check', 'plan.crib')).toMatchObject({ code: 0, err: '' });
  expect(await ran(safeFiles, 'test', 'plan.crib')).toMatchObject({ code: 0, err: '' });
  expect((await ran(safeFiles, 'sheet', 'plan.crib')).out).not.toContain('NOT READ WHOLE');
});

it.each(slips)('never ends well: %s', async (_what, file, from, to) => {
  const files = withSlip(file, from, to);
  const words = `${file}:`;

  const check = await ran(files, 'check', 'plan.crib');
  expect(check.code).toBe(1);
  expect(check.out).toContain('NOT READ WHOLE');
  expect(check.out).toContain(words);

  const json = JSON.parse((await ran(files, 'check', '--format', 'json', 'plan.crib')).out);
  expect(json.outcome.exit).toBe(1);
  expect(json.files[0].plans[0].partial).toBe(true);
  expect(json.files[0].plans[0].unread).not.toEqual([]);
  expect(json.files[0].plans[0].unread[0].path).toBe(file);
  for (const expected of json.files[0].plans[0].expectations) expect(expected.held).toBe(false);

  const sarif = JSON.parse((await ran(files, 'check', '--format', 'sarif', 'plan.crib')).out).runs[0];
  expect(sarif.invocations[0].executionSuccessful).toBe(false);
  expect(sarif.results.filter((r: { level: string }) => r.level === 'error')).not.toEqual([]);

  const test = await ran(files, 'test', 'plan.crib');
  expect(test.code).toBe(1);
  expect(test.out).not.toContain('as expected  ');

  for (const command of ['sheet', 'draw', 'materials']) {
    const page = await ran(files, command, 'plan.crib');
    expect(page.code, command).toBe(2);
    expect(page.out, command).toContain('NOT READ WHOLE');
    expect(page.err, command).toContain(words);
  }
});
