import { PDFDocument, StandardFonts } from 'pdf-lib';
import { expect, it } from 'vitest';
import { textWidth } from './font-metrics.js';

// Source: the Adobe Font Metrics that pdf-lib carries for the base-14 fonts.
it('gives the widths of the base-14 fonts', async () => {
  const file = await PDFDocument.create();
  for (const [weight, name] of [
    ['normal', StandardFonts.Helvetica],
    ['bold', StandardFonts.HelveticaBold],
  ] as const) {
    const font = await file.embedFont(name);
    for (let code = 32; code < 127; code++) {
      const sign = String.fromCharCode(code);
      // pdf-lib's width has no kerning for a single sign.
      expect([sign, textWidth(sign, 1000, weight)]).toEqual([sign, font.widthOfTextAtSize(sign, 1000)]);
    }
  }
});

it('never takes too little room for a sign that it does not know', () => {
  expect(textWidth('車', 10)).toBe(10);
  expect(textWidth('é', 1000)).toBe(556);
});
