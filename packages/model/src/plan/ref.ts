/** Names one element of a plan: `crib/A`, `vehicle/trailer`, `step/3`, `policy/CountyPolicy`, `plan`. */
export type ElementId = string;

/**
 * Points at an element of the plan, or at one property of it.
 *
 * The engine knows no text. A ref is all it says about where something was written; the language keeps the
 * map from refs to places in files. So an edit in a comment leaves the plan's value, and its analysis, as it was.
 */
export interface Ref {
  readonly element: ElementId;
  /** A property as the language spells it: `courses`, `captures`, `axle 2/empty`. */
  readonly property?: string;
}
