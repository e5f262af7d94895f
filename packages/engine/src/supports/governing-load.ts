import type { Figure, List } from '@cribwright/messages';

/** What the contacts of a support carry at the same time. */
export interface LoadShares {
  readonly contacts: readonly { readonly id: string; readonly force: number }[];
  /** The case. */
  readonly governs: List;
}

/** What one contact or support carries. */
export interface GoverningLoad {
  /** The worst over stages, losses and ranges; `governs` names the case. */
  readonly load: Figure;
  readonly asBuilt: Figure;
  /** The most that any way of sharing could put on it, by statics alone. */
  readonly bound?: Figure;
  /** Of a support with several contacts: what each carries at once, case by case, where all together carry most. */
  readonly shares?: readonly LoadShares[];
}
