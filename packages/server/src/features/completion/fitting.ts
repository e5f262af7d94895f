import type { BlockSchema } from '@cribwright/language';
import { allowedIn } from '@cribwright/language';
import type { AllowedLines, Declaration, Kind, NameScope, Reference } from '@cribwright/language/internal';
import { freeName, keyAt, matchLine } from '@cribwright/language/internal';
import { parse } from '@cribwright/syntax';
import type { Span, SyntaxStatement } from '@cribwright/syntax/internal';
import type { Unseen } from './unseen.js';

/** Where an example is to stand. */
export interface Ground {
  readonly scope: NameScope;
  /** Names that a new block there must not have. */
  readonly taken: ReadonlySet<string>;
  readonly unseen: (kinds: readonly Kind[]) => readonly Unseen[];
}

/** An example in the words of the plan at hand, and what it needs that the file does not use yet. */
export interface Fitted {
  readonly text: string;
  readonly needs: Unseen | undefined;
}

/**
 * Makes an example fit where it is to stand: what it names is what is there, and what it declares has a name of its
 * own. Where nothing of that kind is there, the name of the example stays: it is typed over.
 */
export function fitted(example: string, within: BlockSchema | 'file', ground: Ground): Fitted {
  const changes: { readonly span: Span; readonly text: string }[] = [];
  const used = new Set<string>();
  let needs: Unseen | undefined;

  const stand = ({ span, text, kinds }: Pick<Reference, 'span' | 'text' | 'kinds'>): void => {
    const there = candidates(ground.scope, kinds).filter((d) => d.name !== text);
    const library = ground.unseen(kinds).find((u) => u.declaration.name === text);
    const own = there.filter((d) => !d.uri.startsWith('cribwright:'));
    const next = own.find((d) => !used.has(d.name)) ?? own[0];
    if (!next && library) {
      needs = library;
      return;
    }
    const name = (next ?? there.find((d) => !used.has(d.name)) ?? there[0])?.name;
    if (name === undefined) return;
    used.add(name);
    changes.push({ span, text: name });
  };

  const line = (s: SyntaxStatement, sayable: AllowedLines): void => {
    const found = keyAt(s.terms, sayable);
    const property = found?.property ?? (s.terms[0]?.kind === 'number' ? sayable.numbered : undefined);
    if (!property) return;
    const from = found?.property ? found.length : 1;
    const { match } = matchLine({
      terms: s.terms,
      from,
      pattern: property.phrase,
      scope: ground.scope,
      text: example,
    });
    const unknown = (match?.references ?? []).filter((r) => !r.target);
    // A sum of things that are not there yet is better begun with a plain value.
    if (property.key === 'let' && (!match || unknown.length > 0))
      changes.push({ span: s, text: 'let gap = 1.5 in' });
    else for (const reference of unknown) stand(reference);
  };

  const block = (s: SyntaxStatement, sayable: AllowedLines, outermost: boolean): void => {
    const found = keyAt(s.terms, sayable);
    const schema = found?.block;
    if (!schema || (!s.body && found.property)) {
      line(s, sayable);
      return;
    }
    const name = s.terms[found.length];
    if (outermost && name?.kind === 'word' && ground.taken.has(name.text)) {
      const free = freeName(name.text, (n) => ground.taken.has(n));
      changes.push({ span: name, text: free });
    }
    const colon = s.terms.findIndex((t) => t.text === ':');
    const type = s.terms[colon + 1];
    const kinds = schema.head.type?.kinds;
    if (colon >= 0 && type && kinds && !ground.scope.find(type.text, kinds))
      stand({ span: type, text: type.text, kinds });
    // A block of its own names what stands in it: its lines cannot be told from out here.
    if (schema.ownScope) return;
    const inner = allowedIn(schema);
    for (const one of s.body?.statements ?? []) block(one, inner, false);
  };

  for (const s of parse(example).statements) block(s, allowedIn(within), true);
  const text = [...changes]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((now, c) => now.slice(0, c.span.start) + c.text + now.slice(c.span.end), example);
  return { text, needs };
}

function candidates(scope: NameScope, kinds: readonly Kind[]): readonly Declaration[] {
  if (kinds.includes('axle')) return scope.axles(undefined);
  if (!kinds.includes('part')) return scope.names(kinds);
  const parts = scope.parts(undefined);
  const bearing = parts.filter((p) => p.block?.properties.some((line) => line.schema.key === 'may bear'));
  return [...bearing, ...parts];
}
