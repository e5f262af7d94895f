import type { Fix, Workings } from '@cribwright/engine';
import { bestBuildFor } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { cribUse, setProperty, sizeText, type Use } from '@cribwright/engine/internal';
import { calculation, count, message, name, quantity, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';
import { stepOverload } from './step-chock.js';

function overload(c: CribWorking, w: Workings): RuleFinding | undefined {
  const { crib } = c;
  // One that meets nothing, or ends below the load, carries nothing: other rules say so.
  if (c.loaded === 0 || (c.gap.value?.low ?? 0) > (c.closes.value?.high ?? 0) + 1e-6) return undefined;
  const uses = cribUse(c, w);
  const contacts = uses.contacts.flatMap((use, i) => (use === undefined ? [] : [{ use, number: i + 1 }]));
  const worst = contacts.reduce<(typeof contacts)[number] | undefined>(
    (most, next) => ((next.use.load.value?.high ?? -1) > (most?.use.load.value?.high ?? -1) ? next : most),
    undefined,
  );
  const subject = { element: crib.id };
  if (contacts.some(({ use }) => use.load.value === undefined))
    return {
      subject,
      at: subject,
      severity: 'warning',
      couldNotRun: true,
      message: message('crib-load.unknown', {
        crib: name(crib.name),
        why: term('crib-load.weigh-it'),
      }),
      figures: [uses.whole.load, c.capacity],
    };
  if (worst === undefined) return undefined;
  const shared = (use: Use) => {
    const beside = shownBeside(use.load, use.capacity);
    return {
      crib: name(crib.name),
      load: beside.demand,
      capacity: beside.limit,
      governs: use.load.governs ?? term('figure.as-built'),
      sum: calculation(use.capacity),
    };
  };
  const base = {
    subject,
    at: subject,
    ...(worst.use.load.governs === undefined ? {} : { governs: worst.use.load.governs }),
  };
  if (over(worst.use))
    return {
      ...base,
      fixes: stronger(c, w),
      message: message('crib-load.over-contact', {
        ...shared(worst.use),
        contact: count(worst.number),
      }),
      figures: [worst.use.load, worst.use.capacity, worst.use.use],
    };
  if (over(uses.whole))
    return {
      ...base,
      fixes: stronger(c, w),
      message: message('crib-load.over-whole', {
        ...shared(uses.whole),
        contacts: count(c.loaded),
      }),
      figures: [uses.whole.load, uses.whole.capacity, uses.whole.use],
    };
  const limit = w.limit('use limit');
  if (!exceeds(worst.use.use.value?.high ?? 0, limit.value?.low ?? 1)) return undefined;
  return {
    ...base,
    fixes: stronger(c, w),
    message: message('crib-load.over-limit', {
      crib: name(crib.name),
      contact: count(worst.number),
      load: shared(worst.use).load,
      governs: shared(worst.use).governs,
      capacity: shown(worst.use.capacity),
      use: shown(worst.use.use),
      limit: shown(limit),
    }),
    figures: [worst.use.load, worst.use.capacity, worst.use.use, limit],
  };
}

/** The build of the fewest timbers that would carry it, from what is there. Its load is checked anew once it stands. */
function stronger(c: CribWorking, w: Workings): readonly Fix[] {
  const build = bestBuildFor(c, w);
  if (build === undefined) return [];
  const { crib } = build;
  const was = c.crib;
  const layout = `${crib.layout.lengthwise} by ${crib.layout.crosswise}`;
  const long = sizeText(crib.timber.length, w.plan.display, 'nearest');
  const set = (property: string, text: string) => setProperty(was.id, property, text);
  return [
    {
      title: message('crib-load.fix-build', {
        layout: name(layout),
        timber: message('figure.timber-of-length', { timber: name(crib.timber.name), length: name(long) }),
        courses: count(crib.courses),
        use: quantity('share', build.use, 'up'),
      }),
      edits: [
        ...(crib.timber.name === was.timber.name && crib.timber.length === was.timber.length
          ? []
          : [set('timber', `${crib.timber.name} ${long} long`)]),
        set('layout', layout),
        ...(crib.courses === was.courses ? [] : [set('courses', `${crib.courses}`)]),
      ],
      safe: false,
    },
  ];
}

const over = ({ load, capacity }: Use): boolean =>
  load.value !== undefined && capacity.value !== undefined && exceeds(load.value.high, capacity.value.low);

export const rule: Rule = {
  id: 'crib-load',
  title: term('crib-load.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'plan',
  protects: term('crib-load.protects'),
  sources: [
    practice,
    published('Rescue Systems 1 (California State Fire Training)', 'chapter 30'),
    published('NDS 2018', '3.10.2, 3.10.4'),
  ],
  compares: ['load', 'capacity', 'use', 'use limit'],
  check: (w) => [
    ...w.cribs().flatMap((c) => overload(c, w) ?? []),
    ...w.stepChocks().flatMap((c) => stepOverload(c, w) ?? []),
  ],
};
