import type { Figure, SourceNote } from '@cribwright/messages';
import { inWords, message, term } from '@cribwright/messages';
import type { Pad, PadMaterial } from '@cribwright/model';
import { computed, exactly, given, type Interval, measured } from '@cribwright/model';
import { area, count, length, pressure, stress, times } from '@cribwright/model/internal';
import { inch, psi } from '@cribwright/units';

interface Strength {
  /** Allowable stress in bending and in shear on the whole section, Pa. */
  readonly bending: number;
  readonly shear: number;
  /** Thickest single layer, m: layers that are not glued bend one by one. */
  readonly layer: number;
  /** Timbers side by side spread a load along their grain alone. */
  readonly spreads: 'both ways' | 'lengthwise';
  readonly source: SourceNote;
}

const memory = (title: string, locator: string): SourceNote => ({
  kind: 'from memory',
  title: `${title}, ${locator}`,
});

/**
 * - Timber: the least of the common softwoods in No. 2 as posts and timbers (spruce-pine-fir), so that it also holds for
 *   thick pieces: Fb 500 psi, Fv 125 psi.
 * - Plywood: rated sheathing, perpendicular to its strength axis, since nothing says which way it lies. 24/16 has
 *   FbS 64 lb·in per ft of width at 7/16 in: 167 psi on the whole section, the least of the ratings; taken as 160 psi.
 *   Rolling shear 40 psi. Layers of 3/4 in at most.
 * - Steel: A36, 0.75 and 0.40 of 36 ksi.
 */
const strengths: Readonly<Record<PadMaterial, Strength>> = {
  timber: {
    bending: 500 * psi,
    shear: 125 * psi,
    layer: Number.POSITIVE_INFINITY,
    spreads: 'lengthwise',
    source: memory('NDS Supplement 2018', 'Table 4D, spruce-pine-fir No. 2, posts and timbers'),
  },
  plywood: {
    bending: 160 * psi,
    shear: 40 * psi,
    layer: 0.75 * inch,
    spreads: 'both ways',
    source: memory('APA Panel Design Specification, D510', 'Table 4A, rated panels, secondary axis'),
  },
  steel: {
    bending: 27_000 * psi,
    shear: 14_400 * psi,
    layer: Number.POSITIVE_INFINITY,
    spreads: 'both ways',
    source: memory('AISC Specification, allowable stress design, 1989', 'F2.2 and F4, A36 plate'),
  },
};

/** What stands on a pad, lengthwise and crosswise, m. */
export interface Footprint {
  readonly lengthwise: number;
  readonly crosswise: number;
}

/** The sides of a pad that bear on the ground, m. Ranges where the material of the pad is not stated. */
export interface Spread {
  readonly long: Figure;
  readonly wide: Figure;
  readonly area: Figure;
}

/**
 * How much of a pad presses on the ground. Beyond what stands on it the pad is a cantilever, with the ground's
 * allowable pressure q under it: M = q a² ÷ 2 and V = q a on a strip, so a ≤ t √(Fb ÷ 3q) and a ≤ t Fv ÷ (1.5 q). The pad
 * counts no farther out than that. (Method: D. Duerr, Effective Bearing Length of Crane Mats, equations 1 to 8.)
 *
 * For a pad whose material is not stated the least is what stands on it, and the most the whole pad: its area is a range.
 */
export function padSpread(pad: Pad, on: Footprint, allowable: Figure): Spread {
  const out = pad.material === undefined ? undefined : overhang(pad, pad.material, allowable);
  const both = pad.material !== undefined && strengths[pad.material].spreads === 'both ways';
  const side = (key: string, size: number, foot: number, spreads: boolean): Figure => {
    const own = given(
      length(`${key}Pad`, term('figure.side-of-the-pad'), 'down', {
        ref: { element: pad.id, property: 'size' },
      }),
      exactly(size),
      { kind: 'stated' },
    );
    const reach = Math.min(size, foot);
    const value: Interval | undefined =
      pad.material === undefined
        ? { low: reach, high: size }
        : !spreads
          ? exactly(reach)
          : out?.value && exactly(Math.min(size, foot + 2 * out.value.low));
    return measured(
      length(key, term('figure.side-of-the-pad-that-bears'), 'down'),
      value,
      out === undefined
        ? message('figure.pad-of-unknown-material', { side: inWords(own) })
        : spreads
          ? message('figure.pad-and-overhang', { side: inWords(own), overhang: inWords(out) })
          : message('figure.pad-across-the-grain', { side: inWords(own) }),
    );
  };
  const long = side('padLength', pad.length, on.lengthwise, true);
  const wide = side('padWidth', pad.width, on.crosswise, pad.material === undefined || both);
  return {
    long,
    wide,
    area: computed(
      area('area', term('figure.area-of-the-pad-that-bears'), 'down'),
      times(long.value, wide.value),
      '{long} × {wide}',
      { long, wide },
    ),
  };
}

/** How far a pad reaches past what stands on it before it bends or shears, under the ground's allowable pressure. */
function overhang(pad: Pad, material: PadMaterial, allowable: Figure): Figure {
  const { bending, shear, layer, source } = strengths[material];
  const thickness = given(
    length('thickness', term('figure.thickness-of-the-pad'), 'down', {
      ref: { element: pad.id, property: 'thickness' },
    }),
    exactly(pad.thickness),
    { kind: 'stated' },
  );
  const layers = given(
    count('layers', term('figure.layers-that-bend-one-by-one'), 'up'),
    exactly(Math.max(1, Math.ceil(pad.thickness / layer - 1e-9))),
    { kind: 'common practice' },
  );
  const fb = given(
    stress('bending', term('figure.allowable-bending-stress'), 'down'),
    exactly(bending),
    source,
  );
  const fv = given(stress('shear', term('figure.allowable-shear-stress'), 'down'), exactly(shear), source);
  const q: Figure = { ...allowable, quantity: pressure('', allowable.label, 'down').quantity };
  const least = q.value?.low;
  const n = layers.value?.low ?? 1;
  const value =
    least === undefined || !(least > 0)
      ? undefined
      : Math.min(
          pad.thickness * Math.sqrt(bending / (3 * n * least)),
          (pad.thickness * shear) / (1.5 * least),
        );
  return measured(
    length('overhang', term('figure.overhang-that-the-pad-carries'), 'down', {
      ref: { element: pad.id, property: 'material' },
    }),
    value === undefined ? undefined : exactly(value),
    message('figure.pad-in-bending', {
      thickness: inWords(thickness),
      bending: inWords(fb),
      shear: inWords(fv),
      layers: inWords(layers),
      pressure: inWords(q),
    }),
  );
}
