import type { GroundResult } from '../analysis/analysis.js';
import { unknownLoad } from '../crib/crib-use.js';
import type { CribWorking } from '../crib/crib-working.js';
import { courseCounts } from '../crib/layout.js';
import { computed, given, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { over, times } from '../figure/interval-math.js';
import { area, type Display, force, length, pressure, ratio } from '../figure/units-of.js';
import { exactly } from '../model/interval.js';
import type { Pad } from '../model/support.js';
import type { StrutWorking } from '../strut/strut-working.js';
import { sizeSource } from '../timber/size-source.js';
import type { Workings } from '../workings/workings.js';

/**
 * What the ground takes under each crib and strut base: pressure = load ÷ bearing area. An open base bears on its
 * timbers, a solid one on its outline, a pad on its own. Load spreads no wider than what lies on the ground.
 */
export function groundResults(w: Workings): readonly GroundResult[] {
  return [
    ...w.cribs().flatMap((c) => cribOnGround(c, w) ?? []),
    ...w.struts().map((s) => footOnGround(s, w)),
  ];
}

const padUnder = (w: Workings, element: string): Pad | undefined =>
  w.plan.pads.find((p) => p.under === element);

function cribOnGround(c: CribWorking, w: Workings): GroundResult | undefined {
  const { crib } = c;
  if (crib.standsOn.kind === 'vehicle') return undefined;
  const { display } = w.plan;
  const standsOn = crib.standsOn;
  const pad = standsOn.kind === 'pad' ? w.plan.pads.find((p) => p.id === standsOn.pad) : padUnder(w, crib.id);
  const load = w.loads().get(crib.id)?.load ?? unknownLoad(display);
  return result(crib.id, load, pad === undefined ? baseArea(c, display) : padArea(pad, display), w);
}

function baseArea({ crib }: CribWorking, display: Display): Figure {
  const timbers = courseCounts(crib)[0]?.timbers ?? 0;
  const count = measured(
    { key: 'baseTimbers', label: 'timbers on the ground', dimension: 'count', unit: '', rounding: 'down' },
    exactly(timbers),
    'courses laid on the ground',
  );
  const width = given(
    length(display, 'dressedWidth', 'dressed width', 'down'),
    exactly(crib.timber.width),
    sizeSource(crib.timber),
  );
  const long = given(length(display, 'timberLength', 'timber length', 'down'), exactly(crib.timber.length), {
    kind: 'stated',
  });
  return computed(
    area(display, 'area', 'area on the ground', 'down'),
    timbers > 0 ? times(times(count.value, width.value), long.value) : undefined,
    '{count} × {width} × {long}',
    { count, width, long },
  );
}

function padArea(pad: Pad, display: Display): Figure {
  const side = (key: string, label: string, value: number) =>
    given(
      length(display, key, label, 'down', { ref: { element: pad.id, property: 'size' } }),
      exactly(value),
      {
        kind: 'stated',
      },
    );
  const long = side('padLength', 'pad length', pad.length);
  const wide = side('padWidth', 'pad width', pad.width);
  return computed(
    area(display, 'area', 'area of the pad', 'down'),
    times(long.value, wide.value),
    '{long} × {wide}',
    { long, wide },
  );
}

function footOnGround(s: StrutWorking, w: Workings): GroundResult {
  const { display } = w.plan;
  const along = w.loads().get(s.strut.id)?.load ?? unknownLoad(display);
  const steepest = s.angle.value?.high;
  const sine = measured(
    ratio(display, 'sine', 'sin of its angle', 'up'),
    steepest === undefined ? undefined : exactly(Math.sin(steepest)),
    'at its angle',
  );
  const load = computed(
    force(display, 'load', 'downward force at the base', 'up', { governs: along.governs }),
    times(along.value, sine.value),
    '{along} × {sine}',
    { along, sine },
  );
  const pad = w.plan.pads.find((p) => p.id === s.strut.foot.pad) ?? padUnder(w, s.strut.id);
  const foot =
    pad !== undefined
      ? padArea(pad, display)
      : given(area(display, 'area', 'area of the base', 'down'), footArea(s), { kind: 'stated' });
  return result(s.strut.id, load, foot, w);
}

/** A post stands on its own section; a rated strut's base is known only where its type says so. */
const footArea = ({ strut: { gear } }: StrutWorking) =>
  gear.kind === 'timber post'
    ? exactly(gear.timber.width * gear.timber.depth * gear.plies)
    : gear.footArea === undefined
      ? undefined
      : exactly(gear.footArea);

function result(element: string, load: Figure, bearing: Figure, w: Workings): GroundResult {
  const { display, ground } = w.plan;
  const { surface } = ground;
  const allowable = given(
    pressure(display, 'allowable', `what ${surface.name} bears`, 'down', { ref: surface.ref }),
    surface.bearing === undefined ? undefined : exactly(surface.bearing),
    surface.bearing === undefined ? { kind: 'unknown' } : surface.bearingSource,
  );
  const on = computed(
    pressure(display, 'pressure', 'pressure on the ground', 'up', { governs: load.governs }),
    over(load.value, bearing.value),
    '{load} ÷ {bearing}',
    { load, bearing },
  );
  const needed = computed(
    area(display, 'padNeeded', 'pad that would do', 'up'),
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
