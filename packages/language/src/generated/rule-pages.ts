// Written by build/embed.mjs. Do not edit.
/** Every rule's page: rule id to Markdown. */
export const rulePages: Readonly<Record<string, string>> = {
};
