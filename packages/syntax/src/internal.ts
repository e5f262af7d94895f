// For the other packages of this project: not promised to anyone else.
export { append } from './append.js';
export { deepest, type LayoutIssue } from './layout.js';
export type { Parsed } from './parse.js';
export { plainSigns } from './plain-signs.js';
export { reparse } from './reparse.js';
export type { Span, SyntaxStatement, Term } from './syntax.js';
