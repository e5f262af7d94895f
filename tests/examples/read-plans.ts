import { fileURLToPath } from 'node:url';
import { type CheckReport, readReport } from '@cribwright/cli';

/** The folder of the repository. */
export const root = fileURLToPath(new URL('../../', import.meta.url));

/** Reads plans as the command line does, on a day on which no acceptance of the examples has run out. */
export const readPlans = (paths: readonly string[] = ['examples'], stdin = ''): Promise<CheckReport> =>
  readReport(
    {
      cwd: root,
      env: {},
      isTTY: false,
      today: '2026-11-25',
      out: () => undefined,
      err: () => undefined,
      stdin: async () => stdin,
    },
    [...paths],
  );
