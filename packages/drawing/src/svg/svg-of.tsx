/** @jsxRuntime automatic @jsxImportSource preact */
import { renderToString } from 'preact-render-to-string';
import type { Scene } from '../scene/scene.js';
import { paletteOf, type ThemeName } from './palette.js';
import { SceneSvg } from './scene-svg.js';
import { styleSheet } from './style-sheet.js';

/** A scene as a whole SVG file with its colors in it. The same scene and theme give the same bytes. */
export function svgOf(scene: Scene, theme: ThemeName = 'light'): string {
  return `${renderToString(<SceneSvg scene={scene} css={styleSheet(paletteOf(theme))} />)}\n`;
}
