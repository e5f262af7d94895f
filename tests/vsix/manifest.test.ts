import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const manifest = JSON.parse(read('package.json'));
const { contributes } = manifest;

const extensionSource = readdirSync(join(root, 'packages/extension/src'), {
  recursive: true,
  withFileTypes: true,
})
  .filter((f) => f.isFile() && f.name.endsWith('.ts') && !f.name.endsWith('.test.ts'))
  .map((f) => readFileSync(join(f.parentPath, f.name), 'utf8'))
  .join('\n');

interface Command {
  readonly command: string;
  readonly title: string;
  readonly category: string;
}
const commands: readonly Command[] = contributes.commands;

it('gives every command a title, a category and something that answers it', () => {
  const poor = commands.filter(
    ({ command, title, category }) =>
      !title || category !== 'Cribwright' || !extensionSource.includes(`registerCommand('${command}'`),
  );
  expect(poor).toEqual([]);
});

it('offers in the palette every command that code registers', () => {
  const registered = [...extensionSource.matchAll(/registerCommand\('([^']+)'/g)].map(([, name]) => name);
  expect(registered.sort()).toEqual(commands.map(({ command }) => command).sort());
});

it('has a Mac key for every key, and a command behind it', () => {
  for (const { command, key, mac, when } of contributes.keybindings) {
    expect(commands.map((c) => c.command)).toContain(command);
    expect(mac, command).toBe(key.replace('ctrl', 'cmd'));
    expect(when, command).toBeTruthy();
  }
});

it('names only files that are there', () => {
  const paths: string[] = [
    manifest.icon,
    ...contributes.grammars.map((g: { path: string }) => g.path),
    ...contributes.snippets.map((s: { path: string }) => s.path),
    ...contributes.languages.flatMap((l: { configuration: string; icon: Record<string, string> }) => [
      l.configuration,
      ...Object.values(l.icon),
    ]),
    ...contributes.walkthroughs.flatMap((w: { steps: { media: { markdown: string } }[] }) =>
      w.steps.map((s) => s.media.markdown),
    ),
  ];
  expect(paths.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

it('describes every setting, and each is read by someone', () => {
  const language = readdirSync(join(root, 'packages/server/src'), { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile() && f.name.endsWith('.ts'))
    .map((f) => readFileSync(join(f.parentPath, f.name), 'utf8'))
    .join('\n');
  for (const [name, setting] of Object.entries<Record<string, unknown>>(
    contributes.configuration.properties,
  )) {
    expect(setting.markdownDescription, name).toBeTruthy();
    expect(setting.scope, name).toBeTruthy();
    expect(setting, name).toHaveProperty('default');
    // The client library reads the trace setting by itself.
    if (name === 'cribwright.trace.server') continue;
    const last = name.split('.').slice(1, 2).join('');
    expect(`${extensionSource}${language}`, name).toMatch(new RegExp(`\\b${last}\\b`));
  }
});

it('is built against the oldest editor that it asks for', () => {
  const [, minor] = /^\^1\.(\d+)\.0$/.exec(manifest.engines.vscode) ?? [];
  expect(manifest.devDependencies['@types/vscode']).toMatch(new RegExp(`^1\\.${minor}\\.`));
});

it('says that it starts with a plan', () => {
  expect(manifest.activationEvents).toContain('onLanguage:cribwright');
});

it('lets the steps of the walkthrough run only commands that exist', () => {
  const named = [...JSON.stringify(contributes.walkthroughs).matchAll(/command:(cribwright\.\w+)/g)];
  expect(named.length).toBeGreaterThan(0);
  for (const [, command] of named) expect(commands.map((c) => c.command)).toContain(command);
});
