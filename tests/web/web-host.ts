import { cpSync, existsSync, mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { open } from '@vscode/test-web';
import { type BrowserContext, chromium } from 'playwright-core';
import { answering } from '../host/answering.js';
import { chromiumFlags, chromiumPath } from '../host/chromium.js';
import { freePort } from '../host/free-port.js';
import { root } from '../host/vscode-server.js';

/** Any 40 hex digits: names the build in the cache, which comes from npm and not from a download. */
const commit = '1911'.padEnd(40, '0');

/** The oldest VS Code that is supported, 1.91.1, all in the browser: no Node process anywhere. */
export const serveWeb = async (extension: string, suite: string | undefined, folder: string) => {
  const port = await freePort();
  // Webviews live at names below this one, which an address in numbers cannot have.
  const host = 'localhost';
  const running = await open({
    browserType: 'none',
    quality: 'stable',
    commit,
    testRunnerDataDir: buildFolder(),
    extensionDevelopmentPath: extension,
    ...(suite ? { extensionTestsPath: suite } : {}),
    folderPath: folder,
    host,
    port,
  });
  const address = `http://${host}:${port}/`;
  // It says that it listens before it does.
  if (!(await answering(address))) {
    running.dispose();
    throw new Error(`No editor answers at ${address}.`);
  }
  return { address, stop: () => running.dispose() };
};

const buildFolder = (): string => {
  const data = join(root, '.cache/vscode-web');
  const name = `vscode-web-stable-${commit}`;
  const build = join(data, name);
  if (!existsSync(join(build, 'version'))) {
    const dist = join(dirname(createRequire(import.meta.url).resolve('vscode-web/package.json')), 'dist');
    cpSync(dist, build, { recursive: true });
    writeFileSync(join(build, 'version'), name);
  }
  return data;
};

/** Chromium that lets a webview, which is a page from another origin, have its service worker. */
export const launchForWebviews = async (): Promise<BrowserContext> => {
  const profile = mkdtempSync(join(tmpdir(), 'cribwright-chromium-'));
  mkdirSync(join(profile, 'Default'));
  const preferences = {
    profile: { cookie_controls_mode: 0, block_third_party_cookies: false },
  };
  writeFileSync(join(profile, 'Default/Preferences'), JSON.stringify(preferences));
  return chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    args: chromiumFlags,
    viewport: { width: 1500, height: 950 },
  });
};
