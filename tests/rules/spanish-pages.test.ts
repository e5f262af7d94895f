import { wordsIn } from '@cribwright/messages';
import { rulePage, rules } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import { fencesOf, missingHeadings, proseOf } from './page.js';

const pages = rules.map((rule) => ({
  id: rule.id,
  rule,
  english: rulePage(rule.id, 'en') ?? '',
  spanish: rulePage(rule.id, 'es') ?? '',
}));

/** Texts in quotation marks that a person reads: titles, reasons, cargo. The path of a `use` line is none. */
const quoted = /(?<!^use )"([^"\n]*)"/gm;

/** Plans without comments and quoted texts, which alone are translated. */
const plansOf = (page: string) =>
  fencesOf(page).map(({ kind, text }) => ({
    kind,
    text: text.replace(/\/\/.*$/gm, '//').replace(quoted, '""'),
  }));

const quotedOf = (page: string): readonly string[] =>
  fencesOf(page).flatMap(({ text }) => [...text.matchAll(quoted)].map(([, said]) => said ?? ''));

/** Names of units, which are the same in both languages. */
const names = new Set(['Pine 2']);

const headingLevels = (page: string) => proseOf(page).match(/^#+/gm) ?? [];

/** Numbers of two digits or more, or with a decimal point. A short number may be a word in either language. */
const numbersOf = (page: string) => proseOf(page).match(/\d[\d,.]*\d/g) ?? [];

/** What a person reads and a translator writes: no code, no titles of publications (in italics), no names of rules. */
const translated = (page: string) =>
  rules.reduce(
    (text, { id }) => text.replaceAll(id, ''),
    proseOf(page)
      .replace(/`[^`]*`/g, '')
      .replace(/(?<!\w)_[^_]+_(?!\w)/g, '')
      // Lines of a plan that the page of this rule explains.
      .replace(/^ {4}expect [\w. -]*?(?= {2})/gm, ''),
  );

/** Words of English prose that no Spanish sentence has. */
const english =
  /(?<!\p{L})(?:the|an|and|or|of|if|is|are|was|be|not|with|without|from|for|to|at|on|by|that|this|its?|than|must|may|under|over|only|every|each|both|limit|load|weight|height|width|length|base|strut|strap|chain|wedge|course|timber|crew|plan|safe|unsafe|check|vehicle|truck|ground|slope|policy|source|sources|common|practice|table|section|chapter|calculation|none)(?!\p{L})/giu;

/** Spanish words that are spelled the same. */
const spanishToo = new Set(['base', 'plan', 'a', 'es']);

describe.each(pages)('$id', ({ id, rule, english: en, spanish: es }) => {
  it('has the same plans in both languages', () => {
    expect(plansOf(en).length).toBeGreaterThan(0);
    expect(plansOf(es)).toEqual(plansOf(en));
    expect(fencesOf(es).map((f) => f.expected)).toEqual(fencesOf(en).map((f) => f.expected));
  });

  it('has translated the quoted texts of its plans', () => {
    const [inEnglish, inSpanish] = [quotedOf(en), quotedOf(es)];
    const kept = inSpanish.filter((text, at) => text === inEnglish[at]);
    expect(kept.filter((text) => !names.has(text))).toEqual([]);
  });

  it('has the same headings in both languages', () => {
    expect(missingHeadings(es, 'es')).toEqual([]);
    expect(headingLevels(es)).toEqual(headingLevels(en));
  });

  it('is headed by the name of the rule in both languages', () => {
    const heading = (locale: 'en' | 'es') => {
      const title = wordsIn(locale, 'us').message(rule.title);
      return `# ${id}: ${title[0]?.toLowerCase()}${title.slice(1)}`;
    };
    expect(en.split('\n')[0]).toBe(heading('en'));
    expect(es.split('\n')[0]).toBe(heading('es'));
  });

  it('gives the same numbers in both languages', () => {
    expect(numbersOf(es)).toEqual(numbersOf(en));
  });

  it('has no English left in Spanish', () => {
    const left = (translated(es).match(english) ?? []).filter((word) => !spanishToo.has(word.toLowerCase()));
    expect(left).toEqual([]);
    const sentences = (text: string): readonly string[] =>
      translated(text).match(/[A-Z][^.\n]{12,}\./g) ?? [];
    expect(sentences(es).filter((sentence) => sentences(en).includes(sentence))).toEqual([]);
  });
});

it('sees English that is left', () => {
  expect(translated('El crib is tall.\n').match(english)).toEqual(['is']);
  expect(translated('De _the book of cribs_, `grade of the road`.').match(english)).toBeNull();
});
