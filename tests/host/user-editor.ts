import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Served, serve } from './serve.js';
import { root } from './vscode-server.js';

export interface UserEditor extends Served {
  readonly address: string;
}

/**
 * Serves the extension with a folder of plans as a user has it: the editor asks before anything is lost, applies what a
 * rename changes, and has after a reload what it had before. The first plan is opened with its drawing.
 *
 * @param folder of plans, as the examples have them
 * @param data folder of the server's own files; settings in it that are there are left alone
 */
export const serveForUser = async (folder: string, data: string): Promise<UserEditor> => {
  settle(join(data, 'data/Machine'));
  // What lies there when a server starts for the first time is installed. An address names one extension in development.
  cpSync(
    join(root, 'tests/host/first-plan-extension'),
    join(data, 'extensions/cribwright-development.first-plan-0.0.0'),
    { recursive: true },
  );
  const served = await serve({ data });
  const remote = (path: string): string => `vscode-remote://${served.origin}${path}`;
  const payload = JSON.stringify([
    ['extensionDevelopmentPath', remote(root)],
    ['skipWelcome', 'true'],
  ]);
  const query = `folder=${encodeURI(folder)}&payload=${encodeURIComponent(payload)}`;
  return { ...served, address: `http://${served.origin}/?${query}` };
};

/** Keeps what the editor asks of a newcomer out of the way of the first plan. */
const settings = {
  'git.openRepositoryInParentFolders': 'never',
  'extensions.ignoreRecommendations': true,
  'workbench.startupEditor': 'none',
  'cribwright.preview.openWithPlan': true,
};

function settle(folder: string): void {
  const file = join(folder, 'settings.json');
  const there = existsSync(file) ? settingsIn(readFileSync(file, 'utf8')) : {};
  // A user's own may hold comments, which are not to be lost.
  if (there === undefined) return;
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, `${JSON.stringify({ ...settings, ...there }, null, 2)}\n`);
}

const settingsIn = (text: string): object | undefined => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};
