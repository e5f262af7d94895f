import { editEs } from '../edits/words-es.js';
import { editorEs } from '../features/words-es.js';
import { languageEs } from './language-es.js';
import { rulesEs } from './rules-es.js';

/** Every message in Spanish, by its id. */
export const spanish: Readonly<Record<string, string>> = {
  ...rulesEs,
  ...languageEs,
  ...editorEs,
  ...editEs,
};
