/** Transition: rules without a catalog. None is left. */
export const rulesEs: Readonly<Record<string, string>> = {};
