import type { Figure } from '@cribwright/messages';
import { message, type Phrase, term } from '@cribwright/messages';
import { computed, exactly } from '@cribwright/model';
import { share } from '@cribwright/model/internal';
import type { PushResult } from '../analysis/analysis.js';
import { towardWords } from '../push/toward-words.js';

/** The direction in which least of the weight is held. */
export function leastOf(directions: PushResult['directions']): Figure {
  const least = directions.reduce((a, b) => ((b.share.value?.low ?? 0) < (a.share.value?.low ?? 0) ? b : a));
  return {
    ...least.share,
    key: 'least',
    label: message('figure.least-push-held', { toward: towardWords(least.angle) }),
  };
}

export const shareFigure = (holds: Figure, weight: Figure, governs: Phrase | undefined): Figure =>
  computed(
    share('share', term('figure.share-of-the-weight'), 'down', { governs }),
    exactly((holds.value?.low ?? 0) / (weight.value?.high ?? 1)),
    '{holds} ÷ {weight}',
    { holds, weight },
  );
