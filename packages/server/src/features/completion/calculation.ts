import { type Declaration, type Kind, measuredSupports } from '@cribwright/language/internal';
import { type Around, names, type Suggestion, suggestionsFor } from './items.js';
import type { CursorPlace } from './place.js';

const amounts: readonly Kind[] = ['value', 'parameter', 'vehicle', ...measuredSupports];

/**
 * What may stand next in `let gap = trailer rail height - A height`: something with a figure, a part of it, the
 * figure. `undefined` outside such a line, or before its `=`.
 */
export function calculationSuggestions(
  { before }: CursorPlace,
  around: Around,
): readonly Suggestion[] | undefined {
  const equals = before.findIndex((t) => t.text === '=');
  if (before[0]?.text !== 'let' || equals < 0) return undefined;
  const own = before[1]?.text;
  const named = (at: number, kinds: readonly Kind[]): Declaration | undefined =>
    around.visible.find((d) => d.name === before[at]?.text && kinds.includes(d.kind));
  const last = before.length - 1;
  const term = before[last];
  if (!term) return undefined;
  if (term.kind === 'symbol') return names(around, amounts).filter((s) => s.label !== own);
  if (term.kind === 'number')
    return suggestionsFor({ kind: 'unit', dimensions: ['length', 'force', 'angle', 'ratio'] }, around);
  const vehicle = named(last, ['vehicle']);
  if (vehicle)
    return [
      ...names({ visible: around.partsOf(vehicle), unseen: () => [], words: around.words }, ['part']),
      ...figures(around),
    ];
  const owner = named(last - 1, ['vehicle']);
  const part = owner && around.partsOf(owner).some((d) => d.name === term.text);
  return part || named(last, measuredSupports) ? figures(around) : [];
}

const figures = (around: Around): readonly Suggestion[] => suggestionsFor({ kind: 'figure' }, around);
