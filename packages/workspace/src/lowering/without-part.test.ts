import { english } from '@cribwright/messages/testing';
import { describe, expect, it } from 'vitest';
import { made } from '../testing/plan-with.js';

const plan = (type: string, lines: string) => `use "library/vehicles.crib"

vehicle type FlatRack : VanTrailer53 {
${type}
}

plan "Case" {
  ground { surface asphalt }
  vehicle trailer : FlatRack { brakes set }
${lines}
}
`;
const crib = (part: string) =>
  `  crib A { timber Fir4x4 24 in long; layout 2 by 2; courses 4; at 21 ft, driver side 3 ft 4 in; captures ${part} }`;
const partsOf = (text: string) => made(text).plan?.vehicles[0]?.parts.map((p) => p.name);

describe('a part that a type says it does not have', () => {
  it('is not a part of it', () => {
    expect(partsOf(plan('', ''))).toContain('floor joists');
    expect(partsOf(plan('  no joists', ''))).not.toContain('floor joists');
    expect([...(partsOf(plan('  no joists, legs', '')) ?? [])].sort()).toEqual(['bottom rail', 'kingpin']);
  });

  it('is refused where a support would use it, with the type that has it not', () => {
    const { problems, codes } = made(plan('  no joists', crib('rail, joists')));
    expect(codes.filter((c) => c === 'unknown-part')).toHaveLength(1);
    const problem = problems.find((p) => p.code === 'unknown-part');
    expect(english(problem?.message)).toBe(
      'Part joists not found in trailer: FlatRack says that it has no joists. Use another part.',
    );
    expect(problem?.related).toHaveLength(1);
  });

  it('may be described anew by a type that extends it', () => {
    const text = plan(
      '  no joists\n  joists sills { runs 1 ft to 52 ft; spacing 2 ft; offset 4 ft; height 42 in }',
      crib('rail, sills'),
    );
    expect(made(text).problems.filter((p) => p.code === 'unknown-part')).toEqual([]);
    expect(partsOf(text)).toContain('sills');
  });

  it('must be a part of a type that it extends', () => {
    const { problems } = made(plan('  no bumper', ''));
    expect(problems.map((p) => english(p.message))).toEqual([
      'FlatRack extends no type that has a part bumper, so there is nothing to leave out.',
    ]);
  });
});
