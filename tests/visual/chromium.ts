import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const places = [
  process.env.CRIBWRIGHT_CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

/** Starts the browser of this machine. Fails, never skips, where there is none. */
export function startChromium(): Promise<Browser> {
  const executablePath = places.find((p) => p !== undefined && existsSync(p));
  if (executablePath === undefined)
    throw new Error('No Chromium found. Install it (apt-get install chromium) or set CRIBWRIGHT_CHROMIUM.');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-dev-shm-usage',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
      '--font-render-hinting=none',
    ],
  });
}
