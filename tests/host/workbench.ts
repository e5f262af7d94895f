import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { root } from './vscode-server.js';

/** The window as a person sees it: keys, menus, the status bar. Nothing here knows the inside of the editor. */
export const workbench = (page: Page) => {
  const window = {
    open: async (origin: string, folder: string, extension: string): Promise<void> => {
      const payload = [
        ['extensionDevelopmentPath', `vscode-remote://${origin}${extension}`],
        ['skipWelcome', 'true'],
      ];
      await page.goto(
        `http://${origin}/?folder=${folder}&payload=${encodeURIComponent(JSON.stringify(payload))}`,
      );
      await page.locator('.monaco-workbench').waitFor();
    },
    /** Picks a command by its title from the palette, once the palette has it. */
    command: async (title: string): Promise<void> => {
      const row = page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first();
      for (let tries = 0; ; tries++) {
        await page.keyboard.press('F1');
        await page.locator('.quick-input-widget input.input').fill(`>${title}`);
        const there = await row.waitFor({ timeout: 2000 }).then(
          () => true,
          () => false,
        );
        if (there) break;
        if (tries > 10) throw new Error(`The palette has no command “${title}”.`);
        await page.keyboard.press('Escape');
      }
      await row.click();
    },
    /** Picks an entry of the list that a command opens, once the list has it. */
    pick: async (command: string, entry: string): Promise<void> => {
      const row = page.locator('.quick-input-list .monaco-list-row', { hasText: entry }).first();
      for (let tries = 0; ; tries++) {
        await window.command(command);
        await page.locator('.quick-input-widget input[placeholder^="Select"]').waitFor();
        await page.keyboard.type(entry);
        const there = await row.waitFor({ timeout: 2000 }).then(
          () => true,
          () => false,
        );
        if (there) break;
        if (tries > 10) throw new Error(`“${command}” does not offer “${entry}”.`);
        await page.keyboard.press('Escape');
      }
      await page.keyboard.press('Enter');
      await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    },
    /** Opens our walkthrough. The editor lists those of extensions some seconds after it starts. */
    walkthrough: async (title: string): Promise<void> => {
      for (let tries = 0; ; tries++) {
        await window.command(title);
        const ours = page.locator('.gettingStartedContainer', { hasText: 'A first plan' });
        const there = await ours.waitFor({ timeout: 4000 }).then(
          () => true,
          () => false,
        );
        if (there) return;
        if (tries > 5) throw new Error('The walkthrough does not open.');
        await window.command('View: Close All Editors');
      }
    },
    openFile: async (name: string): Promise<void> => {
      await page.keyboard.press('Control+P');
      const box = page.locator('.quick-input-widget input.input');
      await box.waitFor();
      await box.fill(name);
      await page.locator('.quick-input-list .monaco-list-row', { hasText: name }).first().click();
      await page.locator('.tab.active', { hasText: name }).first().waitFor();
    },
    goToLine: async (line: number): Promise<void> => {
      await page.keyboard.press('Control+g');
      await page.locator('.quick-input-widget input.input').fill(`:${line}`);
      await page.keyboard.press('Enter');
    },
    /** Types at the end of a line, line by line. */
    typeAtEndOf: async (line: number, text: string): Promise<void> => {
      await window.goToLine(line);
      await page.keyboard.press('End');
      for (const [i, words] of text.split('\n').entries()) {
        if (i > 0) await page.keyboard.press('Enter');
        await page.keyboard.type(words);
        await page.keyboard.press('Escape');
      }
    },
    status: () => page.locator('[id="cribwright.cribwright.cribwright.status"]'),
    photograph: async (name: string): Promise<void> => {
      const folder = join(root, 'tests/host/out');
      mkdirSync(folder, { recursive: true });
      await page.screenshot({ path: join(folder, `${name}.png`), animations: 'disabled' });
    },
  };
  return window;
};
