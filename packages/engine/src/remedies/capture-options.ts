import type { Capture, Crib, Part, Vehicle } from '@cribwright/model';
import { placeCrib } from '@cribwright/model/internal';
import type { SupportWorkings } from '../supports/support-workings.js';

/** Parts that may bear and lie over the contacts of a crib where it stands. */
export interface CaptureOption {
  readonly vehicle: Vehicle;
  readonly parts: readonly Part[];
  readonly captures: readonly Capture[];
  /** As the plan writes them: `rail, joists`. */
  readonly text: string;
  /** Contacts that meet one of them. */
  readonly loaded: number;
  /** From the top of the crib as it is to the parts, m; below zero where it is too high for them. */
  readonly gap: number;
  /** Of the parts, on average over what is captured, m: a wider one presses its timber less. */
  readonly width: number;
}

/**
 * What a crib could capture at its place, of each vehicle the best: on the most contacts, then the nearest in height,
 * then the widest. Two contacts at least; the best of all vehicles first.
 */
export function captureOptions(crib: Crib, w: SupportWorkings): readonly CaptureOption[] {
  return [...w.vehicles.values()]
    .flatMap((vehicle) => optionsOf(crib, vehicle, w).sort(byWorth)[0] ?? [])
    .sort(byWorth);
}

/** Alike by all that counts, a pair comes first: rail and joists share what joists alone would carry. */
const byWorth = (a: CaptureOption, b: CaptureOption): number =>
  b.loaded - a.loaded ||
  Math.round((Math.abs(a.gap) - Math.abs(b.gap)) * 1e4) ||
  Math.round((b.width - a.width) * 1e4) ||
  b.parts.length - a.parts.length;

/** One part by itself, or one for the outer contacts and one for the inner. */
function optionsOf(crib: Crib, vehicle: Vehicle, w: SupportWorkings): CaptureOption[] {
  const able = vehicle.parts.filter((p) => p.mayBear && !p.moves);
  const choices = [
    ...able.map((part) => [part]),
    ...able.flatMap((outer) => able.filter((inner) => inner !== outer).map((inner) => [outer, inner])),
  ];
  const whose = vehicle.id === w.plan.vehicles[0]?.id ? '' : `${vehicle.name} `;
  return choices.flatMap((parts) => {
    const captures = parts.map(
      (part, i): Capture => ({
        vehicle: vehicle.id,
        part: part.id,
        ...(parts.length === 2 ? { contacts: (['outer', 'inner'] as const)[i] ?? 'all' } : {}),
        ref: { element: crib.id, property: 'captures' },
      }),
    );
    const { loaded, gap } = placeCrib({ ...crib, captures }, w.placed.around);
    if (loaded < 2 || gap === undefined) return [];
    const text = parts.map((part) => whose + part.id).join(', ');
    const width = parts.reduce((sum, part) => sum + part.width, 0) / parts.length;
    return [{ vehicle, parts, captures, text, loaded, gap: (gap.low + gap.high) / 2, width }];
  });
}
