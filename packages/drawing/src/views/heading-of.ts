import type { Heading } from '../sheet/sheet.js';
import { type Look, momentOf, notChecked } from './look.js';
import { verdictsOf } from './verdict.js';

/** Title, plan, stage and loss; where nothing would rest any more, that in bold with the sign of danger. */
export function headingOf(look: Look, title: string, more: readonly string[] = []): Heading {
  const alarm =
    look.lost === undefined || look.lost.rests
      ? undefined
      : `Unsafe: if ${look.lost.title}, nothing holds ${look.lost.free ?? 'the load'}.`;
  return {
    title,
    lines: [...momentOf(look), ...more],
    ...(alarm === undefined ? {} : { alarm }),
    ...(look.unchecked ? { standing: notChecked } : { verdicts: verdictsOf(look) }),
  };
}
