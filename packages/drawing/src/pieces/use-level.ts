import type { Figure } from '@cribwright/messages';
import { type Message, term } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { Tone } from '../scene/tone.js';
import type { LegendEntry } from '../sheet/legend.js';
import type { Say } from '../text/say.js';

/** How far a capacity is used, told by pattern as well as tone. */
export interface UseLevel {
  readonly tone: Tone;
  readonly fill: 'light' | 'hatch' | 'cross' | 'none';
  readonly words: Message;
}

/** From this share of the limit on, a use is drawn as near its limit. A convention of the drawing, not a rule. */
export const nearLimit = 0.8;

/** The use limit that the plan's policy sets. */
export function useLimit(plan: Plan): number {
  const { value } = plan.policy.limits['use limit'];
  return typeof value === 'number' ? value : typeof value === 'string' ? 1 : value.low;
}

export function useLevel(use: Figure | undefined, limit: number): UseLevel {
  const high = use?.value?.high;
  if (high === undefined) return { tone: 'note', fill: 'none', words: term('piece.not-known') };
  if (high > limit * (1 + 1e-9)) return { tone: 'danger', fill: 'cross', words: term('piece.over-limit') };
  if (high > limit * nearLimit) return { tone: 'warning', fill: 'hatch', words: term('piece.near-limit') };
  return { tone: 'good', fill: 'light', words: term('piece.under-limit') };
}

export const useLegend = ({ message }: Say): readonly LegendEntry[] => [
  { words: message(term('piece.legend-under')), sign: { kind: 'fill', tone: 'good', fill: 'light' } },
  { words: message(term('piece.legend-near')), sign: { kind: 'fill', tone: 'warning', fill: 'hatch' } },
  { words: message(term('piece.over-limit')), sign: { kind: 'fill', tone: 'danger', fill: 'cross' } },
];
