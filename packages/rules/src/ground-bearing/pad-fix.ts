import type { Fix, GroundResult, Workings } from '@cribwright/engine';
import { freeName, padSpread, padText, setProperty, sidesText, sizeText } from '@cribwright/engine/internal';
import { message, name, term } from '@cribwright/messages';
import { inch } from '@cribwright/units';

/** kg/m³: timber that is wet, from memory; steel from memory. */
const density = { timber: 640, steel: 7850 } as const;
/** The heaviest pad that is offered, kg: 100 lb for each of four people, common practice, no source. */
const heaviest = 181;

/**
 * A pad, or another in place of the one that is too small: of timbers, and of steel, the thinnest that carries its own
 * overhang and is no heavier than a crew lifts. Its sides are rounded up to the next 6 in or 100 mm.
 */
export function padFix(g: GroundResult, w: Workings): readonly Fix[] {
  const needed = g.padNeeded?.value?.high;
  const pressure = g.load.value;
  if (needed === undefined || pressure === undefined) return [];
  const us = w.plan.display === 'us';
  const module = us ? 6 * inch : 0.1;
  const up = (side: number) => Math.ceil(side / module - 1e-9) * module;
  const foot = g.footprint;
  const least = { lengthwise: up(foot.lengthwise), crosswise: up(foot.crosswise) };
  const square = up(Math.sqrt(needed));
  const tries = [
    ...[3.5, 5.5].map((t) => ({
      material: 'timber' as const,
      thickness: t * inch,
      length: Math.max(least.lengthwise, up(needed / Math.max(foot.crosswise, inch))),
      width: least.crosswise,
    })),
    ...[0.5, 1, 1.5].map((t) => ({
      material: 'steel' as const,
      thickness: t * inch,
      length: Math.max(least.lengthwise, square),
      width: Math.max(least.crosswise, square),
    })),
  ];
  const fits = (['timber', 'steel'] as const).flatMap((material) => {
    const fit = tries.find((t) => {
      if (t.material !== material) return false;
      if (t.length * t.width * t.thickness * density[t.material] > heaviest) return false;
      const pad = { kind: 'pad', id: '', name: '', under: g.element, ref: { element: '' }, ...t } as const;
      return (padSpread(pad, foot, g.allowable).area.value?.low ?? 0) >= needed - 1e-9;
    });
    return fit === undefined ? [] : [fit];
  });
  return fits.map((fit) => fixWith(fit, g, w));
}

interface Sized {
  readonly material: 'timber' | 'steel';
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** A pad of that size under a support: in place of the one that is there, or a new one. */
function fixWith(sized: Sized, g: GroundResult, { plan }: Workings): Fix {
  const { display } = plan;
  const sides = sidesText(sized, display);
  const title = message('ground-bearing.fix-pad', {
    size: name(sides),
    material: term(`ground-bearing.${sized.material}`),
  });
  const has = plan.pads.find((p) => p.under === g.element);
  if (has !== undefined) {
    const set = (property: string, text: string) => setProperty(has.id, property, text);
    const thick = sizeText(sized.thickness, display, 'down');
    return {
      title,
      edits: [set('size', sides), set('thickness', thick), set('material', sized.material)],
      safe: false,
    };
  }
  const under = g.element.split('/')[1] ?? g.element;
  const text = padText(sized, freeName('P', plan.pads), under, display);
  return { title, edits: [{ kind: 'insert', into: plan.ref, text }], safe: false };
}
