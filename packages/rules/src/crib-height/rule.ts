import type { Fix, Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { standingBuildFix } from '@cribwright/engine/internal';
import {
  calculation,
  count,
  type Message,
  message,
  name,
  shown,
  shownAs,
  shownBeside,
  term,
} from '@cribwright/messages';
import { contactsOf } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { fromMemory, practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** The most courses whose height holds under a limit. */
const mostCourses = (limit: number | undefined, depth: number): number =>
  limit === undefined || !(depth > 0) ? 0 : Math.floor(limit / depth + 1e-9);

function tooHigh(c: CribWorking, w: Workings): RuleFinding | undefined {
  const stands = c.height.value?.high;
  const may = c.heightLimit.value?.low;
  if (stands === undefined || may === undefined || !exceeds(stands, may)) return undefined;
  const { crib } = c;
  const beside = shownBeside(c.height, c.heightLimit);
  const courses = mostCourses(may, crib.timber.depth);
  const loaded = loadedMessage(c);
  const [ratio] = c.heightLimit.inputs;
  const fixes = [captureAll(c, w), fewerCourses(c, courses), standingBuildFix(c, w)].flat();
  return {
    subject: { element: crib.id },
    at: { element: crib.id, property: 'courses' },
    message: message('crib-height.too-high', {
      crib: name(crib.name),
      height: beside.demand,
      loaded,
      limit: beside.limit,
      sum: calculation(c.heightLimit),
      advice: advice(c, courses),
    }),
    figures: [c.height, c.heightLimit, c.width],
    related: [
      ...(ratio?.ref === undefined
        ? []
        : [
            {
              at: ratio.ref,
              message: message('crib-height.ratio-set-here', { ratio: shown(ratio) }),
            },
          ]),
      ...(c.loaded < c.contacts.length
        ? [
            {
              at: { element: crib.id, property: 'captures' },
              message: message('crib-height.captured-here', { loaded }),
            },
          ]
        : []),
    ],
    fixes,
    governs: loaded,
  };
}

/** `all 4 contacts loaded`, `2 of 4 contacts loaded`. */
const loadedMessage = ({ loaded, contacts }: CribWorking): Message =>
  loaded === contacts.length
    ? message('crib-height.all-loaded', { contacts: count(contacts.length) })
    : message('crib-height.some-loaded', { loaded: count(loaded), contacts: count(contacts.length) });

const fewerCourses = ({ crib }: CribWorking, courses: number): readonly Fix[] =>
  courses < 1
    ? []
    : [
        {
          title: message('crib-height.fix-courses', { courses: count(courses) }),
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
      title: message('crib-height.fix-capture', { contacts: count(c.contacts.length), parts: name(parts) }),
      edits: [{ kind: 'set', at: { element: crib.id, property: 'captures' }, text: parts }],
      safe: false,
    },
  ];
}

function advice(c: CribWorking, courses: number) {
  const all = c.heightLimitAll.value?.low;
  const more = mostCourses(all, c.crib.timber.depth);
  if (courses < 1 && more < 1) return term('crib-height.none-holds');
  if (all === undefined || c.loaded === c.contacts.length)
    return message('crib-height.use-courses', { courses: count(courses) });
  const shared = {
    contacts: count(c.contacts.length),
    limit: shownAs(c.heightLimitAll, all),
    courses: count(courses),
  };
  return c.crib.courses <= more
    ? message('crib-height.capture-all', shared)
    : message('crib-height.capture-and-lower', { ...shared, more: count(more) });
}

export const rule: Rule = {
  id: 'crib-height',
  title: term('crib-height.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'element',
  protects: term('crib-height.protects'),
  sources: [practice, fromMemory('US Army Corps of Engineers Shoring Operations Guide, section 2')],
  compares: ['height', 'heightLimit'],
  check: (w: Workings) => w.cribs().flatMap((c) => tooHigh(c, w) ?? []),
};
