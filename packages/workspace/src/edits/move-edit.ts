import type { BoundBlock, BoundFile, BoundProperty } from '@cribwright/language';
import type { WrittenQuantity } from '@cribwright/language/internal';
import { message, name as nameHole } from '@cribwright/messages';
import type { PlanReply } from '../reply/plan-reply.js';
import { type Along, lengthChange, type Moved, placeChanges } from './place-changes.js';
import { type Changes, elementIn, whyNotHere } from './plan-edit-changes.js';

export type Move = Pick<MoveParams, 'element' | 'moves' | 'to'>;

/** The smallest change of the text that puts something where it was dragged, or why that cannot be. */
export function moveEdit(
  file: BoundFile,
  plan: BoundBlock,
  reply: PlanReply | undefined,
  move: Move,
): Changes {
  const block = elementIn(plan, move.element)?.block;
  if (!block) return { refused: whyNotHere(plan, move.element) };
  const moved = changesFor(file, block, reply, move);
  return 'refused' in moved ? moved : { changes: { [file.uri]: moved.changes } };
}

function changesFor(
  file: BoundFile,
  block: BoundBlock,
  reply: PlanReply | undefined,
  { element, moves, to }: Move,
): Moved {
  const key = keys[moves];
  const line = block.properties.find((p) => p.schema.key === key);
  const name = block.name ?? element;
  if (!line) return { refused: message('edit.no-place', { element: nameHole(name) }) };
  if (moves === 'base') return footChanges(file, line, reply, element, to);
  return placeChanges(file.text, line, planar(to), alongOf(line, reply, element, moves));
}

const keys: Readonly<Record<Move['moves'], string>> = {
  center: 'at',
  vehicle: 'at',
  base: 'base',
  head: 'head',
};

/** `base 4 ft out` counts from the head; `base at 24 ft, …` is a place. */
function footChanges(
  file: BoundFile,
  line: BoundProperty,
  reply: PlanReply | undefined,
  element: string,
  to: Move['to'],
): Moved {
  const out = line.match?.values.out as WrittenQuantity | undefined;
  if (!out) return placeChanges(file.text, line, planar(to), alongOf(line, reply, element, 'base'));
  const head = reply?.plan.struts.find((s) => s.id === element)?.head;
  if (!head)
    return { refused: message('edit.unreadable', { element: nameHole(line.block?.name ?? element) }) };
  return lengthChange(file.text, out, Math.abs((to.y ?? head.y) - head.y));
}

/** Where a thing is whose line measures from an axle, a support or the rear; `undefined` where that is not known. */
function alongOf(
  { match }: BoundProperty,
  reply: PlanReply | undefined,
  element: string,
  moves: Move['moves'],
): Along | undefined {
  const values = match?.values;
  const plan = reply?.plan;
  if (values === undefined || plan === undefined) return undefined;
  const strut = plan.struts.find((s) => s.id === element);
  const at = [...plan.cribs, ...plan.stepChocks].find((s) => s.id === element)?.at;
  const x = moves === 'base' ? strut?.foot.x : moves === 'head' ? strut?.head.x : at?.x;
  if (x === undefined) return undefined;
  if (values.fromEnd !== undefined) {
    const { text } = values.fromEnd as { readonly text: string };
    return { x, grows: text === 'from the rear' ? -1 : 1 };
  }
  const datum = values.datum as Partial<Record<'vehicle' | 'beside', { readonly text: string }>> | undefined;
  const said = datum?.vehicle?.text;
  const vehicle =
    datum?.beside !== undefined
      ? plan.vehicles[0]
      : said !== undefined
        ? plan.vehicles.find((v) => v.name === said)
        : strut
          ? plan.vehicles.find((v) => v.id === strut.head.vehicle)
          : plan.vehicles[0];
  if (vehicle === undefined) return undefined;
  const behind = (values.way as { readonly text: string } | undefined)?.text === 'behind' ? 1 : -1;
  return { x, grows: Math.cos(vehicle.heading) * behind > 0 ? 1 : -1 };
}

const planar = ({ x, y }: Move['to']): { x?: number; y?: number } => ({
  ...(x === undefined ? {} : { x }),
  ...(y === undefined ? {} : { y }),
});

/** What was dragged, and where to. */
export interface MoveParams {
  readonly uri: string;
  /** Of the text that was shown: a count that the editor raises. */
  readonly version: number;
  readonly element: string;
  readonly moves: 'center' | 'base' | 'head' | 'vehicle';
  /** Plan axes, m. An axis that is left out stays as it is. */
  readonly to: { readonly x?: number; readonly y?: number; readonly z?: number };
  /** Which plan of the file, from 0. Without it, the first that has the element. */
  readonly plan?: number;
}
