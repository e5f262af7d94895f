import type { Figure, SourceNote } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import { computed, exactly, given } from '@cribwright/model';
import { count, length, stress } from '@cribwright/model/internal';
import type { SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';

/** How stiff a place of support is: of timber worked out, of what vehicles bring as they state it. */
export function stiffnessFigure(p: SupportPoint, w: SupportWorkings): Figure {
  const head = {
    key: 'stiffness',
    label: term('figure.stiffness'),
    quantity: 'stiffness',
    rounding: 'nearest',
    ref: p.ref,
  } as const;
  const crib = w.plan.cribs.find((c) => c.id === p.element);
  if (crib === undefined || p.kind !== 'crib') return given(head, exactly(p.stiffness), sourceOf(p, w));
  const { timber } = crib;
  const modulus = given(
    stress('modulus', term('figure.modulus-perpendicular-to-grain'), 'nearest', { ref: timber.ref }),
    exactly(timber.modulusAcross),
    timber.source,
  );
  const width = given(
    length('width', term('figure.dressed-width'), 'nearest'),
    exactly(timber.width),
    timber.source,
  );
  const depth = given(
    length('depth', term('figure.dressed-depth'), 'nearest'),
    exactly(timber.depth),
    timber.source,
  );
  const courses = given(count('courses', term('figure.courses'), 'nearest'), exactly(crib.courses), {
    kind: 'stated',
  });
  return computed(head, exactly(p.stiffness), '{modulus} × {width} × {width} ÷ ({courses} × {depth})', {
    modulus,
    width,
    courses,
    depth,
  });
}

function sourceOf(p: SupportPoint, w: SupportWorkings): SourceNote {
  const vehicle = w.vehicles.get(p.element);
  const axle = vehicle?.axles.find((a) => p.group === `${vehicle.id}/${a.id}`);
  if (axle !== undefined) return axle.stiffnessSource;
  return p.original ? { kind: 'stated' } : { kind: 'from memory' };
}
