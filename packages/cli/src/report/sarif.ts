import { createHash } from 'node:crypto';
import { isAbsolute } from 'node:path';
import { pathToFileURL } from 'node:url';
import { count, message, name, type Words } from '@cribwright/messages';
import { SarifBuilder, SarifResultBuilder, SarifRuleBuilder, SarifRunBuilder } from 'node-sarif-builder';
import { formulaText, sourceText } from './figure-text.js';
import { hasErrors } from './outcome.js';
import type {
  CheckReport,
  LocatedFinding,
  LocatedProblem,
  Location,
  RelatedPlace,
  TextFix,
} from './report.js';
import { shownProblems } from './shown-problems.js';
import { version } from './version.js';
import { plainSpeech, type Speech } from './words.js';

type Result = SarifResultBuilder['result'];
type PhysicalLocation = NonNullable<NonNullable<Result['locations']>[number]['physicalLocation']>;

/** What the log says of a rule: its name, and what it protects against. */
export interface RuleNote {
  readonly id: string;
  readonly title: string;
  readonly protects: string;
}

/** The address of a rule's page, which `cribwright explain` and the editor open without a network. */
export const rulePageUri = (rule: string): string => `cribwright:/rules/${rule}.md`;

/** The report as SARIF 2.1.0 (OASIS standard), for review tools. `rules` names those that the log speaks of. */
export function sarifReport(
  report: CheckReport,
  rules: readonly RuleNote[],
  speech: Speech = plainSpeech,
): string {
  const { words } = speech;
  const run = new SarifRunBuilder().initSimple({
    toolDriverName: 'cribwright',
    toolDriverVersion: version,
  });
  const results = resultsOf(report, speech);
  for (const id of new Set(results.map((r) => r.ruleId ?? ''))) run.addRule(ruleEntry(id, rules));
  for (const result of results) run.addResult(new SarifResultBuilder(result));
  const notRun = results.filter((r) => r.properties?.couldNotRun === true);
  run.run.columnKind = 'utf16CodeUnits';
  run.run.invocations = [
    {
      executionSuccessful: report.unreadable.length === 0 && notRun.length === 0 && !hasErrors(report),
      toolExecutionNotifications: [
        ...report.unreadable.map((u) => ({
          level: 'error' as const,
          message: { text: words.message(message('cli.path-not-read', { path: name(u.path), why: u.why })) },
        })),
        ...report.files.flatMap((f) => {
          const { leftOut } = shownProblems(f);
          return leftOut === 0
            ? []
            : [
                {
                  level: 'error' as const,
                  message: {
                    text: words.message(
                      message('cli.problems-left-out', { path: name(f.path), count: count(leftOut) }),
                    ),
                  },
                },
              ];
        }),
        ...report.files.flatMap((f) =>
          f.plans.flatMap(({ title, reply, unread }) =>
            reply.partial
              ? [{ level: 'error' as const, message: { text: notWhole(title, unread, words) } }]
              : [],
          ),
        ),
        ...notRun.map((r) => ({ level: 'error' as const, message: { text: r.message.text ?? '' } })),
      ],
    },
  ];
  const log = new SarifBuilder();
  log.addRun(run);
  return `${JSON.stringify(log.buildSarifOutput(), null, 2)}\n`;
}

const notWhole = (title: string, unread: readonly RelatedPlace[], words: Words): string =>
  [
    words.message(message('cli.plan-not-whole', { plan: name(title) })),
    ...unread.map((u) => `${u.place.path}:${u.place.range.start.line + 1}: ${words.message(u.message)}`),
  ].join('\n');

const resultsOf = (report: CheckReport, { words, wordsOf }: Speech): readonly Result[] =>
  report.files.flatMap((file) => [
    ...shownProblems(file).shown.map((p) => problemResult(p, file.text, words)),
    ...file.plans.flatMap((plan) => plan.findings.map((f) => findingResult(f, plan.title, wordsOf(plan)))),
  ]);

function ruleEntry(id: string, rules: readonly RuleNote[]): SarifRuleBuilder {
  const note = rules.find((r) => r.id === id);
  return new SarifRuleBuilder().initSimple({
    ruleId: id,
    shortDescriptionText: note?.title ?? id.replaceAll('-', ' '),
    helpUri: rulePageUri(id),
    ...(note === undefined ? {} : { fullDescriptionText: note.protects }),
  });
}

const levels = { danger: 'error', warning: 'warning', note: 'note' } as const;

function findingResult(found: LocatedFinding, plan: string, say: Words): Result {
  const { finding } = found;
  return {
    ruleId: finding.rule,
    level: levels[finding.severity],
    message: { text: [say.message(finding.message), ...finding.figures.map((f) => sum(f, say))].join('\n') },
    locations: [{ physicalLocation: physical(found.place) }],
    relatedLocations: found.related.map((r, id) => ({
      id,
      message: { text: say.message(r.message) },
      physicalLocation: physical(r.place),
    })),
    partialFingerprints: {
      'cribwrightFinding/v1': fingerprint([finding.rule, plan, finding.subject.element, finding.message.id]),
    },
    ...fixesOf(found.fixes, say),
    ...(finding.accepted === undefined
      ? {}
      : {
          suppressions: [
            {
              kind: 'inSource' as const,
              status: 'accepted' as const,
              justification: say.message(
                message('cli.justification', {
                  by: name(finding.accepted.by),
                  until: name(finding.accepted.until),
                  reason: name(finding.accepted.reason),
                }),
              ),
            },
          ],
        }),
    properties: { subject: found.subject, plan, couldNotRun: finding.couldNotRun ?? false },
  };
}

function problemResult(problem: LocatedProblem, text: string, words: Words): Result {
  const line = text.split(/\r?\n/)[problem.place.range.start.line] ?? '';
  return {
    ruleId: problem.code,
    level: levels[problem.severity],
    message: { text: words.message(problem.message) },
    locations: [{ physicalLocation: physical(problem.place) }],
    ...(problem.related.length === 0
      ? {}
      : {
          relatedLocations: problem.related.map((r, id) => ({
            id,
            message: { text: words.message(r.message) },
            physicalLocation: physical(r.place),
          })),
        }),
    partialFingerprints: {
      'cribwrightFinding/v1': fingerprint([problem.code, problem.place.path, line.trim()]),
    },
    ...fixesOf(problem.fixes, words),
  };
}

const sum = (f: LocatedFinding['finding']['figures'][number], say: Words): string =>
  `${say.label(f)}: ${say.value(f)} (${formulaText(f, say)}; ${sourceText(f, say)})`;

const fixesOf = (fixes: readonly TextFix[], say: Words): Pick<Result, 'fixes'> =>
  fixes.length === 0
    ? {}
    : {
        fixes: fixes.map(({ title, edits }) => ({
          description: { text: say.message(title) },
          artifactChanges: [...new Set(edits.map((e) => e.path))].map((path) => ({
            artifactLocation: { uri: uriOf(path) },
            replacements: edits
              .filter((e) => e.path === path)
              .map((e) => ({ deletedRegion: region(e.range), insertedContent: { text: e.text } })),
          })),
        })),
      };

const physical = (place: Location): PhysicalLocation => ({
  artifactLocation: { uri: uriOf(place.path) },
  region: region(place.range),
});

/** Paths from where the command ran stay relative, so that a log can be moved with its folder. */
const uriOf = (path: string): string => (isAbsolute(path) ? pathToFileURL(path).href : encodeURI(path));

const region = ({ start, end }: Location['range']) => ({
  startLine: start.line + 1,
  startColumn: start.character + 1,
  endLine: end.line + 1,
  endColumn: end.character + 1,
});

/** The same finding keeps its mark when lines move: no line number goes into it. */
const fingerprint = (parts: readonly string[]): string =>
  createHash('sha256').update(JSON.stringify(parts)).digest('hex').slice(0, 32);
