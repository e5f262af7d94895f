import { describe, expect, it } from 'vitest';
import type { Tone } from '../scene/tone.js';
import { palettes } from './palette.js';

/** WCAG 2.1, definitions of relative luminance and contrast ratio. */
const luminance = (hex: string): number => {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p) as [number, number];
  return (x + 0.05) / (y + 0.05);
};

const words: readonly Tone[] = [
  'label',
  'dimension',
  'danger',
  'warning',
  'good',
  'note',
  'load',
  'tie',
  'strut',
];
const shapes: readonly Tone[] = [
  'vehicle',
  'part',
  'timber',
  'wedge',
  'chock',
  'pad',
  'egress',
  'ground',
  'ghost',
];

describe.each(palettes)('the palette $name', (palette) => {
  // WCAG 2.1, success criterion 1.4.3 for text and 1.4.11 for shapes.
  it.each(words)('writes %s at 4.5 to 1 or better', (tone) => {
    expect(contrast(palette.inks[tone].line, palette.paper)).toBeGreaterThanOrEqual(4.5);
  });
  it.each(shapes)('draws %s at 3 to 1 or better', (tone) => {
    expect(contrast(palette.inks[tone].line, palette.paper)).toBeGreaterThanOrEqual(3);
  });
  it('keeps words readable on the light fills that they stand on', () => {
    for (const tone of ['warning', 'danger', 'note', 'vehicle'] as const)
      expect(contrast(palette.inks.label.line, palette.inks[tone].light)).toBeGreaterThanOrEqual(4.5);
  });
});
