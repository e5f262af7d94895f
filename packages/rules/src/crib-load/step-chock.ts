import type { Workings } from '@cribwright/engine';
import { carries, type StepChockWorking, unknownLoad } from '@cribwright/engine/internal';
import { message, name, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { RuleFinding } from '../definition/rule.js';

/** A step chock against its rating. */
export function stepOverload(c: StepChockWorking, w: Workings): RuleFinding | undefined {
  const { chock } = c;
  // One that is not under its part carries nothing: the rule on reach says so.
  if (!carries(c)) return undefined;
  const subject = { element: chock.id };
  const load = w.loads().get(chock.id)?.load ?? unknownLoad();
  const base = { subject, at: subject, figures: [load, c.capacity] };
  if (load.value === undefined)
    return {
      ...base,
      severity: 'warning',
      couldNotRun: true,
      message: message('crib-load.step-unknown', {
        chock: name(chock.name),
        why: term('crib-load.weigh-it'),
      }),
    };
  if (load.value.high <= 0) return undefined;
  const beside = shownBeside(load, c.capacity);
  if (c.capacity.value === undefined)
    return {
      ...base,
      severity: 'warning',
      couldNotRun: true,
      message: message('crib-load.step-unrated', { chock: name(chock.name), load: beside.demand }),
    };
  const limit = (w.limit('use limit').value?.low ?? 1) * c.capacity.value.low;
  if (!exceeds(load.value.high, limit)) return undefined;
  return {
    ...base,
    message: message('crib-load.step-over', {
      chock: name(chock.name),
      load: beside.demand,
      capacity: beside.limit,
      governs: load.governs ?? term('figure.as-built'),
    }),
  };
}
