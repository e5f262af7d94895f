/** Transition: rules without a catalog. None is left. */
export const ruleTextsEs: Readonly<Record<string, { readonly title: string; readonly protects: string }>> =
  {};
