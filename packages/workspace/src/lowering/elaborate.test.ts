import { exactly } from '@cribwright/model';
import { describe, expect, it } from 'vitest';
import { foot, inch, lb, made, planWith } from '../testing/plan-with.js';

const near = (value: number) => expect.closeTo(value, 9);

describe('a vehicle', () => {
  it('takes everything that its types say, and what the plan says over it', () => {
    const [trailer] = planWith('').vehicles;
    expect(trailer?.types).toEqual(['VanTrailer53', 'SemiTrailer']);
    expect(trailer?.length).toBeCloseTo(53 * foot, 9);
    expect(trailer?.axles.map((a) => a.id)).toEqual(['axle 1', 'axle 2']);
    const rail = trailer?.parts.find((p) => p.id === 'rail');
    expect(rail).toMatchObject({
      form: 'rails',
      offsets: [near(-49 * inch), near(49 * inch)],
      mayBear: true,
    });
    expect(trailer?.cargo[0]?.weight).toEqual(exactly(20_000 * lb));
  });

  it('lets a block of the same name change single lines of what it inherits', () => {
    const plan = planWith('', 'vehicle type Low : VanTrailer53 { rails rail { height 30 in to 32 in } }')
      .vehicles[0];
    expect(plan?.parts.find((p) => p.id === 'rail')?.height.low).toBeCloseTo(40 * inch, 9);
    const low = planWith(
      '  vehicle other : Low { at 0 ft, passenger side 20 ft }',
      'vehicle type Low : VanTrailer53 { rails rail { height 30 in to 32 in } }',
    ).vehicles[1];
    const rail = low?.parts.find((p) => p.id === 'rail');
    expect(rail?.height).toEqual({ low: near(30 * inch), high: near(32 * inch) });
    expect(rail?.to).toBeCloseTo(53 * foot, 9);
    expect(low?.at).toEqual({ x: 0, y: near(20 * foot) });
  });

  it('weighs a mass at standard gravity, and cargo by its volume', () => {
    const plan = planWith(
      '  vehicle a : VanTrailer48 { at 0 ft, passenger side 20 ft; cargo 1,000 kg from 4 ft to 40 ft }\n  vehicle b : VanTrailer48 { at 0 ft, passenger side 40 ft; cargo 2 to 3 m3 of Sludge from 4 ft to 40 ft }',
      'cargo type Sludge { density 1,000 to 1,200 kg/m3; shifts }',
    );
    expect(plan.vehicles[1]?.cargo[0]?.weight.low).toBeCloseTo(9806.65, 6);
    expect(plan.vehicles[2]?.cargo[0]).toMatchObject({
      name: 'Sludge',
      shifts: true,
      weight: { low: near(2 * 1000 * 9.80665), high: near(3 * 1200 * 9.80665) },
    });
  });

  it('keeps ranges and tolerances whole', () => {
    const cargo = (said: string) =>
      planWith(
        `  vehicle a : VanTrailer48 { at 0 ft, passenger side 20 ft; cargo ${said} from 4 ft to 40 ft }`,
      ).vehicles[1]?.cargo[0]?.weight;
    expect(cargo('36,000 to 42,000 lb')).toEqual({ low: near(36_000 * lb), high: near(42_000 * lb) });
    expect(cargo('40,000 lb ± 5 %')).toEqual({ low: near(38_000 * lb), high: near(42_000 * lb) });
    expect(cargo('40,000 lb +- 500 lb')).toEqual({ low: near(39_500 * lb), high: near(40_500 * lb) });
  });

  it.each([
    ['opposite', Math.PI],
    ['across to driver side', Math.PI / 2],
    ['across to passenger side', -Math.PI / 2],
    ['30 deg', Math.PI / 6],
  ])('points as said: %s', (said, angle) => {
    expect(
      planWith(`  vehicle car : Sedan { at 60 ft, center; heading ${said} }`).vehicles[1]?.heading,
    ).toBeCloseTo(angle, 12);
  });

  it.each([
    ['upright', { kind: 'upright' }],
    ['pitched 10 deg nose down', { kind: 'pitched', angle: near(Math.PI / 18) }],
    ['pitched 10 deg nose up', { kind: 'pitched', angle: near(-Math.PI / 18) }],
    ['on its passenger side', { kind: 'on its side', side: 'passenger' }],
    ['on its roof', { kind: 'on its roof' }],
  ])('lies as said: %s', (said, position) => {
    expect(
      planWith(`  vehicle car : Sedan { at 60 ft, center; position ${said} }`).vehicles[1]?.position,
    ).toEqual(position);
  });

  it('is higher with all axles on a dock, and tilts with some', () => {
    const on = (stretch: string) =>
      planWith(`  vehicle car : Sedan { at 60 ft, center; rests on dock 48 in ${stretch} }`).vehicles[1];
    const plain = planWith('  vehicle car : Sedan { at 60 ft, center }').vehicles[1];
    const all = on('from 0 ft to 16 ft');
    expect(all?.position).toEqual({ kind: 'upright' });
    expect((all?.parts[0]?.height.low ?? 0) - (plain?.parts[0]?.height.low ?? 0)).toBeCloseTo(48 * inch, 9);
    const tilt = (stretch: string) => {
      const position = on(stretch)?.position;
      return position?.kind === 'pitched' ? position.angle : 0;
    };
    expect(tilt('from 0 ft to 6 ft')).toBeLessThan(0);
    expect(tilt('from 8 ft to 16 ft')).toBeGreaterThan(0);
  });

  it('knows which wheels are gone', () => {
    const gone = planWith(
      '  vehicle old : VanTrailer48 { at 0 ft, passenger side 20 ft; no tire at axle 1, driver side; no tire at axle 2 }',
    ).vehicles[1];
    expect(gone?.axles.map((a) => a.missing)).toEqual([['driver'], ['driver', 'passenger']]);
  });
});

describe('vehicles that rest on each other', () => {
  it('touch where the part passes over the lower one', () => {
    const plan = planWith('  vehicle car : Sedan { at 24 ft, driver side 4 ft; bears trailer at rail }');
    const [contact] = plan.contacts;
    expect(contact).toMatchObject({
      lower: 'vehicle/car',
      upper: 'vehicle/trailer',
      upperPart: 'rail',
      coupled: false,
    });
    expect(contact?.points).toHaveLength(2);
    for (const p of contact?.points ?? []) expect(p.y).toBeCloseTo(-49 * inch, 9);
  });

  it('touch where the author says', () => {
    const plan = planWith(
      '  vehicle car : Sedan { at 24 ft, driver side 4 ft; bears trailer at rail from 28 ft to 30 ft }',
    );
    expect(plan.contacts[0]?.points.map((p) => p.x)).toEqual([near(28 * foot), near(30 * foot)]);
  });

  it('are coupled at the kingpin', () => {
    const plan = made(`use "library/vehicles.crib"
plan "Case" {
  ground { surface asphalt }
  vehicle tractor : DayCabTractor
  vehicle trailer : VanTrailer53 { at 14 ft, center; coupled to tractor }
}
`).plan;
    expect(plan?.contacts[0]).toMatchObject({
      lower: 'vehicle/tractor',
      upper: 'vehicle/trailer',
      upperPart: 'kingpin',
      coupled: true,
    });
    expect(plan?.contacts[0]?.points[0]?.x).toBeCloseTo(17 * foot, 9);
  });
});

const crib = (more: string, at = 'at 20 ft, driver side 3 ft 6.75 in') => `  crib A {
    timber Fir4x4 24 in long
    layout 2 by 3
    courses 11
    ${at}
    captures rail, joists
    ${more}
  }`;

describe('a crib', () => {
  it('stands where it is said, with the policy’s overhang where none is said', () => {
    const [a] = planWith(crib('')).cribs;
    expect(a).toMatchObject({
      id: 'crib/A',
      at: { x: near(20 * foot), y: near(-42.75 * inch) },
      layout: { lengthwise: 2, crosswise: 3 },
      courses: 11,
      base: 'open',
      overhang: near(4 * inch),
      wedges: undefined,
      slidIn: false,
      standsOn: { kind: 'ground' },
    });
    expect(a?.timber).toMatchObject({ nominal: '4x4', width: near(3.5 * inch), length: near(24 * inch) });
  });

  it('gives the outer pair to the first part and the inner pair to the second', () => {
    expect(planWith(crib('')).cribs[0]?.captures.map((c) => [c.part, c.contacts])).toEqual([
      ['rail', 'outer'],
      ['joists', 'inner'],
    ]);
    const front = planWith(crib('').replace('captures rail, joists', 'captures joists front pair')).cribs[0];
    expect(front?.captures.map((c) => [c.part, c.contacts])).toEqual([['joists', 'front']]);
  });

  it.each([
    ['at near joist 20, driver side 3 ft', 20 * foot, -3 * foot],
    ['at under trailer rail near 20 ft, passenger side', 20 * foot, 49 * inch],
    ['at 20 ft, center', 20 * foot, 0],
    ['at 20 ft, driver side', 20 * foot, -49 * inch],
  ])('stands as the trade says it: %s', (at, x, y) => {
    expect(planWith(crib('', at)).cribs[0]?.at).toEqual({ x: near(x), y: near(y) });
  });

  it('takes what is said of wedges, shims, base and footing', () => {
    const [a] =
      planWith(`${crib('wedges 4 pairs, 0.5 in to 1.5 in, preload 500 lb\n    shims 3/4 in\n    base solid\n    top crosswise\n    slid in\n    stands on pad P')}
  pad P { size 3 ft by 2 ft; thickness 3.5 in; under A }`).cribs;
    expect(a).toMatchObject({
      wedges: {
        pairs: 4,
        travel: { low: near(0.5 * inch), high: near(1.5 * inch) },
        preload: near(500 * lb),
      },
      shims: near(0.75 * inch),
      base: 'solid',
      top: 'crosswise',
      slidIn: true,
      standsOn: { kind: 'pad', pad: 'pad/P' },
    });
  });
});

const strut = (foot: string, side = 'passenger side') => `  strut S1 : Strut4to8ft {
    head trailer rail near 26 ft, ${side}
    base ${foot}
    angle 45 deg
    lock pinned
  }`;

describe('a strut', () => {
  it.each([
    ['passenger side', 1],
    ['driver side', -1],
  ])('goes straight out from its head on the %s', (side, sign) => {
    const [s] = planWith(strut('4 ft out', side)).struts;
    expect(s?.head).toMatchObject({ part: 'rail', x: near(26 * foot), y: near(sign * 49 * inch) });
    expect(s?.head.z.low).toBeCloseTo(40 * inch, 9);
    expect(s?.foot).toMatchObject({ x: near(26 * foot), y: near(sign * (49 * inch + 4 * foot)) });
    expect(s?.statedAngle).toBeCloseTo(Math.PI / 4, 12);
  });

  it('has its base where it is said', () => {
    expect(planWith(strut('at 27 ft, passenger side 9 ft')).struts[0]?.foot).toMatchObject({
      x: near(27 * foot),
      y: near(9 * foot),
    });
  });

  it('may be a timber post', () => {
    const [s] = planWith(
      strut('4 ft out').replace('Strut4to8ft', 'Post'),
      'strut type Post { post Fir4x4 2 side by side }',
    ).struts;
    expect(s?.gear).toMatchObject({ kind: 'timber post', plies: 2 });
  });
});

it('makes ties fast to feet, parts and anchors', () => {
  const plan = planWith(`${strut('4 ft out')}
  anchor Pickets { at 26 ft, driver side 14 ft; holds unknown }
  strap T1 : RatchetStrap2in { from S1 base to Pickets }
  strap T2 : RatchetStrap2in { from S1 head; to trailer rail near 30 ft, driver side }`);
  expect(plan.ties[0]).toMatchObject({
    id: 'tie/T1',
    gear: { kind: 'strap', rating: near(2000 * lb) },
    from: { kind: 'strut base', strut: 'strut/S1' },
    to: { kind: 'ground anchor', name: 'Pickets', holds: undefined, y: near(-14 * foot) },
  });
  expect(plan.ties[1]?.to).toMatchObject({ kind: 'vehicle part', part: 'rail', y: near(-49 * inch) });
});

describe('steps', () => {
  it('chock a vehicle without a block for the chocks', () => {
    const plan = planWith('  steps { 1 chock trailer both directions crew 1 takes 1 to 2 min }');
    expect(plan.chocks).toMatchObject([{ id: 'chock/step 1', vehicle: 'vehicle/trailer', ways: 'both' }]);
    expect(plan.steps[0]).toMatchObject({
      action: 'chock',
      with: ['chock/step 1'],
      crew: 1,
      takes: { low: 60, high: 120 },
    });
  });

  it('use the chocks that have a block', () => {
    const plan = planWith(
      '  chock K1 { under trailer axle 2; holds rearward }\n  steps { 1 chock trailer both directions }',
    );
    expect(plan.chocks).toMatchObject([{ id: 'chock/K1', axle: 'axle 2', ways: 'rearward' }]);
    expect(plan.steps[0]?.with).toEqual(['chock/K1']);
  });

  it('name what they wait for and what they use', () => {
    const plan = planWith(`${crib('')}
  steps {
    1 size up trailer
    2 build A crew 4 takes 5 min after 1 note "from the rear"
  }`);
    expect(plan.steps[1]).toMatchObject({
      targets: ['crib/A'],
      after: ['step/1'],
      note: 'from the rear',
      crew: 4,
    });
  });
});

describe('a policy', () => {
  const limits = (text: string) => planWith('  policy Ours', text).policy;
  it('stands on the shipped one for what it does not say', () => {
    const policy = limits('policy Ours : Shipped { least overhang 5 in }');
    expect(policy.extends).toEqual(['Shipped']);
    expect(policy.limits['least overhang']).toMatchObject({ value: near(5 * inch), loosened: false });
    expect(policy.limits['crossing basis'].value).toBe('lesser');
  });

  it.each([
    ['least overhang 3 in', 'least overhang', true],
    ['least overhang 5 in', 'least overhang', false],
    ['height ratio some contacts 2', 'height ratio some contacts', true],
    ['use limit 90 %', 'use limit', false],
    ['crossing basis flat rule', 'crossing basis', true],
    ['least strut angle 40 deg', 'least strut angle', true],
    ['push margin 12 %', 'push margin', false],
  ] as const)('knows whether %s is looser', (line, key, loosened) => {
    const limit = limits(`policy Ours : Shipped { ${line} because "reason of ours" }`).limits[key];
    expect(limit.loosened).toBe(loosened);
    expect(limit.reason).toBe('reason of ours');
    expect(limit.replaces?.ref).toEqual({ element: 'policy/Shipped', property: key });
  });
});

it.each([
  ['3 ft', true],
  ['6 ft', false],
])('knows that a push is harder to hold the higher it acts: %s after 4 ft', (height, loosened) => {
  const { policy } = planWith(
    '  policy Ours',
    `policy County : Shipped { push height 4 ft because "usual here" }
policy Ours : County { push height ${height} because "reason of ours" }`,
  );
  expect(policy.limits['push height'].loosened).toBe(loosened);
});

describe('calculated values', () => {
  it('are worked out from parts and cribs, in any order', () => {
    const plan = planWith(`  let spare = gap - 0.5 in
  let gap = trailer rail height - A height
${crib('shims spare')}`);
    // 40 in less eleven courses of 3.5 in leaves 1.5 in.
    expect(plan.cribs[0]?.shims).toBeCloseTo(1 * inch, 9);
  });

  it('that hang on themselves through a crib are told, and nothing is guessed', () => {
    const { codes } = made(`use "library/vehicles.crib"
plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53
  let n = A height / 3.5 in
  crib A { timber Fir4x4 24 in long; layout 2 by 2; courses n; at 20 ft, center; captures rail }
}
`);
    expect(codes).toContain('value-unknown');
    expect(codes).toContain('not-in-plan');
  });

  it('multiply and divide lengths', () => {
    const plan = planWith(
      `  let side = 2 ft * 3 / 2\n  pad P { size side by side; thickness 4 in - 1/2 in; under A }\n${crib('')}`,
    );
    expect(plan.pads[0]).toMatchObject({
      length: near(3 * foot),
      width: near(3 * foot),
      thickness: near(3.5 * inch),
    });
  });
});

describe('a pattern', () => {
  const pattern = `pattern Pair(rail: part, reach: length, wood: timber) {
  let half = 24 in
  crib L { timber wood 24 in long; layout 2 by 2; courses 11; at reach, driver side 3 ft; captures rail }
  crib R { timber wood half long; layout 2 by 2; courses 11; at reach + 1 ft, passenger side 3 ft; captures rail }
}`;
  it('puts in its supports with its parameters filled', () => {
    const plan = planWith(
      '  Pair(rail = trailer rail, reach = 20 ft, wood = Fir6x6)\n  expect crib-reach on L',
      pattern,
    );
    expect(plan.cribs.map((c) => [c.id, c.timber.name])).toEqual([
      ['crib/L', 'Fir6x6'],
      ['crib/R', 'Fir6x6'],
    ]);
    expect(plan.cribs[1]?.at).toEqual({ x: near(21 * foot), y: near(3 * foot) });
    expect(plan.cribs[1]?.timber.length).toBeCloseTo(24 * inch, 9);
    expect(plan.expectations[0]).toMatchObject({ on: 'crib/L' });
  });

  it('may be used twice, each group by its name', () => {
    const plan = planWith(
      '  Pair Front(rail = rail, reach = 20 ft, wood = Fir4x4)\n  Pair Rear(rail = rail, reach = 30 ft, wood = Fir4x4)\n  steps { 1 build Front.L, Rear.R }',
      pattern,
    );
    expect(plan.cribs.map((c) => c.id)).toEqual([
      'crib/Front.L',
      'crib/Front.R',
      'crib/Rear.L',
      'crib/Rear.R',
    ]);
    expect(plan.steps[0]?.targets).toEqual(['crib/Front.L', 'crib/Rear.R']);
  });
});

it('counts what responding units carry', () => {
  const plan = planWith(
    '  responding R12',
    'cache R12 "Rescue 12" { staffing 4; 48 Fir4x4 24 in long; 12 wedge pairs; 4 Strut4to8ft; 2 RatchetStrap2in; 6 wheel chocks; 2 pads 2 ft by 2 ft; 10 shims }',
  );
  expect(plan.units[0]).toMatchObject({ name: 'Rescue 12', people: 4 });
  expect(plan.units[0]?.carries.map((c) => [c.count, c.kind, c.item])).toEqual([
    [48, 'timber', 'Fir4x4'],
    [12, 'wedge pair', 'wedge pair'],
    [4, 'strut', 'Strut4to8ft'],
    [2, 'strap', 'RatchetStrap2in'],
    [6, 'chock', 'wheel chock'],
    [2, 'pad', 'pad'],
    [10, 'shim', 'shim'],
  ]);
});

it('takes tool loads, egress, size-up, expectations and acceptances', () => {
  const plan = planWith(`${crib('')}
  crew 6 people
  lift intended
  units si
  size up { fuel "no leak"; brakes "spring brakes on" }
  load spreader { on trailer; at 24 ft, driver side 2 ft, 3 ft high; force 2,000 lb; toward passenger side }
  egress Back { from 24 ft, driver side 5 ft; to 24 ft, driver side 20 ft }
  expect safe
  expect load on A contact 1 about 5,400 lb
  expect height limit of A 48 in within 1 %
  accept crib-reach on A because "measured" by "Capt. Reyes" until 2027-03-01`);
  expect(plan).toMatchObject({ lifts: true, display: 'si', crews: [{ people: 6 }] });
  expect(plan.sizeUp.map((s) => s.item)).toEqual(['fuel', 'brakes']);
  expect(plan.toolLoads[0]).toMatchObject({ direction: { x: 0, y: 1, z: 0 }, at: { z: near(3 * foot) } });
  expect(plan.egress[0]).toMatchObject({
    width: near(3 * foot),
    points: [{ y: near(-5 * foot) }, { y: near(-20 * foot) }],
  });
  expect(plan.expectations).toMatchObject([
    { kind: 'safe' },
    { kind: 'figure', figure: 'load', contact: 1, within: 0.05 },
    { kind: 'figure', figure: 'heightLimit', value: { low: near(48 * inch) }, within: 0.01 },
  ]);
  expect(plan.acceptances[0]).toMatchObject({
    rule: 'crib-reach',
    on: 'crib/A',
    by: 'Capt. Reyes',
    until: '2027-03-01',
  });
});

describe('one thing that cannot be read', () => {
  it.each([
    ['ground', 'ground { surface nowhere }'],
    ['size up', 'size up { fuel 4 }'],
    ['vehicle', 'vehicle bad : Nothing'],
    ['crib', 'crib Bad { courses x }'],
    ['step chock', 'step chock Bad : Nothing { at 20 ft, center }'],
    ['pad', 'pad Bad { size 2 ft }'],
    ['strut', 'strut Bad : Strut4to8ft { head nowhere }'],
    ['strap', 'strap Bad : RatchetStrap2in { from nowhere }'],
    ['chock', 'chock Bad { under nobody }'],
    ['anchor', 'anchor Bad { at here }'],
    ['steps', 'steps { 1 fly A }'],
    ['load', 'load Bad { on nobody }'],
    ['egress', 'egress Bad { from here }'],
    ['policy', 'policy Nowhere'],
    ['responding unit', 'responding Nobody'],
    ['expectation', 'expect nothing on A'],
    ['acceptance', 'accept nothing on A'],
    ['value', 'let bad = 4 in + 2 lb'],
    ['pattern', 'Nothing(a = 4 in)'],
    ['nonsense', 'banana 4'],
  ])('of kind %s leaves the rest of the plan checked, and says that it is not whole', (_, line) => {
    const ground = line.startsWith('ground') ? '' : 'ground { surface asphalt }';
    const { checked, problems } = made(`use "library/vehicles.crib"
use "library/gear.crib"
plan "Case" {
  ${ground}
  ${line.startsWith('vehicle') ? '' : line}
  vehicle trailer : VanTrailer53 { cargo 20,000 lb from 4 ft to 48 ft }
  ${line.startsWith('vehicle') ? line : ''}
  crib A {
    timber Fir4x4 24 in long
    layout 2 by 2
    courses 14
    wedges 1 pair
    at 19 ft 6 in, driver side 3 ft 6.75 in
    captures rail
  }
}
`);
    expect(problems.some((p) => p.severity === 'danger')).toBe(true);
    expect(checked.state).toBe('errors');
    const rules = checked.plans[0]?.analysis.findings.map((f) => f.rule);
    expect(rules).toContain('crib-height');
    expect(rules).toContain('crib-reach');
  });

  it('such as the ground counts as unknown, never as enough', () => {
    const { plan, codes } = made(
      'use "library/vehicles.crib"\nplan "Case" { vehicle trailer : VanTrailer53 }\n',
    );
    expect(codes).toContain('ground-missing');
    expect(plan?.ground.surface).toMatchObject({ bearing: undefined, frictionSource: { kind: 'unknown' } });
    expect(plan?.ground.surface.frictionTire.low).toBeLessThan(0.2);
  });
});

describe('the ground', () => {
  const ground = (lines: string) =>
    made(
      `use "library/vehicles.crib"\nplan "Case" { ground { surface asphalt; ${lines} }; vehicle trailer : VanTrailer53 }\n`,
    ).plan?.ground;

  it('knows a level grade from one that nobody said, and from a fall that goes nobody knows where', () => {
    expect(ground('grade 0 %')).toMatchObject({ grade: 0, unsaid: undefined });
    expect(ground('grade 2 % toward front')).toMatchObject({
      grade: near(0.02),
      toward: 'front',
      unsaid: undefined,
    });
    expect(ground('')).toMatchObject({ unsaid: 'grade' });
    expect(ground('grade many % toward front')).toMatchObject({ unsaid: 'grade' });
    expect(ground('grade 2 %')).toMatchObject({ grade: near(0.02), unsaid: 'direction' });
  });

  it('takes the compass, clockwise from north', () => {
    expect(ground('grade 0 %')?.facing).toBeUndefined();
    expect(ground('compass front faces north')?.facing).toBe(0);
    expect(ground('compass front faces northwest')?.facing).toBeCloseTo((7 * Math.PI) / 4, 12);
  });
});

it('never passes on as whole what it could not read', () => {
  const { checked, codes } = made(`use "library/vehicles.crib"
plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53
  crib A { timber Fir4x4 24 in long; layout 2 by 2; courses eleven; at 20 ft, center; captures rail }
}
`);
  expect(codes).toContain('not-in-plan');
  expect(checked.plans[0]).toMatchObject({ partial: true, plan: { cribs: [] } });
});

it('counts a suspension that nobody said as one that may let down', () => {
  const plan = planWith(
    '  vehicle a : Bare { at 0 ft, passenger side 20 ft }',
    'vehicle type Bare : VanTrailer48 { axle 9 { at 30 ft; empty 4,000 lb; track 6 ft } }',
  );
  expect(plan.vehicles[1]?.axles.find((a) => a.id === 'axle 9')?.suspension).toBe('air');
});
