import {
  type BodyResult,
  type ContactResult,
  caution,
  type Figure,
  print,
  type SupportResult,
} from '@cribwright/engine';
import { displayUnit, findUnit, fromSI } from '@cribwright/units';
import { version } from '../version.js';
import { formulaText, sourceText } from './figure-text.js';
import { exitCode, tally } from './outcome.js';
import type { FileReport, LocatedFinding, LocatedProblem, Location, PlanReport, Report } from './report.js';
import { shownProblems } from './shown-problems.js';

export const schemaId = 'urn:cribwright:check:1';

/** The report for programs, as `schema/check.schema.json` describes it. */
export const jsonReport = (report: Report): string => `${JSON.stringify(jsonValue(report), null, 2)}\n`;

export const jsonValue = (report: Report) => ({
  schema: schemaId,
  tool: { name: 'cribwright', version },
  caution,
  outcome: { exit: exitCode(report), ...tally(report) },
  files: report.files.map(fileValue),
  unreadable: report.unreadable,
});

const fileValue = (file: FileReport) => {
  const { shown, leftOut } = shownProblems(file);
  return {
    path: file.path,
    problems: shown.map(problemValue),
    problemsLeftOut: leftOut,
    plans: file.plans.map(planValue),
  };
};

const problemValue = (problem: LocatedProblem) => ({
  rule: problem.code,
  severity: problem.severity,
  message: problem.message.text,
  ...placeValue(problem.place),
  fixes: problem.fixes.map((f) => f.title.text),
});

const planValue = ({ title, reply, findings }: PlanReport) => ({
  title,
  partial: reply.partial,
  vehicles: reply.analysis.bodies.map(bodyValue),
  findings: findings.map(findingValue),
  supports: reply.analysis.supports.map(supportValue),
  ...(reply.analysis.push === undefined ? {} : { push: figureValue(reply.analysis.push.least) }),
  expectations: reply.analysis.expectations.map(({ text, held, why }) => ({ text, held, why })),
  assumptions: reply.analysis.assumptions,
});

const bodyValue = (body: BodyResult) => ({
  name: body.name,
  weight: figureValue(body.weight),
  centerBack: figureValue(body.center.x),
  centerAside: figureValue(body.center.y),
  centerHeight: figureValue(body.center.z),
});

const findingValue = ({ finding, subject, place, related, fixes }: LocatedFinding) => ({
  rule: finding.rule,
  severity: finding.severity,
  subject,
  message: finding.message.text,
  ...placeValue(place),
  figures: finding.figures.map(figureValue),
  ...(finding.governs === undefined ? {} : { governs: finding.governs }),
  related: related.map((r) => ({ message: r.message.text, ...placeValue(r.place) })),
  fixes: fixes.map((f) => f.title.text),
  couldNotRun: finding.couldNotRun ?? false,
  ...(finding.accepted === undefined ? {} : { accepted: finding.accepted }),
});

const supportValue = (support: SupportResult) => ({
  name: support.name,
  kind: support.kind,
  ...(support.worst === undefined ? {} : { worst: support.worst }),
  figures: Object.fromEntries(Object.entries(support.figures).map(([key, f]) => [key, figureValue(f)])),
  contacts: support.contacts.map(contactValue),
});

const contactValue = (contact: ContactResult) => ({
  number: contact.number,
  loaded: contact.loaded,
  ...(contact.meets === undefined ? {} : { meets: `${contact.meets.vehicle}/${contact.meets.part}` }),
  ...(contact.load === undefined ? {} : { load: figureValue(contact.load) }),
  ...(contact.asBuilt === undefined ? {} : { asBuilt: figureValue(contact.asBuilt) }),
  ...(contact.bound === undefined ? {} : { bound: figureValue(contact.bound) }),
  ...(contact.capacity === undefined ? {} : { capacity: figureValue(contact.capacity) }),
  ...(contact.use === undefined ? {} : { use: figureValue(contact.use) }),
});

export const figureValue = (figure: Figure) => ({
  key: figure.key,
  label: figure.label,
  known: figure.value !== undefined,
  ...valueIn(figure),
  unit: plainUnit(figure),
  text: print(figure),
  formula: formulaText(figure),
  source: sourceText(figure),
  ...(figure.governs === undefined ? {} : { governs: figure.governs }),
  ...(figure.assumes === undefined || figure.assumes.length === 0 ? {} : { assumes: figure.assumes }),
});

/** The unit of the number. Feet with inches, being two numbers, are given in inches. */
function plainUnit({ unit, dimension }: Figure): string {
  const shown = displayUnit(unit, dimension);
  return shown === 'ft in' ? 'in' : shown;
}

function valueIn(figure: Figure) {
  const { value } = figure;
  if (value === undefined) return {};
  const known = findUnit(plainUnit(figure));
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
