export type * from './messages.js';
