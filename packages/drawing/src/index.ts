export { drawScene, firstChoice, scenesFor, viewNamed, viewsOf } from './draw-scene.js';
export { fieldSheet } from './field-sheet/field-sheet.js';
export { type PdfOptions, pdfOf } from './pdf/pdf-of.js';
export type * from './scene/scene.js';
export { type Palette, paletteOf, palettes, type ThemeName } from './svg/palette.js';
export { SceneSvg } from './svg/scene-svg.js';
export { paletteVariables, variableStyleSheet } from './svg/style-sheet.js';
export { svgOf } from './svg/svg-of.js';
export type { View } from './views/view.js';
