import type { Workings } from '@cribwright/engine';
import { message, name, shown, term } from '@cribwright/messages';
import type { Vehicle, VehicleContact } from '@cribwright/model';
import { exactly, given, measured, partNamed, toVehicle } from '@cribwright/model';
import { length, placeAt } from '@cribwright/model/internal';
import { inch } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

const hair = 0.02;

function vehicleFaults(vehicle: Vehicle, w: Workings): readonly RuleFinding[] {
  const subject = { element: vehicle.id };
  const long = (value: number) =>
    shown(given(length('l', term('figure.length'), 'nearest'), exactly(value), { kind: 'stated' }));
  if (!(vehicle.length > 0 && vehicle.width > 0 && vehicle.height > 0))
    return [
      {
        subject,
        at: subject,
        message: message('geometry-impossible.no-size', { vehicle: name(vehicle.name) }),
      },
    ];
  const outside = (from: number, to: number) =>
    from < -hair || to > vehicle.length + hair || to < from - hair;
  const whole = { vehicle: name(vehicle.name), length: long(vehicle.length) };
  const parts = vehicle.parts.flatMap((p) => {
    if (outside(p.from, p.to))
      return [
        {
          subject,
          at: p.ref,
          message: message('geometry-impossible.part-outside', {
            ...whole,
            part: name(p.name),
            from: long(p.from),
            to: long(p.to),
          }),
        },
      ];
    return p.height.low > vehicle.height + hair
      ? [
          {
            subject,
            at: p.ref,
            message: message('geometry-impossible.height-backwards', {
              vehicle: name(vehicle.name),
              part: name(p.name),
            }),
          },
        ]
      : [];
  });
  const axles = vehicle.axles
    .filter((a) => outside(a.x, a.x))
    .map((a) => ({
      subject,
      at: a.ref,
      message: message('geometry-impossible.axle-outside', { ...whole, axle: name(a.name), at: long(a.x) }),
    }));
  const cargo = vehicle.cargo
    .filter((c) => outside(c.from, c.to))
    .map((c) => ({
      subject,
      at: c.ref,
      message: message('geometry-impossible.cargo-outside', {
        ...whole,
        cargo: name(c.name),
        from: long(c.from),
        to: long(c.to),
      }),
    }));
  const weight = w.masses().get(vehicle.id)?.weight.value;
  const weightless =
    weight !== undefined && weight.high <= 0
      ? [
          {
            subject,
            at: subject,
            message: message('geometry-impossible.no-weight', { vehicle: name(vehicle.name) }),
          },
        ]
      : [];
  return [...parts, ...axles, ...cargo, ...weightless];
}

/** A body at rest on another: the place must lie under the part above and over the vehicle below. */
function contactFaults(contact: VehicleContact, w: Workings): readonly RuleFinding[] {
  const upper = w.vehicles.get(contact.upper);
  const lower = w.vehicles.get(contact.lower);
  if (upper === undefined || lower === undefined) return [];
  const measuredAs = (value: number) =>
    shown(
      measured(length('off', term('figure.off'), 'up'), exactly(value), term('figure.measured-in-the-plan')),
    );
  const subject = { element: lower.id };
  const at = contact.ref;
  const names = { upper: name(upper.name), lower: name(lower.name) };
  const worst = contact.points
    .map((p) => ({ p, off: outsideOf(lower, p) }))
    .reduce((a, b) => (b.off > a.off ? b : a), { p: { x: 0, y: 0 }, off: 0 });
  if (worst.off > hair)
    return [
      {
        subject,
        at,
        message: message('geometry-impossible.rests-beside', {
          ...names,
          at: measuredAs(worst.p.x),
          off: measuredAs(worst.off),
        }),
      },
    ];
  const part = partNamed(upper, contact.upperPart);
  const misses = part === undefined ? 0 : Math.max(...contact.points.map((p) => missOf(upper, part, p)));
  if (part !== undefined && misses > 0.1)
    return [
      {
        subject,
        at,
        message: message('geometry-impossible.rests-not-part', {
          upper: names.upper,
          part: name(part.name),
          off: measuredAs(misses),
        }),
      },
    ];
  const under = contact.lowerPart === undefined ? undefined : partNamed(lower, contact.lowerPart);
  return part === undefined || under === undefined || contact.coupled
    ? []
    : gapFault(contact, part, under, w);
}

const missOf = (
  vehicle: Vehicle,
  part: Parameters<typeof placeAt>[1],
  p: { x: number; y: number },
): number => {
  const place = placeAt(vehicle, part, p);
  return place === undefined ? 0 : Math.hypot(place.off.x, place.off.y);
};

function outsideOf(vehicle: Vehicle, point: { readonly x: number; readonly y: number }): number {
  const p = toVehicle(vehicle, point);
  const x = Math.max(0, -p.x, p.x - vehicle.length);
  const y = Math.max(0, Math.abs(p.y) - vehicle.width / 2);
  return Math.hypot(x, y);
}

/** More than this between two things that touch is a mistake in one of the heights, m. Common practice. */
const mostGap = 3 * inch;

function gapFault(
  contact: VehicleContact,
  part: NonNullable<ReturnType<typeof partNamed>>,
  under: NonNullable<ReturnType<typeof partNamed>>,
  w: Workings,
): readonly RuleFinding[] {
  const gap = Math.max(0, part.height.low - under.height.high, under.height.low - part.height.high);
  if (gap <= mostGap) return [];
  const measuredAs = (value: number) =>
    shown(
      measured(
        length('gap', term('figure.gap'), 'nearest'),
        exactly(value),
        term('figure.measured-in-the-plan'),
      ),
    );
  return [
    {
      subject: { element: contact.lower },
      at: contact.ref,
      severity: 'note',
      message: message('geometry-impossible.rests-gap', {
        upper: name(w.vehicles.get(contact.upper)?.name ?? contact.upper),
        lower: name(w.vehicles.get(contact.lower)?.name ?? contact.lower),
        part: name(part.name),
        under: name(under.name),
        high: measuredAs(part.height.low),
        low: measuredAs(under.height.high),
        gap: measuredAs(gap),
      }),
    },
  ];
}

export const rule: Rule = {
  id: 'geometry-impossible',
  title: term('geometry-impossible.title'),
  family: 'plausibility',
  severity: 'danger',
  judges: 'element',
  protects: term('geometry-impossible.protects'),
  sources: [practice],
  compares: [],
  check: (w) => [
    ...w.plan.vehicles.flatMap((v) => vehicleFaults(v, w)),
    ...w.plan.contacts.flatMap((c) => contactFaults(c, w)),
  ],
};
