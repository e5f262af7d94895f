import { closest } from '@cribwright/units';
import type { Declaration, Reference } from '../binding/bound-file.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { say } from '../problems/words.js';
import { renamedName } from '../schema/renamed-words.js';
import { article, kindWords } from './kind-words.js';
import type { NameScope } from './scope.js';

/** More names than these are no help: completion lists them. */
const most = 16;

/** What to say of a name that means nothing where it stands. */
export function unknownName(
  reference: Reference,
  scope: NameScope,
  vehicle: Declaration | undefined,
): LanguageProblem {
  const { kinds, text, span } = reference;
  if (kinds.includes('part')) return unknownPart(reference, scope, vehicle);
  if (kinds.includes('axle')) return unknownAxle(reference, scope, vehicle);
  const kind = kindWords(kinds);
  const names = scope.names(kinds).map((d) => d.name);
  const renamed = renamedName(text);
  const near = names.find((name) => name === renamed) ?? closest(text, names);
  const other = scope.findAny(text);
  if (other) {
    const related = [{ uri: other.uri, span: other.nameSpan, message: say('wrong-kind.declared', { text }) }];
    if (kinds.includes('anchor') && other.kind === 'strut') {
      const near = `${text} foot`;
      const fixes = [replace(say('unknown-name.fix', { near }), span, near)];
      return problem('wrong-kind.foot', span, { text, near }, { related, fixes });
    }
    const is = article(kindWords([other.kind]));
    const due = article(kind);
    const offer = near ?? (names.length <= 3 ? names[0] : undefined);
    return offer === undefined
      ? problem('wrong-kind', span, { text, is, kind: due }, { related })
      : problem(
          'wrong-kind.near',
          span,
          { text, is, kind: due, near: offer },
          {
            related,
            fixes: [replace(say('unknown-name.fix', { near: offer }), span, offer)],
          },
        );
  }
  const file = scope.elsewhere(text, kinds);
  if (file !== undefined) {
    return problem(
      'unknown-name.use',
      span,
      { kind, text, file },
      {
        fixes: [
          {
            title: say('unknown-name.useFix', { file }),
            edits: [{ span: { start: 0, end: 0 }, text: `use "${file}"\n` }],
            safe: true,
          },
        ],
      },
    );
  }
  const few = [...new Set(names)].slice(0, most);
  if (near === undefined && names.length <= most && few.length > 0)
    return problem('unknown-name.choices', span, { kind, text, choices: few.join(', ') });
  return near === undefined
    ? problem('unknown-name', span, { kind, text })
    : problem(
        'unknown-name.near',
        span,
        { kind, text, near },
        {
          fixes: [replace(say('unknown-name.fix', { near }), span, near)],
        },
      );
}

/** At the start of a sentence; a name stays as it is written. */
const starting = (vehicle: string): string => (vehicle === 'the vehicle' ? 'The vehicle' : vehicle);

function unknownPart(
  { text, span }: Reference,
  scope: NameScope,
  said: Declaration | undefined,
): LanguageProblem {
  const vehicle = (said ?? scope.vehicle)?.name ?? 'the vehicle';
  const parts = scope.parts(said).map((d) => d.name);
  const near = closest(text, parts);
  if (parts.length === 0) return problem('unknown-part.none', span, { vehicle, text });
  if (near === undefined) {
    return problem('unknown-part.choices', span, {
      vehicle: starting(vehicle),
      text,
      choices: parts.join(', '),
    });
  }
  return problem(
    'unknown-part.near',
    span,
    { vehicle: starting(vehicle), text, near },
    {
      fixes: [replace(say('unknown-name.fix', { near }), span, near)],
    },
  );
}

function unknownAxle(
  { text, span }: Reference,
  scope: NameScope,
  said: Declaration | undefined,
): LanguageProblem {
  const vehicle = (said ?? scope.vehicle)?.name ?? 'the vehicle';
  const axles = scope.axles(said).map((d) => d.name);
  return axles.length === 0
    ? problem('unknown-axle', span, { vehicle: starting(vehicle), text })
    : problem('unknown-axle.choices', span, { vehicle: starting(vehicle), text, choices: axles.join(', ') });
}
