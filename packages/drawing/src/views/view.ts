import type { Analysis } from '@cribwright/engine';
import type { Message } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { Look } from '../look/look.js';
import type { Scene, ViewId } from '../scene/scene.js';

/** One way of looking at a plan. A view is one file in this folder; the list of them is generated. */
export interface View {
  readonly id: ViewId;
  /** Its place among the tabs. */
  readonly order: number;
  /** On its tab. */
  readonly name: Message;
  /** What it shows, in one line. */
  readonly shows: Message;
  /** The kinds of support it is about, where it shows one at a time. */
  readonly subject?: readonly ('crib' | 'strut')[];
  /** Whether there is anything in this plan for it to show. */
  readonly offered: (plan: Plan, analysis: Analysis) => boolean;
  /**
   * For a view of nothing but what the checks find: whether it will have something to show of this plan once they
   * are done. Until then it says that it waits.
   */
  readonly awaits?: (plan: Plan) => boolean;
  readonly draw: (look: Look) => Scene;
}

/** A view with its words in one language. */
export interface NamedView extends Omit<View, 'name' | 'shows'> {
  readonly name: string;
  readonly shows: string;
}
