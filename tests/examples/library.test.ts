import { library } from '@cribwright/language';
import { english } from '@cribwright/messages/testing';
import type { PolicyKey, PolicyLimit } from '@cribwright/model';
import { shippedPolicy } from '@cribwright/model/testing';
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
  it('has every limit, each with a source, as the engine is tested with', async () => {
    const { plans } = await checked(smallest);
    const limits = plans[0]?.plan.policy.limits;
    const keys = Object.keys(shippedPolicy.limits) as PolicyKey[];
    expect(Object.keys(limits ?? {}).sort()).toEqual([...keys].sort());
    for (const key of keys) {
      const limit = limits?.[key];
      expect(limit?.source.kind, key).not.toBe('unknown');
      expect(plain(limit?.value), key).toEqual(plain(shippedPolicy.limits[key].value));
    }
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

/** Free of the dust that conversions leave. */
const plain = (value: PolicyLimit['value'] | undefined) =>
  typeof value === 'number'
    ? Number(value.toPrecision(9))
    : typeof value === 'object'
      ? { low: Number(value.low.toPrecision(9)), high: Number(value.high.toPrecision(9)) }
      : value;
