import { paletteOf, pdfOf, type Scene, svgOf, type ThemeName } from '@cribwright/drawing/page';
import { filled } from './filled.js';
import type { PanelWords } from './panel-words.js';

/** Dots across one inch of the sheet, for pictures made of dots. */
const dotsPerInch = 200;

/** A drawing as a PNG, base64 without its prefix. Throws where the page cannot paint it. */
export async function pngOf(scene: Scene, theme: ThemeName): Promise<string> {
  const canvas = await painted(scene, theme);
  return canvas.toDataURL('image/png').replace(/^data:[^,]*,/, '');
}

/** The page is not let put a picture on the clipboard. */
export class NoClipboard extends Error {}

/**
 * Puts a drawing on the clipboard as a picture.
 *
 * Throws `NoClipboard` where the page may not, and another error where it cannot paint the drawing.
 */
export async function copyPicture(scene: Scene, theme: ThemeName): Promise<void> {
  const canvas = await painted(scene, theme);
  const blob = await new Promise<Blob>((done, fail) =>
    canvas.toBlob((b) => (b === null ? fail(new Error('the picture is empty')) : done(b)), 'image/png'),
  );
  try {
    await navigator.clipboard.write([new ClipboardItem({ 'image/png': blob })]);
  } catch (error) {
    throw new NoClipboard(whyNot(error));
  }
}

async function painted(scene: Scene, theme: ThemeName): Promise<HTMLCanvasElement> {
  const address = URL.createObjectURL(new Blob([svgOf(scene, theme)], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round((scene.width / 25.4) * dotsPerInch);
    canvas.height = Math.round((scene.height / 25.4) * dotsPerInch);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('the page cannot paint');
    context.fillStyle = paletteOf(theme).paper;
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return canvas;
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Why there is no picture, and what would do instead. */
export const noPicture = (error: unknown, words: PanelWords): string =>
  filled(error instanceof NoClipboard ? words.noClipboard : words.noPicture, { reason: whyNot(error) });

const whyNot = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).replace(/\.$/, '');

/** A drawing in the form asked for: text for SVG, base64 for the others. */
export async function pictureOf(
  scene: Scene,
  format: 'svg' | 'png' | 'pdf',
  theme: ThemeName,
): Promise<string> {
  switch (format) {
    case 'svg':
      return svgOf(scene, theme);
    case 'png':
      return pngOf(scene, theme);
    case 'pdf': {
      const bytes = await pdfOf([scene], { paper: scene.display === 'si' ? 'a4' : 'letter' });
      return btoa(Array.from(bytes, (b) => String.fromCharCode(b)).join(''));
    }
  }
}
