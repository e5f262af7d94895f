import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { englishTexts } from '../packages/messages/src/generated/texts/english.js';

const root = new URL('..', import.meta.url).pathname;

/** Words that no reader may meet, and what US rescue training says instead. */
const replaced: readonly (readonly [RegExp, string])[] = [
  [/\btyres?\b/i, 'tire'],
  [/\bcent(?:re[ds]?|ring)\b/i, 'center'],
  [/\b\w*metres?\b/i, 'meter'],
  [/\bcolour\w*/i, 'color'],
  [/\bgrey\b/i, 'gray'],
  [/\baluminium\b/i, 'aluminum'],
  [/\b(?:labour|neighbour|behaviour|favour|honour)\w*/i, 'labor, neighbor, behavior, favor, honor'],
  [/\b\w+(?:alis|ilis|nis|gnis)(?:e[ds]?|ing|ation)\b(?<!promise[ds]?|promising)/i, '-ize'],
  [/\b(?:catalogue|licence|programme|judgement|storey|kerb|whilst|amongst)[ds]?\b/i, 'the US spelling'],
  [/\b(?:labell|modell|travell|cancell)(?:ed|ing)\b/i, 'one l'],
  [/\btowards\b/i, 'toward'],
  [/\block(?:ed)? backed off\b/i, 'lock collar'],
  [/\bchocks? step\b/i, 'wheel chocks (step 3)'],
  [/\bways? out\b/i, 'egress'],
  [/\blanding legs?\b/i, 'landing gear'],
  [/\bside rails?\b/i, 'bottom rail, frame rail'],
  [/\bfoot plates?\b/i, 'base plate'],
  [/\bstrut(?:’s|'s)? (?:foot|feet)\b/i, 'strut base'],
  [/\bmade fast\b/i, 'anchored'],
  [/\bstraps?, chains? or ropes?\b/i, 'strap, chain or wire rope'],
  [/\bways both\b/i, 'both directions'],
  [/\bunits respond\b(?! to)/i, 'responding'],
  [/\bheading facing\b/i, 'heading opposite'],
  [/\bposture\b/i, 'position'],
  [/\b(?:across|along)(?: the)? grain\b/i, 'perpendicular, parallel to grain'],
  [/\bthe ground takes\b/i, 'allowable bearing'],
  [/\bfalls \d/i, 'slopes down'],
  [/\btime line\b/i, 'timeline'],
  [/\bturn it\b/i, 'rotate'],
  [/\b\d+ on it\b/i, 'crew of 1'],
  [/\blook(?:s|ed)? again\b/i, 'warning; check'],
  [/\bnobody (?:says|knows|has said)\b/i, 'not stated'],
  [/\bset-ups?\b/i, 'stabilization system, the plan'],
  [/\bguard rails?\b/i, 'guardrail'],
  [/\b(?:afresh|anew)\b/i, 'again, restart'],
  [/\bthe sums?\b(?! of)/i, 'the calculation'],
  [/\b(?:its|their|with the) sums?\b/i, 'calculation'],
  [/\btaken for granted\b/i, 'assumptions'],
  [/\bon the scene it differs\b/i, 'changes on scene'],
  [/\b(?:Short|Long|Tall)Strut\b/, 'named by reach: Strut4to8ft'],
  [/\b(?:Capt\.|Captain) [A-Z]/, 'a role: training captain'],
  [/\bmay stand\b/i, 'the limit is'],
  [/\b(?:is|are) held to\b/i, 'the limit is'],
  [/\b(?:worked|works) out\b/i, 'calculated'],
  [/\bworth knowing\b/i, 'note'],
  [/\bput (?:it )?right\b/i, 'fix'],
];

/** Names in the code that were replaced by those of compilers, language servers and structural mechanics. */
const replacedNames: readonly (readonly [RegExp, string])[] = [
  [
    /\b(?:Desk|Cast|Making|Writing|Said|Sayable)\b(?! [a-z])/,
    'context, lowering context, property value, allowed',
  ],
  [/\b(?:stir|breath|glance|hurry|willing)\b/, 'debounce and the like'],
  [/\belaboration\b/i, 'lowering'],
];

const read = (path: string): string => readFileSync(join(root, path), 'utf8');

const filesIn = (folder: string, fits: (path: string) => boolean): readonly string[] =>
  readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((f) => f.isFile() && !/\b(?:dist|node_modules|generated)\b/.test(f.parentPath))
    .map((f) => relative(root, join(f.parentPath, f.name)))
    .filter(fits)
    .sort();

/** Lines of a text that have one of the words: where, what it is, what to say instead. */
const hits = (
  path: string,
  text: string,
  words: readonly (readonly [RegExp, string])[] = replaced,
): readonly string[] =>
  text.split('\n').flatMap((line, i) =>
    words.flatMap(([word, instead]) => {
      const found = word.exec(line)?.[0];
      return found === undefined ? [] : [`${path}:${i + 1}: "${found}": ${instead}`];
    }),
  );

const pages = [
  'README.md',
  'DEVELOPERS.md',
  ...filesIn('examples', () => true),
  ...filesIn('packages', (p) => /\/docs\/[^/]*\.md$|\/walkthrough\/.*\.md$|\/rule\.md$/.test(p)),
  ...filesIn('packages/language/src/library', (p) => p.endsWith('.crib')),
];
const catalogs = filesIn('packages', (p) => p.endsWith('/messages.en.ftl'));
const manifests = [
  'package.json',
  'packages/extension/nls/manifest.es.json',
  'packages/extension/l10n/bundle.l10n.es.json',
  'packages/cli/schema/check.schema.json',
  'syntaxes/cribwright.code-snippets.json',
];
const code = filesIn('packages', (p) => /\/src\/.*\.tsx?$/.test(p));

describe('what a reader may meet', () => {
  it.each([
    'Crib A may stand 48 in.',
    'The centre of the tyre',
    'Nobody says how',
    'by "Captain Vale"',
    'stabilised',
  ])('a text with “%s” would be found', (text) => expect(hits('x', `well\n${text}`)[0]).toMatch(/^x:2: /));

  it('is looked at where it is', () => {
    expect(pages.length).toBeGreaterThan(60);
    expect(catalogs.length).toBeGreaterThan(50);
    expect(code.length).toBeGreaterThan(500);
  });

  it.each([...pages, ...catalogs, ...manifests])('%s', (path) => {
    expect(hits(path, read(path))).toEqual([]);
  });

  it('in the texts that bundles hold', () => {
    expect(hits('english', Object.values(englishTexts()).join(''))).toEqual([]);
  });
});

it('has no name in the code that was replaced', () => {
  expect(hits('x', 'const desk: Desk = 1;', replacedNames)).toHaveLength(1);
  expect(code.flatMap((path) => hits(path, read(path), replacedNames))).toEqual([]);
});
