import { planSize } from '@cribwright/language/internal';
import { english } from '@cribwright/messages/testing';
import { describe, expect, it } from 'vitest';
import { made } from '../testing/plan-with.js';

const times = (n: number, line: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => line(i)).join('\n');

const read = (lines: string, before = '') =>
  made(`use "library/vehicles.crib"
${before}
plan "Large" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53 {}
${lines}
}
`);

const crib = (name: string, at = '20 ft') =>
  `crib ${name} { timber Fir4x4 24 in long; layout 2 by 2; courses 11; at ${at}, driver side 3 ft 6 in; captures rail }`;

const cases: readonly [what: keyof typeof planSize, lines: (n: number) => string, already: number][] = [
  [
    'vehicles',
    (n) => times(n, (i) => `  vehicle c${i} : Sedan { at ${i} ft, passenger side ${20 + 8 * i} ft }`),
    1,
  ],
  ['supports', (n) => times(n, (i) => `  ${crib(`A${i}`)}`), 0],
  ['steps', (n) => `${crib('A')}\nsteps {\n${times(n, (i) => `${i + 1} check A`)}\n}`, 0],
  [
    'loads',
    (n) => times(n, (i) => `load l${i} { on trailer; at 20 ft, 3 ft high; force 100 lb; toward rear }`),
    0,
  ],
];

describe.each(cases)('too many %s', (what, lines, already) => {
  const most = planSize[what];
  const code = `plan-too-large`;

  it('are refused with their count and with how many there may be', () => {
    const { checked, problems } = read(lines(most + 1 - already));
    const told = problems.filter((p) => p.code === code);
    expect(told.map((p) => [p.severity, p.message.id])).toEqual([['danger', `language.${code}--${what}`]]);
    expect(english(told[0]?.message)).toMatch(
      new RegExp(
        `has ${most + 1} ${what}(, patterns included)?\\. The limit is ${most}, so the plan is NOT checked`,
      ),
    );
    expect(english(told[0]?.message)).toContain('NOT checked');
    expect(checked.plans).toEqual([]);
    expect(checked.state).toBe('errors');
  });
});

it.each(cases.filter(([what]) => what === 'steps' || what === 'loads'))(
  'as many %s as there may be are checked',
  (what, lines, already) => {
    const { checked, codes } = read(lines(planSize[what] - already));
    expect(codes).not.toContain('plan-too-large');
    expect(checked.plans).toHaveLength(1);
  },
);

it('counts what patterns put in', () => {
  const pattern = `pattern Two(back : length) {\n${crib('A', 'back')}\n${crib('B', 'back')}\n}`;
  const { problems } = read(
    times(planSize.supports / 2 + 1, (i) => `  Two T${i}(back = 20 ft)`),
    pattern,
  );
  expect(problems.filter((p) => p.code === 'plan-too-large').map((p) => p.message.id)).toEqual([
    'language.plan-too-large--supports',
  ]);
});

it('counts the axles and parts of a vehicle, those of its types too', () => {
  const type = `vehicle type Long : VanTrailer53 {\n${times(99, (i) => `points p${i} { at ${i + 1} in; height 40 in }`)}\n}`;
  const { checked, problems } = read('  vehicle other : Long { at 0 ft, passenger side 20 ft }', type);
  const told = problems.filter((p) => p.code === 'plan-too-large');
  expect(english(told[0]?.message)).toMatch(
    /^Too many axles and parts: 1\d\d in other\. The limit is 100, so the plan is NOT checked\./,
  );
  expect(checked.plans).toEqual([]);
});

it('refuses a part of more crossmembers than any vehicle has', () => {
  const { checked, problems } = read(
    '  vehicle other : VanTrailer53 { at 0 ft, passenger side 20 ft; joists joists { runs 1 ft to 3,000 ft; spacing 1 in } }',
  );
  const told = problems.filter((p) => p.code === 'part-too-many');
  expect(english(told[0]?.message)).toContain('has 35,989 joists. The limit is 300.');
  expect(told[0]?.severity).toBe('danger');
  expect(checked.plans[0]?.partial).toBe(true);
});

it.each(['99999999 min', '25 h', '2 to 99999999 min'])('refuses a step that takes %s', (takes) => {
  const { problems, plan } = read(`${crib('A')}\nsteps { 1 build A takes ${takes} }`);
  const told = problems.filter((p) => p.code === 'too-large');
  expect(told).toHaveLength(1);
  expect(english(told[0]?.message)).toMatch(/The maximum here is (1,440 min|24 h)\./);
  expect(plan?.steps[0]?.takes).toBeUndefined();
});
