import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { panelHands } from './panel-hands.js';
import { root } from './vscode-server.js';
import { workbench } from './workbench.js';
import { workspaceCopy } from './workspace.js';

type Picture = (page: Page, origin: string) => Promise<void>;

const themes = {
  light: 'Light Modern',
  dark: 'Dark Modern',
  'high-contrast': 'Dark High Contrast',
  'high-contrast-light': 'Light High Contrast',
} as const;

/** The line of a plan on which crib A says how many courses it has. */
const coursesOfA = (plan: string): number => {
  const lines = readFileSync(join(root, 'examples/plans', plan), 'utf8').split('\n');
  return lines.findIndex((line, i) => i > lines.indexOf('  crib A {') && line.includes('courses')) + 1;
};

/** A plan beside its drawing, in one of the editor's own themes. Nothing else is open. */
const beside = async (page: Page, origin: string, plan: string, theme: keyof typeof themes) => {
  const window = workbench(page);
  const hands = panelHands(page);
  const folder = workspaceCopy('', {
    'editor.minimap.enabled': false,
    'window.commandCenter': false,
    // The name of the copied folder is another each time.
    'window.title': plan,
  });
  await window.open(origin, folder, root);
  // By hand: as a setting it may come before the editor knows the theme, and is then left out.
  await window.pick('Preferences: Color Theme', themes[theme]);
  await window.openFile(plan);
  await window.command('View: Toggle Primary Side Bar Visibility');
  await window.command('Open Drawing to the Side');
  await hands.shows?.({ selector: 'svg [data-element="crib/A"]' });
  await hands.theme?.({ kind: theme });
  return { window, hands };
};

const ofTheme = (theme: keyof typeof themes): readonly (readonly [string, Picture])[] => [
  [
    `${theme}-sound`,
    async (page, origin) => {
      const { window, hands } = await beside(page, origin, 'trailer-on-car.crib', theme);
      await window.status().filter({ hasText: '1 warning' }).waitFor();
      await window.goToLine(coursesOfA('trailer-on-car.crib'));
      await hands.lit?.({ element: 'crib/A' });
    },
  ],
  [
    `${theme}-finding`,
    async (page, origin) => {
      const { window, hands } = await beside(page, origin, 'trailer-on-car-faulty.crib', theme);
      await window.status().filter({ hasText: 'unsafe' }).waitFor();
      await window.goToLine(coursesOfA('trailer-on-car-faulty.crib'));
      await page.keyboard.press('Home');
      await window.command('Show or Focus Hover');
      await page.locator('.monaco-hover', { hasText: 'dressed depth' }).first().waitFor();
      await hands.lit?.({ element: 'crib/A' });
    },
  ],
];

/** The editor and the drawing in every kind of theme, at rest and with a finding told. By name. */
export const themePictures: Readonly<Record<string, Picture>> = Object.fromEntries(
  (Object.keys(themes) as (keyof typeof themes)[]).flatMap(ofTheme),
);
