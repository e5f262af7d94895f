import type { Figure } from '@cribwright/messages';

/** What one contact or support carries. */
export interface GoverningLoad {
  /** The worst over stages, losses and ranges; `governs` names the case. */
  readonly load: Figure;
  readonly asBuilt: Figure;
  /** The most that any way of sharing could put on it, by statics alone. */
  readonly bound?: Figure;
}
