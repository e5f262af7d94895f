export type { Io } from './io.js';
export { run } from './program.js';
export type { Report } from './report/report.js';
