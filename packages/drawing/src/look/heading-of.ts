import type { Heading } from '../sheet/sheet.js';
import { type Look, momentOf, notChecked } from './look.js';
import { notWholeWords } from './not-whole.js';
import { verdictsOf } from './verdict.js';

/**
 * Title, plan, stage and loss. In bold with the sign of danger: that the plan was not read whole, and that nothing would
 * rest any more.
 */
export function headingOf(look: Look, title: string, more: readonly string[] = []): Heading {
  const { message } = look.say.words;
  const alarms = [
    notWholeWords(look.analysis, 2) ?? [],
    look.lost === undefined || look.lost.rests
      ? []
      : `Unsafe: if ${message(look.lost.title)}, nothing holds ${look.lost.free === undefined ? 'the load' : message(look.lost.free)}.`,
  ].flat();
  return {
    title,
    lines: [...momentOf(look), ...more],
    alarms,
    ...(look.unchecked ? { standing: notChecked } : { verdicts: verdictsOf(look) }),
  };
}
