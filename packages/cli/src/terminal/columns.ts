/** Lines with their columns lined up: the first to the left, the others to the right. */
export function columns(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const all = [head, ...rows];
  const widths = head.map((_, c) => Math.max(...all.map((row) => (row[c] ?? '').length)));
  return all.map((row) =>
    head
      .map((_, c) => {
        const cell = row[c] ?? '';
        return c === 0 ? cell.padEnd(widths[c] ?? 0) : cell.padStart(widths[c] ?? 0);
      })
      .join('  ')
      .replace(/^/, '  ')
      .trimEnd(),
  );
}
