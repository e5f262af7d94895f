import type { BoundBlock, BoundProperty, TextChange } from '@cribwright/language';
import type { Message } from '@cribwright/messages';
import { message, name as nameHole } from '@cribwright/messages';
import type { PlanEdit } from '@cribwright/model';
import { insertInto } from './insert-line.js';
import { marginBefore } from './margin-before.js';
import { placeChanges } from './place-changes.js';
import { appendTarget, clauseAt, clauses, insertSteps, moveStep } from './step-changes.js';

/** Changes of text by file, or why there are none. */
export type Changes =
  | { readonly changes: Readonly<Record<string, readonly TextChange[]>> }
  | { readonly refused: Message };

/** A plan as it is written. */
export interface WrittenPlan {
  readonly block: BoundBlock;
  /** All of its file. */
  readonly text: string;
}

/** Turns edits of a plan into changes of its text. All of them, or none. */
export function planEditChanges(plan: WrittenPlan, edits: readonly PlanEdit[]): Changes {
  const changes: TextChange[] = [];
  for (const edit of edits) {
    const made = change(plan, edit);
    if ('refused' in made) return made;
    changes.push(...made.changes);
  }
  return { changes: { [plan.block.uri]: together(changes) } };
}

/** What goes in at one place as one change: not everyone who makes changes keeps the order of two. */
function together(changes: readonly TextChange[]): readonly TextChange[] {
  const inserts = new Map<number, string>();
  for (const { span, text } of changes)
    if (span.start === span.end) inserts.set(span.start, (inserts.get(span.start) ?? '') + text);
  const done = new Set<number>();
  return changes.flatMap((change) => {
    const { start, end } = change.span;
    if (start !== end) return [change];
    if (done.has(start)) return [];
    done.add(start);
    return [{ span: change.span, text: inserts.get(start) ?? change.text }];
  });
}

type Change = { readonly changes: readonly TextChange[] } | { readonly refused: Message };

function change(plan: WrittenPlan, edit: PlanEdit): Change {
  const ref = edit.kind === 'insert' ? edit.into : edit.at;
  const found = elementIn(plan.block, ref.element);
  if (!found) return { refused: whyNotHere(plan.block, ref.element) };
  switch (edit.kind) {
    case 'set':
      return found.step
        ? setClause(found.step, ref.property, edit.text)
        : set(plan, found.block, ref.property, edit.text);
    case 'place':
      return placeInstead(plan, found.block, edit) ?? set(plan, found.block, ref.property, edit.text);
    case 'insert':
      return (
        insertInto(plan.text, found.block, edit.text) ?? {
          refused: message('edit.no-body', { element: nameHole(ref.element) }),
        }
      );
    case 'remove':
      return remove(plan, found.step ?? lineOf(found.block, ref.property) ?? found.block);
    case 'append':
      return found.step ? { changes: [appendTarget(found.step, edit.text)] } : noStep(ref.element);
    case 'insert steps':
      return found.step
        ? { changes: insertSteps(plan.text, found.block, found.step, edit.where, edit.texts) }
        : noStep(ref.element);
    case 'move step': {
      const other = elementIn(plan.block, edit.step.element);
      return found.step && other?.step && other.block === found.block
        ? { changes: moveStep(plan.text, found.block, found.step, edit.where, other.step) }
        : noStep(ref.element);
    }
  }
}

/** Of a place that is measured from something else than the front, changes the distance alone. */
function placeInstead(
  { block: plan, text }: WrittenPlan,
  block: BoundBlock,
  { at, from, to }: Extract<PlanEdit, { kind: 'place' }>,
): Change | undefined {
  const line = lineOf(block, at.property);
  const grows = line && growsOf(line, plan);
  if (line === undefined || grows === undefined) return undefined;
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const made = placeChanges(
    text,
    line,
    { ...(near(from.x, to.x) ? {} : { x: to.x }), ...(near(from.y, to.y) ? {} : { y: to.y }) },
    { x: from.x, grows },
  );
  return 'refused' in made || made.changes.length === 0 ? undefined : made;
}

/** Which way such a distance grows: of one from another vehicle than the main one that is not known here. */
function growsOf({ match }: BoundProperty, plan: BoundBlock): 1 | -1 | undefined {
  const said = match?.values as Partial<Record<'fromEnd' | 'way', { readonly text: string }>> | undefined;
  if (said?.fromEnd !== undefined) return said.fromEnd.text === 'from the rear' ? -1 : 1;
  if (said?.way === undefined) return undefined;
  const datum = match?.values.datum as { readonly vehicle?: { readonly text: string } } | undefined;
  const main = plan.blocks.find((b) => b.schema.keyword === 'vehicle')?.name;
  if (datum?.vehicle !== undefined && datum.vehicle.text !== main) return undefined;
  return said.way.text === 'behind' ? 1 : -1;
}

const noStep = (element: string): Change => ({
  refused: message('edit.no-step', { element: nameHole(element) }),
});

/** The block that makes an element, in the plan's own text; of a step, its line. */
export function elementIn(
  plan: BoundBlock,
  element: string,
): { readonly block: BoundBlock; readonly step?: BoundProperty } | undefined {
  if (element === plan.elementId) return { block: plan };
  const step = /^step\/(.+)$/.exec(element)?.[1];
  for (const block of plan.blocks) {
    if (block.elementId === element) return { block };
    const line =
      step === undefined
        ? undefined
        : block.properties.find((p) => p.schema === block.schema.numbered && p.key === step);
    if (line) return { block, step: line };
  }
  return undefined;
}

export function whyNotHere(plan: BoundBlock, element: string): Message {
  const [, name = ''] = element.split('/');
  const group = name.includes('.') || plan.properties.some((p) => p.schema.key === 'pattern use');
  return message(group ? 'edit.from-pattern' : 'edit.not-here', {
    element: nameHole(name === '' ? element : name),
  });
}

/** `courses`, or a path into a block inside: `axle 2/empty`. */
function lineOf(block: BoundBlock, property: string | undefined): BoundProperty | undefined {
  if (property === undefined) return undefined;
  const home = innerBlock(block, property);
  const key = property.slice(property.lastIndexOf('/') + 1);
  return home?.properties.find((p) => p.schema.key === key || p.key === key);
}

function innerBlock(block: BoundBlock, property: string): BoundBlock | undefined {
  const path = property.split('/').slice(0, -1);
  return path.reduce<BoundBlock | undefined>(
    (at, step) =>
      at?.blocks.find(
        (b) =>
          [b.schema.keyword, b.name].filter((w) => w !== undefined).join(' ') === step || b.name === step,
      ),
    block,
  );
}

function set(plan: WrittenPlan, block: BoundBlock, property: string | undefined, text: string): Change {
  // What stands behind the colon: `strut S1 : Strut4to8ft`.
  if (property === 'type' && block.type) return { changes: [{ span: block.type.span, text }] };
  const line = lineOf(block, property);
  const home = property === undefined ? undefined : innerBlock(block, property);
  const key = property?.slice(property.lastIndexOf('/') + 1);
  if (line) return { changes: [{ span: valueSpan(plan.text, line), text }] };
  const inserted = home && key !== undefined ? insertInto(plan.text, home, `${key} ${text}`) : undefined;
  return (
    inserted ?? {
      refused: message('edit.no-body', { element: nameHole(block.name ?? block.schema.keyword) }),
    }
  );
}

/** From the value to the end of the line; a source or a reason behind it stays. */
function valueSpan(text: string, line: BoundProperty): TextChange['span'] {
  const value = line.terms.filter((t) => t.start >= line.keySpan.end);
  const tail = value.findIndex(
    (t, i) => i > 0 && t.kind === 'word' && (t.text === 'source' || t.text === 'because'),
  );
  const last = tail > 0 ? value[tail - 1] : value.at(-1);
  const start = value[0]?.start ?? line.keySpan.end;
  return { start, end: Math.max(start, Math.min(last?.end ?? start, text.length)) };
}

/** `after 2` in a step: in place of the clause that stands there, or at the end of the line. */
function setClause(step: BoundProperty, property: string | undefined, text: string): Change {
  if (property === undefined || !clauses.includes(property))
    return { changes: [{ span: { start: step.keySpan.end, end: step.span.end }, text: ` ${text}` }] };
  const at = clauseAt(step, property);
  if (at === undefined) {
    const end = step.span.end;
    return { changes: [{ span: { start: end, end }, text: `  ${property} ${text}` }] };
  }
  return { changes: [{ span: at, text }] };
}

/** A line or a block, with the rest of its line where nothing else stands on it. */
function remove({ text }: WrittenPlan, { span }: { readonly span: TextChange['span'] }): Change {
  const start = span.start - marginBefore(text, span.start).length;
  const isFirst = start === 0 || /[\r\n]/.test(text.charAt(start - 1));
  const after = /^[ \t]*(?:\r\n|\r|\n|$)/.exec(text.slice(span.end));
  if (!isFirst || !after) return { changes: [{ span, text: '' }] };
  return { changes: [{ span: { start, end: span.end + after[0].length }, text: '' }] };
}
