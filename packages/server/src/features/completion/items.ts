import type { BlockSchema, BoundBlock, PropertySchema } from '@cribwright/language';
import { allowedIn } from '@cribwright/language';
import type { Declaration, Expected, Kind } from '@cribwright/language/internal';
import { dueOf, exampleOf, figureWords, textLabels } from '@cribwright/language/internal';
import { term, type Words } from '@cribwright/messages';
import { rules } from '@cribwright/rules';
import { type Dimension, unitsOf } from '@cribwright/units';
import { type CompletionItem, CompletionItemKind, InsertTextFormat } from 'vscode-languageserver';
import { fenced, plain } from '../../context/markdown.js';
import { labelOf } from '../document-symbol.js';
import { type Fitted, fitted, type Ground } from './fitting.js';
import { blockSnippet, lineSnippet } from './snippet.js';
import { usingIt } from './unseen.js';

/** What a suggestion is before it is given a place in the text. */
export type Suggestion = Pick<
  CompletionItem,
  | 'label'
  | 'kind'
  | 'detail'
  | 'documentation'
  | 'sortText'
  | 'insertTextFormat'
  | 'filterText'
  | 'preselect'
  | 'additionalTextEdits'
> & { readonly insert: string };

const markdown = (value: string) => ({ kind: 'markdown' as const, value });

/** What a block or a line means, and how it is written. */
const explained = ({ doc, example }: Pick<PropertySchema, 'doc' | 'example'>, words: Words) =>
  markdown(`${plain(words.message(doc))}\n\n${fenced(example)}`);

/** Lines and blocks that may begin here. Those that stand once and are there already are left out. */
export function beginnings(
  container: BoundBlock | 'file',
  ground: Ground,
  words: Words,
): readonly Suggestion[] {
  const fit = (example: string) => fitted(example, container === 'file' ? 'file' : container.schema, ground);
  const { blocks, properties } = allowedIn(container === 'file' ? 'file' : container.schema);
  const said = new Set(container === 'file' ? [] : container.properties.map((p) => p.schema));
  const lines = [...properties.values()].filter((p) => p.repeatable || !said.has(p));
  const numbered = container === 'file' ? undefined : container.schema.numbered;
  return [
    ...(numbered && container !== 'file' ? [nextStep(numbered, container, words)] : []),
    ...lines.map((line) => lineSuggestion(line, fit(line.example), words)),
    ...[...blocks.values()].map((block) => blockSuggestion(block, fit(block.example), words)),
    ...(container === 'file' ? [useSuggestion] : []),
  ];
}

const lineSuggestion = (line: PropertySchema, { text, needs }: Fitted, words: Words): Suggestion => ({
  label: line.key,
  kind: CompletionItemKind.Property,
  detail: line.example,
  documentation: explained(line, words),
  insert: lineSnippet({ ...line, example: text }),
  insertTextFormat: InsertTextFormat.Snippet,
  ...(needs ? { additionalTextEdits: usingIt(needs) } : {}),
  // What a block cannot do without comes first.
  sortText: `${line.required ? 0 : 1}${line.key}`,
});

const blockSuggestion = (block: BlockSchema, { text, needs }: Fitted, words: Words): Suggestion => ({
  label: block.keyword,
  kind: CompletionItemKind.Struct,
  detail: words.message(block.doc),
  documentation: explained(block, words),
  insert: blockSnippet({ ...block, example: text }),
  insertTextFormat: InsertTextFormat.Snippet,
  ...(needs ? { additionalTextEdits: usingIt(needs) } : {}),
  sortText: `2${block.keyword}`,
});

/** `3`: the number that the next line starts with. */
function nextStep(numbered: PropertySchema, { properties }: BoundBlock, words: Words): Suggestion {
  const next = properties.reduce((most, p) => Math.max(most, Number(p.key) || 0), 0) + 1;
  return {
    label: `${next}`,
    kind: CompletionItemKind.Property,
    detail: numbered.example,
    documentation: explained(numbered, words),
    insert: `${next} `,
    sortText: '0',
  };
}

const useSuggestion: Suggestion = {
  label: 'use',
  kind: CompletionItemKind.Keyword,
  insert: `use "${'$'}{1:library/vehicles.crib}"`,
  insertTextFormat: InsertTextFormat.Snippet,
  sortText: '0use',
};

export interface Around {
  /** Every name that may be used at the cursor. */
  readonly visible: readonly Declaration[];
  readonly partsOf: (vehicle: Declaration | undefined) => readonly Declaration[];
  /** What the library has in files that are not used yet. */
  readonly unseen: Ground['unseen'];
  readonly words: Words;
  /** Which units come first. */
  readonly system: 'us' | 'si';
}

/** Suggestions for one thing that the phrase may go on with. */
export function suggestionsFor(expected: Expected, around: Around): readonly Suggestion[] {
  switch (expected.kind) {
    case 'word':
      return [word(expected.word)];
    case 'reference':
      return names(around, expected.kinds);
    case 'part':
      return around.partsOf(expected.vehicle?.target).map((d) => nameSuggestion(d, around.words));
    case 'unit':
      return expected.dimensions.flatMap((dimension) =>
        unitsOf(dimension)
          .filter(({ id }) => id !== '')
          .map(({ id, system }) => ({
            label: id,
            kind: CompletionItemKind.Unit,
            detail: around.words.message(dueOf([dimension])),
            insert: id,
            sortText: `${system === around.system || system === 'both' ? 0 : 1}${id}`,
          })),
      );
    case 'quantity':
      return [
        ...(expected.dimensions.length === 0 ? [] : [amount(expected.dimensions, around.words)]),
        ...names(around, ['value', 'parameter']),
      ];
    case 'rule':
      return rules.map((rule) => {
        const { title, protects } = rule;
        return {
          label: rule.id,
          kind: CompletionItemKind.EnumMember,
          detail: around.words.message(title),
          documentation: markdown(plain(around.words.message(protects))),
          insert: rule.id,
        };
      });
    case 'figure':
      return figureWords.map(word);
    case 'text':
      return [textSuggestion(around.words.message(term(textLabels[expected.label])))];
    case 'date':
      return [filledIn('2027-03-01', around.words.message(term('expected.year-month-day')), '2027-03-01')];
    case 'symbol':
    case 'name':
    case 'size':
    case 'end':
      return [];
  }
}

/** An example that is there to be typed over: `3 ft 4 in` where a length is due. */
const filledIn = (label: string, detail: string, text: string, around = ''): Suggestion => ({
  label,
  kind: CompletionItemKind.Value,
  detail,
  insert: `${around}${'$'}{1:${text}}${around}`,
  insertTextFormat: InsertTextFormat.Snippet,
  sortText: `0${label}`,
});

const textSuggestion = (label: string): Suggestion => filledIn(`"${label}"`, label, label, '"');

const amount = (dimensions: readonly Dimension[], words: Words): Suggestion =>
  filledIn(exampleOf(dimensions), words.message(dueOf(dimensions)), exampleOf(dimensions));

const word = (text: string): Suggestion => ({ label: text, kind: CompletionItemKind.Keyword, insert: text });

/** Names that may be used as they are, then those that bring their `use` line with them. */
export const names = (
  { visible, unseen, words }: Pick<Around, 'visible' | 'unseen' | 'words'>,
  kinds: readonly Kind[],
): readonly Suggestion[] => [
  ...visible.filter((d) => kinds.includes(d.kind)).map((d) => nameSuggestion(d, words)),
  ...unseen(kinds).map((u) => ({
    ...nameSuggestion(u.declaration, words),
    detail: u.file,
    additionalTextEdits: usingIt(u),
    sortText: `2${u.declaration.name}`,
  })),
];

const nameSuggestion = (declaration: Declaration, words: Words): Suggestion => {
  const { block, name, kind } = declaration;
  const own = block?.nameSpan?.start === declaration.nameSpan.start ? block : undefined;
  return {
    label: name,
    kind: CompletionItemKind.Reference,
    detail: own?.type ? `${labelOf(own)} : ${own.type.text}` : kind,
    ...(own ? { documentation: markdown(plain(words.message(own.schema.doc))) } : {}),
    insert: name,
    // What the author's own files declare comes before the library.
    sortText: `${declaration.uri.startsWith('cribwright:') ? 1 : 0}${name}`,
  };
};
