import { library } from '@cribwright/language';
import { english } from '@cribwright/messages/testing';
import { shippedPolicy } from '@cribwright/model';
import { openWorkspace } from '@cribwright/workspace';
import { describe, expect, it } from 'vitest';

const uri = 'file:///county/plan.crib';
const smallest =
  'use "library/vehicles.crib"\nplan "Any" {\n  ground { surface asphalt }\n  vehicle car : Sedan\n}\n';

async function checked(text: string) {
  const workspace = openWorkspace({ files: { read: async () => undefined }, folders: ['file:///county'] });
  workspace.put(uri, text, 1);
  await workspace.load(uri);
  return workspace.check(uri);
}

describe.each(Object.keys(library))('library/%s', (name) => {
  it('is written without a mistake', async () => {
    const workspace = openWorkspace({ files: { read: async () => undefined }, folders: [] });
    const at = `cribwright:/library/${name}`;
    await workspace.load(at);
    expect(workspace.check(at).problems.map((p) => english(p.message))).toEqual([]);
  });

  it('says of every rating, stress, density, bearing and friction where it comes from', () => {
    const valued =
      /^\s*(rating|perpendicular to grain|parallel to grain|modulus \w+|density|bearing|\w+ friction|dressed)\b/;
    const bare = (library[name] ?? '').split(/\n(?=\S)/).flatMap((block) =>
      // A `source` line covers its whole block.
      /^\s*source\b/m.test(block)
        ? []
        : block.split('\n').filter((line) => valued.test(line) && !/\bsource\b/.test(line)),
    );
    expect(bare).toEqual([]);
  });
});

describe('the shipped policy', () => {
  it('has every limit, each with a source, and is the same as text and as data', async () => {
    const { plans } = await checked(smallest);
    const policy = plans[0]?.plan.policy;
    expect(policy).toEqual(shippedPolicy);
    for (const { key, source } of Object.values(shippedPolicy.limits))
      expect(source.kind, key).not.toBe('unknown');
  });

  it('holds SI as data: 500 psi, 1,000 lb, 4 in, 10 degrees, 0.5 to 2 in', () => {
    const { limits } = shippedPolicy;
    expect(limits['crossing stress'].value).toBeCloseTo((500 * 4.4482216152605) / 0.0254 ** 2, 3);
    expect(limits['crossing rounding'].value).toBeCloseTo(4448.2216152605, 9);
    expect(limits['least overhang'].value).toBeCloseTo(0.1016, 12);
    expect(limits['steepest capture'].value).toBeCloseTo(Math.PI / 18, 12);
    expect(limits['wedge travel'].value).toEqual({ low: 0.0127, high: 0.0508 });
  });

  it('never says that a value is from a publication without naming the place in it', async () => {
    const { plans } = await checked(smallest);
    const limits = Object.values(plans[0]?.plan.policy.limits ?? {});
    expect(limits.length).toBeGreaterThan(20);
    for (const { key, source } of limits) {
      const origin = source.kind === 'policy' ? source.of : source;
      if (origin?.kind === 'published') expect(origin.locator, key).toBeTruthy();
    }
  });
});
