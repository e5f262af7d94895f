import type { Figure } from '@cribwright/messages';
import { type Message, message, count as number, term } from '@cribwright/messages';
import type { Contact, Crib, PlacedCrib, PlacedPlan, Plan, PolicyKey } from '@cribwright/model';
import { computed, exactly, given, measured } from '@cribwright/model';
import { count, force, length, limitFigure, times } from '@cribwright/model/internal';
import { crossingCapacity } from '../timber/crossing.js';
import { sizeSource } from '../timber/size-source.js';
import { baseFigure, closesFigure, gapFigure } from './gap.js';

/** A crib with all that follows from its text, its place and the policy. */
export interface CribWorking {
  readonly placed: PlacedCrib;
  readonly crib: Crib;
  readonly contacts: readonly Contact[];
  readonly loaded: number;
  readonly height: Figure;
  readonly width: Figure;
  readonly heightLimit: Figure;
  /** The limit if every contact were loaded. */
  readonly heightLimitAll: Figure;
  readonly contactCapacity: Figure;
  readonly capacity: Figure;
  /** From the top course and shims to the captured part. */
  readonly gap: Figure;
  /** What the stated wedges close; zero without. */
  readonly closes: Figure;
  readonly overhang: Figure;
  /** What it stands on, above the ground. */
  readonly base: Figure;
}

/** All cribs of a plan. Those of the same timber and overhang share what a contact of theirs carries. */
export function cribWorkings({ plan, cribs }: PlacedPlan): readonly CribWorking[] {
  const known: { readonly crib: Crib; readonly capacity: Figure }[] = [];
  return cribs.all.map((placed) => {
    const { crib } = placed;
    const like = known.find((k) => k.crib.timber === crib.timber && k.crib.overhang === crib.overhang);
    const capacity = like?.capacity ?? crossingCapacity(crib, plan.policy);
    if (like === undefined) known.push({ crib, capacity });
    return cribWorking(placed, plan, capacity);
  });
}

export function cribWorking(
  placed: PlacedCrib,
  plan: Plan,
  contactCapacity = crossingCapacity(placed.crib, plan.policy),
): CribWorking {
  const { policy } = plan;
  const { crib, contacts, loaded } = placed;
  const limit = (key: PolicyKey) => limitFigure(policy, key);
  const height = heightFigure(placed);
  const base = baseFigure(placed);
  const width = widthFigure(placed);
  const ratio = limit(
    loaded === contacts.length && loaded > 0
      ? 'height ratio all contacts'
      : loaded > 1
        ? 'height ratio some contacts'
        : 'height ratio one contact',
  );
  const contactsLoaded = measured(
    count('loaded', term('figure.contacts-loaded'), 'down', {
      ref: { element: crib.id, property: 'captures' },
    }),
    exactly(loaded),
    term('figure.contacts-that-meet-a-part'),
  );
  return {
    placed,
    crib,
    contacts,
    loaded,
    height,
    width,
    heightLimit: limitOn(width, ratio, crib, loadedWords(loaded, contacts.length)),
    heightLimitAll: limitOn(width, limit('height ratio all contacts'), crib, undefined),
    contactCapacity,
    capacity: computed(
      force('capacity', term('figure.capacity'), 'down', {
        assumes: [term('figure.the-load-rests-on-every-contact-that')],
      }),
      times(contactsLoaded.value, contactCapacity.value),
      '{contactsLoaded} × {contactCapacity}',
      { contactsLoaded, contactCapacity },
    ),
    base,
    gap: gapFigure(placed, height, base),
    closes: closesFigure(crib),
    overhang: given(
      length('overhang', term('figure.overhang'), 'down', {
        ref: { element: crib.id, property: 'overhang' },
      }),
      exactly(crib.overhang),
      { kind: 'stated' },
    ),
  };
}

/** `all 4 contacts loaded`, `2 of 4 contacts loaded`. */
const loadedWords = (loaded: number, all: number): Message =>
  loaded === all
    ? message('figure.all-contacts-loaded', { all: number(all) })
    : message('figure.contacts-loaded-of', { loaded: number(loaded), all: number(all) });

function heightFigure({ crib, height }: PlacedCrib): Figure {
  const courses = given(
    count('courses', term('figure.courses'), 'up', {
      ref: { element: crib.id, property: 'courses' },
    }),
    exactly(crib.courses),
    { kind: 'stated' },
  );
  const depth = given(
    length('dressedDepth', term('figure.dressed-depth'), 'up', {
      ref: crib.timber.ref,
    }),
    exactly(crib.timber.depth),
    sizeSource(crib.timber),
  );
  return computed(
    length('height', term('figure.height'), 'up', {
      ref: { element: crib.id, property: 'courses' },
    }),
    exactly(height),
    '{courses} × {depth}',
    { courses, depth },
  );
}

function widthFigure({ crib, width }: PlacedCrib): Figure {
  const timber = given(
    length('timberLength', term('figure.timber-length'), 'down', {
      ref: { element: crib.id, property: 'timber' },
    }),
    exactly(crib.timber.length),
    { kind: 'stated' },
  );
  const overhang = given(
    length('overhang', term('figure.overhang'), 'up', {
      ref: { element: crib.id, property: 'overhang' },
    }),
    exactly(crib.overhang),
    { kind: 'stated' },
  );
  const head = length('width', term('figure.width-outside-to-outside-of-contacts'), 'down');
  const single = Math.min(crib.layout.lengthwise, crib.layout.crosswise) <= 1;
  return single
    ? given(head, exactly(width), sizeSource(crib.timber))
    : computed(head, exactly(width), '{timber} − 2 × {overhang}', {
        timber,
        overhang,
      });
}

const limitOn = (width: Figure, ratio: Figure, crib: Crib, governs: Message | undefined) =>
  computed(
    length('heightLimit', term('figure.height-limit'), 'down', {
      ref: { element: crib.id },
      governs,
    }),
    times(ratio.value, width.value),
    '{ratio} × {width}',
    { ratio, width },
  );
