/** The number of a contact that an exercise names, `undefined` where it names none or calculates it. */
export const contactNumber = (expression: { readonly kind: string } | undefined): number | undefined =>
  expression !== undefined && 'value' in expression && typeof expression.value === 'number'
    ? expression.value
    : undefined;
