/** One line per test, and the tally at the end, for a log that is read on a terminal. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly pending: number;
  readonly lines: readonly string[];
}

export let tally: Tally = { passed: 0, failed: 0, pending: 0, lines: [] };

export class Lines {
  constructor(runner: Mocha.Runner) {
    const note = (mark: 'pass' | 'FAIL' | 'pending', test: Mocha.Test, why = '') => {
      const line = `${mark}  ${test.fullTitle()}${why}`;
      console.log(line);
      tally = {
        passed: tally.passed + (mark === 'pass' ? 1 : 0),
        failed: tally.failed + (mark === 'FAIL' ? 1 : 0),
        pending: tally.pending + (mark === 'pending' ? 1 : 0),
        lines: [...tally.lines, line],
      };
    };
    runner.on('pass', (test) => note('pass', test));
    runner.on('pending', (test) => note('pending', test));
    runner.on('fail', (test, error) => note('FAIL', test, `\n${error.stack ?? error.message}`));
  }
}
