import type { BoundBlock, BoundProperty } from '@cribwright/language';
import { commonRun } from '../edits/common-run.js';
import { rangeOf } from '../workspace/lines.js';
import type { LineChange } from './comparison.js';
import { lineMeaning, lineText } from './line-text.js';
import type { Pair } from './match-blocks.js';

interface Line {
  readonly property: BoundProperty;
  /** For finding its counterpart: a key, or for a numbered line nothing, as numbers shift. */
  readonly key: string;
  readonly meaning: string;
  readonly text: string;
  readonly line: number;
}

/** Lines of two blocks that differ in meaning. Order counts for numbered lines alone. */
export function lineChanges(
  { before, after }: Pair,
  nameNow: (name: string) => string,
): readonly LineChange[] {
  const old = linesOf(before.block, before.text, nameNow);
  const now = linesOf(after.block, after.text, (name) => name);
  return [
    ...keyed(
      old.filter((l) => l.key !== ''),
      now.filter((l) => l.key !== ''),
    ),
    ...numbered(
      old.filter((l) => l.key === ''),
      now.filter((l) => l.key === ''),
    ),
  ];
}

function linesOf(block: BoundBlock, text: string, nameNow: (name: string) => string): readonly Line[] {
  return block.properties.map((property) => {
    const isNumbered = property.schema === block.schema.numbered;
    return {
      property,
      key: isNumbered ? '' : property.key,
      meaning: lineMeaning(property, nameNow, !isNumbered),
      text: lineText(property, text),
      line: rangeOf(text, property.span).start.line + 1,
    };
  });
}

/** What one version alone has, in pairs of the same key as far as they go. */
function keyed(old: readonly Line[], now: readonly Line[]): readonly LineChange[] {
  const rest = [...now];
  const gone = old.filter((line) => {
    const at = rest.findIndex((l) => l.meaning === line.meaning);
    if (at >= 0) rest.splice(at, 1);
    return at < 0;
  });
  const changes = gone.map((line) => {
    const at = rest.findIndex((l) => l.key === line.key);
    const [to] = at < 0 ? [] : rest.splice(at, 1);
    return change(line, to);
  });
  return [...changes, ...rest.map((line) => change(undefined, line))];
}

/** The longest run of lines that both have stays; what stands between is changed, in pairs as far as they go. */
function numbered(old: readonly Line[], now: readonly Line[]): readonly LineChange[] {
  const same = commonRun(old, now, (a, b) => a.meaning === b.meaning);
  const changes: LineChange[] = [];
  let [i, j] = [0, 0];
  for (const [oldEnd, nowEnd] of [...same, [old.length, now.length] as const]) {
    const [gone, come] = [old.slice(i, oldEnd), now.slice(j, nowEnd)];
    for (let k = 0; k < Math.max(gone.length, come.length); k++) changes.push(change(gone[k], come[k]));
    [i, j] = [oldEnd + 1, nowEnd + 1];
  }
  return changes;
}

const change = (before: Line | undefined, after: Line | undefined): LineChange => ({
  key: (after ?? before)?.property.key ?? '',
  ...(before === undefined ? {} : { before: before.text }),
  ...(after === undefined ? {} : { after: after.text }),
  line: (after ?? before)?.line ?? 1,
});
