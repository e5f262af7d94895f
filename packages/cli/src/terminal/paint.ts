import { styleText } from 'node:util';

const styles = {
  danger: ['bold', 'red'],
  warning: ['bold', 'yellow'],
  note: ['bold', 'cyan'],
  good: ['green'],
  strong: ['bold'],
  quiet: ['dim'],
} as const satisfies Record<string, readonly (Parameters<typeof styleText>[0] & string)[]>;

/** How words are meant. Color only helps: the words say the same without it. */
export type Tone = keyof typeof styles;

/** Puts a tone on words, or leaves them as they are. */
export type Paint = (tone: Tone, text: string) => string;

export const plain: Paint = (_tone, text) => text;
export const colored: Paint = (tone, text) => styleText([...styles[tone]], text, { validateStream: false });

export interface Terminal {
  readonly isTTY?: boolean;
}

/** Color on a terminal, plain in a pipe. `NO_COLOR` and `FORCE_COLOR` are heard, in that order. */
export function paintFor(out: Terminal, env: Readonly<Record<string, string | undefined>>): Paint {
  if (env.NO_COLOR) return plain;
  if (env.FORCE_COLOR !== undefined && env.FORCE_COLOR !== '0') return colored;
  return out.isTTY && env.TERM !== 'dumb' ? colored : plain;
}

/** A plan's text may hold anything. Control characters never reach the terminal as they are. */
export const printable = (text: string): string =>
  text.replace(/\p{Cc}|[\u202a-\u202e\u2066-\u2069]/gu, (c) =>
    c === '\n' || c === '\t' ? c : `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`,
  );
