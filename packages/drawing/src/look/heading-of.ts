import { message, type Phrase, term } from '@cribwright/messages';
import type { Heading } from '../sheet/sheet.js';
import { type Look, momentOf, notChecked } from './look.js';
import { notWholeWords } from './not-whole.js';
import { verdictsOf } from './verdict.js';

/**
 * Title, plan, stage and loss. In bold with the sign of danger: that the plan was not read whole, and that nothing would
 * rest any more.
 */
export function headingOf(look: Look, title: Phrase, more: readonly string[] = []): Heading {
  const { say } = look;
  const alarms = [
    notWholeWords(look.analysis, 2, say.words) ?? [],
    look.lost === undefined || look.lost.rests
      ? []
      : say.message(
          message('view.unsafe-if', {
            loss: look.lost.title,
            free: look.lost.free ?? term('view.the-load'),
          }),
        ),
  ].flat();
  return {
    title: say.message(title),
    lines: [...momentOf(look), ...more],
    alarms,
    ...(look.unchecked ? { standing: say.message(notChecked) } : { verdicts: verdictsOf(look) }),
  };
}
