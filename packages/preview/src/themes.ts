import { palettes, paletteVariables, variableStyleSheet } from '@cribwright/drawing/page';

/** The class that the editor puts on the page for each kind of theme. High contrast light carries both names. */
const classes = {
  light: 'body',
  dark: 'body.vscode-dark',
  'high contrast': 'body.vscode-high-contrast',
  'high contrast light': 'body.vscode-high-contrast-light',
} as const;

/** Gives the page the drawing's rules and its colors for every kind of theme. A change of theme redraws nothing. */
export function adoptThemes(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    [variableStyleSheet(), ...palettes.map((p) => paletteVariables(classes[p.name], p))].join('\n'),
  );
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}

/** The theme of the page now, for pictures that are taken away. */
export const themeNow = () => {
  const on = document.body.classList;
  if (on.contains('vscode-high-contrast-light')) return 'high contrast light';
  if (on.contains('vscode-high-contrast')) return 'high contrast';
  return on.contains('vscode-dark') ? 'dark' : 'light';
};
