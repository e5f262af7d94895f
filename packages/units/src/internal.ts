// For the other packages of this project: not promised to anyone else.
export { poundForce as lb } from './us-units.js';
