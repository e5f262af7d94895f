import { term } from '@cribwright/messages';
import { property } from '../bound/block-schema.js';
import { sourcePhrase } from './phrases.js';

/** The source of every value in the block that does not name its own. */
export const sourceLine = property('source', sourcePhrase, {
  doc: term('doc.source--source'),
  example: 'source published "Title of the table" "Table 4A"',
});
