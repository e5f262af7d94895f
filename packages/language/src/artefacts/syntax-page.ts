import type { BlockSchema } from '../bound/block-schema.js';
import { letLine, patternUse } from '../schema/pattern-block.js';
import { allowedIn, schema } from '../schema/schema.js';
import { type DrawnLine, railroadOf } from './railroad.js';

/** The page of the language's syntax, with a drawing for each kind of block. Paths to texts. */
export function syntaxPage(folder: string): Readonly<Record<string, string>> {
  const files: Record<string, string> = {};
  const draw = (name: string, lines: readonly DrawnLine[]): readonly string[] => {
    if (lines.length === 0) return [];
    const path = `syntax/${anchor(name)}.svg`;
    files[`${folder}/${path}`] = railroadOf(name, lines);
    return [`![The lines of ${name}](${path})`, ''];
  };
  const sections = schema.flatMap((block) => section(block, draw));
  files[`${folder}/syntax.md`] = [
    '# The plan language, line by line',
    '',
    'Made from the schema. Read a drawing from left to right, along the line: rounded boxes are words to write, square',
    'boxes are what to fill in. Where the line parts, either way is right; where it runs back, the piece may be repeated.',
    '',
    'Every file holds `use "file.crib"` lines, `let` lines and blocks. A statement ends at the end of its line or at `;`. A',
    'line that ends in a comma goes on in the next one. `//` starts a comment, `/*` and `*/` enclose one.',
    '',
    `Blocks: ${schema.map((b) => `[${b.keyword}](#${anchor(b.keyword)})`).join(', ')}.`,
    '',
    ...sections,
    '## let and patterns',
    '',
    `${letLine.doc} ${patternUse.doc}`,
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

function section(
  block: BlockSchema,
  draw: (name: string, lines: readonly DrawnLine[]) => readonly string[],
): readonly string[] {
  const inner = [...allowedIn(block).blocks.keys()];
  const where = block.within.map((w) => (w === 'file' ? 'at the top of a file' : `in \`${w}\``)).join(', ');
  const numbered = block.numbered ? [block.numbered] : [];
  return [
    `## ${block.keyword}`,
    '',
    `${block.doc} Stands ${where}.`,
    '',
    '```crib',
    block.example,
    '```',
    '',
    ...(inner.length > 0
      ? [`Blocks inside: ${inner.map((k) => `[${k}](#${anchor(k)})`).join(', ')}.`, '']
      : []),
    ...draw(block.keyword, [
      ...block.properties.map(({ key, phrase }) => ({ key, phrase })),
      ...numbered.map(({ phrase }) => ({ key: 'number', phrase, numbered: true })),
    ]),
    ...[...block.properties, ...numbered].map((p) => {
      const marks = [p.required ? 'needed' : '', p.repeatable ? 'may be repeated' : '']
        .filter(Boolean)
        .join(', ');
      const name = numbered.includes(p) ? 'numbered lines' : `\`${p.key}\``;
      return `- ${name}${marks === '' ? '' : ` (${marks})`}: ${p.doc} \`${p.example}\``;
    }),
    '',
  ];
}
