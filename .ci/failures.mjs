// The names of the tests that failed and what they said, for the end of `npm test`: a long log may be cut off above it.
import { existsSync, readFileSync } from 'node:fs';

/** Lines of one message that are kept. */
const most = 12;

/** Colors of a terminal: an escape character, a bracket, numbers, a letter. */
const color = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');

const said = (name, message) => [
  name,
  ...message
    .replace(color, '')
    .split('\n')
    .slice(0, most)
    .map((line) => `    ${line}`),
];

/** From vitest's JSON report: every test that did not pass, and every file that could not be read. */
export const vitestFailures = ({ testResults }) =>
  testResults.flatMap(({ name: file, status, message, assertionResults }) => {
    const failed = assertionResults.filter((test) => test.status !== 'passed');
    const rows = failed.flatMap((test) =>
      said(
        `${file}: ${test.fullName}`,
        [`${test.status}, ${Math.round(test.duration ?? 0)} ms`, ...(test.failureMessages ?? [])].join('\n'),
      ),
    );
    return rows.length === 0 && status !== 'passed' ? said(file, message) : rows;
  });

/** From the tally of a suite in the host, which keeps the lines of what did not pass. */
export const tallyFailures = (file) =>
  existsSync(file)
    ? (JSON.parse(readFileSync(file, 'utf8')).failures ?? []).flatMap((line) =>
        said(line.split('\n')[0], line.split('\n').slice(1).join('\n')),
      )
    : [];
