import { property } from '../bound/block-schema.js';
import { sourcePhrase } from './phrases.js';

/** The source of every value in the block that does not name its own. */
export const sourceLine = property('source', sourcePhrase, {
  doc: 'Where the values of this block come from. A line may name its own source at its end.',
  example: 'source published "Title of the table" "Table 4A"',
});
