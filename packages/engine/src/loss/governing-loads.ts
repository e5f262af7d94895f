import type { Figure } from '@cribwright/messages';
import { type List, list, type Message, message, term } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import { computed, exactly, given, measured } from '@cribwright/model';
import { angle as angleHead, force, length } from '@cribwright/model/internal';
import { at, indexAt } from '../resting/at.js';
import type { GoverningLoad, LoadShares } from '../supports/governing-load.js';
import type { SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { byBalance } from './by-balance.js';
import { type CaseRun, type Extremes, holds } from './case-run.js';
import { rangeWords } from './corner-words.js';
import type { ComponentRun, LossWorking } from './loss-working.js';
import type { RangePlace } from './range-place.js';
import { wholes } from './stage-run.js';
import { staticBounds } from './static-bounds.js';

/**
 * What each point carries at worst, over stages, losses, ranges and stiffnesses, with the case named; and the sum
 * over each crib. Where a body does not rest as built, what carries it is not known.
 */
export function governingLoads(w: SupportWorkings, resting: LossWorking): ReadonlyMap<string, GoverningLoad> {
  const loads = new Map<string, GoverningLoad>();
  for (const part of resting.parts) {
    const cases = casesOf(resting, part);
    const last = part.stages.at(-1)?.asBuilt;
    const bounds = staticBounds(part.component);
    const known = last !== undefined && holds(last);
    part.component.points.forEach((p, i) => {
      const worst = worstOf(cases, i, (run) => run);
      const axial = upwardShare(p, w);
      const bound = bounds.get(p.id);
      loads.set(p.id, {
        load: axial(known && worst !== undefined ? pointLoad(p, worst, part) : unknownLoad()),
        asBuilt: axial(asBuiltFigure(last, i)),
        ...(bound === undefined ? {} : { bound: axial(bound) }),
      });
    });
    const byElement = new Map<ElementId, { readonly p: SupportPoint; readonly i: number }[]>();
    part.component.points.forEach((p, i) => {
      const others = byElement.get(p.element);
      if (others === undefined) byElement.set(p.element, [{ p, i }]);
      else others.push({ p, i });
    });
    wholes(part.component).forEach((element, e) => {
      const points = byElement.get(element) ?? [];
      if (points.some(({ p }) => p.id === element)) return;
      const worst = worstOf(cases, e, (run) => run.whole);
      loads.set(element, {
        load:
          known && worst !== undefined
            ? wholeLoad(points, worst, worst.run.whole.forces[e], part)
            : unknownLoad(),
        shares: known ? sharesOf(cases, e, points, part) : [],
        asBuilt: byBalance(
          force('asBuilt', term('figure.load-as-built'), 'up'),
          known ? { low: at(last.whole.low, e), high: at(last.whole.high, e) } : undefined,
        ),
      });
    });
  }
  return loads;
}

interface Case {
  readonly run: CaseRun;
  readonly places: readonly RangePlace[];
  readonly words: readonly Message[];
}

interface Worst {
  readonly force: number;
  readonly place: RangePlace | undefined;
  readonly words: readonly Message[];
  readonly run: CaseRun;
}

/**
 * Every case of the finished system, as far as the component rests in it: where in the ranges it does not has
 * findings of its own. Of stages before, those cases in which it rests wherever it may be: what a half-built system
 * does not hold yet, the rest of the work is for.
 */
function casesOf(resting: LossWorking, part: ComponentRun): readonly Case[] {
  const last = part.stages.length - 1;
  const named = (places: readonly RangePlace[], run: CaseRun, ...words: readonly Message[]): Case => ({
    run,
    places,
    words: [run.loss?.title ?? term('figure.as-built'), ...words],
  });
  const staged = part.stages.map((stage, s) =>
    // Of stages that come to the same, the last one is named.
    stage === part.stages[s + 1]
      ? []
      : [stage.asBuilt, ...stage.losses]
          .filter((run) => s === last || holds(run))
          .map((run) => named(part.places, run, ...(s === last ? [] : atStage(resting, s)))),
  );
  const spread = part.spread.flatMap(({ words, places, last: stage }) =>
    [stage.asBuilt, ...stage.losses].map((run) => named(places, run, words)),
  );
  // The finished system first, and as built before all losses: of equal loads the plainest case is named.
  return [...staged.toReversed().flat(), ...spread];
}

/** The case in which a point, or the sum over a support's contacts, carries most; of equal ones the first. */
function worstOf(cases: readonly Case[], i: number, pick: (run: CaseRun) => Extremes): Worst | undefined {
  let most = Number.NEGATIVE_INFINITY;
  let worst: Case | undefined;
  for (const one of cases) {
    const force = at(pick(one.run).high, i);
    if (!Number.isFinite(force) || !(force > most * (1 + 1e-9))) continue;
    most = force;
    worst = one;
  }
  if (worst === undefined) return undefined;
  const { run, places, words } = worst;
  return { force: most, place: places[indexAt(pick(run).worst, i)], words, run };
}

/** In each case, what each contact of a support carries where all of them together carry most. */
const sharesOf = (
  cases: readonly Case[],
  e: number,
  points: readonly { readonly p: SupportPoint; readonly i: number }[],
  part: ComponentRun,
): readonly LoadShares[] =>
  cases.flatMap(({ run, places, words }) => {
    const forces = run.whole.forces[e];
    if (forces === undefined) return [];
    const place = places[indexAt(run.whole.worst, e)];
    return [
      {
        contacts: points.map(({ p, i }) => ({ id: p.id, force: at(forces, i) })),
        governs: governs({ force: 0, place, words, run }, part),
      },
    ];
  });

function atStage({ stages }: LossWorking, s: number): readonly Message[] {
  const stage = stages[s]?.title;
  return stage === undefined ? [] : [message('loss.at-stage', { stage })];
}

function governs(worst: Worst, part: ComponentRun): List {
  const place = worst.place === undefined ? undefined : rangeWords(part, worst.place);
  return list([...worst.words, ...(place === undefined ? [] : [place])], 'plain');
}

/** preload + stiffness × what the contact has closed since it was placed. */
function pointLoad(p: SupportPoint, worst: Worst, part: ComponentRun): Figure {
  const preload = given(force('preload', term('figure.preload'), 'up'), exactly(p.preload), {
    kind: 'stated',
  });
  const stiffness = measured(
    {
      key: 'stiffness',
      label: term('figure.stiffness'),
      quantity: 'stiffness',
      rounding: 'nearest',
    },
    exactly(p.stiffness),
    term('figure.of-all-that-stands-between-the-load'),
  );
  const closing = byBalance(
    length(
      'closing',
      p.original ? term('figure.settling') : term('figure.settling-since-it-was-placed'),
      'nearest',
    ),
    exactly((worst.force - p.preload) / p.stiffness),
  );
  return computed(
    force('load', term('figure.load'), 'up', { governs: governs(worst, part) }),
    exactly(worst.force),
    p.preload > 0 ? '{preload} + {stiffness} × {closing}' : '{stiffness} × {closing}',
    p.preload > 0 ? { preload, stiffness, closing } : { stiffness, closing },
  );
}

function wholeLoad(
  points: readonly { readonly p: SupportPoint; readonly i: number }[],
  worst: Worst,
  forces: Float64Array | undefined,
  part: ComponentRun,
): Figure {
  const inputs = points.map(({ p, i }) =>
    byBalance(force(p.id, p.label, 'up'), forces && exactly(at(forces, i))),
  );
  return computed(
    force('load', term('figure.load'), 'up', { governs: governs(worst, part) }),
    exactly(worst.force),
    inputs.map((_, i) => `{c${i}}`).join(' + '),
    Object.fromEntries(inputs.map((f, i) => [`c${i}`, f])),
  );
}

const asBuiltFigure = (run: CaseRun | undefined, i: number): Figure =>
  byBalance(
    force('asBuilt', term('figure.load-as-built'), 'up'),
    run !== undefined && holds(run) && Number.isFinite(at(run.high, i))
      ? { low: at(run.low, i), high: at(run.high, i) }
      : undefined,
  );

const unknownLoad = (): Figure =>
  given(force('load', term('figure.load'), 'up'), undefined, { kind: 'unknown' });

/** A strut's load is along it: its upward part ÷ sin of its angle. */
function upwardShare(p: SupportPoint, w: SupportWorkings): (upward: Figure) => Figure {
  const found = p.kind === 'strut' ? w.struts().find((s) => s.strut.id === p.element) : undefined;
  const least = found?.angle.value?.low;
  if (least === undefined || !(Math.sin(least) > 0)) return (figure) => figure;
  const angle = measured(
    angleHead('angle', term('figure.angle'), 'down'),
    exactly(least),
    term('figure.foot-to-head-over-level-ground'),
  );
  return (upward) =>
    computed(
      {
        ...force(upward.key, message('figure.along-the-strut', { load: upward.label }), 'up'),
        governs: upward.governs,
      },
      upward.value === undefined
        ? undefined
        : { low: upward.value.low / Math.sin(least), high: upward.value.high / Math.sin(least) },
      '{upward} ÷ sin({angle})',
      { upward: { ...upward, label: message('figure.upward-part-of', { load: upward.label }) }, angle },
    );
}
