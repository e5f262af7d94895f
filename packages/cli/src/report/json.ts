import type { BodyResult, ContactResult, SupportResult } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { dimensionOf, term, unitOf, type Words } from '@cribwright/messages';
import { displayUnit, findUnit, fromSI } from '@cribwright/units';
import { formulaText, sourceText } from './figure-text.js';
import { exitCode, tally } from './outcome.js';
import type {
  CheckReport,
  FileReport,
  LocatedFinding,
  LocatedProblem,
  Location,
  PlanReport,
} from './report.js';
import { shownProblems } from './shown-problems.js';
import { version } from './version.js';
import { plainSpeech, type Speech } from './words.js';

export const schemaId = 'urn:cribwright:check:1';

/** The report for programs, as `schema/check.schema.json` describes it. */
export const jsonReport = (report: CheckReport, speech: Speech = plainSpeech): string =>
  `${JSON.stringify(jsonValue(report, speech), null, 2)}\n`;

/** The report for programs as plain data. Each figure has its value in the unit that it names. */
export const jsonValue = (report: CheckReport, speech: Speech = plainSpeech) => ({
  schema: schemaId,
  tool: { name: 'cribwright', version },
  caution: speech.words.message(term('caution.text')),
  outcome: { exit: exitCode(report), ...tally(report) },
  files: report.files.map((f) => fileValue(f, speech)),
  unreadable: report.unreadable.map(({ path, why }) => ({ path, why: speech.words.message(why) })),
});

const fileValue = (file: FileReport, { words, wordsOf }: Speech) => {
  const { shown, leftOut } = shownProblems(file);
  return {
    path: file.path,
    problems: shown.map((p) => problemValue(p, words)),
    problemsLeftOut: leftOut,
    plans: file.plans.map((p) => planValue(p, wordsOf(p))),
  };
};

const problemValue = (problem: LocatedProblem, words: Words) => ({
  rule: problem.code,
  severity: problem.severity,
  message: words.message(problem.message),
  ...placeValue(problem.place),
  fixes: problem.fixes.map((f) => words.message(f.title)),
});

const planValue = ({ title, reply, unread, findings }: PlanReport, say: Words) => ({
  title,
  partial: reply.partial,
  unread: unread.map((u) => ({ message: say.message(u.message), ...placeValue(u.place) })),
  vehicles: reply.analysis.bodies.map((b) => bodyValue(b, say)),
  findings: findings.map((f) => findingValue(f, say)),
  supports: reply.analysis.supports.map((s) => supportValue(s, say)),
  ...(reply.analysis.push === undefined ? {} : { push: figureValue(reply.analysis.push.least, say) }),
  expectations: reply.analysis.expectations.map(({ text, held, why }) => ({
    text: say.message(text),
    held,
    why: say.message(why),
  })),
  assumptions: reply.analysis.assumptions.map(say.message),
});

const bodyValue = (body: BodyResult, say: Words) => ({
  name: body.name,
  weight: figureValue(body.weight, say),
  centerBack: figureValue(body.center.x, say),
  centerAside: figureValue(body.center.y, say),
  centerHeight: figureValue(body.center.z, say),
});

const findingValue = ({ finding, subject, place, related, fixes }: LocatedFinding, say: Words) => ({
  rule: finding.rule,
  severity: finding.severity,
  subject,
  message: say.message(finding.message),
  ...placeValue(place),
  figures: finding.figures.map((f) => figureValue(f, say)),
  ...(finding.governs === undefined ? {} : { governs: say.message(finding.governs) }),
  related: related.map((r) => ({ message: say.message(r.message), ...placeValue(r.place) })),
  fixes: fixes.map((f) => say.message(f.title)),
  couldNotRun: finding.couldNotRun ?? false,
  ...(finding.accepted === undefined ? {} : { accepted: finding.accepted }),
});

const supportValue = (support: SupportResult, say: Words) => ({
  name: support.name,
  kind: support.kind,
  ...(support.worst === undefined ? {} : { worst: support.worst }),
  figures: Object.fromEntries(Object.entries(support.figures).map(([key, f]) => [key, figureValue(f, say)])),
  contacts: support.contacts.map((c) => contactValue(c, say)),
});

const contactValue = (contact: ContactResult, say: Words) => ({
  number: contact.number,
  loaded: contact.loaded,
  ...(contact.meets === undefined ? {} : { meets: `${contact.meets.vehicle}/${contact.meets.part}` }),
  ...(contact.load === undefined ? {} : { load: figureValue(contact.load, say) }),
  ...(contact.asBuilt === undefined ? {} : { asBuilt: figureValue(contact.asBuilt, say) }),
  ...(contact.bound === undefined ? {} : { bound: figureValue(contact.bound, say) }),
  ...(contact.capacity === undefined ? {} : { capacity: figureValue(contact.capacity, say) }),
  ...(contact.use === undefined ? {} : { use: figureValue(contact.use, say) }),
});

export const figureValue = (figure: Figure, say: Words) => ({
  key: figure.key,
  label: say.label(figure),
  known: figure.value !== undefined,
  ...valueIn(figure, say),
  unit: plainUnit(figure, say),
  text: say.value(figure),
  formula: formulaText(figure, say),
  source: sourceText(figure, say),
  ...(figure.governs === undefined ? {} : { governs: say.message(figure.governs) }),
  ...(figure.assumes === undefined || figure.assumes.length === 0
    ? {}
    : { assumes: figure.assumes.map(say.message) }),
});

/** The unit of the number. Feet with inches, being two numbers, are given in inches. */
function plainUnit({ quantity, unit }: Figure, { units }: Words): string {
  const shown = displayUnit(unitOf(quantity, units, unit), dimensionOf(quantity));
  return shown === 'ft in' ? 'in' : shown;
}

function valueIn(figure: Figure, say: Words) {
  const { value } = figure;
  if (value === undefined) return {};
  const known = findUnit(plainUnit(figure, say));
  const inUnit = (si: number) => tidy(known === undefined ? si : fromSI(si, known));
  return value.low === value.high
    ? { value: inUnit(value.low) }
    : { low: inUnit(value.low), high: inUnit(value.high) };
}

/** Ten digits: enough for any check, and free of the dust that conversions leave. */
const tidy = (n: number): number => Number(n.toPrecision(10));

const placeValue = ({ path, range }: Location) => ({
  path,
  range: { start: from1(range.start), end: from1(range.end) },
});

const from1 = (p: { readonly line: number; readonly character: number }) => ({
  line: p.line + 1,
  character: p.character + 1,
});
