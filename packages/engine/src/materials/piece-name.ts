import { name, type Phrase, term } from '@cribwright/messages';
import type { StockItem } from '@cribwright/model';

/** What a piece is called: its name in the plan, or its kind where plans give it none. */
export function pieceName({ kind, item }: Pick<StockItem, 'kind' | 'item'>): Phrase {
  switch (kind) {
    case 'wedge pair':
      return term('materials.wedge-pairs');
    case 'chock':
      return term('materials.wheel-chocks');
    case 'pad':
      return term('materials.pads');
    case 'shim':
      return term('materials.shims');
    case 'step chock':
      return item === 'step chock' ? term('materials.step-chocks') : name(item);
    default:
      return name(item);
  }
}
