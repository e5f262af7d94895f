import { list, message, name, type Phrase, term, type Words } from '@cribwright/messages';
import type { BlockSchema } from '../bound/block-schema.js';
import { letLine, patternUse } from '../schema/pattern-block.js';
import { allowedIn, schema } from '../schema/schema.js';
import { type DrawnLine, railroadOf } from './railroad.js';

type Draw = (name: string, lines: readonly DrawnLine[]) => readonly string[];

/**
 * The page of the language's syntax in a reader's language, with a drawing for each kind of block.
 *
 * @param page path of the page without `.md`: its drawings lie in a folder of that name
 * @returns paths to texts
 */
export function syntaxPage(page: string, words: Words): Readonly<Record<string, string>> {
  const files: Record<string, string> = {};
  const say = words.message;
  const folder = page.slice(page.lastIndexOf('/') + 1);
  const draw: Draw = (block, lines) => {
    if (lines.length === 0) return [];
    const path = `${anchor(block)}.svg`;
    files[`${page}/${path}`] = railroadOf(block, lines, words);
    return [`![${say(message('reference.lines-of', { block: name(block) }))}](${folder}/${path})`, ''];
  };
  const sections = schema.flatMap((block) => section(block, draw, words));
  const letAndPatterns = say(term('reference.let-and-patterns'));
  files[`${page}.md`] = [
    `# ${say(term('reference.title'))}`,
    '',
    say(term('reference.how-to-read')),
    '',
    say(term('reference.file')),
    '',
    say(message('reference.blocks', { blocks: links(schema.map((b) => b.keyword)) })),
    '',
    ...sections,
    `## ${letAndPatterns}`,
    '',
    `${say(letLine.doc)} ${say(patternUse.doc)}`,
    '',
    ...draw('let and patterns', [
      { key: 'let', phrase: letLine.phrase },
      { key: 'pattern', phrase: patternUse.phrase, numbered: true },
    ]),
    '```crib',
    letLine.example,
    patternUse.example,
    '```',
    '',
  ].join('\n');
  return files;
}

const anchor = (keyword: string): string => keyword.replaceAll(' ', '-');

const links = (keywords: readonly string[]) =>
  list(
    keywords.map((k) => name(`[${k}](#${anchor(k)})`)),
    'plain',
  );

function section(block: BlockSchema, draw: Draw, words: Words): readonly string[] {
  const say = words.message;
  const inner = [...allowedIn(block).blocks.keys()];
  const places = block.within.map((w) =>
    w === 'file' ? term('reference.at-the-top') : message('reference.in-block', { block: name(w) }),
  );
  const numbered = block.numbered ? [block.numbered] : [];
  return [
    `## ${block.keyword}`,
    '',
    `${say(block.doc)} ${say(message('reference.goes', { places: list(places, 'or') }))}`,
    '',
    '```crib',
    block.example,
    '```',
    '',
    ...(inner.length > 0 ? [say(message('reference.blocks-inside', { blocks: links(inner) })), ''] : []),
    ...draw(block.keyword, [
      ...block.properties.map(({ key, phrase }) => ({ key, phrase })),
      ...numbered.map(({ phrase }) => ({ key: say(term('reference.number')), phrase, numbered: true })),
    ]),
    ...[...block.properties, ...numbered].map((p) => {
      const marks: readonly Phrase[] = [
        ...(p.required ? [term('reference.required')] : []),
        ...(p.repeatable ? [term('reference.repeatable')] : []),
      ];
      const line = numbered.includes(p) ? say(term('reference.numbered-lines')) : `\`${p.key}\``;
      return `- ${line}${marks.length === 0 ? '' : ` (${marks.map(say).join(', ')})`}: ${say(p.doc)} \`${p.example}\``;
    }),
    '',
  ];
}
