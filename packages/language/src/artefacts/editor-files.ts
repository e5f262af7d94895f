import { wordsIn } from '@cribwright/messages';
import type { BlockSchema } from '../bound/block-schema.js';
import { schema } from '../schema/schema.js';

/** Brackets, comments and indentation for an editor. */
export const languageConfiguration = (): object => ({
  comments: { lineComment: '//', blockComment: ['/*', '*/'] },
  brackets: [
    ['{', '}'],
    ['(', ')'],
  ],
  autoClosingPairs: [
    { open: '{', close: '}' },
    { open: '(', close: ')' },
    { open: '"', close: '"', notIn: ['string', 'comment'] },
    { open: '/*', close: ' */', notIn: ['string'] },
  ],
  surroundingPairs: [
    ['{', '}'],
    ['(', ')'],
    ['"', '"'],
  ],
  wordPattern: '[A-Za-z_\\u00C0-\\u024F][\\w\\u00C0-\\u024F]*(?:-[A-Za-z_][\\w]*)*|\\d+(?:[.,]\\d+)*',
  indentationRules: {
    increaseIndentPattern: '^[^/"]*\\{[^}"]*(//.*)?$',
    decreaseIndentPattern: '^\\s*\\}',
  },
  onEnterRules: [
    { beforeText: '^[^/"]*\\{\\s*$', afterText: '^\\s*\\}', action: { indent: 'indentOutdent' } },
  ],
  folding: { markers: { start: '^\\s*//\\s*#region\\b', end: '^\\s*//\\s*#endregion\\b' } },
});

/** A snippet for every kind of block, from its example. In English: the editor reads one file for all languages. */
export const snippets = (): object =>
  Object.fromEntries(
    schema.map((block) => [
      `${block.keyword} block`,
      {
        prefix: block.keyword,
        body: snippetOf(block).split('\n'),
        description: wordsIn('en', 'us').message(block.doc),
      },
    ]),
  );

/** The example of a block with a tab stop at its name and at what each of its lines says. */
export function snippetOf(block: BlockSchema): string {
  let stop = 0;
  const hole = (text: string) => `\${${++stop}:${text.replace(/[\\$}]/g, '\\$&')}}`;
  const keys = block.properties.map((p) => p.key).sort((a, b) => b.length - a.length);
  return block.example
    .split('\n')
    .map((line, index) => {
      if (index === 0) return headSnippet(line, block, hole);
      const indent = /^\s*/.exec(line)?.[0] ?? '';
      const words = line.slice(indent.length);
      const key = keys.find((k) => words === k || words.startsWith(`${k} `));
      if (!key) return `${'\t'.repeat(Math.round(indent.length / 2))}${words.replace(/[\\$]/g, '\\$&')}`;
      const rest = words.slice(key.length);
      const gap = /^\s*/.exec(rest)?.[0] ?? '';
      const said = rest.slice(gap.length);
      return `${'\t'.repeat(Math.round(indent.length / 2))}${key}${gap}${said === '' ? '' : hole(said)}`;
    })
    .join('\n');
}

function headSnippet(line: string, block: BlockSchema, hole: (text: string) => string): string {
  const rest = line.slice(block.keyword.length);
  const filled = rest.replace(/^( )([A-Za-z_]\w*|\d+|"[^"]*")/, (_, gap: string, word: string) =>
    word.startsWith('"') ? `${gap}"${hole(word.slice(1, -1))}"` : `${gap}${hole(word)}`,
  );
  return `${block.keyword}${filled}`;
}
