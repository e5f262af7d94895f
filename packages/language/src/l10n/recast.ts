import { fill, rules } from '@cribwright/engine';
import { rulesEs } from './rules-es.js';
import { phrasesEs, termsEs } from './terms-es.js';

/**
 * What fills a hole, in Spanish: a term, a list of terms, or a whole sentence of a rule that stands inside another.
 * Numbers, names and words of the plan language come back as they are.
 */
export function recast(text: string): string {
  const term = termsEs[text] ?? termsEs[text.charAt(0).toLowerCase() + text.slice(1)];
  if (term !== undefined) return /^[A-Z]/.test(text) ? term.charAt(0).toUpperCase() + term.slice(1) : term;
  for (const [phrase, spanish] of phrasesEs) if (phrase.test(text)) return text.replace(phrase, spanish);
  return /[a-z] .*\.$/.test(text) ? sentence(text) : text;
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
      Object.entries(rule.words).map(([key, words]) => ({ id: `${rule.id}.${key}`, words: String(words) })),
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
