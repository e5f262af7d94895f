import type { BoundBlock, BoundFile } from '@cribwright/language';
import type { Declaration } from '@cribwright/language/internal';
import { blockAt } from '@cribwright/language/internal';
import { type CallHierarchyItem, SymbolKind } from 'vscode-languageserver';
import { nameAt, usesIn } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, rangeOf } from '../context/positions.js';
import { labelOf } from './document-symbol.js';

/** `callHierarchy`: which plans use a pattern, and which patterns a plan uses. */
export const callHierarchy: Feature = {
  offers: () => ({ callHierarchyProvider: true }),
  serve(session) {
    const { callHierarchy: calls } = session.connection.languages;
    calls.onPrepare(async ({ textDocument, position }) => {
      const file = await session.file(textDocument.uri);
      return file ? prepareCalls(session, file, offsetAt(file, position)) : null;
    });
    calls.onIncomingCalls(({ item }) => incoming(session, item));
    calls.onOutgoingCalls(({ item }) => outgoing(session, item));
  },
};

export function prepareCalls(desk: FeatureContext, file: BoundFile, offset: number): CallHierarchyItem[] {
  const name = nameAt(file, offset);
  if (name?.target.kind === 'pattern' && name.target.block) {
    const home = desk.workspace.bound(name.target.uri);
    return home ? [itemOf(home, name.target.block)] : [];
  }
  const caller = callerAt(file, offset);
  return caller ? [itemOf(file, caller)] : [];
}

export async function incoming(desk: FeatureContext, item: CallHierarchyItem) {
  const pattern = await patternOf(desk, item);
  if (!pattern) return [];
  const files = await desk.everyFile();
  return files.flatMap((file) => {
    const byCaller = new Map<BoundBlock, CallHierarchyItem['range'][]>();
    for (const use of usesIn(file, pattern)) {
      const caller = callerAt(file, use.span.start);
      if (caller) byCaller.set(caller, [...(byCaller.get(caller) ?? []), rangeOf(file, use.span)]);
    }
    return [...byCaller].map(([caller, fromRanges]) => ({ from: itemOf(file, caller), fromRanges }));
  });
}

export async function outgoing(desk: FeatureContext, item: CallHierarchyItem) {
  const file = await desk.file(item.uri);
  const caller = file && callerAt(file, offsetAt(file, item.selectionRange.start));
  if (!file || !caller) return [];
  const used = file.references.filter(
    (r) => r.target?.kind === 'pattern' && r.span.start >= caller.span.start && r.span.end <= caller.span.end,
  );
  const targets = new Map(used.flatMap((r) => (r.target?.block ? [[r.target.block, r.target]] : [])));
  return [...targets].flatMap(([block, target]) => {
    const home = desk.workspace.bound(target.uri);
    const fromRanges = used.filter((r) => r.target?.block === block).map((r) => rangeOf(file, r.span));
    return home ? [{ to: itemOf(home, block), fromRanges }] : [];
  });
}

async function patternOf(desk: FeatureContext, item: CallHierarchyItem): Promise<Declaration | undefined> {
  const file = await desk.file(item.uri);
  const at = file && offsetAt(file, item.selectionRange.start);
  return file?.declarations.find((d) => d.kind === 'pattern' && d.nameSpan.start === at);
}

/** The plan or pattern around a place. */
function callerAt(file: BoundFile, offset: number): BoundBlock | undefined {
  for (let block = blockAt(file, offset); block; block = block.parent)
    if (block.schema.keyword === 'plan' || block.schema.keyword === 'pattern') return block;
  return undefined;
}

const itemOf = (file: BoundFile, block: BoundBlock): CallHierarchyItem => ({
  name: block.name ?? block.title ?? labelOf(block),
  detail: block.schema.keyword,
  kind: block.schema.keyword === 'pattern' ? SymbolKind.Function : SymbolKind.Module,
  uri: file.uri,
  range: rangeOf(file, block.span),
  selectionRange: rangeOf(file, block.nameSpan ?? block.titleSpan ?? block.keywordSpan),
});
