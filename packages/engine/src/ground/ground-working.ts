import type { Figure } from '@cribwright/messages';
import { type Message, message, name, term } from '@cribwright/messages';
import type { Pad } from '@cribwright/model';
import { computed, exactly, given, measured } from '@cribwright/model';
import { area, force, length, over, pressure, ratio, times } from '@cribwright/model/internal';
import type { GroundResult } from '../analysis/analysis.js';
import type { CribWorking } from '../crib/crib-working.js';
import type { StrutWorking } from '../strut/strut-working.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import { sizeSource } from '../timber/size-source.js';
import { unknownLoad } from '../use/crib-use.js';

/**
 * What the ground takes under each crib and strut base: pressure = load ÷ bearing area. An open base bears on its
 * timbers, a solid one on its outline, a pad on its own. Load spreads no wider than what lies on the ground.
 */
export function groundResults(w: LoadWorkings): readonly GroundResult[] {
  return [
    ...w.cribs().flatMap((c) => cribOnGround(c, w) ?? []),
    ...w.struts().map((s) => footOnGround(s, w)),
  ];
}

function cribOnGround(c: CribWorking, w: LoadWorkings): GroundResult | undefined {
  const { crib } = c;
  if (crib.standsOn.kind === 'vehicle') return undefined;
  const { pad } = c.placed;
  const load = w.loads().get(crib.id)?.load ?? unknownLoad();
  return result(crib.id, load, pad === undefined ? baseArea(c) : padArea(pad), w);
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

function padArea(pad: Pad): Figure {
  const side = (key: string, label: Message, value: number) =>
    given(length(key, label, 'down', { ref: { element: pad.id, property: 'size' } }), exactly(value), {
      kind: 'stated',
    });
  const long = side('padLength', term('figure.pad-length'), pad.length);
  const wide = side('padWidth', term('figure.pad-width'), pad.width);
  return computed(
    area('area', term('figure.area-of-the-pad'), 'down'),
    times(long.value, wide.value),
    '{long} × {wide}',
    { long, wide },
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
  const foot =
    pad !== undefined
      ? padArea(pad)
      : given(area('area', term('figure.area-of-the-foot'), 'down'), footArea(s), { kind: 'stated' });
  return result(s.strut.id, load, foot, w);
}

/** A post stands on its own section; a rated strut's base is known only where its type says so. */
const footArea = ({ strut: { gear } }: StrutWorking) =>
  gear.kind === 'timber post'
    ? exactly(gear.timber.width * gear.timber.depth * gear.plies)
    : gear.footArea === undefined
      ? undefined
      : exactly(gear.footArea);

function result(element: string, load: Figure, bearing: Figure, w: LoadWorkings): GroundResult {
  const { ground } = w.plan;
  const { surface } = ground;
  const allowable = given(
    pressure('allowable', message('figure.allowable-bearing-of', { surface: name(surface.name) }), 'down', {
      ref: surface.ref,
    }),
    surface.bearing === undefined ? undefined : exactly(surface.bearing),
    surface.bearing === undefined ? { kind: 'unknown' } : surface.bearingSource,
  );
  const on = computed(
    pressure('pressure', term('figure.pressure-on-the-ground'), 'up', { governs: load.governs }),
    over(load.value, bearing.value),
    '{load} ÷ {bearing}',
    { load, bearing },
  );
  const needed = computed(
    area('padNeeded', term('figure.pad-that-would-do'), 'up'),
    over(load.value, allowable.value),
    '{load} ÷ {allowable}',
    { load, allowable },
  );
  const enough =
    on.value !== undefined && allowable.value !== undefined && on.value.high <= allowable.value.low;
  return {
    element,
    load,
    area: bearing,
    pressure: on,
    allowable,
    padNeeded: enough || needed.value === undefined ? undefined : needed,
  };
}
