/** Without the quotes, and without the missing one. */
export const unquoted = (text: string): string => text.replace(/^"/, '').replace(/"$/, '');
