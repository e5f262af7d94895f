import { name } from '@cribwright/messages';
import { type LanguageProblem, problem } from '../problems/problem.js';
import type { DraftLine } from './draft.js';
import { type Surroundings, typeChain } from './file-scope.js';

/** Parts that a `no` line names, and that no type which the vehicle extends has. */
export function nothingToDrop(line: DraftLine, around: Surroundings): readonly LanguageProblem[] {
  if (line.schema.key !== 'no') return [];
  const types = typeChain(line.block, around).slice(1);
  const has = (part: string) =>
    types.some((t) => t.blocks.some((b) => b.declaration?.kind === 'part' && b.declaration.name === part));
  return line.terms.slice(line.from).flatMap((t) =>
    t.kind !== 'word' || has(t.text)
      ? []
      : [
          problem('unknown-part--nothing-to-drop', t, {
            text: name(t.text),
            type: name(line.block?.name ?? line.block?.schema.keyword ?? ''),
          }),
        ],
  );
}
