import type { Tone } from '../scene/tone.js';

/** What one tone looks like: its line, and its fill where the shape is filled solid or lightly. */
export interface Ink {
  readonly line: string;
  readonly solid: string;
  readonly light: string;
}

/** The themes that a drawing can be made in. */
export type ThemeName = 'light' | 'dark' | 'high contrast' | 'high contrast light';

/** The colors of a theme, as `#rrggbb`. */
export interface Palette {
  readonly name: ThemeName;
  readonly paper: string;
  readonly inks: Readonly<Record<Tone, Ink>>;
}

const ink = (line: string, solid: string, light: string): Ink => ({ line, solid, light });

/** Ink on a pale sheet. Every line that carries meaning stands at least 4.5 to 1 against the paper. */
export const light: Palette = {
  name: 'light',
  paper: '#fdfcf8',
  inks: {
    ground: ink('#5b5040', '#8d7f68', '#ece6d8'),
    vehicle: ink('#35485a', '#90a3b4', '#edf2f5'),
    part: ink('#4f6578', '#6f8598', '#d5e0e8'),
    timber: ink('#68481b', '#dcbb7c', '#f5e8cb'),
    'timber end': ink('#68481b', '#c99e55', '#ecd4a4'),
    wedge: ink('#7a3a10', '#cb7c3d', '#f3d0ae'),
    strut: ink('#0d5568', '#2d8ba4', '#d2e9ef'),
    tie: ink('#67367f', '#8f5aa8', '#eadcf0'),
    chock: ink('#2f3336', '#565c60', '#cfd3d5'),
    pad: ink('#48562f', '#8b9a6c', '#e0e7d2'),
    egress: ink('#24633f', '#4f9a70', '#dff0e6'),
    cargo: ink('#6d7682', '#aab3bc', '#f3f1ea'),
    dimension: ink('#44525e', '#44525e', '#dfe4e8'),
    label: ink('#1a252f', '#1a252f', '#eceff1'),
    faint: ink('#b4bbc0', '#c9ced2', '#eff1f1'),
    load: ink('#1d3f94', '#2f5bc4', '#dbe4f7'),
    good: ink('#23603a', '#4b9467', '#dcefe2'),
    warning: ink('#825300', '#d99a1c', '#fbeccb'),
    danger: ink('#ab1f17', '#d4453b', '#fbdcd8'),
    note: ink('#285aa2', '#5b8bd0', '#dde9f8'),
    ghost: ink('#7d8891', '#c3cacf', '#f1f3f4'),
    scale: ink('#1a252f', '#1a252f', '#fdfcf8'),
  },
};

export const dark: Palette = {
  name: 'dark',
  paper: '#1a2026',
  inks: {
    ground: ink('#b8a98d', '#6f6452', '#2e2b26'),
    vehicle: ink('#a9bccb', '#566b7d', '#232d36'),
    part: ink('#93a9bb', '#7c93a6', '#2f3d49'),
    timber: ink('#e3c38a', '#8b6a34', '#43361f'),
    'timber end': ink('#e3c38a', '#a8823f', '#5a4624'),
    wedge: ink('#f0aa74', '#a65e29', '#573519'),
    strut: ink('#74cbe2', '#2a7b92', '#17404d'),
    tie: ink('#d0a2e6', '#8552a0', '#3d2849'),
    chock: ink('#d5dade', '#8d959b', '#3a4147'),
    pad: ink('#bccb98', '#70804e', '#323a25'),
    egress: ink('#86d1a6', '#3d8159', '#1c3a29'),
    cargo: ink('#98a3af', '#5b6670', '#262b2f'),
    dimension: ink('#b6c2cb', '#b6c2cb', '#2a333a'),
    label: ink('#eef2f5', '#eef2f5', '#2a333a'),
    faint: ink('#4c5860', '#3c464d', '#232a30'),
    load: ink('#9db9ff', '#4f78dc', '#22304f'),
    good: ink('#83cf9f', '#3b7d55', '#1b3626'),
    warning: ink('#f2bf55', '#a87817', '#443413'),
    danger: ink('#ff9389', '#c2463c', '#4d211e'),
    note: ink('#93bdf7', '#4274b8', '#1f3147'),
    ghost: ink('#8b97a0', '#414c54', '#232a30'),
    scale: ink('#eef2f5', '#eef2f5', '#1a2026'),
  },
};

const contrast = (
  name: ThemeName,
  paper: string,
  line: string,
  accents: Readonly<
    Record<'warm' | 'wood' | 'grain' | 'cool' | 'pull' | 'good' | 'warning' | 'danger' | 'note', string>
  >,
  quiet: string,
): Palette => {
  const plain = ink(line, line, paper);
  const one = (color: string): Ink => ink(color, color, paper);
  return {
    name,
    paper,
    inks: {
      ground: plain,
      vehicle: plain,
      part: plain,
      timber: ink(accents.warm, accents.wood, paper),
      'timber end': ink(accents.warm, accents.grain, paper),
      wedge: ink(accents.warm, accents.wood, paper),
      strut: one(accents.cool),
      tie: one(accents.pull),
      chock: plain,
      pad: plain,
      egress: one(accents.good),
      cargo: one(quiet),
      dimension: plain,
      label: plain,
      faint: one(quiet),
      load: one(accents.cool),
      good: one(accents.good),
      warning: one(accents.warning),
      danger: one(accents.danger),
      note: one(accents.note),
      ghost: one(quiet),
      scale: plain,
    },
  };
};

export const highContrast: Palette = contrast(
  'high contrast',
  '#000000',
  '#ffffff',
  {
    warm: '#ffd580',
    wood: '#3d2f12',
    grain: '#6b5423',
    cool: '#6fe3ff',
    pull: '#e7b3ff',
    good: '#7dffa8',
    warning: '#ffe14d',
    danger: '#ff8f85',
    note: '#a9ccff',
  },
  '#b5bdc4',
);

export const highContrastLight: Palette = contrast(
  'high contrast light',
  '#ffffff',
  '#000000',
  {
    warm: '#5a3600',
    wood: '#f0dfc0',
    grain: '#d9b981',
    cool: '#00425a',
    pull: '#571a75',
    good: '#06471f',
    warning: '#5f3b00',
    danger: '#8f0e08',
    note: '#0a3a85',
  },
  '#4e5860',
);

/** The colors of every theme. */
export const palettes: readonly Palette[] = [light, dark, highContrast, highContrastLight];

/** The colors of a theme; those of the light one where there is no such theme. */
export const paletteOf = (name: ThemeName): Palette => palettes.find((p) => p.name === name) ?? light;
