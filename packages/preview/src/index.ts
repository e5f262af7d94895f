export type * from './messages.js';
export type { PanelTerm, PanelWords } from './panel-words.js';
