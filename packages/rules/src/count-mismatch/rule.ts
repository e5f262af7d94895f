import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { pieceName, putIn } from '@cribwright/engine/internal';
import { count, message, name, term } from '@cribwright/messages';
import type { ElementId, Plan, StockItem } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

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
            message: message('count-mismatch.listed-twice', {
              unit: name(unit.name),
              item: pieceName(item),
              first: count(first.count),
              second: count(item.count),
            }),
            related: [{ at: first.ref, message: term('count-mismatch.first-here') }],
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
              message: message('count-mismatch.built-twice', {
                support: elementMessage(plan, id),
                first: count(first),
                second: count(step.number),
              }),
            },
          ];
    });
  });
}

export const rule: Rule = {
  id: 'count-mismatch',
  title: term('count-mismatch.title'),
  family: 'stock',
  severity: 'warning',
  judges: 'element',
  readsAlso: ['steps'],
  protects: term('count-mismatch.protects'),
  sources: [practice],
  compares: [],
  check: (w) => [...w.plan.units.flatMap(listedTwice), ...builtTwice(w)],
};
