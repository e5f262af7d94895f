import { exceeds } from '@cribwright/units';
import { type CribWorking, loadedWords } from '../../crib/crib-working.js';
import { print, printAs, printBeside } from '../../figure/print.js';
import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import { contactsOf } from '../../placed/contacts.js';
import type { Workings } from '../../workings/workings.js';
import { fromMemory, practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'too-high':
    'Crib {crib} stands {height}. With {loaded} of its contacts loaded it may stand {limit} ({sum}). {advice}',
  'use-courses': 'Use {courses} courses.',
  'capture-all': 'Capture all {contacts} contacts ({limit}), or use {courses} courses.',
  'capture-and-lower':
    'Use {courses} courses; with all {contacts} contacts captured it may have {more} ({limit}).',
  'none-holds': 'No number of courses holds here. Use longer timbers.',
  'ratio-set-here': 'The ratio is set here: {ratio}.',
  'captured-here': 'This captures {loaded}.',
  'fix-courses': 'Use {courses} courses',
  'fix-capture': 'Capture all {contacts} contacts: {parts}',
} as const;
const say = messages('crib-height', words);

/** The most courses whose height holds under a limit. */
const mostCourses = (limit: number | undefined, depth: number): number =>
  limit === undefined || !(depth > 0) ? 0 : Math.floor(limit / depth + 1e-9);

function tooHigh(c: CribWorking, w: Workings): RuleFinding | undefined {
  const stands = c.height.value?.high;
  const may = c.heightLimit.value?.low;
  if (stands === undefined || may === undefined || !exceeds(stands, may)) return undefined;
  const { crib } = c;
  const beside = printBeside(c.height, c.heightLimit);
  const courses = mostCourses(may, crib.timber.depth);
  const loaded = loadedWords(c.loaded, c.contacts.length);
  const [ratio] = c.heightLimit.inputs;
  const fixes = [captureAll(c, w), fewerCourses(c, courses)].flat();
  return {
    subject: { element: crib.id },
    at: { element: crib.id, property: 'courses' },
    message: say('too-high', {
      crib: crib.name,
      height: beside.demand,
      loaded: c.loaded === c.contacts.length ? `all ${c.loaded}` : `${c.loaded}`,
      limit: beside.limit,
      sum: c.heightLimit.formula?.numbers ?? '',
      advice: advice(c, courses).text,
    }),
    figures: [c.height, c.heightLimit, c.width],
    related: [
      ...(ratio?.ref === undefined
        ? []
        : [
            {
              at: ratio.ref,
              message: say('ratio-set-here', { ratio: print(ratio) }),
            },
          ]),
      ...(c.loaded < c.contacts.length
        ? [
            {
              at: { element: crib.id, property: 'captures' },
              message: say('captured-here', { loaded }),
            },
          ]
        : []),
    ],
    fixes,
    governs: loaded,
  };
}

const fewerCourses = ({ crib }: CribWorking, courses: number): readonly Fix[] =>
  courses < 1
    ? []
    : [
        {
          title: say('fix-courses', { courses: `${courses}` }),
          edits: [{ kind: 'set', at: { element: crib.id, property: 'courses' }, text: `${courses}` }],
          safe: false,
        },
      ];

/** Two parts that together load every contact, the first the outer ones: offered where the crib may then stand. */
function captureAll(c: CribWorking, w: Workings): readonly Fix[] {
  const { crib } = c;
  const met = c.contacts.flatMap((k) => k.meets ?? [])[0];
  const [capture, ...others] = crib.captures;
  if (met === undefined || capture === undefined || others.length > 0) return [];
  if (exceeds(c.height.value?.high ?? Number.POSITIVE_INFINITY, c.heightLimitAll.value?.low ?? 0)) return [];
  const reach = w.limit('joist reach').value?.low ?? 0;
  const able = met.vehicle.parts.filter((p) => p.mayBear && p.id !== met.part.id).map((p) => p.id);
  const orders = able.flatMap((id) => [
    [met.part.id, id],
    [id, met.part.id],
  ]);
  const pair = orders.find(([outer, inner]) => {
    const captures = [
      { ...capture, part: outer ?? '', contacts: 'outer' as const },
      { ...capture, part: inner ?? '', contacts: 'inner' as const },
    ];
    return contactsOf({ ...crib, captures }, w.vehicles, reach).every((k) => k.loaded);
  });
  if (pair === undefined) return [];
  const whose = capture.vehicle === w.plan.vehicles[0]?.id ? '' : `${met.vehicle.name} `;
  const parts = pair.map((id) => whose + id).join(', ');
  return [
    {
      title: say('fix-capture', { contacts: `${c.contacts.length}`, parts }),
      edits: [{ kind: 'set', at: { element: crib.id, property: 'captures' }, text: parts }],
      safe: false,
    },
  ];
}

function advice(c: CribWorking, courses: number) {
  const all = c.heightLimitAll.value?.low;
  const more = mostCourses(all, c.crib.timber.depth);
  if (courses < 1 && more < 1) return say('none-holds', {});
  if (all === undefined || c.loaded === c.contacts.length)
    return say('use-courses', { courses: `${courses}` });
  const shared = {
    contacts: `${c.contacts.length}`,
    limit: printAs(c.heightLimitAll, all),
    courses: `${courses}`,
  };
  return c.crib.courses <= more
    ? say('capture-all', shared)
    : say('capture-and-lower', { ...shared, more: `${more}` });
}

export const rule: Rule = {
  id: 'crib-height',
  title: 'Crib too high for its width',
  family: 'timber and cribs',
  severity: 'danger',
  protects: 'A crib that is tall and narrow, or loaded on one side only, sways and goes over.',
  sources: [practice, fromMemory('US Army Corps of Engineers Shoring Operations Guide, section 2')],
  compares: ['height', 'heightLimit'],
  words,
  check: (w: Workings) => w.cribs().flatMap((c) => tooHigh(c, w) ?? []),
};
