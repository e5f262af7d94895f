import type { BoundFile } from '@cribwright/language';
import { allowedIn } from '@cribwright/language';
import { expectedAt, partsOf, scopeAt, visibleAt } from '@cribwright/language/internal';
import { wordsIn } from '@cribwright/messages';
import {
  type CompletionItem,
  CompletionItemKind,
  CompletionTriggerKind,
  InsertTextFormat,
} from 'vscode-languageserver';
import type { Feature } from '../../context/feature.js';
import type { FeatureContext } from '../../context/feature-context.js';
import { offsetAt, rangeOf } from '../../context/positions.js';
import { relative } from '../../context/relative-path.js';
import { bundledUris } from '../bundled-files.js';
import { calculationSuggestions } from './calculation.js';
import { beginnings, names, type Suggestion, suggestionsFor } from './items.js';
import { type CursorPlace, placeAt } from './place.js';
import { unseenIn } from './unseen.js';

/** `textDocument/completion`: only what may stand at the cursor: lines, names of the right kind, units, words. */
export const completion: Feature = {
  offers: () => ({ completionProvider: { triggerCharacters: [' ', ':', '"', '/', '('] } }),
  serve(session) {
    const snippets = session.client.textDocument?.completion?.completionItem?.snippetSupport === true;
    session.connection.onCompletion(async ({ textDocument, position, context }) => {
      const file = await session.file(textDocument.uri);
      if (!file) return null;
      const offset = offsetAt(file, position);
      const asked = context?.triggerKind !== CompletionTriggerKind.TriggerCharacter;
      const items = await completionsAt(session, file, offset, asked);
      return snippets ? items : items.map(withoutStops);
    });
  },
};

/** `asked`: by a key or a letter. A space alone brings up nothing at the start of a line. */
export async function completionsAt(
  desk: FeatureContext,
  file: BoundFile,
  offset: number,
  asked = true,
): Promise<CompletionItem[]> {
  const place = placeAt(file, offset);
  if (!place) return [];
  if (place.quoted) return place.before[0]?.text === 'use' ? paths(desk, file, place.quoted) : [];
  const starting = place.before.length === 0;
  if (starting && !asked) return [];
  const found = [
    ...lineStarts(desk, file, place, offset),
    ...(starting ? [] : continuing(desk, file, place)),
  ];
  const range = rangeOf(file, { start: place.wordStart, end: offset });
  const unique = new Map(found.map((s) => [`${s.label} ${s.kind}`, s]));
  return [...unique.values()].map(({ insert, ...rest }) => ({
    ...rest,
    textEdit: { range, newText: insert },
  }));
}

/** Keys may be of several words: `height ra` goes on to `height ratio all contacts`. */
function lineStarts(
  desk: FeatureContext,
  file: BoundFile,
  place: CursorPlace,
  offset: number,
): readonly Suggestion[] {
  const typed = file.text.slice(place.statementStart, place.wordStart).replace(/\s+/g, ' ');
  if (place.before.some((t) => t.kind !== 'word')) return [];
  const scope = scopeAt(desk.workspace, file, place.wordStart);
  if (!scope) return [];
  const inside = place.container === 'file' ? [] : place.container.blocks.flatMap((b) => b.name ?? []);
  const ground = {
    scope,
    taken: new Set([...visibleAt(desk.workspace, file, place.wordStart).map((d) => d.name), ...inside]),
    unseen: unseenIn(desk.workspace, file),
  };
  return beginnings(place.container, ground, wordsIn(desk.locale, 'us'))
    .filter(({ label }) => label.startsWith(typed) && (typed === '' || label.length > typed.length))
    .map((s) =>
      typed === ''
        ? s
        : { ...s, insert: s.insert.slice(typed.length), filterText: s.label.slice(typed.length) },
    )
    .filter(({ insert }) => insert !== '' && offset >= place.statementStart);
}

function continuing(desk: FeatureContext, file: BoundFile, place: CursorPlace): readonly Suggestion[] {
  const visible = visibleAt(desk.workspace, file, place.wordStart);
  const around = {
    visible,
    partsOf: (vehicle: Parameters<typeof partsOf>[1]) =>
      partsOf(desk.workspace, vehicle, file, place.wordStart),
    unseen: unseenIn(desk.workspace, file),
    words: wordsIn(desk.locale, 'us'),
    system: systemOf(file),
  };
  const type = typeKinds(place);
  // No type extends itself.
  const own = place.before.at(-2)?.text;
  if (type) return names(around, type).filter(({ label }) => label !== own);
  return (
    calculationSuggestions(place, around) ??
    expectedAt(desk.workspace, file, place.wordStart).flatMap((e) => suggestionsFor(e, around))
  );
}

/** After the colon of a head: the kinds of types that may stand there. */
function typeKinds({ before, container }: CursorPlace) {
  if (before.at(-1)?.text !== ':') return undefined;
  const words = before.map((t) => t.text).join(' ');
  const { blocks } = allowedIn(container === 'file' ? 'file' : container.schema);
  const block = [...blocks.values()]
    .filter((b) => words.startsWith(`${b.keyword} `))
    .sort((a, b) => b.keyword.length - a.keyword.length)[0];
  return block?.head.type?.kinds;
}

/** Files that a `use` line may name: the library, and the plans of the folder by the path from here. */
async function paths(
  desk: FeatureContext,
  file: BoundFile,
  span: { start: number; end: number },
): Promise<CompletionItem[]> {
  const range = rangeOf(file, span);
  const here = file.uri.slice(0, file.uri.lastIndexOf('/') + 1);
  const own = (await desk.everyFile())
    .filter((f) => f.uri !== file.uri)
    .map((f) => relative(here, f.uri))
    .filter((path) => path !== undefined);
  const bundled = bundledUris().map((uri) => uri.replace('cribwright:/', ''));
  return [...bundled, ...own].map((path) => ({
    label: path,
    kind: CompletionItemKind.File,
    textEdit: { range, newText: path },
  }));
}

const systemOf = (file: BoundFile): 'us' | 'si' => (/\bunits\s+si\b/.test(file.text) ? 'si' : 'us');

/** For a client without snippets: the same words, without the stops. */
function withoutStops(item: CompletionItem): CompletionItem {
  if (item.insertTextFormat !== InsertTextFormat.Snippet || !item.textEdit) return item;
  const newText = item.textEdit.newText
    .replace(/\$\{\d+\|((?:\\.|[^,|\\])*)[^}]*\|\}/g, '$1')
    .replace(/\$\{\d+:((?:\\.|[^}\\])*)\}/g, '$1')
    .replace(/\\([\\$},|])/g, '$1');
  return { ...item, insertTextFormat: InsertTextFormat.PlainText, textEdit: { ...item.textEdit, newText } };
}
