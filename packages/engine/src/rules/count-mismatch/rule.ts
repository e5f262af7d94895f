import { messages } from '../../finding/message.js';
import type { Plan, StockItem } from '../../model/plan.js';
import type { ElementId } from '../../model/ref.js';
import { putIn } from '../../order/order-graph.js';
import { elementWords } from '../../workings/element-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'listed-twice':
    '{unit} lists {item} twice, with {first} and with {second}. Nobody knows which is right: the lesser is counted.',
  'built-twice':
    '{support} is put in by step {first} and again by step {second}. One thing stands once: count anew.',
  'first-here': 'It is listed here too.',
} as const;
const say = messages('count-mismatch', words);

const same = (a: StockItem, b: StockItem) => a.kind === b.kind && a.item === b.item && a.length === b.length;

const listedTwice = (unit: Plan['units'][number]): readonly RuleFinding[] =>
  unit.carries.flatMap((item, i) => {
    const first = unit.carries.slice(0, i).find((other) => same(item, other));
    return first === undefined || first.count === item.count
      ? []
      : [
          {
            subject: { element: unit.id },
            at: item.ref,
            message: say('listed-twice', {
              unit: unit.name,
              item: item.item,
              first: `${first.count}`,
              second: `${item.count}`,
            }),
            related: [{ at: first.ref, message: say('first-here', {}) }],
          },
        ];
  });

/** A support put in by two steps without one between that takes it out. Setting and then tightening is one. */
function builtTwice({ plan }: Workings): readonly RuleFinding[] {
  const standing = new Map<ElementId, number>();
  return plan.steps.flatMap((step) => {
    if (step.action === 'remove') for (const id of step.targets) standing.delete(id);
    // Chocks may be named again where a vehicle is captured.
    const built = putIn(step).filter((id) => !id.startsWith('chock/'));
    return built.flatMap((id) => {
      const first = standing.get(id);
      standing.set(id, first ?? step.number);
      return first === undefined || first === step.number
        ? []
        : [
            {
              subject: { element: id },
              at: step.ref,
              message: say('built-twice', {
                support: elementWords(plan, id),
                first: `${first}`,
                second: `${step.number}`,
              }),
            },
          ];
    });
  });
}

export const rule: Rule = {
  id: 'count-mismatch',
  title: 'Counts that contradict each other',
  family: 'stock',
  severity: 'warning',
  protects: 'Timber that is counted twice is there once.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => [...w.plan.units.flatMap(listedTwice), ...builtTwice(w)],
};
