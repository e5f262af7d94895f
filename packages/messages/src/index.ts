export * from './compose.js';
export { onFault } from './faults.js';
export * from './formula.js';
export type { MessageHoles } from './generated/catalogs.js';
export type * from './hole-kinds.js';
export * from './message.js';
export * from './quantity-kind.js';
export type * from './values.js';
export * from './words-in.js';
