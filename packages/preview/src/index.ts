export type * from './messages.js';
export { type PanelWords, panelWords } from './panel-words.js';
