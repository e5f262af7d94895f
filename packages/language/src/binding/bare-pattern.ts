import { name as nameHole } from '@cribwright/messages';
import { argumentExample } from '../phrase/argument-example.js';
import type { NameScope } from '../phrase/scope.js';
import { unknownName } from '../phrase/unknown-name.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { patternUse } from '../schema/pattern-block.js';
import type { DraftLine } from './draft.js';

/** A pattern's name alone on its line, without what it needs. */
export function barePattern(line: DraftLine, scope: NameScope): LanguageProblem | undefined {
  const [name, second] = line.terms;
  if (line.schema !== patternUse || !name || second) return undefined;
  const pattern = scope.find(name.text, ['pattern']);
  if (!pattern) {
    return unknownName(
      { uri: scope.uri, span: name, text: name.text, kinds: ['pattern'], target: undefined },
      scope,
      undefined,
    );
  }
  const given =
    pattern.block?.parameters.map((p) => `${p.name} = ${argumentExample(p.typeWord)}`).join(', ') ?? '';
  const example = `${name.text}(${given})`;
  return problem(
    'arguments-missing',
    name,
    { pattern: nameHole(name.text), example: nameHole(example) },
    {
      fixes: [replace(problemMessage('argument-missing--fix', { names: nameHole(given) }), name, example)],
    },
  );
}
