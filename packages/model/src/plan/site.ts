import type { Ref } from './ref.js';

/** A terminal or yard that a plan is written for: what a crew wants to know on the way there. No check reads it. */
export interface Site {
  readonly name: string;
  readonly address?: string;
  /** Whom to call. */
  readonly contacts: readonly string[];
  /** How to get in. */
  readonly access: readonly string[];
  readonly hazards: readonly string[];
  /** What it is paved with, and where. */
  readonly surfaces: readonly { readonly name: string; readonly where?: string }[];
  /** The kinds of vehicle that use it. */
  readonly fleet: readonly string[];
  /** The units that are sent there first. */
  readonly responding: readonly string[];
  /** The other plans that hold for it, by title. */
  readonly otherPlans: readonly string[];
  readonly docks: readonly Dock[];
  readonly ref: Ref;
}

/** A loading dock of a site. */
export interface Dock {
  readonly name: string;
  /** Of its floor above the yard, m. */
  readonly height: number | undefined;
  readonly doors?: string;
  /** How steeply the apron falls toward it, rise over run. */
  readonly grade?: number;
  readonly ref: Ref;
}
