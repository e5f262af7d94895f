import { readFileSync, writeFileSync } from 'node:fs';

/** One case of a golden file: a heading, a piece of plan, and what is said of it. */
export interface Case {
  readonly title: string;
  /** After `crib` in the fence's first line: where the piece stands. Empty for a whole file. */
  readonly inside: string;
  readonly source: string;
  readonly expected: string;
}

const block =
  /^## (?<title>.+)\n+```crib ?(?<inside>[^\n]*)\n(?<source>[\s\S]*?)```\n+(?:```said\n(?<expected>[\s\S]*?)```\n*)?/gm;

/** The cases of a Markdown file, in order. */
export const readCases = (path: URL): readonly Case[] =>
  [...readFileSync(path, 'utf8').matchAll(block)].map((m) => ({
    title: m.groups?.title ?? '',
    inside: m.groups?.inside?.trim() ?? '',
    source: m.groups?.source ?? '',
    expected: m.groups?.expected ?? '',
  }));

/** Writes the file again with what is said now. Text before the first case stays. */
export function writeCases(path: URL, cases: readonly (Case & { readonly said: string })[]): void {
  const before = readFileSync(path, 'utf8').split(/^## /m)[0] ?? '';
  const body = cases
    .map(
      (c) =>
        `## ${c.title}\n\n\`\`\`crib${c.inside === '' ? '' : ` ${c.inside}`}\n${c.source}\`\`\`\n\n\`\`\`said\n${c.said}\`\`\`\n`,
    )
    .join('\n');
  writeFileSync(path, `${before}${body}`);
}
