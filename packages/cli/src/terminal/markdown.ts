import { type Paint, printable } from './paint.js';

/** A page of Markdown for a terminal: headings stand out, fences go, plans are set in by two. */
export function markdownText(page: string, paint: Paint): string {
  let fenced = false;
  const lines = printable(page)
    .split('\n')
    .flatMap((line) => {
      if (line.startsWith('```')) {
        fenced = !fenced;
        return [];
      }
      if (fenced) return [paint('note', `  ${line}`)];
      const heading = /^#+ (.+)$/.exec(line)?.[1];
      return [heading === undefined ? line.replace(/[`*]|(?<!\w)_|_(?!\w)/g, '') : paint('strong', heading)];
    });
  return `${lines.join('\n').trimEnd()}\n`;
}
