import { fieldSheet } from '@cribwright/drawing';
import type { Figure } from '@cribwright/messages';
import { wordsIn } from '@cribwright/messages';
import { type Plan, place } from '@cribwright/model';
import { fir6x6 } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { inch } from '@cribwright/units';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drawn } from '../../packages/drawing/src/testing/drawn.js';
import { anyPlan } from '../property/any-plan.js';
import { expectShown, readShown } from './shown.js';

/** Dressed dry in its type; the policy says which of its two sizes counts. */
const fir8x8 = {
  ...fir6x6,
  name: 'Fir8x8',
  nominal: '8x8',
  width: 7.25 * inch,
  depth: 7.25 * inch,
  length: 48 * inch,
};

/** A plan of the property tests, some of its cribs and posts of 8x8 under a policy that counts it dry or green. */
const plans: fc.Arbitrary<Plan> = fc
  .tuple(anyPlan, fc.constantFrom('dry', 'green'), fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }))
  .map(([plan, size, eights]) => ({
    ...plan,
    policy: {
      ...plan.policy,
      limits: {
        ...plan.policy.limits,
        'dressed size of 8x8': { ...plan.policy.limits['dressed size of 8x8'], value: size },
      },
    },
    cribs: plan.cribs.map((c, i) => (eights[i % 8] ? { ...c, timber: fir8x8 } : c)),
    struts: plan.struts.map((s, i) =>
      eights[i % 8] && s.gear.kind === 'timber post' ? { ...s, gear: { ...s.gear, timber: fir8x8 } } : s,
    ),
  }));

const each = (claim: (plan: Plan) => void) =>
  fc.assert(fc.property(plans, claim), { numRuns: 25, endOnFailure: true });

/** Geometry alone: no load changes a height, and the drawings are the same but for the loads on them. */
const analyzed = (plan: Plan) => analyze(plan, { loads: false });

it('has in every figure of a support what was derived', () =>
  each((plan) => {
    const { supports } = analyzed(plan);
    const { cribs, stepChocks, struts, ties } = place(plan);
    const figure = (id: string, key: string): Figure => {
      const found = supports.find((s) => s.id === id)?.figures[key];
      if (found === undefined) throw new Error(`${id} has no ${key}`);
      return found;
    };
    const held = (id: string, key: string, derived: Parameters<typeof expectShown>[1]) =>
      expectShown(wordsIn('en', plan.display).value(figure(id, key)), derived, `${key} of ${id}`);
    for (const c of cribs.all) {
      held(c.crib.id, 'height', c.height);
      held(c.crib.id, 'width', c.width);
      held(c.crib.id, 'overhang', c.crib.overhang);
      held(c.crib.id, 'gap', c.gap);
    }
    for (const c of stepChocks.all) held(c.chock.id, 'height', c.height);
    for (const s of struts.all) {
      held(s.strut.id, 'length', s.length);
      held(s.strut.id, 'angle', s.angle);
    }
    for (const t of ties.all) held(t.tie.id, 'length', t.length);
  }));

it('shows in the close-up of each crib and in the Heights view what was derived', () =>
  each((plan) => {
    const analysis = analyzed(plan);
    for (const c of place(plan).cribs.all) {
      const { id } = c.crib;
      const close = drawn(plan, analysis, { view: 'crib', subject: id });
      const words = (face: string, key: string) => {
        const group = close.group(`face ${face}`).items.find((i) => i.key === key);
        return group?.kind === 'group'
          ? group.items.flatMap((i) => (i.kind === 'text' ? [i.text] : [])).join()
          : '';
      };
      expectShown(words('side', 'height'), c.height, `height of ${id}`);
      expectShown(words('side', 'contacts'), c.widths.lengthwise, `width of ${id} along`);
      expectShown(words('end', 'contacts'), c.widths.crosswise, `width of ${id} across`);
      expectShown(words('side', 'timber'), c.crib.timber.length, `timber of ${id}`);
      if (c.crib.shims > 0)
        expectShown(words('side', 'height with shims'), c.heightWithShims, `height of ${id} with shims`);
    }
    if (plan.cribs.length === 0) return;
    const points = drawn(plan, analysis, { view: 'height limits' }).groups.filter((g) =>
      /^point crib/.test(g.key),
    );
    expect(points.length).toBeGreaterThan(0);
    for (const point of points) {
      const c = place(plan).cribs.byId.get(point.ref?.element ?? '');
      expectShown(/: ([^,]+,?[^,]*), limit/.exec(`${point.name}`)?.[1] ?? '', c?.height, `${point.name}`);
    }
  }));

it('shows in the triangle of each strut what was derived', () =>
  each((plan) => {
    const analysis = analyzed(plan);
    for (const s of place(plan).struts.all) {
      const { words } = drawn(plan, analysis, { view: 'strut', subject: s.strut.id });
      const cell = (label: string) => {
        const all = words('figures');
        return all[all.indexOf(label) + 1] ?? '';
      };
      expectShown(words('run').join(), s.run, `run of ${s.strut.id}`);
      expectShown(words('rise').join(), s.rise.low, `rise of ${s.strut.id}`);
      expectShown(cell('length'), s.length, `length of ${s.strut.id}`);
      expectShown(cell('angle to the ground'), s.angle, `angle of ${s.strut.id}`);
    }
  }));

it('shows beside the elevations, aloud and on the sheet what was derived', () =>
  each((plan) => {
    const analysis = analyzed(plan);
    const { cribs, struts, vehicles } = place(plan);
    const tops = [
      ...vehicles.all.map((v) => v.top.low),
      ...cribs.all.map((c) => (c.base?.low ?? 0) + c.heightWithShims),
      ...vehicles.all.flatMap((v) => v.vehicle.parts.map((p) => p.height.low)),
    ];
    const side = drawn(plan, analysis, { view: 'side' });
    const levels = side.words().filter((w) => /^-?[\d./ ]+ (ft|in|m)\b[^=]*: /.test(w));
    for (const level of levels) {
      const shown = readShown(level);
      // Those within a millimeter of each other share a line.
      const near = tops.some((t) => Math.abs(t - (shown?.low ?? Number.NaN)) <= (shown?.step ?? 0) + 0.001);
      expect(near, `level “${level}” of ${tops.join()}`).toBe(true);
    }
    const upright = vehicles.all.filter((v) => v.given.position.kind === 'upright').length;
    expect(levels.length).toBeGreaterThanOrEqual(Math.min(1, upright + cribs.all.length));
    const sheet = fieldSheet(plan, analysis);
    for (const c of cribs.all) {
      const aloud = new RegExp(`crib ${c.crib.name}, (.+?) high`).exec(side.scene.words)?.[1] ?? '';
      expectShown(aloud, c.height, `crib ${c.crib.name} aloud`);
      const row = new RegExp(
        `<td[^>]*>crib ${c.crib.name}</td><td>[^<]*</td><td class="number">([^<]*)<`,
      ).exec(sheet);
      expectShown(row?.[1] ?? '', c.height, `crib ${c.crib.name} on the sheet`);
    }
    for (const s of struts.all) {
      const row = new RegExp(`<td[^>]*>strut ${s.strut.name}</td><td>([^<]*)</td>`).exec(sheet);
      expectShown(/[^,]*$/.exec(row?.[1] ?? '')?.[0] ?? '', s.angle, `strut ${s.strut.name} on the sheet`);
    }
  }));
