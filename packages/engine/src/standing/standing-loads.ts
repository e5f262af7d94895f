import type { Figure } from '@cribwright/messages';
import { list, message, type Phrase, shown, term } from '@cribwright/messages';
import { computed, exactly, measured } from '@cribwright/model';
import { force, limitFigure } from '@cribwright/model/internal';
import type { GoverningLoad } from '../supports/governing-load.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { caseWords } from './case-words.js';
import type { Standing, StandingCase, StandingGroup, StandingStage, WorstLoad } from './standing.js';

type Loads = ReadonlyMap<string, GoverningLoad>;

/**
 * The greater of what the vertical model and the model in space put on each support, with the case named; and the
 * tension of each tie, which the vertical model does not know. Where nothing is known, nothing is added.
 */
export function withStandingLoads(w: SupportWorkings, upright: Loads, { groups }: Standing): Loads {
  const loads = new Map([...upright].map(([id, load]) => [id, withSudden(w, load)] as const));
  const ties = new Set(w.plan.ties.map((t) => t.id));
  for (const group of groups) {
    for (const [id, worst] of worstOf(group)) {
      const before = loads.get(id);
      const most = before?.load.value?.high;
      if (before === undefined ? !ties.has(id) : most === undefined || worst.load.most <= most * (1 + 1e-9))
        continue;
      const figure = loadFigure(w, group, worst);
      loads.set(id, before === undefined ? { load: figure, asBuilt: figure } : { ...before, load: figure });
    }
  }
  return loads;
}

/**
 * What the vertical model puts on a support after a loss, with what the loss adds counted as often as the policy says. Of
 * a range the least load as built is taken as what was there before.
 */
function withSudden(w: SupportWorkings, given: GoverningLoad): GoverningLoad {
  const factor = limitFigure(w.plan.policy, 'sudden loss factor');
  const times = factor.value?.high ?? 1;
  const [most, least] = [given.load.value?.high, given.asBuilt.value?.low];
  if (!(times > 1) || most === undefined || least === undefined || !(most > least)) return given;
  const governs = [
    ...(given.load.governs === undefined ? [] : [given.load.governs]),
    message('standing.sudden', { factor: shown(factor) }),
  ];
  const load = computed(
    force('load', term('figure.load'), 'up', { governs: list(governs, 'plain') }),
    exactly(most + (times - 1) * (most - least)),
    '{load} + ({factor} − 1) × ({load} − {asBuilt})',
    { load: given.load, factor, asBuilt: given.asBuilt },
  );
  return { ...given, load };
}

interface Worst {
  readonly load: WorstLoad;
  readonly stage: StandingStage;
  readonly of: StandingCase;
  readonly isLast: boolean;
}

/** The worst of each element over all stages and losses; of equal ones the finished plan's, and as built. */
function worstOf({ stages }: StandingGroup): ReadonlyMap<string, Worst> {
  const worst = new Map<string, Worst>();
  const last = stages.at(-1);
  for (const stage of [...stages].reverse())
    for (const of of [stage.asBuilt, ...stage.losses])
      for (const [id, load] of of.loads)
        if (load.most > (worst.get(id)?.load.most ?? 0) * (1 + 1e-9))
          worst.set(id, { load, stage, of, isLast: stage === last });
  return worst;
}

function loadFigure(w: SupportWorkings, group: StandingGroup, { load, stage, of, isLast }: Worst): Figure {
  const where = caseWords(group.group, load);
  const governs: readonly Phrase[] = [
    of.loss === undefined ? term('figure.as-built') : of.loss.title,
    ...(isLast ? [] : [stage.stage.title]),
    ...(where === undefined ? [] : [where]),
    ...(load.sudden === undefined
      ? []
      : [message('standing.sudden', { factor: shown(limitFigure(w.plan.policy, 'sudden loss factor')) })]),
  ];
  return measured(
    force('load', term('figure.load'), 'up', { governs: list(governs, 'plain') }),
    exactly(load.most),
    term('standing.balance-in-space'),
  );
}
