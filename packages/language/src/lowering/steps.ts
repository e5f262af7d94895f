import { name as nameHole } from '@cribwright/messages';
import type { Chock, Step, StepAction } from '@cribwright/model';
import type { BoundBlock, Reference } from '../bound/bound-file.js';
import type { Yields } from '../bound/shape.js';
import { problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { stepLine } from '../schema/steps.js';
import { outermost } from './expansion.js';
import type { Lowering, PropertyValue } from './lowering.js';

type StepValues = Yields<typeof stepLine>;

/** The steps, and the chocks that a step puts in without a block of their own. */
export function stepsOf(
  w: Lowering,
  blocks: readonly BoundBlock[],
  chocks: readonly Chock[],
): { readonly steps: readonly Step[]; readonly chocks: readonly Chock[] } {
  const made: Chock[] = [];
  const numbers = new Map<number, PropertyValue<StepValues>>();
  const steps = blocks.flatMap((block) => {
    w.placeBlock('steps', block);
    return w.propertiesOf(block, stepLine).flatMap((said) => {
      const number = Number(said.line.key.replaceAll(',', ''));
      if (!Number.isInteger(number)) {
        w.report(problem('not-whole--step', said.line.keySpan, {}), block.uri);
        return [];
      }
      if (numbers.has(number)) {
        w.report(problem('step-twice', said.line.keySpan, { number: nameHole(String(number)) }), block.uri);
        return [];
      }
      numbers.set(number, said);
      const { step, implied } = stepOf(w, said, number, chocks);
      if (implied) made.push(implied);
      return [step];
    });
  });
  for (const said of numbers.values()) {
    for (const { step } of said.values.after ?? []) {
      const other = w.number(step, outermost, said.block.uri);
      if (other === undefined || numbers.has(other)) continue;
      w.report(problem('step-unknown', step.span, { number: nameHole(String(other)) }), said.block.uri);
    }
  }
  return { steps, chocks: made };
}

function stepOf(w: Lowering, said: PropertyValue<StepValues>, number: number, chocks: readonly Chock[]) {
  const v = said.values;
  const id = `step/${number}`;
  const uri = said.block.uri;
  w.place({ element: id }, uri, said.line.span);
  const ids = (list: readonly { readonly support: Reference }[] | undefined) =>
    list?.flatMap(({ support }) => w.idOf(support, outermost) ?? []) ?? [];
  let action: StepAction = 'check';
  let targets: readonly string[] = [];
  let own: readonly string[] = [];
  let implied: Chock | undefined;
  if (v.chock) {
    action = 'chock';
    const vehicle = v.chock.vehicle && w.idOf(v.chock.vehicle, outermost);
    if (vehicle) {
      targets = [vehicle];
      const there = chocks.filter((c) => c.vehicle === vehicle);
      const axle = v.chock.axle?.text;
      if (there.length > 0) own = there.map((c) => c.id);
      else if (v.chock.ways === undefined) {
        // Which way it holds is not known, and so it is not counted.
        const span = (v.chock.axle ?? v.chock.vehicle)?.span ?? said.line.span;
        const after = { start: span.end, end: span.end };
        const fixes = [replace(problemMessage('chock-ways--fix', {}), after, ' both directions')];
        w.report(problem('chock-ways', said.line.span, {}, { fixes }), uri);
        w.partial = true;
      } else {
        const name = `step ${number}`;
        const ways = v.chock.ways.text;
        implied = {
          kind: 'chock',
          id: `chock/${name}`,
          name,
          vehicle,
          axle: axle === undefined ? undefined : `axle ${axle}`,
          ways: ways === 'forward' || ways === 'rearward' ? ways : 'both',
          ref: { element: id },
        };
        own = [implied.id];
        w.place({ element: implied.id }, uri, said.line.span);
      }
    } else targets = ids(v.chock.chocks);
  } else if (v.capture) {
    action = 'capture';
    targets = [w.idOf(v.capture.vehicle, outermost) ?? []].flat();
  } else if (v.work) {
    action = v.work.action.text;
    targets = ids(v.work.targets);
  } else if (v.sizeUp) {
    action = 'size up';
    targets = v.sizeUp.vehicle ? [w.idOf(v.sizeUp.vehicle, outermost) ?? []].flat() : [];
  }
  const note = v.note?.text;
  const step: Step = {
    id,
    number,
    action,
    targets,
    with: [...own, ...ids(v.with)],
    after:
      v.after?.flatMap(({ step: s }) => {
        const n = w.number(s, outermost, uri);
        return n === undefined ? [] : [`step/${n}`];
      }) ?? [],
    crew: w.number(v.crew, outermost, uri),
    takes: w.interval(v.takes, outermost, uri, 'duration'),
    ...(note === undefined ? {} : { note }),
    ref: { element: id },
  };
  return { step, implied };
}
