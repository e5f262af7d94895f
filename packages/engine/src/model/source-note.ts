/**
 * Where a value comes from. `published` names title and locator; the two honest labels say that there is no
 * published source; `stated` is what the author of the plan wrote.
 */
export type SourceNote =
  | { readonly kind: 'published'; readonly title: string; readonly locator?: string }
  | { readonly kind: 'common practice' }
  | { readonly kind: 'from memory'; readonly title?: string }
  | { readonly kind: 'policy'; readonly policy: string; readonly limit: string; readonly of?: SourceNote }
  | { readonly kind: 'stated' }
  | { readonly kind: 'invented' }
  | { readonly kind: 'unknown' };
