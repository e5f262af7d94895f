import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type {
  CallHierarchyItem,
  CodeAction,
  CodeLens,
  CompletionItem,
  DocumentHighlight,
  DocumentLink,
  DocumentSymbol,
  FoldingRange,
  Hover,
  InitializeResult,
  InlayHint,
  Location,
  LocationLink,
  SelectionRange,
  SignatureHelp,
  SymbolInformation,
  TextEdit,
  TypeHierarchyItem,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { fleet, pairs, trailerPlan } from '../../packages/workspace/src/testing/plans.js';
import { type Client, Refusal, startServer } from './client.js';
import { positionOf } from './sample-plan.js';

// Every feature once, over the real protocol. What each does in detail is tested beside it.

/** With a pattern used, and an expectation. */
const plan = trailerPlan
  .replace('use "fleet.crib"\n', 'use "fleet.crib"\nuse "pairs.crib"\n')
  .replace('  steps {', '  PairUnder North(rail = trailer rail, reach = 30 ft)\n\n  steps {')
  .replace(/\}\n$/, '\n  expect crib-height on A\n}\n');

let server: Client;
let folder = '';
let initialized: InitializeResult;
const uriOf = (name: string): string => pathToFileURL(join(folder, name)).toString();
const uri = (): string => uriOf('scale-house.crib');
const textDocument = () => ({ uri: uri() });
const at = (words: string, more = 0) => ({
  textDocument: textDocument(),
  position: positionOf(plan, words, more),
});
const whole = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } };
const options = { tabSize: 2, insertSpaces: true };
const line = (words: string): number => positionOf(plan, words).line;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'crib-features-'));
  writeFileSync(join(folder, 'fleet.crib'), fleet);
  writeFileSync(join(folder, 'pairs.crib'), pairs);
  writeFileSync(join(folder, 'scale-house.crib'), plan);
  server = await startServer();
  server.answer('workspace/configuration', () => [{ inlayHints: { enabled: true } }]);
  initialized = await server.initialize({
    workspaceFolders: [{ uri: pathToFileURL(folder).toString(), name: 'yard' }],
    capabilities: {
      workspace: { configuration: true, inlayHint: { refreshSupport: true } },
      textDocument: { completion: { completionItem: { snippetSupport: true } } },
    },
  });
  server.open(uri(), plan);
  await server.diagnostics(uri(), 1);
});
afterAll(async () => {
  expect(server.stray()).toBe('');
  expect(await server.stop()).toBe(0);
  rmSync(folder, { recursive: true });
});

/** Which capability each test below shows. One that is offered and not tested fails the last test. */
const shown = new Set(['textDocumentSync', 'workspace', 'positionEncoding']);
function feature(capability: string, name: string, body: () => Promise<void>): void {
  shown.add(capability);
  it(`${capability}: ${name}`, body);
}

feature('hoverProvider', 'gives the figure with its sum', async () => {
  const hover = await server.request<Hover>('textDocument/hover', at('courses', 2));
  expect(JSON.stringify(hover.contents)).toContain('49 in');
});

feature('hoverProvider', 'works out a calculated value where it is used', async () => {
  const text = plan.replace(
    '  crib A {',
    '  let clear = trailer rail height - 1 in\n  let twice = 2 * clear\n\n  crib A {',
  );
  const other = uriOf('sum.crib');
  server.open(other, text);
  const hover = await server.request<Hover>('textDocument/hover', {
    textDocument: { uri: other },
    position: positionOf(text, '2 * clear', 5),
  });
  server.notify('textDocument/didClose', { textDocument: { uri: other } });
  const shown = JSON.stringify(hover.contents).replaceAll('\\', '');
  expect(shown).toContain('clear: 39 in');
  expect(shown).toContain('= trailer rail height - 1 in');
  expect(shown).toContain('= 40 in - 1 in');
});

feature('completionProvider', 'offers names by kind, with a place to put them', async () => {
  const items = await server.request<CompletionItem[]>('textDocument/completion', at('Fir4x4', 1));
  expect(items.map((i) => i.label)).toContain('Fir4x4');
  expect(items.map((i) => i.label)).not.toContain('trailer');
  expect(items.every((i) => i.textEdit !== undefined)).toBe(true);
});

feature('signatureHelpProvider', 'shows what a pattern asks for', async () => {
  const help = await server.request<SignatureHelp>('textDocument/signatureHelp', at('reach = 30', 8));
  expect(help.signatures[0]?.label).toBe('PairUnder(rail: part, reach: length)');
  expect(help.signatures[0]?.activeParameter).toBe(1);
});

feature('definitionProvider', 'goes into the bundled library', async () => {
  const [link] = await server.request<LocationLink[]>('textDocument/definition', at('Fir4x4', 1));
  expect(link?.targetUri).toMatch(/^cribwright:\/library\//);
});

feature('typeDefinitionProvider', 'goes from a vehicle to its type', async () => {
  const found = await server.request<Location>('textDocument/typeDefinition', at('chock  trailer', 9));
  expect(found.uri).toBe(uriOf('fleet.crib'));
});

feature('referencesProvider', 'finds a type in files that are not open', async () => {
  const found = await server.request<Location[]>('textDocument/references', {
    ...at('CountyTrailer', 3),
    context: { includeDeclaration: true },
  });
  // Where it is declared, where another type extends it, and where the plan uses it.
  expect(found.map((l) => l.uri).sort()).toEqual([uriOf('fleet.crib'), uriOf('fleet.crib'), uri()].sort());
});

feature('documentHighlightProvider', 'marks a crib where it is built and where it is named', async () => {
  const found = await server.request<DocumentHighlight[]>(
    'textDocument/documentHighlight',
    at('build  A', 7),
  );
  expect(found.map((h) => h.range.start.line)).toEqual([line('crib A'), line('build  A'), line('expect')]);
});

feature('documentSymbolProvider', 'outlines a plan', async () => {
  const found = await server.request<DocumentSymbol[]>('textDocument/documentSymbol', {
    textDocument: textDocument(),
  });
  expect(found[0]?.children?.map((c) => c.name)).toContain('crib A');
});

feature('workspaceSymbolProvider', 'finds a name in any file', async () => {
  const found = await server.request<SymbolInformation[]>('workspace/symbol', { query: 'pairunder' });
  expect(found.map((s) => s.location.uri)).toContain(uriOf('pairs.crib'));
});

feature('codeActionProvider', 'offers a fix that is worked out, and all safe ones at once', async () => {
  const params = { textDocument: textDocument(), range: whole, context: { diagnostics: [] } };
  const found = await server.request<CodeAction[]>('textDocument/codeAction', params);
  expect(found.some((a) => a.kind === 'quickfix' && a.diagnostics?.[0]?.code === 'crib-height')).toBe(true);
  const only = await server.request<CodeAction[]>('textDocument/codeAction', {
    ...params,
    context: { diagnostics: [], only: ['source.fixAll'] },
  });
  expect(only.every((a) => a.kind === 'source.fixAll.cribwright')).toBe(true);
});

feature('codeLensProvider', 'stands above the plan and each support', async () => {
  const found = await server.request<CodeLens[]>('textDocument/codeLens', { textDocument: textDocument() });
  expect(found.map((l) => l.range.start.line)).toEqual(
    expect.arrayContaining([line('plan "'), line('crib A')]),
  );
});

feature('inlayHintProvider', 'shows figures once the user asks for them', async () => {
  await server.message('hints to be refreshed', (m) => m.method === 'workspace/inlayHint/refresh');
  const found = await server.request<InlayHint[]>('textDocument/inlayHint', {
    textDocument: textDocument(),
    range: whole,
  });
  expect(found.map((h) => h.position.line)).toContain(line('crib A'));
});

feature('documentLinkProvider', 'opens what a use line names', async () => {
  const found = await server.request<DocumentLink[]>('textDocument/documentLink', {
    textDocument: textDocument(),
  });
  expect(found.map((l) => l.target)).toEqual([
    'cribwright:/library/vehicles.crib',
    uriOf('fleet.crib'),
    uriOf('pairs.crib'),
    'cribwright:/rules/crib-height.md',
  ]);
});

feature('documentFormattingProvider', 'has nothing to change in a file that is laid out', async () => {
  const messy = uriOf('messy.crib');
  server.open(messy, 'plan  "m" {\nground{\nsurface asphalt\n}\n}');
  const edits = await server.request<TextEdit[]>('textDocument/formatting', {
    textDocument: { uri: messy },
    options,
  });
  expect(edits.length).toBeGreaterThan(0);
  expect(await server.request('textDocument/formatting', { textDocument: textDocument(), options })).toEqual(
    [],
  );
  server.close(messy);
});

feature('documentRangeFormattingProvider', 'keeps to the lines asked for', async () => {
  const messy = uriOf('messy.crib');
  server.open(messy, 'ground {\n surface asphalt\n      grade 1 %\n}\n');
  const range = { start: { line: 1, character: 0 }, end: { line: 1, character: 99 } };
  const edits = await server.request<TextEdit[]>('textDocument/rangeFormatting', {
    textDocument: { uri: messy },
    range,
    options,
  });
  expect(edits.length).toBeGreaterThan(0);
  expect(edits.every((e) => e.range.start.line <= 1 && e.range.end.line <= 2)).toBe(true);
  server.close(messy);
});

feature('documentOnTypeFormattingProvider', 'lays out the block that a brace closes', async () => {
  const messy = uriOf('messy.crib');
  server.open(messy, 'plan "m" {\nground {\nsurface asphalt\n}\n}\n');
  const edits = await server.request<TextEdit[]>('textDocument/onTypeFormatting', {
    textDocument: { uri: messy },
    position: { line: 3, character: 1 },
    ch: '}',
    options,
  });
  expect(edits.map((e) => e.newText.replace('\n', ''))).toEqual(['  ', '    ', '  ']);
  server.close(messy);
});

feature('renameProvider', 'changes a name in every file, open or not', async () => {
  const prepared = await server.request<{ placeholder: string }>(
    'textDocument/prepareRename',
    at('CountyTrailer', 3),
  );
  expect(prepared.placeholder).toBe('CountyTrailer');
  const edit = await server.request<WorkspaceEdit>('textDocument/rename', {
    ...at('CountyTrailer', 3),
    newName: 'YardTrailer',
  });
  expect(Object.keys(edit.changes ?? {}).sort()).toEqual([uriOf('fleet.crib'), uri()].sort());
  const refused = await server
    .request('textDocument/rename', { ...at('Fir4x4', 1), newName: 'Other' })
    .catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(Refusal);
});

feature('foldingRangeProvider', 'folds blocks', async () => {
  const found = await server.request<FoldingRange[]>('textDocument/foldingRange', {
    textDocument: textDocument(),
  });
  expect(found.map((f) => f.startLine)).toEqual(
    expect.arrayContaining([line('plan "'), line('crib A'), line('steps {')]),
  );
});

feature('selectionRangeProvider', 'grows outward from the cursor', async () => {
  const [found] = await server.request<SelectionRange[]>('textDocument/selectionRange', {
    textDocument: textDocument(),
    positions: [positionOf(plan, 'Fir4x4', 1)],
  });
  let depth = 0;
  for (let at = found; at; at = at.parent) depth++;
  expect(depth).toBeGreaterThan(4);
});

feature('semanticTokensProvider', 'colors whole, by changes, and by range', async () => {
  const full = await server.request<{ resultId?: string; data: number[] }>(
    'textDocument/semanticTokens/full',
    {
      textDocument: textDocument(),
    },
  );
  expect(full.data.length).toBeGreaterThan(100);
  expect(full.data.length % 5).toBe(0);
  const delta = await server.request<{ edits: unknown[] }>('textDocument/semanticTokens/full/delta', {
    textDocument: textDocument(),
    previousResultId: full.resultId,
  });
  expect(delta.edits).toEqual([]);
  const part = await server.request<{ data: number[] }>('textDocument/semanticTokens/range', {
    textDocument: textDocument(),
    range: { start: { line: line('crib A'), character: 0 }, end: { line: line('crib A') + 1, character: 0 } },
  });
  expect(part.data.length).toBeLessThan(full.data.length);
  expect(part.data.length).toBeGreaterThan(0);
});

feature('typeHierarchyProvider', 'goes up from a type into the library', async () => {
  const [item] = await server.request<TypeHierarchyItem[]>(
    'textDocument/prepareTypeHierarchy',
    at('CountyTrailer', 3),
  );
  const above = await server.request<TypeHierarchyItem[]>('typeHierarchy/supertypes', { item });
  expect(above.map((i) => i.name)).toEqual(['VanTrailer53']);
  const below = await server.request<TypeHierarchyItem[]>('typeHierarchy/subtypes', { item: above[0] });
  expect(below.map((i) => i.name)).toContain('CountyTrailer');
});

feature('callHierarchyProvider', 'tells which plans use a pattern, and the other way', async () => {
  const [item] = await server.request<CallHierarchyItem[]>(
    'textDocument/prepareCallHierarchy',
    at('PairUnder', 3),
  );
  const users = await server.request<{ from: CallHierarchyItem }[]>('callHierarchy/incomingCalls', { item });
  expect(users.map((c) => c.from.name)).toEqual(['Trailer by the scale house']);
  const used = await server.request<{ to: CallHierarchyItem }[]>('callHierarchy/outgoingCalls', {
    item: users[0]?.from,
  });
  expect(used.map((c) => c.to.name)).toEqual(['PairUnder']);
});

it('workspace/willRenameFiles: use lines move with a file', async () => {
  const files = [{ oldUri: uriOf('pairs.crib'), newUri: uriOf('patterns.crib') }];
  const edit = await server.request<WorkspaceEdit>('workspace/willRenameFiles', { files });
  expect(edit.changes?.[uri()]?.map((e) => e.newText)).toEqual(['patterns.crib']);
});

it('workspace/textDocumentContent: gives the library and the page of a rule', async () => {
  const content = async (of: string): Promise<string> =>
    (await server.request<{ text: string }>('workspace/textDocumentContent', { uri: of })).text;
  expect(await content('cribwright:/library/vehicles.crib')).toContain('vehicle type VanTrailer53');
  expect(await content('cribwright:/rules/crib-height.md')).toContain('crib-height');
});

it('every feature that the server offers is shown here', () => {
  const offered = Object.entries(initialized.capabilities).filter(
    ([, value]) => value !== undefined && value !== false,
  );
  expect(offered.map(([name]) => name).filter((name) => !shown.has(name))).toEqual([]);
});
