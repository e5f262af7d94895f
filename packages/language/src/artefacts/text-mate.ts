import { vocabulary } from './vocabulary.js';

const language = 'cribwright';
const scope = (name: string): string => `${name}.${language}`;

/** Words as one regular expression, whole words only, any stretch of blanks between two words of one. */
const anyOf = (words: readonly string[]): string =>
  `(?:${words.map((w) => w.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&').replaceAll(' ', '[ \\t]+')).join('|')})(?![\\w-])`;

/** What may stand before the first word of a statement. */
const start = '(^|[{;])([ \\t]*)';
const name = '[A-Za-z_\\u00C0-\\u024F][\\w\\u00C0-\\u024F]*(?:-[A-Za-z_][\\w]*)*';

/** The coloring grammar for editors, made from the schema. Semantic colors lie over it where a server runs. */
export function textMateGrammar(): object {
  const v = vocabulary();
  const heading = (captures: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(captures).map(([k, s]) => [k, { name: scope(s) }]));
  return {
    $schema: 'https://raw.githubusercontent.com/martinring/tmlanguage/master/tmlanguage.json',
    name: 'Cribwright',
    scopeName: `source.${language}`,
    fileTypes: ['crib'],
    patterns: [
      { include: '#comments' },
      { include: '#use' },
      { include: '#let' },
      { include: '#block' },
      { include: '#key' },
      { include: '#step' },
      { include: '#inside' },
    ],
    repository: {
      comments: {
        patterns: [
          { name: scope('comment.block'), begin: '/\\*', end: '\\*/' },
          { name: scope('comment.line.double-slash'), match: '//.*$' },
        ],
      },
      use: {
        match: `${start}(use)[ \\t]+(?=")`,
        captures: heading({ 1: 'punctuation.section.block', 3: 'keyword.control.import' }),
      },
      let: {
        match: `${start}(let)[ \\t]+(${name})`,
        captures: heading({
          1: 'punctuation.section.block',
          3: 'keyword.other.let',
          4: 'variable.other.constant',
        }),
      },
      block: {
        patterns: [
          {
            match: `${start}(${anyOf(v.blocks)})[ \\t]+(${name}|\\d+)([ \\t]*:[ \\t]*)(${name})`,
            captures: heading({
              1: 'punctuation.section.block',
              3: 'storage.type.block',
              4: 'entity.name.type',
              5: 'punctuation.separator.type',
              6: 'entity.other.inherited-class',
            }),
          },
          {
            match: `${start}(${anyOf(v.blocks)})[ \\t]+(${name}|\\d+)(?=[ \\t]*(?:"[^"]*"?[ \\t]*)?[({])`,
            captures: heading({
              1: 'punctuation.section.block',
              3: 'storage.type.block',
              4: 'entity.name.type',
            }),
          },
          {
            match: `${start}(${anyOf(v.blocks)})(?=[ \\t]*(?:"[^"]*"?[ \\t]*)?(?:\\{|$))`,
            captures: heading({ 1: 'punctuation.section.block', 3: 'storage.type.block' }),
          },
        ],
      },
      key: {
        match: `${start}(${anyOf(v.keys)})`,
        captures: heading({ 1: 'punctuation.section.block', 3: 'support.type.property-name' }),
      },
      step: {
        match: `${start}(\\d[\\d,]*)(?=[ \\t]+[A-Za-z])`,
        captures: heading({ 1: 'punctuation.section.block', 3: 'constant.numeric.step' }),
      },
      inside: {
        patterns: [
          { include: '#comments' },
          { name: scope('string.quoted.double'), match: '"[^"\\r\\n]*"?' },
          { name: scope('constant.other.date'), match: '\\b\\d{4}-\\d{2}-\\d{2}\\b' },
          { name: scope('constant.other.size'), match: '\\b\\d+x\\d+\\b' },
          {
            match: `((?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?(?:[ \\t]+\\d+/\\d+|/\\d+|[½¼¾⅓⅔⅛⅜⅝⅞])?|[½¼¾⅓⅔⅛⅜⅝⅞])(?:([ \\t]*)(${anyOf(v.units.filter((u) => /^[A-Za-z]/.test(u)))}|%|°)|()("|''?))?`,
            captures: heading({ 1: 'constant.numeric', 3: 'keyword.other.unit', 5: 'keyword.other.unit' }),
          },
          { name: scope('entity.name.function.rule'), match: '\\b[a-z]+(?:-[a-z]+)+\\b' },
          { name: scope('support.constant'), match: `\\b${anyOf(v.choices)}` },
          { name: scope('keyword.other.phrase'), match: `\\b${anyOf(v.words)}` },
          { name: scope('keyword.operator'), match: '±|[+\\-*/=]' },
          { name: scope('punctuation.separator'), match: '[,:;]' },
          { name: scope('punctuation.section.block'), match: '[{}]' },
          { name: scope('punctuation.section.parens'), match: '[()]' },
          { name: scope('variable.other'), match: name },
        ],
      },
    },
  };
}
