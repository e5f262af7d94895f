/** Where an expected number comes from. */
export type AnyReference =
  | { readonly kind: 'published'; readonly title: string; readonly locator: string }
  | { readonly kind: 'from memory'; readonly title: string }
  /** Follows by algebra from the laws of statics; the derivation is stated. */
  | { readonly kind: 'closed form'; readonly derivation: string }
  /** An independent program was run beside ours. */
  | { readonly kind: 'reference program'; readonly program: string };

export const published = (title: string, locator: string): AnyReference => ({
  kind: 'published',
  title,
  locator,
});
export const memory = (title: string): AnyReference => ({ kind: 'from memory', title });
export const closedForm = (derivation: string): AnyReference => ({ kind: 'closed form', derivation });
export const program = (name: string): AnyReference => ({ kind: 'reference program', program: name });

/** The reference in one line. */
export function cite(source: AnyReference): string {
  switch (source.kind) {
    case 'published':
      return `${source.title}, ${source.locator}`;
    case 'from memory':
      return `from memory: ${source.title}`;
    case 'closed form':
      return `closed form: ${source.derivation}`;
    case 'reference program':
      return `run beside: ${source.program}`;
  }
}
