import { libraryTexts } from './generated/texts/library.js';

/** The bundled library: file name to text. */
export const library = libraryTexts();
