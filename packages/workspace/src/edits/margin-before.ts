/** Blanks and tabs right before an offset of a text. Looks at these alone, however long the text is. */
export function marginBefore(text: string, offset: number): string {
  let start = offset;
  while (start > 0 && isBlank(text.charCodeAt(start - 1))) start--;
  return text.slice(start, offset);
}

const isBlank = (code: number): boolean => code === 0x20 || code === 0x09;
