import { type Browser, chromium } from 'playwright-core';
import { chromiumPath } from '../host/chromium.js';

/**
 * The browser of this machine. It paints without a graphics card: the view in space with a painter made for that,
 * which is very slow at all else. Where no view in space is looked at, `flat` leaves it out.
 */
export const startChromium = (flat = false): Promise<Browser> =>
  chromium.launch({
    executablePath: chromiumPath(),
    args: [
      '--no-sandbox',
      '--disable-dev-shm-usage',
      '--disable-background-networking',
      ...(flat ? ['--disable-gpu'] : ['--use-angle=swiftshader', '--enable-unsafe-swiftshader']),
    ],
  });
