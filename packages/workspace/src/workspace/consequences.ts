import type { LanguageProblem } from '@cribwright/language';
import type { Elaborated } from '@cribwright/language/internal';
import type { UnreadPart } from '@cribwright/model';
import type { Span } from '@cribwright/syntax/internal';

/** What only says that something is not known, which text that could not be read may have said. */
const silent = ['ground-missing', 'vehicle-missing', 'value-unknown'];
/** What says which part of a plan is not checked. */
const said = ['not-in-plan', 'plan-unchecked'];

/** A problem of a plan in whose text something could not be read: that is the error, and this follows from it. */
export const settled = (p: LanguageProblem): readonly LanguageProblem[] => {
  if (silent.includes(p.code)) return [];
  return said.includes(p.code) && p.severity === 'error' ? [{ ...p, severity: 'warning' }] : [p];
};

/** What a plan may lack because of an error inside it. */
export function unreadParts(
  { block: plan, plan: { vehicles } }: Pick<Elaborated, 'block' | 'plan'>,
  { span, code }: LanguageProblem,
): readonly UnreadPart[] {
  // Where braces are missing, nobody knows what belongs where.
  if (code.startsWith('brace-') || code.startsWith('comment-')) return ['vehicle'];
  const holds = (outer: Span) => outer.start <= span.start && span.end <= outer.end;
  const block = plan.blocks.find((b) => holds(b.span));
  const keyword = block?.schema.keyword;
  if (keyword === 'size up' || keyword === 'steps') return [keyword];
  if (keyword === 'vehicle' && vehicles.some((v) => v.name === block?.name)) return ['vehicle'];
  if (block !== undefined) return ['rest'];
  switch (plan.properties.find((p) => holds(p.span))?.schema.key) {
    case 'expect':
    case 'accept':
    case 'units':
      return [];
    case 'responding':
    case 'crew':
      return ['steps'];
    default:
      return ['rest'];
  }
}
