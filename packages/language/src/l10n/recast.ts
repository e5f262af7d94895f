import { rules } from '@cribwright/engine';
import { phraseEs } from './phrase-es.js';
import { rulesEs } from './rules-es.js';

/**
 * What fills a hole, in Spanish: a term, a list of terms, or a whole sentence of a rule that stands inside another.
 * Numbers, names and words of the plan language come back as they are.
 */
export function recast(text: string): string {
  const whole = /[a-z] .*\.$/.test(text) ? sentence(text) : text;
  return whole === text ? phraseEs(text) : whole;
}

function sentence(text: string): string {
  for (const { id, pattern, holes } of sentences()) {
    const found = pattern.exec(text);
    const spanish = rulesEs[id];
    if (!found || spanish === undefined) continue;
    return fill(spanish, Object.fromEntries(holes.map((hole, i) => [hole, recast(found[i + 1] ?? '')])));
  }
  return text;
}

interface Sentence {
  readonly id: string;
  readonly pattern: RegExp;
  readonly holes: readonly string[];
}

let known: readonly Sentence[] | undefined;

/** The rules' English sentences as patterns, the one with most fixed words first. */
const sentences = (): readonly Sentence[] => {
  known ??= rules
    .flatMap((rule) =>
      Object.entries(rule.words ?? {}).map(([key, words]) => ({
        id: `${rule.id}.${key}`,
        words: String(words),
      })),
    )
    .filter(({ words }) => words.endsWith('.'))
    .sort((a, b) => fixed(b.words) - fixed(a.words))
    .map(({ id, words }) => ({
      id,
      pattern: new RegExp(
        `^${words
          .split(/\{[^}]+\}/)
          .map((w) => w.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
          .join('(.+?)')}$`,
      ),
      holes: [...words.matchAll(/\{([^}]+)\}/g)].map((m) => m[1] ?? ''),
    }));
  return known;
};

const fixed = (words: string): number => words.replace(/\{[^}]+\}/g, '').length;

/** Puts the holes' contents into words. An unknown hole stays visible. */
const fill = (words: string, holes: Readonly<Record<string, string>>): string =>
  words.replace(/\{([^{}]+)\}/g, (whole, name: string) => holes[name] ?? whole);
