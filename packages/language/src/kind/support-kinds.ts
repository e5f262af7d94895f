import type { SupportKind } from '@cribwright/model';

/** Every kind of support, and whether a calculation may ask for a figure of it: `A height`. */
const supports: { readonly [K in SupportKind]: { readonly kind: K; readonly measured: boolean } } = {
  crib: { kind: 'crib', measured: true },
  'step chock': { kind: 'step chock', measured: true },
  strut: { kind: 'strut', measured: true },
  tie: { kind: 'tie', measured: false },
  chock: { kind: 'chock', measured: false },
  pad: { kind: 'pad', measured: true },
};

/** Every kind of support, by the word that names it in a plan. */
export const supportKinds: readonly SupportKind[] = Object.values(supports).map(({ kind }) => kind);

/** The kinds of support that a calculation may ask for a figure. */
export const measuredSupports: readonly SupportKind[] = Object.values(supports).flatMap(
  ({ kind, measured }) => (measured ? [kind] : []),
);

/** Whether a name declares a support. */
export const isSupportKind = (kind: string | undefined): kind is SupportKind =>
  kind !== undefined && Object.hasOwn(supports, kind);
