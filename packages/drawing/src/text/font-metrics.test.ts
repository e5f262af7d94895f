import { PDFDocument, StandardFonts } from 'pdf-lib';
import { expect, it } from 'vitest';
import { measured, textWidth } from './font-metrics.js';

// Source: the Adobe Font Metrics that pdf-lib carries for the base-14 fonts.
it('gives the widths of the base-14 fonts', async () => {
  const file = await PDFDocument.create();
  for (const [weight, name] of [
    ['normal', StandardFonts.Helvetica],
    ['bold', StandardFonts.HelveticaBold],
  ] as const) {
    const font = await file.embedFont(name);
    const plain = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i));
    // Those of the others that the fonts have in the code that pdf-lib writes.
    for (const sign of [...plain, ...'×÷±°½¼¾·–—²³§…•€¿¡']) {
      // pdf-lib's width has no kerning for a single sign.
      expect([sign, textWidth(sign, 1000, weight)]).toEqual([sign, font.widthOfTextAtSize(sign, 1000)]);
    }
  }
});

it('never takes too little room for a sign that it does not know', () => {
  expect(textWidth('車', 10)).toBe(10);
  expect(textWidth('é', 1000)).toBe(556);
});

// Source of the list: the sums that rules write out, and the ranges and places of the plan language.
it.each(['atan(38.5 in ÷ 60 in)', '40 in − 49 in', '1.5 × 16 in', 'A ≤ 5 ½ in²', 'crib “A”'])(
  'knows every sign of %s',
  (words) => expect(measured(words)).toBe(true),
);
