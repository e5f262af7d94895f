import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { Met, PlacedStepChock, StepChock } from '@cribwright/model';
import { computed, exactly, given, measured } from '@cribwright/model';
import { force, length, sourceOfPart } from '@cribwright/model/internal';
import { inch } from '@cribwright/units';
import { undersideOf } from './underside-of.js';

/** A stepped block slid under a part until one of its steps meets it. */
export interface StepChockWorking {
  readonly placed: PlacedStepChock;
  readonly chock: StepChock;
  readonly meets: Met | undefined;
  /** Of the highest step that goes under the part. Unknown where none does. */
  readonly height: Figure;
  /** Left between that step and the part. */
  readonly gap: Figure;
  readonly capacity: Figure;
}

export function stepChockWorking(placed: PlacedStepChock): StepChockWorking {
  const { chock, captures: meets } = placed;
  const part = given(
    length('partHeight', undersideOf(meets?.part.name), 'nearest', {
      ref: meets?.part.ref,
    }),
    placed.captured,
    meets === undefined ? { kind: 'unknown' } : sourceOfPart(meets, 'height'),
  );
  const height = measured(
    length('height', term('figure.height-of-the-step-that-meets-it'), 'down', { ref: { element: chock.id } }),
    placed.height === undefined ? undefined : exactly(placed.height),
    term('figure.the-highest-step-that-goes-under'),
  );
  return {
    placed,
    chock,
    meets,
    height,
    gap: computed(
      length('gap', term('figure.gap-left-above-the-step'), 'up', { ref: { element: chock.id } }),
      placed.gap,
      '{part} − {height}',
      { part, height },
    ),
    capacity: given(
      force('capacity', term('figure.capacity'), 'down', { ref: chock.ref }),
      chock.capacity === undefined ? undefined : exactly(chock.capacity),
      chock.source,
    ),
  };
}

/** More than this above the step is not snug, m. Common practice, no source. */
export const snugGap = inch;

/** Whether a step chock carries: it stands under the part, and one of its steps is snug. */
export const carries = ({ meets, gap }: StepChockWorking): boolean =>
  meets?.hit === true && gap.value !== undefined && gap.value.low <= snugGap + 1e-9;
