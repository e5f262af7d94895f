import { largePlanText } from './large-plan-text.js';

/** One change of one line, as somebody types it. */
export interface LineEdit {
  readonly line: number;
  readonly before: string;
  readonly after: string;
}

/** What is edited: each kind changes another line of the plan in the middle of the text. */
export const kinds = ['name', 'course count', 'weight', 'comment'] as const;
export type Kind = (typeof kinds)[number];

/** A line of each kind, and what the `n`th edit makes of it: never what it was before. */
const changes: Readonly<
  Record<Kind, { readonly find: RegExp; readonly to: (line: string, n: number) => string }>
> = {
  name: { find: /^ {2}crib N1\w* \{/, to: (_, n) => `  crib N1v${n} {` },
  'course count': {
    find: /^ {4}courses +\d+/,
    to: (line) => line.replace(/\d+/, (was) => String(was === '11' ? 10 : 11)),
  },
  weight: {
    find: /^ {4}cargo /,
    to: (line, n) => line.replace(/to [\d,]+ lb/, `to ${20_000 + n} lb`),
  },
  comment: { find: /^ {2}\/\/ note/, to: (_, n) => `  // note ${n}` },
};

/** A text that is edited again and again. */
export class EditedText {
  private readonly lines: string[];
  private readonly middle: number;
  private count = 0;

  constructor(text: string) {
    this.lines = text.split('\n');
    const plans = this.lines.flatMap((line, i) => (line.startsWith('plan ') ? [i] : []));
    this.middle = plans[Math.floor(plans.length / 2)] ?? 0;
  }

  get text(): string {
    return this.lines.join('\n');
  }

  edit(kind: Kind): LineEdit {
    const { find, to } = changes[kind];
    const line = this.lines.findIndex((text, i) => i >= this.middle && find.test(text));
    const before = this.lines[line];
    if (before === undefined) throw new Error(`There is no ${kind} to edit.`);
    const after = to(before, ++this.count);
    this.lines[line] = after;
    return { line, before, after };
  }
}

/** The text to measure, by its size. A plan of 170 lines holds 15 cribs; longer texts hold plans of that size. */
export const sizes: readonly { readonly name: string; readonly text: () => string; readonly most: number }[] =
  [
    { name: '60 lines', text: () => several(1, 3), most: 0.5 },
    { name: '170 lines', text: () => several(1, 15), most: 0.5 },
    { name: '1,000 lines', text: () => several(6, 15), most: 0.3 },
    { name: '10,000 lines', text: () => several(59, 15), most: 0.2 },
    { name: '104 cribs', text: () => withNote(largePlanText()), most: Number.POSITIVE_INFINITY },
  ];

const withNote = (plan: string): string => plan.replace(/^plan .*$/m, '$&\n  // note');

/** Plans of so many cribs, one behind the other, no two the same. */
function several(plans: number, cribs: number): string {
  const [head = '', plan = ''] = splitAt(largePlanText(), /^plan /m);
  const [before = '', rest = ''] = splitAt(plan, /^ {2}crib N0 /m);
  const [, after = ''] = splitAt(rest, /^ {2}strut S1 /m);
  const blocks = rest.split(/^(?= {2}crib )/m).slice(0, cribs);
  return [
    head,
    ...Array.from({ length: plans }, (_, i) =>
      withNote(`${before}${blocks.join('')}${blocks.length > 0 ? '\n' : ''}${after}`)
        .replace('"Very many cribs"', `"Plan ${i + 1}"`)
        .replace('16,000 to', `${(16_000 + i).toLocaleString('en-US')} to`)
        .replace('N0, N1, N2, N3', 'N0'),
    ),
  ].join('');
}

function splitAt(text: string, mark: RegExp): readonly [string, string] {
  const at = text.search(mark);
  return [text.slice(0, at), text.slice(at)];
}
