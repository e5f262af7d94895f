import { term, type Words } from '@cribwright/messages';
import type { BlockChange, Comparison, FindingChange, PlanChange } from '@cribwright/workspace';
import { figureValue } from '../report/json.js';
import { version } from '../report/version.js';
import type { Speech } from '../report/words.js';
import { type CompareReport, compareExitCode, isWorse } from './outcome.js';

/** Id of `schema/compare.schema.json`. */
export const compareSchemaId = 'urn:cribwright:compare:1';

/** The comparison for programs, as `schema/compare.schema.json` describes it. */
export const compareJson = (report: CompareReport, speech: Speech): string =>
  `${JSON.stringify(value(report, speech), null, 2)}\n`;

const value = (report: CompareReport, speech: Speech) => ({
  schema: compareSchemaId,
  tool: { name: 'cribwright', version },
  caution: speech.words.message(term('caution.text')),
  before: report.before,
  after: report.after,
  exit: compareExitCode(report),
  ...comparisonValue(report.comparison, speech),
  unreadable: report.unreadable.map(({ path, why }) => ({ path, why: speech.words.message(why) })),
});

const comparisonValue = ({ compared, plans, blocks }: Comparison, speech: Speech) => ({
  compared,
  plans: plans.map((p) => planValue(p, speech.wordsFor(p))),
  changes: blocks.map(blockValue),
});

const planValue = (plan: PlanChange, words: Words) => ({
  title: plan.title,
  path: plan.path,
  worse: isWorse(plan),
  before: plan.before ?? null,
  after: plan.after ?? null,
  findings: plan.findings.map((f) => findingValue(f, words)),
  limits: plan.limits.map(({ key, policy, before, after, looser }) => ({
    limit: key,
    policy,
    before: figureValue(before, words),
    after: figureValue(after, words),
    looser: looser ?? null,
  })),
  figures: plan.figures.map(({ subject, before, after, by }) => ({
    element: words.message(subject),
    before: figureValue(before, words),
    after: figureValue(after, words),
    ...(by === undefined ? {} : { by }),
  })),
  stock: plan.stock.map(({ item, needed, short }) => ({
    item: words.message(item),
    needed: needed.map((n) => n ?? null),
    short: short.map((n) => n ?? null),
  })),
});

const findingValue = (
  { kind, rule, severity, couldNotRun, subject, message, accepted }: FindingChange,
  words: Words,
) => ({
  kind,
  rule,
  severity,
  couldNotRun,
  element: words.message(subject),
  message: words.message(message),
  ...(accepted === undefined ? {} : { accepted }),
});

interface BlockValue {
  readonly kind: BlockChange['kind'];
  readonly keyword: string;
  readonly name: string;
  readonly renamedFrom?: string;
  readonly movedFrom?: string;
  readonly before?: BlockChange['before'];
  readonly after?: BlockChange['after'];
  readonly lines: BlockChange['lines'];
  readonly blocks: readonly BlockValue[];
}

const blockValue = ({ element: _, blocks, ...block }: BlockChange): BlockValue => ({
  ...block,
  blocks: blocks.map(blockValue),
});
