import type { Analysis, Finding } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { calculation, count, type Message, message, name, shown, term } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { trailerOnCar } from '@cribwright/model/testing';
import { inch } from '@cribwright/units';
import type { Checked } from '@cribwright/workspace';
import { fileReport } from '../report/file-report.js';
import type { CheckReport } from '../report/report.js';

export const sampleText = 'plan "Tall" {\n  crib A {\n    courses   14\n    captures  rail\n  }\n}\n';

const part = (label: Message, value: number, quantity: Figure['quantity']): Figure => ({
  key: label.id,
  label,
  value: { low: value, high: value },
  quantity,
  rounding: 'nearest',
  inputs: [],
  source: { kind: 'stated' },
});

export const height: Figure = {
  key: 'height',
  label: term('figure.height'),
  value: { low: 49 * inch, high: 49 * inch },
  quantity: 'length',
  rounding: 'up',
  formula: {
    kind: 'expression',
    text: '{courses} × {depth}',
    over: {
      courses: part(term('figure.courses'), 14, 'count'),
      depth: part(term('figure.dressed-depth'), 3.5 * inch, 'length'),
    },
  },
  inputs: [],
  source: { kind: 'computed' },
};

export const limit: Figure = {
  key: 'heightLimit',
  label: term('figure.height-limit'),
  value: { low: 24 * inch, high: 24 * inch },
  quantity: 'length',
  rounding: 'down',
  formula: {
    kind: 'expression',
    text: '{ratio} × {width}',
    over: {
      ratio: part(term('limit.height-ratio-some-contacts'), 1.5, 'ratio'),
      width: part(term('figure.width-outside-to-outside-of-contacts'), 16 * inch, 'length'),
    },
  },
  inputs: [],
  source: {
    kind: 'policy',
    policy: 'CountyPolicy',
    limit: 'height ratio some contacts',
    of: { kind: 'common practice' },
  },
};

const loaded = message('crib-height.some-loaded', { loaded: count(2), contacts: count(4) });

export const tooHigh: Finding = {
  rule: 'crib-height',
  severity: 'danger',
  subject: { element: 'crib/A' },
  at: { element: 'crib/A', property: 'courses' },
  message: message('crib-height.too-high', {
    crib: name('A'),
    height: shown(height),
    loaded,
    limit: shown(limit),
    sum: calculation(limit),
    advice: message('crib-height.use-courses', { courses: count(6) }),
  }),
  figures: [height, limit],
  related: [
    {
      at: { element: 'crib/A', property: 'captures' },
      message: message('crib-height.captured-here', { loaded }),
    },
  ],
  fixes: [
    {
      title: message('crib-height.fix-courses', { courses: count(6) }),
      edits: [{ kind: 'set', at: { element: 'crib/A', property: 'courses' }, text: '6' }],
      safe: true,
    },
  ],
};

const analysisOf = (findings: readonly Finding[]): Analysis => ({
  plan: { title: 'Tall', ref: { element: 'plan' } },
  bodies: [],
  supports: [
    {
      id: 'crib/A',
      name: 'A',
      kind: 'crib',
      figures: {
        height,
        heightLimit: limit,
        load: { ...limit, key: 'load', label: term('figure.load'), value: undefined },
      },
      contacts: [
        {
          number: 1,
          at: { x: 0, y: 0, z: 0 },
          meets: undefined,
          loaded: false,
          load: undefined,
          asBuilt: undefined,
          bound: undefined,
          capacity: undefined,
          use: undefined,
        },
      ],
      worst: findings[0]?.severity,
    },
  ],
  stages: [],
  push: undefined,
  ground: [],
  timeline: undefined,
  materials: undefined,
  findings,
  expectations: [],
  assumptions: [term('analysis.rigid-bodies')],
});

const uri = 'file:///plans/tall.crib';
const path = 'plans/tall.crib';
const spanOf = (words: string) => {
  const start = sampleText.indexOf(words);
  return { start, end: start + words.length };
};

/** A report of one file with one plan and these findings, as if it had been read from a text. */
export function sampleReport(findings: readonly Finding[], plan: Plan = trailerOnCar): CheckReport {
  const analysis = analysisOf(findings);
  const checked: Checked = {
    uri,
    version: 1,
    state: 'good',
    pending: undefined,
    plans: [{ plan: { ...plan, title: 'Tall' }, analysis, places: {}, partial: false, unread: [] }],
    problems: findings.map((finding) => ({
      code: finding.rule,
      source: 'plan',
      severity: finding.severity,
      message: finding.message,
      span: spanOf('courses   14'),
      related: finding.related.map(({ message: why }) => ({
        uri,
        span: spanOf('captures  rail'),
        message: why,
      })),
      fixes: finding.fixes.map(({ title, safe }) => ({
        title,
        safe,
        edits: { [uri]: [{ span: spanOf('14'), text: '6' }] },
      })),
      finding,
      plan: 'Tall',
    })),
  };
  return {
    files: [{ ...fileReport(checked, { pathOf: () => path, textOf: () => sampleText }), lessons: [] }],
    unreadable: [],
  };
}
