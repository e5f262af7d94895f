/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import { arrowHead, tick } from '../scene/arrow.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { measured, textWidth } from '../text/font-metrics.js';
import { fixed } from './fixed.js';
import { dashes, lineWeights } from './line-weights.js';
import { arrowLength, pair, pathData } from './shape-data.js';
import { toneClass } from './style-sheet.js';

type Shape = Exclude<Item, { kind: 'group' }>;
type Line = Extract<Item, { kind: 'line' }>;

/** One shape that holds no others. */
export function ShapeView({ item, prefix }: { readonly item: Shape; readonly prefix: string }): JSX.Element {
  switch (item.kind) {
    case 'line':
      return <LineView item={item} />;
    case 'polygon':
      return (
        <polygon
          class={shapeClass(item)}
          points={item.points.map(pair).join(' ')}
          {...filled(item, prefix)}
          {...stroked(item)}
        />
      );
    case 'path':
      return <path class={shapeClass(item)} d={pathData(item)} {...stroked(item)} />;
    case 'circle':
      return (
        <circle
          class={shapeClass(item)}
          cx={fixed(item.center.x)}
          cy={fixed(item.center.y)}
          r={fixed(item.radius)}
          {...filled(item, prefix)}
          {...stroked(item)}
        />
      );
    case 'text': {
      const classes = [toneClass(item.tone)];
      if (item.weight === 'bold') classes.push('bold');
      if (item.halo === true) classes.push('halo');
      return (
        <text
          class={classes.join(' ')}
          x={fixed(item.at.x)}
          y={fixed(item.at.y)}
          font-size={fixed(item.size)}
          stroke-width={item.halo === true ? '.9' : undefined}
          {...lengthOf(item)}
          text-anchor={item.anchor === 'start' ? undefined : item.anchor}
          transform={
            item.turn === undefined
              ? undefined
              : `rotate(${fixed(item.turn)} ${fixed(item.at.x)} ${fixed(item.at.y)})`
          }
        >
          {item.text}
        </text>
      );
    }
  }
}

/**
 * Words take the room that was laid out for them, whatever font the reader has: without Helvetica or one of its
 * width, others are up to a seventh wider and would run over what is beside them.
 */
const lengthOf = (item: Extract<Shape, { kind: 'text' }>) =>
  [...item.text].length > 1 && measured(item.text)
    ? { textLength: fixed(textWidth(item.text, item.size, item.weight)), lengthAdjust: 'spacingAndGlyphs' }
    : {};

const shapeClass = (item: Exclude<Shape, Line | { kind: 'text' }>): string =>
  item.fill === 'hatch' || item.fill === 'cross'
    ? toneClass(item.tone)
    : `${toneClass(item.tone)} ${item.fill}`;

const filled = (item: { readonly tone: Shape['tone']; readonly fill: string }, prefix: string) =>
  item.fill === 'hatch' || item.fill === 'cross'
    ? { fill: `url(#${prefix}-${item.fill}-${item.tone.replaceAll(' ', '-')})` }
    : {};

const stroked = (item: {
  readonly tone: Shape['tone'];
  readonly width?: number;
  readonly dash?: keyof typeof dashes;
}) => ({
  'stroke-width': fixed(item.width ?? lineWeights[item.tone]),
  ...(item.dash === undefined ? {} : { 'stroke-dasharray': dashes[item.dash].join(' ') }),
});

function LineView({ item }: { readonly item: Line }): JSX.Element {
  const tone = toneClass(item.tone);
  const body = (
    <line
      class={`${tone} none`}
      x1={fixed(item.from.x)}
      y1={fixed(item.from.y)}
      x2={fixed(item.to.x)}
      y2={fixed(item.to.y)}
      {...stroked(item)}
    />
  );
  if (item.head === undefined) return body;
  const arrows = item.head === 'arrow' || item.head === 'both arrows';
  const ends: readonly (readonly [SheetPoint, SheetPoint])[] = item.head.startsWith('both')
    ? [
        [item.from, item.to],
        [item.to, item.from],
      ]
    : [[item.from, item.to]];
  return (
    <g>
      {body}
      {ends.map(([from, to]) => {
        const key = pair(to);
        if (arrows) {
          const tip = arrowHead(from, to, arrowLength(item));
          return <polygon key={key} class={`${tone} tip`} points={tip.map(pair).join(' ')} />;
        }
        const [a, b] = tick(to, 2);
        return (
          <line
            key={key}
            class={tone}
            x1={fixed(a.x)}
            y1={fixed(a.y)}
            x2={fixed(b.x)}
            y2={fixed(b.y)}
            stroke-width={fixed(lineWeights[item.tone] * 1.8)}
          />
        );
      })}
    </g>
  );
}
