import { wordsIn } from '@cribwright/messages';
import { parse } from '@cribwright/syntax';
import { describe, expect, it } from 'vitest';
import { everyProperty } from '../artefacts/vocabulary.js';
import { matchLine } from '../phrase/matcher.js';
import type { NameScope } from '../phrase/scope.js';
import { allowedIn, schema } from './schema.js';

const anything = (kinds: readonly string[]) =>
  ({
    uri: 'u',
    kind: kinds[0] ?? 'crib',
    name: 'x',
    nameSpan: { start: 0, end: 1 },
    block: undefined,
    span: { start: 0, end: 1 },
    scope: undefined,
  }) as ReturnType<NameScope['find']>;

/** A place where every name that starts like one is known, so that an example need only be well formed. */
const knowing: NameScope = {
  withoutPart: () => undefined,
  usePlace: { start: 0, end: 0 },
  uri: 'u',
  find: (name, kinds) =>
    kinds.includes('parameter') && kinds.length <= 2 && kinds[0] === 'value'
      ? undefined
      : /^[A-Z]|^(trailer|car|tractor|axle|asphalt|gravel)/.test(name)
        ? anything(kinds)
        : undefined,
  findAny: () => undefined,
  names: () => [],
  part: (_, name) =>
    /^(rail|joists?|roof|frame|rocker|sills|hood)$/.test(name) ? anything(['part']) : undefined,
  parts: () => [],
  typeUnknown: () => false,
  axle: () => anything(['axle']),
  axles: () => [],
  vehicle: undefined,
  openParts: false,
  vectorOf: () => undefined,
  elsewhere: () => undefined,
  rules: new Set(['crib-height', 'strut-one-sided']),
};

describe('the example of every line', () => {
  it.each(everyProperty.filter((p) => p.key !== 'pattern use').map((p) => [p.key, p] as const))(
    '%s can be read',
    (key, property) => {
      const [statement] = parse(property.example).statements;
      const numbered = /^\d/.test(property.example);
      const from = numbered ? 1 : key.split(' ').length;
      const terms = statement?.terms ?? [];
      if (!numbered) expect(property.example.startsWith(key)).toBe(true);
      const { match, stop } = matchLine({
        terms,
        from,
        pattern: property.phrase,
        scope: knowing,
        text: property.example,
      });
      expect(match?.problems, `${property.example} stops at ${terms[stop.at]?.text}`).toEqual([]);
    },
  );
});

describe('every block', () => {
  it.each(schema.map((b) => [b.keyword, b] as const))(
    '%s has an example of its own kind, and words that say what it is',
    (keyword, block) => {
      expect(block.example.startsWith(keyword)).toBe(true);
      expect(parse(block.example).issues).toEqual([]);
      for (const { doc } of [block, ...block.properties])
        for (const locale of ['en', 'es'] as const) {
          const text = wordsIn(locale, 'us').message(doc);
          expect(text, doc.id).toMatch(/^\p{Lu}.*\.$/su);
          expect(text === wordsIn('en', 'us').message(doc), doc.id).toBe(locale === 'en');
        }
    },
  );

  it('names no key twice in one place', () => {
    for (const block of schema) {
      const keys = [...block.properties.map((p) => p.key), ...allowedIn(block).blocks.keys()];
      expect(new Set(keys).size, block.keyword).toBe(keys.length);
    }
  });
});
