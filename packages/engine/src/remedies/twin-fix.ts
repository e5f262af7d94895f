import { count, list, message, name, quantity } from '@cribwright/messages';
import type { Anchor, Plan, PlanEdit, Strut, Tie } from '@cribwright/model';
import { isExact, partNamed, stepToPlan } from '@cribwright/model';
import { placeAt, placeStrut } from '@cribwright/model/internal';
import { foot } from '@cribwright/units';
import type { Workings } from '../derived/workings.js';
import type { Fix } from '../finding/finding.js';
import { lengthInside } from '../space/through-box.js';
import { tiesAtFoot } from '../strut/pairs.js';
import { lengthText, placeText } from '../vehicle/place-words.js';
import { baseOut } from './base-out.js';
import { freeName } from './free-name.js';
import { padText } from './pad-text.js';
import { workInSteps } from './step-edits.js';
import { strutText } from './strut-text.js';

/** How far along the vehicle another strut is set, m: the first that fits, each way. Common practice, no source. */
const distances = [8 * foot, 4 * foot, 12 * foot];

/**
 * More struts like one, farther along its vehicle, with the same straps and pads: with the strut across too where the
 * two are strapped to each other. One way toward the front, one toward the rear.
 */
export function twinFixes(strut: Strut, w: Workings): readonly Fix[] {
  const likes = [strut, ...strappedTo(strut, w.plan)];
  return [1, -1].flatMap((way) => {
    const far = distances.find((d) => likes.every((s) => fits(s, way * d, w)));
    return far === undefined ? [] : (twin(likes, way * far, w) ?? []);
  });
}

function strappedTo(strut: Strut, { ties, struts }: Plan): readonly Strut[] {
  const ids = new Set(
    tiesAtFoot(strut.id, ties).flatMap((t) =>
      [t.from, t.to].flatMap((end) =>
        end.kind === 'strut base' && end.strut !== strut.id ? [end.strut] : [],
      ),
    ),
  );
  return struts.filter((s) => ids.has(s.id));
}

/** A strut as far along its own vehicle. */
function shifted(strut: Strut, along: number, w: Workings): Strut | undefined {
  const vehicle = w.vehicles.get(strut.head.vehicle);
  if (vehicle === undefined) return undefined;
  const step = stepToPlan(vehicle, { x: along, y: 0 });
  const moved = <T extends { readonly x: number; readonly y: number }>(p: T): T => ({
    ...p,
    x: p.x + step.x,
    y: p.y + step.y,
  });
  return { ...strut, head: moved(strut.head), foot: moved(strut.foot) };
}

/** Whether its head meets the part there, and no crib stands in its way. */
function fits(strut: Strut, along: number, w: Workings): boolean {
  const moved = shifted(strut, along, w);
  const vehicle = w.vehicles.get(strut.head.vehicle);
  const part = vehicle && partNamed(vehicle, strut.head.part);
  const met = moved && vehicle && part && placeAt(vehicle, part, moved.head);
  if (moved === undefined || met === undefined || Math.hypot(met.off.x, met.off.y) > 1e-6) return false;
  if (outOf(moved, w) === undefined) return false;
  const placed = placeStrut(moved, []);
  return w.placed.cribs.all.every((c) => !(lengthInside(placed.foot, placed.head, c.extent) > 0));
}

/** How far out its base is, where that and the height of its head are known. */
function outOf(strut: Strut, w: Workings): number | undefined {
  const vehicle = w.vehicles.get(strut.head.vehicle);
  return vehicle !== undefined && isExact(strut.head.z) ? baseOut(strut, vehicle) : undefined;
}

function twin(likes: readonly Strut[], along: number, w: Workings): Fix | undefined {
  const { plan } = w;
  const struts: { readonly like: Strut; readonly name: string; readonly moved: Strut }[] = [];
  for (const like of likes) {
    const moved = shifted(like, along, w);
    if (moved === undefined) return undefined;
    struts.push({ like, moved, name: freeName('S', [...plan.struts, ...struts]) });
  }
  const own = new Map(struts.map((s) => [s.like.id, s]));
  const ties: { readonly name: string; readonly text: string }[] = [];
  for (const tie of plan.ties.filter((t) => likes.some((s) => tiesAtFoot(s.id, [t]).length > 0))) {
    const ends = [tie.from, tie.to].map((end) => endText(end, own, along, w));
    const [from, to] = ends;
    // An anchor in the ground is where it is: what goes to it is not set again elsewhere.
    if (from === undefined || to === undefined) return undefined;
    const named = freeName('T', [...plan.ties, ...ties]);
    ties.push({
      name: named,
      text: `${keywordOf(tie)} ${named} : ${tie.gear.name} { from ${from} to ${to} }`,
    });
  }
  const pads: { readonly name: string; readonly text: string }[] = [];
  for (const s of struts)
    for (const pad of plan.pads.filter((p) => p.under === s.like.id)) {
      const named = freeName('P', [...plan.pads, ...pads]);
      pads.push({ name: named, text: padText(pad, named, s.name, plan.display) });
    }
  const insert = (text: string): PlanEdit => ({ kind: 'insert', into: plan.ref, text });
  const names = struts.map((s) => s.name).join(', ');
  return {
    title: message(along > 0 ? 'remedy.twin-rear' : 'remedy.twin-front', {
      count: count(struts.length),
      struts: list(
        struts.map((s) => name(s.name)),
        'and',
      ),
      like: list(
        likes.map((s) => name(s.name)),
        'and',
      ),
      far: quantity('place', Math.abs(along), 'nearest'),
    }),
    edits: [
      ...struts.map((s) => insert(twinText(s.name, s.moved, w))),
      ...ties.map((t) => insert(t.text)),
      ...pads.map((p) => insert(p.text)),
      ...workInSteps(
        plan,
        [
          { action: 'set', name: names },
          { action: 'lock', name: names },
          ...(ties.length === 0
            ? []
            : [{ action: 'tension' as const, name: ties.map((t) => t.name).join(', ') }]),
        ],
        likes.map((s) => s.id),
      ),
    ],
    safe: false,
  };
}

const keywordOf = ({ gear }: Tie): string => gear.kind;

function endText(
  end: Anchor,
  own: ReadonlyMap<string, { readonly name: string }>,
  along: number,
  w: Workings,
): string | undefined {
  if (end.kind === 'ground anchor') return undefined;
  if (end.kind === 'vehicle part') {
    const vehicle = w.vehicles.get(end.vehicle);
    if (vehicle === undefined) return undefined;
    const step = stepToPlan(vehicle, { x: along, y: 0 });
    const at = { x: end.x + step.x, y: end.y + step.y };
    return `${vehicle.name} ${end.part} ${placeText(at, w.plan.display)}`;
  }
  const named = own.get(end.strut)?.name ?? w.plan.struts.find((s) => s.id === end.strut)?.name;
  return named === undefined ? undefined : `${named} ${end.kind === 'strut base' ? 'base' : 'head'}`;
}

/** With its head's height: it may be another than that of the part. */
function twinText(own: string, strut: Strut, w: Workings): string {
  const vehicle = w.vehicles.get(strut.head.vehicle)?.name ?? '';
  const { part, z } = strut.head;
  const units = w.plan.display;
  const head = `${vehicle} ${part} near ${placeText(strut.head, units)}, ${lengthText(z.low, units)} high`;
  return strutText(strut, own, head, lengthText(outOf(strut, w) ?? 0, units));
}
