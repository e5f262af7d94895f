import { rulesEs } from './rules-es.js';

/** Every message that has no catalog entry yet, in Spanish, by its id. */
export const spanish: Readonly<Record<string, string>> = rulesEs;
