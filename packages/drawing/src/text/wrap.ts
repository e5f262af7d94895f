import { textWidth, type Weight } from './font-metrics.js';

/** A number and its unit, which stay on one line. */
const numberAndUnit = /(?<=\d) (?=(?:%|lb|in|ft|psf|psi|deg|kN|kPa|mm|m|min)(?![a-z]))/g;

/**
 * Breaks text into lines no wider than `room`. A word too wide for a line is broken, so nothing runs off; a number
 * keeps its unit.
 */
export function wrap(text: string, room: number, size: number, weight: Weight = 'normal'): readonly string[] {
  const lines: string[] = [];
  let line = '';
  const words = text.replace(numberAndUnit, '\u00a0').split(/[^\S\u00a0]+/);
  for (const kept of words.filter((w) => w !== '')) {
    const word = kept.replaceAll('\u00a0', ' ');
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, size, weight) <= room) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const character of word) {
      if (line !== '' && textWidth(line + character, size, weight) > room) {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** Shortens to one line with an ellipsis of three dots. */
export function clip(text: string, room: number, size: number, weight: Weight = 'normal'): string {
  if (textWidth(text, size, weight) <= room) return text;
  let kept = '';
  for (const character of text) {
    if (textWidth(`${kept}${character}...`, size, weight) > room) break;
    kept += character;
  }
  return `${kept.trimEnd()}...`;
}
