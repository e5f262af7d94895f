/** @jsxRuntime automatic @jsxImportSource preact */
import { Component, type JSX } from 'preact';
import type { Item, Scene } from '../scene/scene.js';
import type { Tone } from '../scene/tone.js';
import { walk } from '../scene/walk.js';
import { fixed } from './fixed.js';
import { hatchSpacing } from './line-weights.js';
import { ShapeView } from './shape-view.js';
import { toneClass } from './style-sheet.js';

// Roles of the WAI-ARIA Graphics Module, which the type definitions do not know yet.
const documentRole: object = { role: 'graphics-document' };
const objectRole: object = { role: 'graphics-object' };

/**
 * A scene as SVG. The panel, the command line and the exports all draw through this one description, so a
 * drawing is the same, byte for byte, wherever it is made. Colors come from a style sheet.
 */
export function SceneSvg({ scene, css }: { readonly scene: Scene; readonly css?: string }): JSX.Element {
  const prefix = scene.choice.view.replaceAll(' ', '-');
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class="cw"
      data-view={scene.choice.view}
      viewBox={`0 0 ${fixed(scene.width)} ${fixed(scene.height)}`}
      width={`${fixed(scene.width)}mm`}
      height={`${fixed(scene.height)}mm`}
      {...documentRole}
      aria-labelledby={`${prefix}-title`}
      aria-describedby={`${prefix}-words`}
    >
      <title id={`${prefix}-title`}>{scene.title}</title>
      <desc id={`${prefix}-words`}>{scene.words}</desc>
      {css === undefined ? undefined : <style>{css}</style>}
      <defs>
        {hatched(scene.items).map((h) => (
          <Hatch key={h.id} id={`${prefix}-${h.id}`} tone={h.tone} crossed={h.fill === 'cross'} />
        ))}
      </defs>
      <rect class="paper" width={fixed(scene.width)} height={fixed(scene.height)} />
      {scene.items.map((item) => (
        <ItemView key={item.key} item={item} prefix={prefix} />
      ))}
    </svg>
  );
}

interface ItemProps {
  readonly item: Item;
  readonly prefix: string;
}

/** One item; redrawn only when it is another object than before. */
class ItemView extends Component<ItemProps> {
  override shouldComponentUpdate(next: ItemProps): boolean {
    return next.item !== this.props.item || next.prefix !== this.props.prefix;
  }

  override render(): JSX.Element {
    const { item, prefix } = this.props;
    if (item.kind !== 'group') return <ShapeView item={item} prefix={prefix} />;
    return (
      <g
        class={item.worst === undefined ? undefined : `worst-${item.worst}`}
        data-key={item.key}
        data-element={item.ref?.element}
        data-property={item.ref?.property}
        {...(item.name === undefined ? {} : objectRole)}
      >
        {item.name === undefined ? undefined : <title>{item.name}</title>}
        {item.items.map((child) => (
          <ItemView key={child.key} item={child} prefix={prefix} />
        ))}
      </g>
    );
  }
}

const hatched = (items: readonly Item[]) => {
  const found = new Map<string, { id: string; tone: Tone; fill: 'hatch' | 'cross' }>();
  for (const item of walk(items)) {
    if ('fill' in item && (item.fill === 'hatch' || item.fill === 'cross')) {
      const id = `${item.fill}-${item.tone.replaceAll(' ', '-')}`;
      found.set(id, { id, tone: item.tone, fill: item.fill });
    }
  }
  return [...found.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
};

function Hatch(props: { readonly id: string; readonly tone: Tone; readonly crossed: boolean }): JSX.Element {
  const s = hatchSpacing;
  return (
    <pattern id={props.id} width={s} height={s} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect class={`${toneClass(props.tone)} light`} width={s} height={s} stroke-width="0" />
      <path
        class={`${toneClass(props.tone)} none`}
        d={props.crossed ? `M0 0H${s}M0 0V${s}` : `M0 0V${s}`}
        stroke-width=".25"
      />
    </pattern>
  );
}
