import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder for the bundles of one run of the tests: none is left from a run before, and none stays behind. */
export default function setup() {
  const folder = mkdtempSync(join(tmpdir(), 'cribwright-bundles-'));
  process.env.CRIBWRIGHT_TEST_BUNDLES = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}
