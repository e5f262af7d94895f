import { mkdirSync, mkdtempSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Client, startServer } from './client.js';
import { samplePlan } from './sample-plan.js';

let server: Client;
let folder = '';
let last = 0;
/** A file of its own for each test, so that one server serves them all. */
const fresh = (): string => pathToFileURL(join(folder, `plan-${++last}.crib`)).toString();
const inFolder = (...path: string[]): string => pathToFileURL(join(folder, ...path)).toString();

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'crib-diagnostics-'));
  server = await startServer();
  await server.initialize({
    workspaceFolders: [{ uri: pathToFileURL(folder).toString(), name: 'plans' }],
    capabilities: {
      workspace: { workspaceFolders: true, didChangeWatchedFiles: { dynamicRegistration: true } },
    },
  });
});
afterAll(async () => {
  expect(await server.stop()).toBe(0);
  rmSync(folder, { recursive: true });
});
afterEach(() => expect(server.stray()).toBe(''));

const codes = (list: readonly { code?: unknown }[]): unknown[] => list.map((d) => d.code);

/** A name that is unknown is shown, or no longer. */
const unknown = (uri: string, is: boolean, from: number) =>
  server.diagnosticsThat(
    `${is ? 'with' : 'without'} an unknown name`,
    uri,
    (found) => codes(found).includes('unknown-name') === is,
    from,
  );
/** A file that it uses is not there. What that file names is then not looked for. */
const missing = (uri: string, is: boolean, from: number) =>
  server.diagnosticsThat(
    `${is ? 'with' : 'without'} a missing file`,
    uri,
    (found) => codes(found).includes('use-not-found') === is && !codes(found).includes('unknown-name'),
    from,
  );
const takenBack = (uri: string, from: number) =>
  server.diagnosticsThat('taken back', uri, (found) => found.length === 0, from);

describe('as typed', () => {
  it('underlines a height that is too much, with the rule, its page, and the number that would hold', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(14));
    const found = (await server.diagnostics(uri, 1)).find((d) => d.code === 'crib-height');
    expect(found).toMatchObject({
      severity: 1,
      source: 'cribwright',
      codeDescription: { href: 'cribwright:/rules/crib-height.md' },
    });
    expect(found?.message).toMatch(/49 in/);
    expect(found?.message).toMatch(/24 in/);
    expect(samplePlan(14).split('\n')[found?.range.start.line ?? -1]).toContain('courses');
  });

  it('takes it back when the text is put right', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(14));
    expect(codes(await server.diagnostics(uri, 1))).toContain('crib-height');
    server.change(uri, samplePlan(6), 2);
    expect(codes(await server.diagnostics(uri, 2))).not.toContain('crib-height');
  });

  it('sends the version it speaks of, and applies edits of a part of the text', async () => {
    const uri = fresh();
    const text = samplePlan(14);
    server.open(uri, text, 41);
    await server.diagnostics(uri, 41);
    const line = text.split('\n').findIndex((l) => l.includes('courses'));
    const character = text.split('\n')[line]?.indexOf('14') ?? -1;
    server.notify('textDocument/didChange', {
      textDocument: { uri, version: 42 },
      contentChanges: [
        { range: { start: { line, character }, end: { line, character: character + 2 } }, text: '6' },
      ],
    });
    expect(codes(await server.diagnostics(uri, 42))).not.toContain('crib-height');
  });

  it('answers a burst of edits for its last version, not for each', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(6), 1);
    await server.diagnostics(uri, 1);
    for (let version = 2; version <= 201; version++)
      server.change(uri, samplePlan(version % 2 ? 14 : 6), version);
    expect(codes(await server.diagnostics(uri, 201))).toContain('crib-height');
    const versions = server.published(uri).map((p) => p.version ?? 0);
    expect(versions.length).toBeLessThan(40);
    expect(versions).toEqual([...versions].sort((a, b) => a - b));
  });

  it('puts a message where a unit is missing, and still checks the rest of the plan', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(14).replace('24 in long', '24 long'));
    const found = await server.diagnostics(uri, 1);
    const unit = found.find((d) => d.code === 'unit-missing');
    expect(samplePlan().split('\n')[unit?.range.start.line ?? -1]).toContain('timber');
  });

  it('fades what is declared and never used', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(6).replace('  ground {', '  let spare = 2 ft\n  ground {'));
    const faded = (await server.diagnostics(uri, 1)).filter((d) => d.tags?.includes(1));
    expect(faded.map((d) => d.range.start.line)).toContain(4);
  });
});

describe('what goes stale elsewhere', () => {
  beforeEach(() => mkdirSync(join(folder, 'parts'), { recursive: true }));

  const timber = 'timber Yard4x4 {\n  species  DouglasFir\n  size     4x4\n  dressed  3.5 in by 3.5 in\n}\n';
  const user = samplePlan(6).replace('use "', 'use "parts/yard.crib"\nuse "').replace('Fir4x4', 'Yard4x4');

  it('looks again at a plan when a file that it uses is edited, and sends only what changed', async () => {
    const [used, plan, other] = [inFolder('parts', 'yard.crib'), fresh(), fresh()];
    writeFileSync(join(folder, 'parts', 'yard.crib'), timber);
    server.open(used, timber);
    server.open(plan, user);
    server.open(other, samplePlan(6));
    expect(codes(await server.diagnostics(plan, 1))).not.toContain('unknown-name');
    await Promise.all([plan, other].map(server.whole));
    const from = server.received.length;
    server.change(used, timber.replace('Yard4x4', 'Other4x4'), 2);
    await unknown(plan, true, from);
    expect(server.received.slice(from).filter((m) => JSON.stringify(m.params ?? '').includes(other))).toEqual(
      [],
    );
    server.close(used);
  });

  it('looks again when a file that it uses is written, deleted or renamed on the disk', async () => {
    const path = join(folder, 'parts', 'yard.crib');
    const [used, plan] = [inFolder('parts', 'yard.crib'), fresh()];
    rmSync(path, { force: true });
    server.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: used, type: 3 }] });
    server.open(plan, user);
    expect(codes(await server.diagnostics(plan, 1))).toContain('use-not-found');

    let from = server.received.length;
    writeFileSync(path, timber);
    server.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: used, type: 1 }] });
    await missing(plan, false, from);

    from = server.received.length;
    renameSync(path, join(folder, 'parts', 'other.crib'));
    server.notify('workspace/didChangeWatchedFiles', {
      changes: [
        { uri: used, type: 3 },
        { uri: inFolder('parts', 'other.crib'), type: 1 },
      ],
    });
    await missing(plan, true, from);
  });

  it('takes back what it showed when a file is closed', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(14));
    expect(await server.diagnostics(uri, 1)).not.toEqual([]);
    const from = server.received.length;
    server.close(uri);
    await takenBack(uri, from);
  });

  it('shows nothing of a file that is opened and closed at once', async () => {
    const [gone, marker] = [fresh(), fresh()];
    server.open(gone, samplePlan(14));
    server.close(gone);
    server.open(marker, samplePlan(14));
    await server.whole(marker);
    expect(server.published(gone).at(-1)?.diagnostics ?? []).toEqual([]);
  });

  it('starts anew for a file that is opened again under another name', async () => {
    const [before, after] = [fresh(), fresh()];
    server.open(before, samplePlan(14));
    await server.diagnostics(before, 1);
    const from = server.received.length;
    server.close(before);
    server.open(after, samplePlan(14));
    await takenBack(before, from);
    expect(codes(await server.diagnostics(after, 1))).toContain('crib-height');
  });

  it('reads what a use line may reach anew when folders are opened or closed', async () => {
    const outside = mkdtempSync(join(tmpdir(), 'crib-outside-'));
    mkdirSync(join(outside, 'plans'));
    writeFileSync(join(outside, 'shared.crib'), timber);
    const plan = pathToFileURL(join(outside, 'plans', 'plan.crib')).toString();
    server.open(plan, user.replace('parts/yard.crib', '../shared.crib'));
    expect(codes(await server.diagnostics(plan, 1))).toContain('use-outside');
    const from = server.received.length;
    const added = [{ uri: pathToFileURL(outside).toString(), name: 'outside' }];
    server.notify('workspace/didChangeWorkspaceFolders', { event: { added, removed: [] } });
    await server.diagnosticsThat(
      'without a use line that reaches outside',
      plan,
      (found) => !codes(found).includes('use-outside'),
      from,
    );
    server.close(plan);
    rmSync(outside, { recursive: true });
  });

  it('uses nothing behind a link that leads outside, and says so', async () => {
    const outside = mkdtempSync(join(tmpdir(), 'crib-behind-'));
    writeFileSync(join(outside, 'yard.crib'), timber);
    symlinkSync(join(outside, 'yard.crib'), join(folder, 'linked.crib'));
    symlinkSync(outside, join(folder, 'linked'));
    for (const path of ['linked.crib', 'linked/yard.crib']) {
      const plan = fresh();
      server.open(plan, user.replace('parts/yard.crib', path));
      const found = await server.diagnostics(plan, 1);
      expect(found.find((d) => d.code === 'use-unreadable')?.message).toContain('leads outside this folder');
      server.close(plan);
    }
    const symbols = await server.request('workspace/symbol', { query: '' });
    expect(JSON.stringify(symbols)).not.toContain('linked');
    rmSync(outside, { recursive: true });
  });

  it('asks to hear of plan files on the disk', async () => {
    const asked = await server.message(
      'the request to watch',
      (m) => m.method === 'client/registerCapability',
    );
    expect(JSON.stringify(asked.params)).toContain('**/*.crib');
  });
});

describe('a folder of two hundred files that all use one', () => {
  it('looks again at the open ones only, and finds names in all', async () => {
    const yard = join(folder, 'yard');
    mkdirSync(yard, { recursive: true });
    const shared = 'use "library/vehicles.crib"\nvehicle type YardTrailer : VanTrailer53 {\n}\n';
    writeFileSync(join(yard, 'shared.crib'), shared);
    const text = samplePlan(6)
      .replace('use "', 'use "shared.crib"\nuse "')
      .replace('VanTrailer53', 'YardTrailer');
    for (let i = 0; i < 200; i++) writeFileSync(join(yard, `plan-${i}.crib`), text);
    server.notify('workspace/didChangeWatchedFiles', {
      changes: [{ uri: inFolder('yard', 'plan-0.crib'), type: 1 }],
    });
    const [first, second] = [inFolder('yard', 'plan-0.crib'), inFolder('yard', 'plan-1.crib')];
    for (const uri of [first, second]) server.open(uri, text);
    server.open(inFolder('yard', 'shared.crib'), shared);
    await Promise.all([first, second].map(server.whole));
    const used = await server.request<unknown[]>('textDocument/references', {
      textDocument: { uri: inFolder('yard', 'shared.crib') },
      position: { line: 1, character: 15 },
      context: { includeDeclaration: false },
    });
    expect(used).toHaveLength(200);

    const from = server.received.length;
    server.change(inFolder('yard', 'shared.crib'), shared.replace('YardTrailer', 'OtherTrailer'), 2);
    await unknown(first, true, from);
    await unknown(second, true, from);
    const told = server.received
      .slice(from)
      .filter((m) => m.method === 'textDocument/publishDiagnostics')
      .map((m) => (m.params as { uri: string }).uri);
    expect(new Set(told.filter((uri) => uri.includes('/yard/plan-')))).toEqual(new Set([first, second]));
  });
});
