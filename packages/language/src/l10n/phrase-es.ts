import { figurePhrasesEs, figuresEs } from './figures-es.js';
import { phrasesEs, termsEs } from './terms-es.js';

const terms: Readonly<Record<string, string>> = { ...figuresEs, ...termsEs };
const phrases = [...figurePhrasesEs, ...phrasesEs];

/** Signs and stops that phrases are strung together with. What stands between two is a phrase by itself. */
const joints = /(\s*[×÷+−=√²;:()]\s*|,\s+)/;

/**
 * A label, a sum, or what governs a figure, in Spanish: as a whole where the whole is known, else piece by piece.
 * Names, numbers, units and words of the plan language come back as they are.
 */
export function phraseEs(text: string): string {
  const whole = known(text);
  if (whole !== undefined) return whole;
  const pieces = text.split(joints);
  if (pieces.length === 1) return text;
  return pieces.map((piece, i) => (i % 2 === 0 ? (known(piece) ?? piece) : piece)).join('');
}

function known(text: string): string | undefined {
  const term = terms[text] ?? terms[text.charAt(0).toLowerCase() + text.slice(1)];
  if (term !== undefined) return /^[A-Z]/.test(text) ? term.charAt(0).toUpperCase() + term.slice(1) : term;
  for (const [phrase, spanish] of phrases) {
    const found = phrase.exec(text);
    if (found) return spanish.replace(/\$(\d)/g, (_all, hole: string) => phraseEs(found[Number(hole)] ?? ''));
  }
  const edges = /^(\s*)(.*\S)(\s*)$/.exec(text);
  if (!edges || edges[2] === text) return undefined;
  const inner = known(edges[2] ?? '');
  return inner === undefined ? undefined : `${edges[1]}${inner}${edges[3]}`;
}
