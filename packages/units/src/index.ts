export type { Dimension } from './dimension.js';
