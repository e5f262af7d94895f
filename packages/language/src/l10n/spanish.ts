import { editorEs } from '../features/words-es.js';

/** Every message in Spanish, by its id. */
export const spanish: Readonly<Record<string, string>> = {
  ...editorEs,
};
