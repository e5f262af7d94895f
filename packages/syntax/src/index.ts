export { parse } from './parse.js';
