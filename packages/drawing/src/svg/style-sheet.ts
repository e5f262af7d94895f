import type { Tone } from '../scene/tone.js';
import { lineWeights } from './line-weights.js';
import type { Palette } from './palette.js';

const tones = Object.keys(lineWeights) as readonly Tone[];

/** A tone as it is spelled in class names and variables. */
export const toneClass = (tone: Tone): string => `t-${tone.replaceAll(' ', '-')}`;

/** Fonts of the widths that the layout counts with, then one near to them, then whatever there is. */
export const fontFamily = "Helvetica,Arial,'Liberation Sans',Arimo,'DejaVu Sans Condensed',sans-serif";

const rules = (paper: string, ink: (tone: Tone, part: 'line' | 'solid' | 'light') => string): string => {
  const each = tones.map((tone) => {
    const c = `.cw .${toneClass(tone)}`;
    return [
      `${c}{stroke:${ink(tone, 'line')}}`,
      `${c}.solid{fill:${ink(tone, 'solid')}}`,
      `${c}.light{fill:${ink(tone, 'light')}}`,
      `${c}.tip,.cw text.${toneClass(tone)}{fill:${ink(tone, 'line')}}`,
    ].join('');
  });
  return [
    `.cw .paper{fill:${paper}}`,
    `.cw text{font-family:${fontFamily};stroke:none}`,
    '.cw .none{fill:none}',
    '.cw line,.cw path,.cw polygon{stroke-linejoin:round;stroke-linecap:round}',
    ...each,
    '.cw text[class],.cw .tip[class]{stroke:none}',
    `.cw text.halo[class]{paint-order:stroke;stroke:${paper};stroke-linejoin:round}`,
    '.cw .bold{font-weight:700}',
  ].join('\n');
};

/** The rules of one palette with its colors written out, for a drawing that stands alone. */
export const styleSheet = (palette: Palette): string =>
  rules(palette.paper, (tone, part) => palette.inks[tone][part]);

const variable = (tone: Tone, part: string): string => `--cw-${tone.replaceAll(' ', '-')}-${part}`;

/** The same rules over variables: a page that changes its theme redraws nothing. */
export const variableStyleSheet = (): string =>
  rules('var(--cw-paper)', (tone, part) => `var(${variable(tone, part)})`);

/** Sets the variables of a palette under a selector. */
export const paletteVariables = (selector: string, palette: Palette): string => {
  const inks = tones.flatMap((tone) =>
    (['line', 'solid', 'light'] as const).map(
      (part) => `${variable(tone, part)}:${palette.inks[tone][part]}`,
    ),
  );
  return `${selector}{--cw-paper:${palette.paper};${inks.join(';')}}`;
};
