import type {
  EditReply,
  ElementAtReply,
  ExpectationsReply,
  MakeSafeReply,
  RulePageReply,
} from '@cribwright/server/protocol';
import type { AnalysisReply } from '@cribwright/workspace';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Client, startServer } from './client.js';
import { faultyPlan, positionOf, samplePlan } from './sample-plan.js';

let server: Client;
let last = 0;
const opened = (text: string): string => {
  const uri = `file:///alder-ridge/own-${++last}.crib`;
  server.open(uri, text);
  return uri;
};

beforeAll(async () => {
  server = await startServer();
  await server.initialize();
});
afterAll(async () => {
  expect(server.stray()).toBe('');
  expect(await server.stop()).toBe(0);
});

/** The text after an edit that the server proposes for one file. */
function after(text: string, uri: string, reply: EditReply): string {
  if ('refused' in reply) throw new Error(reply.refused);
  const lines = text.split('\n');
  const starts = lines.map((_, i) => lines.slice(0, i).join('\n').length + (i > 0 ? 1 : 0));
  const offset = (p: { line: number; character: number }): number =>
    (starts[p.line] ?? text.length) + p.character;
  const edits = [...(reply.edit.changes?.[uri] ?? [])].sort(
    (a, b) => offset(b.range.start) - offset(a.range.start),
  );
  return edits.reduce(
    (t, e) => t.slice(0, offset(e.range.start)) + e.newText + t.slice(offset(e.range.end)),
    text,
  );
}

describe('cribwright/makeSafe', () => {
  it('gives the changes that leave nothing unsafe, with what each does, and changes nothing itself', async () => {
    const text = faultyPlan;
    const uri = opened(text);
    const reply = await server.request<MakeSafeReply>('cribwright/makeSafe', { uri });
    expect(reply.version).toBe(1);
    expect(reply.left).toEqual([]);
    expect(reply.steps.length).toBeGreaterThan(0);
    expect(reply.steps.every((s) => s.title !== '' && / on /.test(s.rule) && /→/.test(s.unsafe))).toBe(true);
    expect(reply.summary).toMatch(/nothing unsafe/);
    expect(after(text, uri, { edit: reply.edit })).toBe(reply.texts[uri]);
    const [plan] = reply.analysis.plans;
    expect(plan?.analysis.findings.filter((f) => f.severity === 'danger' || f.couldNotRun)).toEqual([]);
    expect(await server.request<AnalysisReply>('cribwright/analysis', { uri })).toMatchObject({ version: 1 });
  });

  it('says of a file that is not there that it is not', async () => {
    const uri = 'file:///alder-ridge/none.crib';
    const reply = await server.request<MakeSafeReply>('cribwright/makeSafe', { uri });
    expect(reply).toMatchObject({ steps: [], texts: {}, edit: { changes: {} } });
    expect(reply.summary).not.toBe('');
  });
});

describe('cribwright/analysis', () => {
  it('gives the plan, its figures, and where each line stands', async () => {
    const uri = opened(samplePlan(14));
    const reply = await server.request<AnalysisReply>('cribwright/analysis', { uri });
    expect(reply).toMatchObject({ uri, version: 1, state: 'good' });
    const [plan] = reply.plans;
    expect(plan?.analysis.supports.map((s) => s.id)).toContain('crib/A');
    const place = plan?.places['crib/A#courses'];
    expect(place?.range.start.line).toBe(positionOf(samplePlan(14), 'courses').line);
  });

  it('says that a text with errors is not whole', async () => {
    const uri = opened(samplePlan(14).replace('36,000', 'many'));
    expect(await server.request<AnalysisReply>('cribwright/analysis', { uri })).toMatchObject({
      state: 'errors',
    });
  });

  it('says of a file that is not there that it has no plan', async () => {
    const uri = 'file:///alder-ridge/none.crib';
    expect(await server.request('cribwright/analysis', { uri })).toEqual({
      uri,
      life: expect.any(String),
      version: 0,
      state: 'no plan',
      pending: false,
      plans: [],
    });
  });

  it('is announced when it changed, with a tally that never hides a danger', async () => {
    const uri = opened(samplePlan(14));
    const note = await server.message(
      'the note',
      (m) => m.method === 'cribwright/analysisChanged' && JSON.stringify(m.params).includes(uri),
    );
    expect(note.params).toMatchObject({ uri, version: 1 });
    expect((note.params as { danger: number }).danger).toBeGreaterThan(0);
  });
});

it('works out the push once nobody types, and says so', async () => {
  const uri = opened(samplePlan(6));
  const changed = (pending: boolean) =>
    server.message(`a note with pending ${pending}`, (m) => {
      const params = m.params as { uri?: string; pending?: boolean } | undefined;
      return m.method === 'cribwright/analysisChanged' && params?.uri === uri && params.pending === pending;
    });
  await changed(true);
  await changed(false);
  const { plans, pending } = await server.request<AnalysisReply>('cribwright/analysis', { uri });
  expect(pending).toBe(false);
  expect(plans[0]?.analysis.push?.directions.length).toBeGreaterThan(0);
});

describe('cribwright/edit', () => {
  it('sets one value and leaves the rest of the text as it is', async () => {
    const text = samplePlan(14);
    const uri = opened(text);
    const edits = [{ kind: 'set', at: { element: 'crib/A', property: 'courses' }, text: '6' }];
    const reply = await server.request<EditReply>('cribwright/edit', { uri, version: 1, edits });
    expect(after(text, uri, reply)).toBe(samplePlan(6));
  });

  it('refuses when the text has moved on', async () => {
    const uri = opened(samplePlan(14));
    server.change(uri, samplePlan(12), 2);
    const edits = [{ kind: 'set', at: { element: 'crib/A', property: 'courses' }, text: '6' }];
    expect(await server.request('cribwright/edit', { uri, version: 1, edits })).toHaveProperty('refused');
  });
});

describe('cribwright/move', () => {
  it('puts a crib where it was dragged, in the units of the text', async () => {
    const text = samplePlan(6);
    const uri = opened(text);
    const reply = await server.request<EditReply>('cribwright/move', {
      uri,
      version: 1,
      element: 'crib/A',
      moves: 'center',
      to: { x: 22 * 0.3048, y: -3 * 0.3048 },
    });
    expect(after(text, uri, reply)).toBe(
      text.replace('21 ft, driver side 3 ft 4 in', '22 ft, driver side 3 ft'),
    );
  });

  it('says why a place that is worked out cannot be dragged', async () => {
    const text = samplePlan(6)
      .replace('21 ft, driver', 'back, driver')
      .replace('plan "', 'let back = 10 ft + 11 ft\nplan "');
    const uri = opened(text);
    const reply = await server.request<EditReply>('cribwright/move', {
      uri,
      version: 1,
      element: 'crib/A',
      moves: 'center',
      to: { x: 7 },
    });
    expect(reply).toHaveProperty('refused');
  });
});

it('cribwright/elementAt: tells which support the cursor is in', async () => {
  const text = samplePlan(6);
  const uri = opened(text);
  const at = (words: string) =>
    server.request<ElementAtReply>('cribwright/elementAt', { uri, offset: text.indexOf(words) });
  expect((await at('courses')).ref).toEqual({ element: 'crib/A', property: 'courses' });
  expect((await at('trailer at rail')).ref).toEqual({ element: 'vehicle/car', property: 'bears' });
  expect((await at('build  A')).ref).toEqual({ element: 'step/2' });
  expect((await at('use "library')).ref).toBeUndefined();
});

it('cribwright/expectations: says which hold, and why not', async () => {
  const uri = opened(
    samplePlan(14).replace('\n  steps', '\n  expect safe\n  expect crib-height on A\n\n  steps'),
  );
  const { items } = await server.request<ExpectationsReply>('cribwright/expectations', { uri });
  expect(items.map((i) => i.held)).toEqual([false, true]);
  expect(items[0]?.why).not.toBe('');
  expect(new Set(items.map((i) => i.id)).size).toBe(2);
});

it('cribwright/rulePage: gives the page of a rule, and nothing for one that is not there', async () => {
  const page = await server.request<RulePageReply>('cribwright/rulePage', { rule: 'crib-height' });
  expect(page.markdown).toContain('crib');
  expect(await server.request('cribwright/rulePage', { rule: 'no-such-rule' })).toEqual({});
  expect(await server.request('cribwright/rulePage', { rule: 'constructor' })).toEqual({});
});

it('cribwright/bundledFiles: lists the library, each of which can be read', async () => {
  const { uris } = await server.request<{ uris: string[] }>('cribwright/bundledFiles');
  expect(uris).toContain('cribwright:/library/timber.crib');
  for (const uri of uris) {
    const { text } = await server.request<{ text?: string }>('cribwright/bundledFile', { uri });
    expect(text?.length).toBeGreaterThan(0);
  }
});

it('finds nothing wrong with the library that it brings, opened as a file', async () => {
  const { uris } = await server.request<{ uris: string[] }>('cribwright/bundledFiles');
  for (const uri of uris) {
    const { text } = await server.request<{ text: string }>('cribwright/bundledFile', { uri });
    server.open(uri, text);
    expect((await server.diagnostics(uri, 1)).filter((d) => (d.severity ?? 1) < 3)).toEqual([]);
    server.close(uri);
  }
});

it('speaks the language of the client', async () => {
  const spanish = await startServer();
  await spanish.initialize({ locale: 'es-US' });
  const english = opened(samplePlan(14));
  spanish.open(english, samplePlan(14));
  const [es, en] = [await spanish.diagnostics(english, 1), await server.diagnostics(english, 1)];
  const height = (list: typeof en) => list.find((d) => d.code === 'crib-height')?.message;
  expect(height(es)).not.toBe(height(en));
  expect(height(es)).toContain('49 in');
  const page = await spanish.request<RulePageReply>('cribwright/rulePage', { rule: 'crib-height' });
  expect(page.markdown).toMatch(/^# crib-height: crib demasiado alto/);
  const content = await spanish.request<{ text: string }>('workspace/textDocumentContent', {
    uri: 'cribwright:/rules/crib-height.md',
  });
  expect(content.text).toBe(page.markdown);
  expect(await spanish.stop()).toBe(0);
});

describe('settings', () => {
  it('show figures in the units that the user chose, and back', async () => {
    const uri = opened(samplePlan(14));
    const height = (list: { code?: unknown; message: unknown }[]) =>
      list.find((d) => d.code === 'crib-height')?.message;
    expect(height(await server.diagnostics(uri, 1))).toContain('49 in');
    let from = server.received.length;
    server.notify('workspace/didChangeConfiguration', { settings: { cribwright: { units: 'si' } } });
    expect(height(await server.diagnostics(uri, 1, from))).toMatch(/1,2\d\d mm/);
    from = server.received.length;
    server.notify('workspace/didChangeConfiguration', { settings: { cribwright: {} } });
    expect(height(await server.diagnostics(uri, 1, from))).toContain('49 in');
  });

  it('keep hints off until the user turns them on, and lenses on until the user turns them off', async () => {
    const uri = opened(samplePlan(14));
    await server.diagnostics(uri, 1);
    const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
    const hints = () =>
      server.request<unknown[] | null>('textDocument/inlayHint', { textDocument: { uri }, range });
    const lenses = () => server.request<unknown[] | null>('textDocument/codeLens', { textDocument: { uri } });
    expect(await hints()).toBeNull();
    expect((await lenses())?.length).toBeGreaterThan(0);
    const cribwright = { inlayHints: { enabled: true }, codeLens: { enabled: false } };
    server.notify('workspace/didChangeConfiguration', { settings: { cribwright } });
    expect((await hints())?.length).toBeGreaterThan(0);
    expect(await lenses()).toBeNull();
    server.notify('workspace/didChangeConfiguration', { settings: { cribwright: {} } });
    expect(await hints()).toBeNull();
  });
});
