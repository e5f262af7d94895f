/** What a page that shows drawings needs: no views, no engine, only scenes. */
export { pdfOf } from './pdf/pdf-of.js';
export { boundsOf, overlaps, textBox, within } from './scene/bounds.js';
export type * from './scene/scene.js';
export { blockFaces } from './scene/solid.js';
export { walk } from './scene/walk.js';
export { putBack, type SentScene } from './sharing/kept.js';
export { type Palette, paletteOf, palettes, type ThemeName } from './svg/palette.js';
export { SceneSvg } from './svg/scene-svg.js';
export { paletteVariables, variableStyleSheet } from './svg/style-sheet.js';
export { svgOf } from './svg/svg-of.js';
