import type { BoundFile, BoundProperty } from '../bound/bound-file.js';
import type { Expected } from '../phrase/match.js';
import { matchLine } from '../phrase/matcher.js';
import { blockAt } from './at.js';
import { type SeenFiles, scopeAt } from './visible.js';

/**
 * What may stand at a place inside a line, once its key is there. Words that reach up to or past the place are left
 * out: they are being typed. Empty where the place is not in a line that the schema knows.
 */
export function expectedAt(files: SeenFiles, file: BoundFile, offset: number): readonly Expected[] {
  const line = lineBefore(file, offset);
  const scope = line && scopeAt(files, file, offset);
  if (!line || !scope || !('from' in line)) return [];
  const terms = line.terms.filter(
    (t) => t.end < offset || (t.end === offset && t.kind !== 'word' && t.kind !== 'number'),
  );
  const from = Number(line.from);
  if (terms.length < from) return [];
  const { stop } = matchLine({ terms, from, pattern: line.schema.phrase, scope, text: file.text });
  return stop.at >= terms.length ? distinct(stop.expected) : [];
}

/** The line that the place continues: on the same line of text, or after a comma that ended the one before. */
function lineBefore(file: BoundFile, offset: number): BoundProperty | undefined {
  const lines = blockAt(file, offset)?.properties ?? file.lets;
  const before = lines.filter((p) => p.span.start <= offset).at(-1);
  if (!before) return undefined;
  const between = file.text.slice(Math.min(before.span.end, offset), offset);
  return /[\r\n;{}]/.test(between) && !file.text.slice(0, before.span.end).endsWith(',') ? undefined : before;
}

const distinct = (list: readonly Expected[]): readonly Expected[] => [
  ...new Map(
    list.map((e) => [JSON.stringify(e, (k, v: unknown) => (k === 'vehicle' ? undefined : v)), e]),
  ).values(),
];
