import type { Figure } from '@cribwright/messages';
import { inWords, type List, message, name, term } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import { computed, exactly, given, measured } from '@cribwright/model';
import { area, force, length, over, plus, pressure, ratio, times } from '@cribwright/model/internal';
import type { GroundResult } from '../analysis/analysis.js';
import type { CribWorking } from '../crib/crib-working.js';
import type { StrutWorking } from '../strut/strut-working.js';
import type { LoadShares } from '../supports/governing-load.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import type { BearingKind } from '../supports/support-points.js';
import { sizeSource } from '../timber/size-source.js';
import { unknownLoad } from '../use/crib-use.js';
import { edgeFactor, effectiveShare } from './eccentric.js';
import { ownWeight } from './own-weight.js';
import { type Footprint, padSpread } from './pad-spread.js';

/** What supports of each kind press the ground with. */
const onGround: Readonly<Record<BearingKind, (w: LoadWorkings) => readonly GroundResult[]>> = {
  crib: (w) => w.cribs().flatMap((c) => cribOnGround(c, w) ?? []),
  // How large its base is, a plan does not say.
  'step chock': () => [],
  strut: (w) => w.struts().map((s) => footOnGround(s, w)),
};

/**
 * What the ground carries under each crib and strut base: pressure = (load + weight of the crib's timber) ÷ bearing area. An open base bears on its
 * timbers, a solid one on its outline, a pad as far as it carries in bending. A load off the middle bears on less of it.
 */
export const groundResults = (w: LoadWorkings): readonly GroundResult[] =>
  Object.values(onGround).flatMap((results) => results(w));

function cribOnGround(c: CribWorking, w: LoadWorkings): GroundResult | undefined {
  const { crib } = c;
  if (crib.standsOn.kind === 'vehicle') return undefined;
  const { pad } = c.placed;
  const found = w.loads().get(crib.id);
  const load = found?.load ?? unknownLoad();
  const allowable = allowableOn(w);
  const foot = footprintOf(c);
  const spread = pad && padSpread(pad, foot, allowable);
  const base: Base = {
    area: spread?.area ?? baseArea(c),
    length: spread?.long.value?.low ?? foot.lengthwise,
    width: spread?.wide.value?.low ?? foot.crosswise,
    footprint: foot,
    pad: pad?.id,
  };
  return result(crib.id, hardest(c, load, found?.shares ?? [], base), base, allowable);
}

const balanced = (total: number, governs: List): Figure =>
  measured(
    force('load', term('figure.load'), 'up', { governs }),
    exactly(total),
    term('figure.from-the-balance-of-all-forces'),
  );

/** What a crib presses on its base with: its outline, as far as timbers lie in it. */
function footprintOf({ crib, placed }: CribWorking): Footprint {
  const bottom = placed.courses[0];
  const across =
    crib.base === 'solid'
      ? placed.baseTimbers * crib.timber.width
      : bottom?.runs === 'crosswise'
        ? placed.widths.lengthwise
        : placed.widths.crosswise;
  return bottom?.runs === 'crosswise'
    ? { lengthwise: across, crosswise: crib.timber.length }
    : { lengthwise: crib.timber.length, crosswise: across };
}

/** A base on the ground: what of it presses, and its sides, m. */
interface Base {
  readonly area: Figure;
  readonly length: number;
  readonly width: number;
  readonly footprint: Footprint;
  readonly pad: ElementId | undefined;
}

interface Load {
  readonly load: Figure;
  /** Off the middle of the base, m. */
  readonly x: number;
  readonly y: number;
}

/** The timber of a crib comes on the ground too. */
const withOwn = (load: Figure, own: Figure): Figure =>
  computed(
    force('load', term('figure.load-and-weight-of-its-timber'), 'up', { governs: load.governs }),
    plus(load.value, own.value),
    '{load} + {own}',
    { load, own },
  );

/**
 * The case in which a crib presses hardest. The most load and the one farthest off its middle may be two cases: every
 * case is tried, each at the place in the ranges where the crib carries most. The crib's own timber bears in the middle:
 * it adds load, and brings the load nearer to the middle. Each case is tried with it and without, and the harder counts.
 */
function hardest(c: CribWorking, load: Figure, cases: readonly LoadShares[], base: Base): Load {
  const own = ownWeight(c.crib);
  let worst: (Load & { readonly pressure: number }) | undefined;
  for (const { contacts, governs } of cases) {
    const total = contacts.reduce((sum, k) => sum + k.force, 0);
    if (!(total > 0)) continue;
    const moment = (pick: (k: { readonly x: number; readonly y: number }) => number) =>
      contacts.reduce((sum, k) => {
        const at = c.contacts.find((o) => `${c.crib.id}#${o.number}` === k.id);
        return sum + (at === undefined ? 0 : k.force * (pick(at) - pick(c.crib.at)));
      }, 0);
    const [along, across] = [moment((k) => k.x), moment((k) => k.y)];
    for (const weight of [own.value?.high ?? 0, 0]) {
      const all = total + weight;
      const [x, y] = [along / all, across / all];
      const pressure = all / effectiveShare({ x, y, length: base.length, width: base.width });
      if (worst !== undefined && !(pressure > worst.pressure * (1 + 1e-9))) continue;
      const same = load.value !== undefined && Math.abs(load.value.high - total) <= 1e-9 * total;
      const of = same ? load : balanced(total, governs);
      worst = { load: weight === 0 ? of : withOwn(of, own), x, y, pressure };
    }
  }
  return load.value === undefined || worst === undefined ? { load: withOwn(load, own), x: 0, y: 0 } : worst;
}

function baseArea({ crib, placed }: CribWorking): Figure {
  const timbers = placed.baseTimbers;
  const count = measured(
    { key: 'baseTimbers', label: term('figure.timbers-on-the-ground'), quantity: 'count', rounding: 'down' },
    exactly(timbers),
    term('figure.courses-laid-on-the-ground'),
  );
  const width = given(
    length('dressedWidth', term('figure.dressed-width'), 'down'),
    exactly(crib.timber.width),
    sizeSource(crib.timber),
  );
  const long = given(
    length('timberLength', term('figure.timber-length'), 'down'),
    exactly(crib.timber.length),
    {
      kind: 'stated',
    },
  );
  return computed(
    area('area', term('figure.area-on-the-ground'), 'down'),
    timbers > 0 ? times(times(count.value, width.value), long.value) : undefined,
    '{count} × {width} × {long}',
    { count, width, long },
  );
}

function footOnGround(s: StrutWorking, w: LoadWorkings): GroundResult {
  const along = w.loads().get(s.strut.id)?.load ?? unknownLoad();
  const steepest = s.angle.value?.high;
  const sine = measured(
    ratio('sine', term('figure.sin-of-its-angle'), 'up'),
    steepest === undefined ? undefined : exactly(Math.sin(steepest)),
    term('figure.at-its-angle'),
  );
  const load = computed(
    force('load', term('figure.downward-force-at-the-foot'), 'up', { governs: along.governs }),
    times(along.value, sine.value),
    '{along} × {sine}',
    { along, sine },
  );
  const { pad } = s.placed;
  const allowable = allowableOn(w);
  const own = footArea(s);
  // A foot of unknown size stands on its pad as a point.
  const side = Math.sqrt(own?.low ?? 0);
  const foot =
    pad !== undefined
      ? padSpread(pad, { lengthwise: side, crosswise: side }, allowable).area
      : given(area('area', term('figure.area-of-the-foot'), 'down'), own, { kind: 'stated' });
  return result(
    s.strut.id,
    { load, x: 0, y: 0 },
    { area: foot, length: 1, width: 1, footprint: { lengthwise: side, crosswise: side }, pad: pad?.id },
    allowable,
  );
}

/** A post stands on its own section; a rated strut's base is known only where its type says so. */
const footArea = ({ strut: { gear } }: StrutWorking) =>
  gear.kind === 'timber post'
    ? exactly(gear.timber.width * gear.timber.depth * gear.plies)
    : gear.footArea === undefined
      ? undefined
      : exactly(gear.footArea);

function allowableOn({ plan }: LoadWorkings): Figure {
  const { surface } = plan.ground;
  return given(
    pressure('allowable', message('figure.allowable-bearing-of', { surface: name(surface.name) }), 'down', {
      ref: surface.ref,
    }),
    surface.bearing === undefined ? undefined : exactly(surface.bearing),
    surface.bearing === undefined ? { kind: 'unknown' } : surface.bearingSource,
  );
}

/** Less than this off the middle, m, is in the middle: a tenth of a millimeter. */
const middle = 1e-4;

function result(element: string, { load, x, y }: Load, base: Base, allowable: Figure): GroundResult {
  const at = { x, y, length: base.length, width: base.width };
  const central = Math.hypot(x, y) < middle;
  const offs = {
    along: offMiddle('along', x),
    across: offMiddle('across', y),
  };
  const how = { along: inWords(offs.along), across: inWords(offs.across) };
  const share = measured(
    ratio('share', term('figure.share-of-the-base-that-bears'), 'down'),
    exactly(effectiveShare(at)),
    message('figure.share-of-the-base', how),
  );
  const bearing = central
    ? base.area
    : computed(
        area('bearing', term('figure.area-of-the-base-that-bears'), 'down'),
        times(base.area.value, share.value),
        '{area} × {share}',
        { area: base.area, share },
      );
  const on = computed(
    pressure('pressure', term('figure.pressure-on-the-ground'), 'up', { governs: load.governs }),
    over(load.value, bearing.value),
    '{load} ÷ {bearing}',
    { load, bearing },
  );
  const factor = measured(
    ratio('factor', term('figure.edge-over-mean-pressure'), 'up'),
    central ? exactly(1) : finite(edgeFactor(at)),
    message('figure.edge-of-the-base', how),
  );
  const edge = computed(
    pressure('edge', term('figure.edge-pressure'), 'up', { governs: load.governs }),
    times(over(load.value, base.area.value), factor.value),
    '{load} ÷ {area} × {factor}',
    { load, area: base.area, factor },
  );
  const needed = central
    ? computed(
        area('padNeeded', term('figure.pad-that-would-do'), 'up'),
        over(load.value, allowable.value),
        '{load} ÷ {allowable}',
        { load, allowable },
      )
    : computed(
        area('padNeeded', term('figure.pad-that-would-do'), 'up'),
        over(over(load.value, share.value), allowable.value),
        '{load} ÷ {share} ÷ {allowable}',
        { load, share, allowable },
      );
  const enough =
    on.value !== undefined && allowable.value !== undefined && on.value.high <= allowable.value.low;
  return {
    element,
    load,
    pad: base.pad,
    footprint: base.footprint,
    area: base.area,
    bearing,
    pressure: on,
    edge,
    allowable,
    padNeeded: enough || needed.value === undefined ? undefined : needed,
  };
}

const finite = (value: number) => (Number.isFinite(value) ? exactly(value) : undefined);

const offMiddle = (key: string, value: number): Figure =>
  measured(
    length(key, term('figure.load-off-the-middle'), 'up'),
    exactly(Math.abs(value)),
    term('figure.from-the-balance-of-all-forces'),
  );
