import { type Browser, chromium } from 'playwright-core';
import { chromiumPath } from '../host/chromium.js';

/** The browser of this machine, with a painter for the view in space that needs no graphics card. */
export const startChromium = (): Promise<Browser> =>
  chromium.launch({
    executablePath: chromiumPath(),
    args: [
      '--no-sandbox',
      '--disable-dev-shm-usage',
      '--disable-background-networking',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
    ],
  });
