import { accessSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/opt/google/chrome/chrome',
];

/** The browser that stands on this machine. Tests fail where there is none; they are not skipped. */
export const chromiumPath = (): string => {
  const named = process.env.CRIBWRIGHT_CHROMIUM;
  const found = (named ? [named] : places).find((path) => {
    try {
      accessSync(path);
      return true;
    } catch {
      return false;
    }
  });
  if (!found) {
    throw new Error(
      'No Chromium here. Install it (Debian: apt-get install -y chromium) or name it in CRIBWRIGHT_CHROMIUM.',
    );
  }
  return found;
};

/** Flags for a machine without a screen, a sound card or a network. */
export const chromiumFlags = ['--no-sandbox', '--disable-gpu', '--disable-background-networking'];

export const launchChromium = (): Promise<Browser> =>
  chromium.launch({ executablePath: chromiumPath(), args: chromiumFlags });
