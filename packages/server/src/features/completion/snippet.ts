import type { BlockSchema, PropertySchema } from '@cribwright/language';

/** Text for a snippet: its own signs taken as they are. */
export const literal = (text: string): string => text.replace(/[\\$}]/g, '\\$&');

/** A line of a block: its key, then its value to be typed over, or picked where there are few. */
export function lineSnippet({ key, phrase, example }: PropertySchema): string {
  const value = example.slice(key.length).trim();
  if (phrase.kind === 'choice') return `${literal(key)} \${1|${phrase.words.map(choice).join(',')}|}`;
  if (value === '' || !example.startsWith(key)) return literal(example);
  return `${literal(key)} \${1:${literal(value)}}`;
}

const choice = (word: string): string => word.replace(/[\\$},|]/g, '\\$&');

/** A whole block from the schema's example: the name and each value are stops on the way through. */
export function blockSnippet({ example, keyword, head }: BlockSchema): string {
  let stop = 0;
  const next = (text: string): string => `\${${++stop}:${literal(text)}}`;
  return example
    .split('\n')
    .map((line, i) => {
      if (i === 0) return headSnippet(line, keyword, head.name !== 'none', next);
      const parts = /^(\s*)([a-z]+\s+)(.*\S)(\s*)$/.exec(line);
      const [, indent = '', key = '', value = ''] = parts ?? [];
      return parts && value !== '{' && !value.endsWith('{')
        ? `${indent.replaceAll('  ', '\t')}${literal(key)}${next(value)}`
        : literal(line.replace(/^ +/, (s) => s.replaceAll('  ', '\t')));
    })
    .join('\n');
}

/** `crib A {`: the name is the first stop. `plan "Title" {`: the title is. */
function headSnippet(line: string, keyword: string, named: boolean, next: (text: string) => string): string {
  const title = /^(.*?")([^"]*)(".*)$/.exec(line);
  if (title) return `${literal(title[1] ?? '')}${next(title[2] ?? '')}${literal(title[3] ?? '')}`;
  const rest = line.slice(keyword.length);
  const name = named ? /^(\s+)([\w]+)(.*)$/.exec(rest) : null;
  return name
    ? `${literal(keyword + (name[1] ?? ''))}${next(name[2] ?? '')}${literal(name[3] ?? '')}`
    : literal(line);
}
