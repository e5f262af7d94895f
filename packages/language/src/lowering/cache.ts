import type { RespondingUnit, StockItem } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import type { Yields } from '../bound/shape.js';
import { cacheProperties, stockLine } from '../schema/cache.js';
import { planProperties } from '../schema/plan.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import { timberOf } from './material.js';

/** The units that a plan says respond, with what their caches list. */
export function unitsOf(w: Lowering, block: BoundBlock): readonly RespondingUnit[] {
  const lines = w.propertiesOf(block, planProperties.responding);
  return lines.flatMap(({ values }) =>
    values.caches.flatMap(({ cache }): readonly RespondingUnit[] => {
      const from = w.resolve(cache, at0)?.target.block;
      if (!from?.name) return [];
      const id = `cache/${from.name}`;
      w.placeBlock(id, from);
      const ref = { element: id };
      return [
        {
          id,
          name: from.title ?? from.name,
          people: w.number(w.propertyOf(from, cacheProperties.staffing)?.values.people, at0, from.uri),
          carries: w.propertiesOf(from, stockLine).flatMap((said, index) => {
            const item = stockOf(w, said.values, Number(said.line.key.replaceAll(',', '')), from.uri);
            if (!item) return [];
            const itemRef = { element: id, property: `line ${index + 1}` };
            w.place(itemRef, from.uri, said.line.span);
            return [{ ...item, ref: itemRef }];
          }),
          ref,
        },
      ];
    }),
  );
}

type Stock = Yields<typeof stockLine>;

const gearKinds: Readonly<Record<string, StockItem['kind']>> = {
  'strut type': 'strut',
  'strap type': 'strap',
  'chain type': 'chain',
  'wire rope type': 'chain',
  'step chock type': 'step chock',
};

function stockOf(w: Lowering, v: Stock, count: number, uri: string): Omit<StockItem, 'ref'> | undefined {
  if (v.timber) {
    const length = w.number(v.timber.length, at0, uri, 'length');
    const found = w.resolve(v.timber.timber, at0);
    const item = found?.name;
    const timber = timberOf(w, found?.target.block, length);
    return item === undefined || length === undefined
      ? undefined
      : { kind: 'timber', item, length, count, ...(timber ? { timber } : {}) };
  }
  if (v.gear) {
    const found = w.resolve(v.gear.type, at0);
    const kind = gearKinds[found?.target.kind ?? ''];
    return found && kind ? { kind, item: found.name, count } : undefined;
  }
  if (v.pad) {
    const length = w.number(v.pad.length, at0, uri, 'length');
    return length === undefined ? undefined : { kind: 'pad', item: 'pad', length, count };
  }
  if (v.wedges) return { kind: 'wedge pair', item: 'wedge pair', count };
  if (v.chocks) return { kind: 'chock', item: 'wheel chock', count };
  return v.shims ? { kind: 'shim', item: 'shim', count } : undefined;
}
