import type { Locale } from '@cribwright/messages';

/** A fenced plan of a rule's page. */
export interface Fence {
  /** The heading it stands under: `Unsafe`, `Safe`. */
  readonly under: string;
  readonly kind: 'plan' | 'fixed';
  readonly text: string;
  /** Findings expected by the comments at the ends of lines. Lines count from 0. */
  readonly expected: readonly { readonly line: number; readonly rule: string }[];
}

/** The headings of a page, in order, in each language. */
export const headings = {
  en: ['What it protects against', 'Calculation', 'Sources', 'Unsafe', 'Safe'],
  es: ['Contra qué protege', 'Cálculo', 'Fuentes', 'Inseguro', 'Seguro'],
} as const satisfies Readonly<Record<Locale, readonly string[]>>;

/** The fenced plans of a page, in order, each with what its comments expect. */
export function fencesOf(page: string): readonly Fence[] {
  const fences: Fence[] = [];
  let under = '';
  let open: { kind: Fence['kind']; lines: string[] } | undefined;
  for (const line of page.split('\n')) {
    if (open === undefined) {
      under = /^## (.+)$/.exec(line)?.[1]?.trim() ?? under;
      const start = /^```crib( fixed)?\s*$/.exec(line);
      if (start) open = { kind: start[1] ? 'fixed' : 'plan', lines: [] };
    } else if (line.startsWith('```')) {
      fences.push({ under, kind: open.kind, ...marked(open.lines) });
      open = undefined;
    } else open.lines.push(line);
  }
  return fences;
}

/** `courses 14 // crib-height, crib-reach` expects two findings on its line. The comment stays in the text. */
function marked(lines: readonly string[]): Pick<Fence, 'text' | 'expected'> {
  const expected = lines.flatMap((line, at) => {
    const rules =
      /\/\/ ((?:tipping|[a-z0-9]+(?:-[a-z0-9]+)+)(?:, (?:tipping|[a-z0-9]+(?:-[a-z0-9]+)+))*)\s*$/.exec(
        line,
      )?.[1];
    return (rules?.split(', ') ?? []).map((rule) => ({ line: at, rule }));
  });
  return { text: `${lines.join('\n')}\n`, expected };
}

/** The headings of a page that are missing, or out of order. */
export function missingHeadings(page: string, locale: Locale = 'en'): readonly string[] {
  const due: readonly string[] = headings[locale];
  const there = [...page.matchAll(/^## (.+)$/gm)].map((m) => m[1]?.trim() ?? '');
  const inOrder = due.filter((h) => there.includes(h));
  const order = there.filter((h) => due.includes(h));
  return [...due.filter((h) => !there.includes(h)), ...(order.join() === inOrder.join() ? [] : ['(order)'])];
}

/** A page without its fenced plans: what a person reads. */
export const proseOf = (page: string): string => page.replace(/^```[\s\S]*?^```$/gm, '');
