import type { Message } from '@cribwright/messages';
import type { Ref, SupportKind } from '@cribwright/model';
import type { Drag } from '../scene/scene.js';
import type { Solid } from '../scene/solid.js';

export type ThingKind = 'vehicle' | SupportKind | 'egress';

/** How an element may be dragged, without the words of any language. */
export type ThingDrag = Omit<Drag, 'fixed'> & { readonly fixed?: Message };

/** One element of the plan as it stands in space. */
export interface Thing {
  readonly id: string;
  readonly kind: ThingKind;
  readonly name: string;
  readonly ref: Ref;
  readonly solids: readonly Solid[];
  readonly drag?: ThingDrag;
}
