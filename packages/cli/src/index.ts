export { readReport } from './files/read-report.js';
export type { Io } from './io.js';
export { run } from './program.js';
export { expectationsHeld, surprises } from './report/expectations.js';
export type { FileReport, PlanReport, Report } from './report/report.js';
