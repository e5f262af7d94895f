import { type StepChockWorking, snugGap } from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownAs, term } from '@cribwright/messages';
import { exactly, measured } from '@cribwright/model';
import { length } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import type { RuleFinding } from '../definition/rule.js';

/** A step chock under its part: beside it, too tall, or left open. */
export function stepMisfit(c: StepChockWorking): RuleFinding | undefined {
  const { chock, meets, gap } = c;
  if (meets === undefined) return undefined;
  const subject = { element: chock.id };
  const shared = {
    chock: name(chock.name),
    vehicle: name(meets.vehicle.name),
    part: name(meets.part.name),
  };
  const figures = [c.gap, c.height];
  if (!meets.hit) {
    const off = measured(
      length('off', term('figure.distance-to-the-part'), 'up'),
      exactly(Math.hypot(meets.place.off.x, meets.place.off.y)),
      term('figure.from-the-chock-to-the-edge-of'),
    );
    return {
      subject,
      at: { element: chock.id, property: 'at' },
      message: message('crib-reach.step-beside', { ...shared, off: shown(off) }),
      figures: [off],
    };
  }
  if (gap.value === undefined)
    return { subject, at: subject, message: message('crib-reach.step-none', shared), figures };
  return exceeds(gap.value.high, snugGap)
    ? {
        subject,
        at: subject,
        message: message('crib-reach.step-gap', {
          ...shared,
          gap: shownAs(gap, gap.value.high),
          sum: calculation(gap),
        }),
        figures,
      }
    : undefined;
}
