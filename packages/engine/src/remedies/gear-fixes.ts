import { message, name } from '@cribwright/messages';
import type { Plan, StockItem, Strut, Tie } from '@cribwright/model';
import { elementMessage } from '../element/element-message.js';
import type { Fix } from '../finding/finding.js';

/** Other gear of the same kind in place of what a strut or a strap is now: what the units that respond carry. */
export function gearFixes({ id, gear }: Strut | Tie, plan: Plan): readonly Fix[] {
  const kind: StockItem['kind'] | undefined =
    gear.kind === 'rated strut'
      ? 'strut'
      : gear.kind === 'strap' || gear.kind === 'chain'
        ? gear.kind
        : undefined;
  const carried = plan.units.flatMap((u) => u.carries).filter((s) => s.kind === kind && s.item !== gear.name);
  return [...new Set(carried.map((s) => s.item))].map((item) => ({
    title: message('remedy.use-gear', { gear: name(item), support: elementMessage(plan, id) }),
    edits: [{ kind: 'set', at: { element: id, property: 'type' }, text: item }],
    safe: false,
  }));
}
