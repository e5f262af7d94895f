import { type List, list, type Message, type Name, name, term } from '@cribwright/messages';
import { closest } from '@cribwright/units';
import type { Declaration, Reference } from '../bound/bound-file.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { aKind, kindWords } from './kind-words.js';
import { renamedName } from './renamed-words.js';
import type { NameScope } from './scope.js';

/** More names than these are no help: completion lists them. */
const most = 16;

/** What to say of a name that means nothing where it stands. */
export const unknownName = (
  reference: Reference,
  scope: NameScope,
  vehicle: Declaration | undefined,
): LanguageProblem => ({ ...toSay(reference, scope, vehicle), about: reference.kinds });

function toSay(reference: Reference, scope: NameScope, vehicle: Declaration | undefined): LanguageProblem {
  const { kinds, text, span } = reference;
  if (kinds.includes('part')) return unknownPart(reference, scope, vehicle);
  if (kinds.includes('axle')) return unknownAxle(reference, scope, vehicle);
  const kind = kindWords(kinds);
  const names = scope.names(kinds).map((d) => d.name);
  const renamed = renamedName(text);
  const near = names.find((name) => name === renamed) ?? closest(text, names);
  const other = scope.findAny(text);
  if (other) {
    const related = [
      {
        uri: other.uri,
        span: other.nameSpan,
        message: problemMessage('wrong-kind--declared', { text: name(text) }),
      },
    ];
    if (kinds.includes('anchor') && other.kind === 'strut') {
      const near = `${text} base`;
      const fixes = [replace(problemMessage('unknown-name--fix', { near: name(near) }), span, near)];
      return problem('wrong-kind--foot', span, { text: name(text), near: name(near) }, { related, fixes });
    }
    const is = aKind([other.kind]);
    const due = aKind(kinds);
    const offer = near ?? (names.length <= 3 ? names[0] : undefined);
    return offer === undefined
      ? problem('wrong-kind', span, { text: name(text), is, kind: due }, { related })
      : problem(
          'wrong-kind--near',
          span,
          { text: name(text), is, kind: due, near: name(offer) },
          {
            related,
            fixes: [replace(problemMessage('unknown-name--fix', { near: name(offer) }), span, offer)],
          },
        );
  }
  const file = scope.elsewhere(text, kinds);
  if (file !== undefined) {
    return problem(
      'unknown-name--use',
      span,
      { kind, text: name(text), file: name(file) },
      {
        fixes: [
          {
            title: problemMessage('unknown-name--use-fix', { file: name(file) }),
            edits: [{ span: scope.usePlace, text: `use "${file}"\n` }],
            safe: true,
          },
        ],
      },
    );
  }
  const few = [...new Set(names)].slice(0, most);
  if (near === undefined && names.length <= most && few.length > 0)
    return problem('unknown-name--choices', span, { kind, text: name(text), choices: nameList(few) });
  return near === undefined
    ? problem('unknown-name', span, { kind, text: name(text) })
    : problem(
        'unknown-name--near',
        span,
        { kind, text: name(text), near: name(near) },
        {
          fixes: [replace(problemMessage('unknown-name--fix', { near: name(near) }), span, near)],
        },
      );
}

const nameList = (all: readonly string[]): List =>
  list(
    all.map((one) => name(one)),
    'plain',
  );

/** The vehicle that is meant, by its name where it has one. */
const vehicleOf = (d: Declaration | undefined): Message | Name =>
  d ? name(d.name) : term('place.the-vehicle');

function unknownPart(
  { text, span }: Reference,
  scope: NameScope,
  said: Declaration | undefined,
): LanguageProblem {
  const vehicle = vehicleOf(said ?? scope.vehicle);
  const parts = scope.parts(said).map((d) => d.name);
  if (scope.find(text, ['vehicle']) && parts[0] !== undefined) {
    const example = name(`${text} ${parts.at(-2) ?? parts[0]}`);
    return problem('unknown-part--vehicle', span, { text: name(text), near: example });
  }
  const without = scope.withoutPart(said, text);
  if (without) {
    const related = [
      {
        uri: without.uri,
        span: without.nameSpan,
        message: problemMessage('unknown-part--without-here', { type: name(without.name) }),
      },
    ];
    const holes = { text: name(text), vehicle, type: name(without.name) };
    return problem('unknown-part--without', span, holes, { related });
  }
  const renamed = renamedName(text);
  const near = parts.find((p) => p === renamed) ?? closest(text, parts);
  if (parts.length === 0) return problem('unknown-part--none', span, { vehicle, text: name(text) });
  if (near === undefined) {
    return problem('unknown-part--choices', span, {
      vehicle,
      text: name(text),
      choices: nameList(parts),
    });
  }
  return problem(
    'unknown-part--near',
    span,
    { vehicle, text: name(text), near: name(near) },
    {
      fixes: [replace(problemMessage('unknown-name--fix', { near: name(near) }), span, near)],
    },
  );
}

function unknownAxle(
  { text, span }: Reference,
  scope: NameScope,
  said: Declaration | undefined,
): LanguageProblem {
  const vehicle = vehicleOf(said ?? scope.vehicle);
  const axles = scope.axles(said).map((d) => d.name);
  return axles.length === 0
    ? problem('unknown-axle', span, { vehicle, text: name(text) })
    : problem('unknown-axle--choices', span, { vehicle, text: name(text), choices: nameList(axles) });
}
