import { message, name } from '@cribwright/messages';
import type { Anchor, PlanEdit, Strut, Tie, Vehicle } from '@cribwright/model';
import { partNamed, toPlan, toVehicle } from '@cribwright/model';
import type { Workings } from '../derived/workings.js';
import type { Fix } from '../finding/finding.js';
import { opposite, tiesAtFoot } from '../strut/pairs.js';
import { lengthText, placeText } from '../vehicle/place-words.js';
import { baseOut } from './base-out.js';
import { freeName } from './free-name.js';
import { padText } from './pad-text.js';
import { workInSteps } from './step-edits.js';
import { strutText } from './strut-text.js';

/**
 * Ways to hold the base of a strut: to the base of the strut across, to an anchor that the plan uses, to a strut that is
 * set for it on the other side, or to the part under its own head. Those that the plan has already are left out.
 */
export function strapFixes(strut: Strut, w: Workings): readonly Fix[] {
  const other = opposite(strut, w.plan, w.vehicles);
  return [
    ...(other === undefined || tiedTogether(strut, other, w.plan.ties) ? [] : [strapAcross(strut, other, w)]),
    ...anchorsOf(w.plan.ties).flatMap((anchor) => strapToAnchor(strut, anchor, w)),
    ...(other === undefined ? mirrorFix(strut, w) : []),
    ...strapToOwnPart(strut, w),
  ];
}

const tiedTogether = (strut: Strut, other: Strut, ties: readonly Tie[]): boolean => {
  const there = new Set(tiesAtFoot(other.id, ties).map((t) => t.id));
  return tiesAtFoot(strut.id, ties).some((t) => there.has(t.id));
};

type GroundAnchor = Extract<Anchor, { kind: 'ground anchor' }>;

/** Anchors in the ground to which some tie of the plan goes. */
function anchorsOf(ties: readonly Tie[]): readonly GroundAnchor[] {
  const found = new Map<string, GroundAnchor>();
  for (const end of ties.flatMap((t) => [t.from, t.to]))
    if (end.kind === 'ground anchor') found.set(end.name, end);
  return [...found.values()];
}

/** The strap that the plan uses, or one that is carried, or the plainest of the library. */
function strapIn({ plan }: Workings): string {
  const used = plan.ties.find((t) => t.gear.kind === 'strap')?.gear.name;
  const carried = plan.units.flatMap((u) => u.carries).find((s) => s.kind === 'strap')?.item;
  return used ?? carried ?? 'RatchetStrap2in';
}

/** A strap from a strut's base, and the step that tightens it. */
function strapEdits(strut: Strut, to: string, w: Workings, also: readonly Strut[] = []): readonly PlanEdit[] {
  const tie = freeName('T', w.plan.ties);
  return [
    {
      kind: 'insert',
      into: w.plan.ref,
      text: `strap ${tie} : ${strapIn(w)} { from ${strut.name} base to ${to} }`,
    },
    ...workInSteps(
      w.plan,
      [{ action: 'tension', name: tie }],
      [strut, ...also].map((s) => s.id),
    ),
  ];
}

const strapAcross = (strut: Strut, other: Strut, w: Workings): Fix => ({
  title: message('remedy.strap-across', { strut: name(strut.name), other: name(other.name) }),
  edits: strapEdits(strut, `${other.name} base`, w, [other]),
  safe: false,
});

function strapToAnchor(strut: Strut, anchor: GroundAnchor, w: Workings): readonly Fix[] {
  const has = tiesAtFoot(strut.id, w.plan.ties).some((t) =>
    [t.from, t.to].some((end) => end.kind === 'ground anchor' && end.name === anchor.name),
  );
  if (has) return [];
  return [
    {
      title: message('remedy.strap-to-anchor', { strut: name(strut.name), anchor: name(anchor.name) }),
      edits: strapEdits(strut, anchor.name, w),
      safe: false,
    },
  ];
}

/** To the part under its head, right above: it pulls the base in under the vehicle. */
function strapToOwnPart(strut: Strut, w: Workings): readonly Fix[] {
  const vehicle = w.vehicles.get(strut.head.vehicle);
  const part = vehicle && partNamed(vehicle, strut.head.part);
  const has = tiesAtFoot(strut.id, w.plan.ties).some((t) =>
    [t.from, t.to].some((end) => end.kind === 'vehicle part' && end.vehicle === vehicle?.id),
  );
  if (vehicle === undefined || part === undefined || part.moves || has) return [];
  return [
    {
      title: message('remedy.strap-to-part', {
        strut: name(strut.name),
        part: name(part.name),
        vehicle: name(vehicle.name),
      }),
      edits: strapEdits(strut, `${vehicle.name} ${part.id} ${placeText(strut.head, w.plan.display)}`, w),
      safe: false,
    },
  ];
}

/** Its like on the other side of an upright vehicle, on a pad like its own, with a strap from base to base. */
export function mirrorFix(strut: Strut, w: Workings): readonly Fix[] {
  const vehicle = w.vehicles.get(strut.head.vehicle);
  const out = vehicle && straightOut(strut, vehicle);
  if (vehicle === undefined || out === undefined) return [];
  const { plan } = w;
  const units = plan.display;
  const head = toVehicle(vehicle, strut.head);
  const across = toPlan(vehicle, { x: head.x, y: -head.y });
  const own = freeName('S', plan.struts);
  const tie = freeName('T', plan.ties);
  const pad = plan.pads.find((p) => p.under === strut.id);
  const at = `${vehicle.name} ${strut.head.part} near ${placeText(across, units)}`;
  const insert = (text: string): PlanEdit => ({ kind: 'insert', into: plan.ref, text });
  return [
    {
      title: message('remedy.mirror-strut', { new: name(own), strut: name(strut.name) }),
      edits: [
        insert(strutText(strut, own, at, lengthText(out, units))),
        insert(`strap ${tie} : ${strapIn(w)} { from ${strut.name} base to ${own} base }`),
        ...(pad === undefined ? [] : [insert(padText(pad, freeName('P', plan.pads), own, units))]),
        ...workInSteps(
          plan,
          [
            { action: 'set', name: own },
            { action: 'lock', name: own },
            { action: 'tension', name: tie },
          ],
          [strut.id],
        ),
      ],
      safe: false,
    },
  ];
}

/** How far out its base is, where it stands to a side of an upright vehicle. */
const straightOut = (strut: Strut, vehicle: Vehicle): number | undefined =>
  vehicle.position.kind === 'upright' && Math.abs(toVehicle(vehicle, strut.head).y) > 0.01
    ? baseOut(strut, vehicle)
    : undefined;
