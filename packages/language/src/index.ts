export type { BlockSchema, PropertySchema } from './bound/block-schema.js';
export type { BoundBlock, BoundFile, BoundProperty } from './bound/bound-file.js';
export { library } from './bundled-library.js';
export type { LanguageProblem, TextChange, TextFix } from './problems/problem.js';
export { languageCodes } from './problems/problem-message.js';
export type { TextRange } from './problems/text-range.js';
export type { Unread } from './problems/unread.js';
export { allowedIn, schema } from './schema/schema.js';
