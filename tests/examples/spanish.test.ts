import { readdirSync, readFileSync } from 'node:fs';
import { library } from '@cribwright/language';
import { rules } from '@cribwright/rules';
import { beforeAll, describe, expect, it } from 'vitest';
import { MarkupContent } from 'vscode-languageserver-types';
import type { BoundBlock, BoundFile } from '../../packages/language/src/bound/bound-file.js';
import { schema } from '../../packages/language/src/schema/schema.js';
import { englishTexts } from '../../packages/messages/src/generated/texts/english.js';
import { spanishTexts } from '../../packages/messages/src/generated/texts/spanish.js';
import type { FeatureContext } from '../../packages/server/src/context/feature-context.js';
import { plain } from '../../packages/server/src/context/markdown.js';
import { quickFixes } from '../../packages/server/src/features/code-action.js';
import { lensesOf } from '../../packages/server/src/features/code-lens.js';
import { hoverAt } from '../../packages/server/src/features/hover/hover.js';
import { hintsOf } from '../../packages/server/src/features/inlay-hint.js';
import { diagnosticsOf } from '../../packages/server/src/features/publish-diagnostics.js';
import { contextOf } from '../../packages/server/src/testing/context-of.js';
import { root } from './read-plans.js';

const names = readdirSync(`${root}examples`, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.crib'))
  .sort();
const texts = Object.fromEntries(names.map((n) => [n, readFileSync(`${root}examples/${n}`, 'utf8')]));

const written = [...Object.values(texts), ...Object.values(library)];

/** Words of the plan language, and names: the same in both languages. */
const keys = new Set([
  ...schema.flatMap((b) => [b.keyword, ...b.properties.map((p) => p.key)]).flatMap((w) => w.split(' ')),
  ...written.flatMap((text) =>
    [...text.matchAll(/(\w+)\s*(?::\s*\w+\s*)?\{/g)].map(([, name]) => name ?? ''),
  ),
]);
/** The words of a catalog, without the ids and the holes. */
const wordsOf = (catalog: string): readonly string[] =>
  catalog
    .replace(/^[a-z][\w-]* =/gm, '')
    .replace(/\{ (?:\$[\w-]+(?: ->)?|"[^"]*") ?\}?|^ +\*?\[\w+\]/gm, '')
    .toLowerCase()
    .match(/\p{L}{3,}/gu) ?? [];
const spanishWords = new Set(wordsOf(Object.values(spanishTexts()).join('')));
const terms = new Set(
  wordsOf(Object.values(englishTexts()).join('')).filter(
    (word) => !keys.has(word) && !spanishWords.has(word),
  ),
);

/** What stays as somebody wrote it: the comments of the examples. */
const comments = new Set(
  written.flatMap((text) => [...text.matchAll(/\/\/ ?(.*)/g)].map(([, words]) => words ?? '')),
);
/** Titles and notes that somebody put in quotes. */
const quoted = written.flatMap((text) => [...text.matchAll(/"([^"]+)"/g)].map(([, words]) => words ?? ''));
const sources = /common practice|stated in|not known|\bcalculated\b|\bpolicy\b|from memory|invented for/;

/** Ids of rules are written in a plan, and the same in both languages. */
const ruleIds = new RegExp(`(?<![\\w-])(?:${rules.map((r) => r.id).join('|')})(?![\\w-])`, 'g');

/** Without names (a mount of the shipped tractor is called `air-springs`), ids of rules, places as in a plan, files and links. */
const notOurs = (line: string): string =>
  quoted
    .reduce((text, words) => text.replaceAll(words, ''), line)
    .replace(/`[^`]*`|"[^"]*"|\[[a-z-]+\]\(.*?\)|\S+\.crib/g, '')
    .replace(/(?:driver|passenger) side \d/g, '')
    .replaceAll('air-springs', '')
    .replace(ruleIds, '')
    .replace(/^\*\*[a-z]\w*: /, '');

/** Lines with an English word left in them. Sources are titles of English documents, but for the words around. */
function english(text: string): readonly string[] {
  const own = text.replace(/```[\s\S]*?```/g, '');
  return own.split('\n').flatMap((line) => {
    if (line.startsWith('_Fuente: ')) return sources.test(line) ? [line] : [];
    const words = [...comments].some((c) => c !== '' && line.includes(plain(c))) ? '' : line;
    const found =
      notOurs(words)
        .toLowerCase()
        .match(/\p{L}{3,}/gu) ?? [];
    const left = found.filter((word) => terms.has(word));
    return left.length === 0 ? [] : [`${[...new Set(left)].join(' ')}: ${line.trim()}`];
  });
}

let desk: FeatureContext;
beforeAll(() => {
  desk = contextOf(texts, { locale: 'es' });
});

const blocksIn = (blocks: readonly BoundBlock[]): readonly BoundBlock[] =>
  blocks.flatMap((b) => [b, ...blocksIn(b.blocks)]);

/** Every place in a file at which somebody may rest the pointer. */
const places = (file: BoundFile): readonly number[] => [
  ...blocksIn(file.blocks).flatMap((b) => [
    b.headSpan.start,
    ...(b.nameSpan ? [b.nameSpan.start] : []),
    ...b.properties.flatMap((p) => [
      p.keySpan.start,
      ...(p.match?.pieces ?? []).map(({ span }) => span.start),
    ]),
  ]),
];

describe.each(names)('%s', (name) => {
  it('is spoken of in Spanish, with no English word of the trade left', async () => {
    const uri = `memory:/${name}`;
    const checked = await desk.whole(uri, 'push');
    const file = await desk.file(uri);
    if (!file || !checked) throw new Error(`${name} cannot be read`);
    const range = { start: { line: 0, character: 0 }, end: { line: 1e6, character: 0 } };
    const said: string[] = [
      ...diagnosticsOf(desk, file, checked).flatMap((d) => [
        String(d.message),
        ...(d.relatedInformation ?? []).map((r) => r.message),
      ]),
      ...(await quickFixes(desk, file, checked, range)).map((a) => a.title),
      ...lensesOf(desk, file, checked).map((l) => l.command?.title ?? ''),
      ...hintsOf(desk, file, checked, { start: 0, end: file.text.length }).map((h) => String(h.label)),
    ];
    for (const place of places(file)) {
      const contents = (await hoverAt(desk, file, place))?.contents;
      if (MarkupContent.is(contents)) said.push(contents.value);
    }
    expect([...new Set(said.flatMap(english))]).toEqual([]);
  });
});
