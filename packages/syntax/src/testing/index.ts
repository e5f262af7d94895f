export { edited, most, type SomeEdit } from './some-edit.js';
