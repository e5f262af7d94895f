import { cpSync, mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './vscode-server.js';

/**
 * A copy of the examples to be edited by tests, with the address at which the suite finds its hands.
 *
 * @param hands address of the process that holds mouse, keys and camera
 * @param more settings of the editor
 */
export const workspaceCopy = (hands: string, more: Readonly<Record<string, unknown>> = {}): string => {
  const folder = mkdtempSync(join(tmpdir(), 'alder-ridge-'));
  cpSync(join(root, 'examples'), folder, {
    recursive: true,
    filter: (path) => !path.startsWith(join(root, 'examples/out')),
  });
  mkdirSync(join(folder, '.vscode'), { recursive: true });
  const settings = {
    'cribwrightTest.hands': hands,
    'telemetry.telemetryLevel': 'off',
    'extensions.ignoreRecommendations': true,
    'workbench.startupEditor': 'none',
    'files.autoSave': 'off',
    ...more,
  };
  writeFileSync(join(folder, '.vscode/settings.json'), `${JSON.stringify(settings, null, 2)}\n`);
  return folder;
};
