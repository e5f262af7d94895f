import { exceeds, show } from '@cribwright/units';
import { cribUse, type Use } from '../../crib/crib-use.js';
import type { CribWorking } from '../../crib/crib-working.js';
import { buildsFor } from '../../design/builds.js';
import { print, printBeside } from '../../figure/print.js';
import type { Fix } from '../../finding/finding.js';
import type { Workings } from '../../workings/workings.js';
import { practice, published, type Rule, type RuleFinding } from '../rule.js';
import { stepOverload } from './step-chock.js';
import { say, words } from './words.js';

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
      message: say('unknown', {
        crib: crib.name,
        why: say('weigh-it', {}).text,
      }),
      figures: [uses.whole.load, c.capacity],
    };
  if (worst === undefined) return undefined;
  const shared = (use: Use) => {
    const beside = printBeside(use.load, use.capacity);
    return {
      crib: crib.name,
      load: beside.demand,
      capacity: beside.limit,
      governs: use.load.governs ?? say('as-built', {}).text,
      sum: use.capacity.formula?.numbers ?? '',
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
      message: say('over-contact', {
        ...shared(worst.use),
        contact: `${worst.number}`,
      }),
      figures: [worst.use.load, worst.use.capacity, worst.use.use],
    };
  if (over(uses.whole))
    return {
      ...base,
      fixes: stronger(c, w),
      message: say('over-whole', {
        ...shared(uses.whole),
        contacts: `${c.loaded}`,
      }),
      figures: [uses.whole.load, uses.whole.capacity, uses.whole.use],
    };
  const limit = w.limit('use limit');
  if (!exceeds(worst.use.use.value?.high ?? 0, limit.value?.low ?? 1)) return undefined;
  return {
    ...base,
    fixes: stronger(c, w),
    message: say('over-limit', {
      crib: crib.name,
      contact: `${worst.number}`,
      load: shared(worst.use).load,
      governs: shared(worst.use).governs,
      capacity: print(worst.use.capacity),
      use: print(worst.use.use),
      limit: print(limit),
    }),
    figures: [worst.use.load, worst.use.capacity, worst.use.use, limit],
  };
}

/** The build of the fewest timbers that would carry it, from what is there. Its load is checked anew once it stands. */
function stronger(c: CribWorking, w: Workings): readonly Fix[] {
  const build = buildsFor(c, w)[0];
  if (build === undefined) return [];
  const { crib } = build;
  const was = c.crib;
  const layout = `${crib.layout.lengthwise} by ${crib.layout.crosswise}`;
  const long = show(crib.timber.length, 'length', w.plan.display === 'us' ? 'in' : 'mm', {
    rounding: 'nearest',
  });
  const set = (property: string, text: string) => ({
    kind: 'set' as const,
    at: { element: was.id, property },
    text,
  });
  return [
    {
      title: say('fix-build', {
        layout,
        timber: `${crib.timber.name} ${long} long`,
        courses: `${crib.courses}`,
        use: show(build.use, 'ratio', '%', { rounding: 'up' }),
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
  title: 'Crib or contact overloaded',
  family: 'timber and cribs',
  severity: 'danger',
  protects:
    'Timber loaded beyond what it bears perpendicular to grain crushes, and the load leans over and goes.',
  sources: [
    practice,
    published('Rescue Systems 1 (California State Fire Training)', 'chapter 30'),
    published('NDS 2018', '3.10.2, 3.10.4'),
  ],
  compares: ['load', 'capacity', 'use', 'use limit'],
  words,
  check: (w) => [
    ...w.cribs().flatMap((c) => overload(c, w) ?? []),
    ...w.stepChocks().flatMap((c) => stepOverload(c, w) ?? []),
  ],
};
