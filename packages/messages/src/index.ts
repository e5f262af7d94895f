export { type MessageId, message, type TermId, term } from './compose.js';
export { onFault } from './faults.js';
export {
  type Expression,
  evaluateFormula,
  evaluateOverRanges,
  type FormulaFunction,
  inputsOf,
  parseFormula,
} from './formula.js';
export type { MessageHoles } from './generated/catalogs.js';
export {
  calculation,
  count,
  holesOf,
  inWords,
  list,
  name,
  quantity,
  shown,
  shownAs,
  shownBeside,
} from './message.js';
export { messageIds, withOpenHoles } from './message-ids.js';
export type { HoleKinds, NoHoles } from './values/hole-kinds.js';
export { dimensionOf, type QuantityKind, unitOf } from './values/quantity-kind.js';
export type {
  Calculation,
  Count,
  Figure,
  FigureHole,
  FigureSource,
  Formula,
  Hole,
  List,
  Message,
  Name,
  Phrase,
  Quantity,
  Range,
  SourceNote,
} from './values/values.js';
export { type Locale, type Words, wordsIn } from './words-in.js';
