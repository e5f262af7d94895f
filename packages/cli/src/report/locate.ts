import type { Finding, Message, Ref } from '@cribwright/engine';
import type { Place, PlanReply } from '@cribwright/language';
import type { LocatedFinding, Location, PlanReport, TextFix } from './report.js';

/** What the report must be told about the text that a reply came from. */
export interface Surroundings {
  /** The path a person would type for a file's address. */
  readonly pathOf: (uri: string) => string;
  /** The file that holds the plan, for what has no place of its own. */
  readonly home: string;
  readonly fix: (fix: Finding['fixes'][number], reply: PlanReply) => TextFix;
}

const top = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** The place of a ref: its property, else its element, else the plan, else the top of the file. */
export function placeOf(reply: PlanReply, ref: Ref): Place | undefined {
  const { places } = reply;
  const own = ref.property === undefined ? undefined : places[`${ref.element}#${ref.property}`];
  return own ?? places[ref.element] ?? places[reply.plan.ref.element] ?? places.plan;
}

export function locatePlan(reply: PlanReply, around: Surroundings): PlanReport {
  return {
    title: reply.plan.title,
    reply,
    findings: reply.analysis.findings.map((finding) => locateFinding(finding, reply, around)),
  };
}

function locateFinding(finding: Finding, reply: PlanReply, around: Surroundings): LocatedFinding {
  const at = (ref: Ref): Location => {
    const place = placeOf(reply, ref);
    return place ? { path: around.pathOf(place.uri), range: place.range } : { path: around.home, range: top };
  };
  return {
    finding,
    subject: subjectOf(finding.subject),
    place: at(finding.at),
    related: finding.related.map((r: { at: Ref; message: Message }) => ({
      message: r.message,
      place: at(r.at),
    })),
    fixes: finding.fixes.map((f) => around.fix(f, reply)),
  };
}

/** `crib/A` is said `crib A`; `plan` stays `plan`. */
export const subjectOf = (ref: Ref): string => ref.element.replace('/', ' ');
