// For the other packages of this project: not promised to anyone else.
export { each, lesser, over, plus, times } from './figure/interval-math.js';
export {
  angle,
  area,
  count,
  duration,
  force,
  length,
  place,
  pressure,
  ratio,
  share,
  span,
  stress,
  unitWeight,
  volume,
} from './figure/units-of.js';
export { contactsOf, covers } from './placed/contacts.js';
export { coupledAbove, isCoupling } from './placed/coupling.js';
export { padUnder } from './placed/pad-under.js';
export { placeAt } from './placed/part-place.js';
export { placeCrib } from './placed/place-crib.js';
export { placeStrut } from './placed/place-strut.js';
export { placeTie } from './placed/place-tie.js';
export { lies, posedCenter } from './placed/posed.js';
export { sourceOfPart } from './placed/source-of-part.js';
export { undersideSlope } from './placed/underside.js';
export { limitFigure, limitValue, limitWord } from './policy/limit.js';
