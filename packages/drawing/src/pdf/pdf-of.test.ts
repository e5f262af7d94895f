import { decodePDFRawStream, PDFArray, PDFDocument, PDFRawStream } from 'pdf-lib';
import { expect, it } from 'vitest';
import { at, text } from '../scene/draw.js';
import type { Scene } from '../scene/scene.js';
import { inLatin, outOfLatin } from './in-latin.js';
import { pdfOf } from './pdf-of.js';

const scene = (width: number, height: number): Scene => ({
  choice: { view: 'top', subject: undefined, stage: undefined, lost: undefined },
  title: 'Plan from above',
  words: '',
  width,
  height,
  frame: undefined,
  caution: 'Believe what you see.',
  items: [text('t', at(10, 10), 'Fir 4×4 → ½ in, Muñoz 車', 4)],
});

it('gives each drawing a page, never shrunk: usual paper, the next larger, or its own size', async () => {
  const bytes = await pdfOf([scene(250, 200), scene(250, 270), scene(500, 400)]);
  const file = await PDFDocument.load(bytes);
  const inches = file
    .getPages()
    .map((p) => [p.getWidth() / 72, p.getHeight() / 72].map((v) => Math.round(v * 100) / 100));
  expect(inches).toEqual([
    [11, 8.5],
    [17, 11],
    [19.69, 15.75],
  ]);
  expect(file.getTitle()).toBe('Plan from above');
});

it('takes A4 where that is the paper', async () => {
  const file = await PDFDocument.load(await pdfOf([scene(250, 200)], { paper: 'a4' }));
  expect(Math.round((file.getPage(0).getWidth() / 72) * 25.4)).toBe(297);
});

it('has no date, and the same bytes each time', async () => {
  const [one, two] = [await pdfOf([scene(250, 200)]), await pdfOf([scene(250, 200)])];
  expect(one).toEqual(two);
  const file = await PDFDocument.load(one, { updateMetadata: false });
  expect([file.getCreationDate(), file.getModificationDate()]).toEqual([undefined, undefined]);
});

it('shows signs that the standard fonts lack by others', () => {
  expect(inLatin('a → b ≤ c − d')).toBe('a -> b <= c - d');
  expect(inLatin('Muñoz 4×4 ½')).toBe('Muñoz 4×4 ½');
  expect(inLatin('ő 車')).toBe('o ?');
});

it('says on the page that letters are missing, where any are', async () => {
  const plain = { ...scene(250, 200), items: [text('t', at(10, 10), 'Really, Muñoz?', 4)] };
  const length = async (s: Scene) => (await textOf(await pdfOf([s]))).length;
  expect(['車', 'Ж 1', 'Really?', 'ő', '→'].map(outOfLatin)).toEqual([true, true, false, false, false]);
  expect(await textOf(await pdfOf([plain]))).not.toContain(hex('cannot be printed here'));
  expect(await textOf(await pdfOf([scene(250, 200)]))).toContain(hex('cannot be printed here'));
  expect(await length(scene(250, 200))).toBeGreaterThan(await length(plain));
});

const hex = (words: string): string =>
  [...words].map((c) => (c.codePointAt(0) ?? 0).toString(16).padStart(2, '0').toUpperCase()).join('');

/** What the pages of a PDF write, as it stands in the file: in hexadecimal. */
async function textOf(bytes: Uint8Array): Promise<string> {
  const file = await PDFDocument.load(bytes);
  return file
    .getPages()
    .flatMap((page) => {
      const streams = page.node.Contents();
      return streams instanceof PDFArray
        ? streams.asArray().map((ref) => file.context.lookup(ref))
        : [streams];
    })
    .map((stream) =>
      stream instanceof PDFRawStream ? String.fromCharCode(...decodePDFRawStream(stream).decode()) : '',
    )
    .join('\n');
}
