import type { Scene } from '../scene/scene.js';
import { paletteOf, type ThemeName } from '../svg/palette.js';

/** How a PDF is laid out: letter paper and the light theme unless said otherwise. */
export interface PdfOptions {
  readonly paper?: 'letter' | 'a4';
  readonly theme?: ThemeName;
  readonly title?: string;
}

/** Sheets that printers have, mm: the usual one, and the next larger one. */
const papers = {
  letter: [
    [279.4, 215.9],
    [431.8, 279.4],
  ],
  a4: [
    [297, 210],
    [420, 297],
  ],
} as const;

const pointsPerMm = 72 / 25.4;

/**
 * Scenes as a PDF, one to a page, at their true scale: a drawing is never shrunk to fit. A page is the usual
 * paper, or the next larger one, or else as large as the drawing. No date is put in, so the same scenes give the
 * same bytes.
 */
export async function pdfOf(scenes: readonly Scene[], options: PdfOptions = {}): Promise<Uint8Array> {
  const [{ PDFDocument, StandardFonts }, { drawOnPage }] = await Promise.all([
    import('pdf-lib'),
    import('./draw-on-page.js'),
  ]);
  const file = await PDFDocument.create({ updateMetadata: false });
  file.setTitle(options.title ?? scenes[0]?.title ?? 'Drawing');
  file.setSubject(scenes[0]?.caution ?? '');
  file.setProducer('Cribwright');
  const fonts = {
    normal: await file.embedFont(StandardFonts.Helvetica),
    bold: await file.embedFont(StandardFonts.HelveticaBold),
  };
  for (const scene of scenes) {
    const [width, height] = papers[options.paper ?? 'letter'].find(
      ([w, h]) => scene.width <= w && scene.height <= h,
    ) ?? [scene.width, scene.height];
    const page = file.addPage([width * pointsPerMm, height * pointsPerMm]);
    drawOnPage(page, scene, fonts, paletteOf(options.theme ?? 'light'), {
      left: (width - scene.width) / 2,
      top: (height - scene.height) / 2,
      height,
    });
  }
  return file.save();
}
