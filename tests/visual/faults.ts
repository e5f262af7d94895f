import { boundsOf, type Item, overlaps, type Scene, textBox, walk, within } from '@cribwright/drawing/page';

type Text = Extract<Item, { kind: 'text' }>;
type Group = Extract<Item, { kind: 'group' }>;

const textsIn = (items: readonly Item[]): readonly Text[] =>
  [...walk(items)].filter((i): i is Text => i.kind === 'text');

/** Pairs of words that lie over each other. */
export function overlappingWords(scene: Scene): readonly string[] {
  const texts = textsIn(scene.items).map((t) => ({ words: t.text, box: textBox(t) }));
  return texts.flatMap((a, i) =>
    texts
      .slice(i + 1)
      .flatMap((b) => (overlaps(a.box, b.box, -0.05) ? [`“${a.words}” and “${b.words}”`] : [])),
  );
}

/** Words that end in three dots because there was no room for the rest. */
export const cutShort = (scene: Scene): readonly string[] =>
  textsIn(scene.items).flatMap((t) => (t.text.endsWith('...') ? [t.text] : []));

/** Shapes and words that run off the sheet. */
export function offTheSheet(scene: Scene): readonly string[] {
  const sheet = { left: 0, top: 0, right: scene.width, bottom: scene.height };
  return [...walk(scene.items)].flatMap((item) => {
    if (item.kind === 'group') return [];
    const box = boundsOf(item);
    return within(box, sheet, 0.01)
      ? []
      : [`${item.kind} ${item.key} ${item.kind === 'text' ? item.text : ''}`];
  });
}

const supports = /^(crib|step chock|strut|chock)\//;

/** Labels that lie over the shape of a support which they do not name. */
export function coveredShapes(scene: Scene): readonly string[] {
  const groups = scene.items.filter((i): i is Group => i.kind === 'group');
  const shapes = groups.filter((g) => supports.test(g.key)).map((g) => ({ key: g.key, boxes: piecesOf(g) }));
  return groups
    .filter((g) => g.key.startsWith('label '))
    .flatMap((label) => {
      const own = shapes.find((s) => `label ${s.key}` === label.key);
      return textsIn([label]).flatMap((t) =>
        shapes
          .filter((s) => s !== own && s.boxes.some((box) => overlaps(textBox(t), box, -0.1)))
          .map((s) => `“${t.text}” of ${label.key} over ${s.key}`),
      );
    });
}

/** The pieces of a shape; a line as a row of points along it. */
const piecesOf = (group: Group) =>
  [...walk(group.items)].flatMap((item) => {
    if (item.kind === 'group' || item.key === 'adding' || item.key.startsWith('crossed')) return [];
    if (item.kind !== 'line') return [boundsOf(item)];
    return Array.from({ length: 25 }, (_, i) => {
      const x = item.from.x + ((item.to.x - item.from.x) * i) / 24;
      const y = item.from.y + ((item.to.y - item.from.y) * i) / 24;
      return { left: x - 0.2, right: x + 0.2, top: y - 0.2, bottom: y + 0.2 };
    });
  });

/** Groups that stand for an element and can be reached, but have no name, and numbers that are none. */
export function unnamed(scene: Scene): readonly string[] {
  return [...walk(scene.items)].flatMap((item) => {
    if (item.kind === 'group') return item.name === '' ? [item.key] : [];
    const box = boundsOf(item);
    return Object.values(box).every(Number.isFinite) ? [] : [`${item.key} has no place`];
  });
}

/** Lines from a label to its shape that are drawn over the words of another. */
export function struckOut(scene: Scene): readonly string[] {
  const order = [...walk(scene.items)];
  return order.flatMap((item, i) =>
    item.kind === 'line' && item.key === 'leader'
      ? textsIn(order.slice(0, i))
          .filter((t) => crossesBox(item, textBox(t)))
          .map((t) => `“${t.text}”`)
      : [],
  );
}

/** Words over a bar or a frame that is longer than its row's name leaves room for. */
export function overBars(scene: Scene): readonly string[] {
  return scene.items
    .filter((i): i is Group => i.kind === 'group' && i.key !== 'caution')
    .flatMap((row) => {
      const bars = [...walk(row.items)].filter((i) => i.key === 'bar' || i.key === 'frame');
      return textsIn(row.items)
        .filter((t) => bars.some((bar) => overlaps(textBox(t), boundsOf(bar), -0.1)))
        .map((t) => `“${t.text}”`);
    });
}

/** Dimension lines whose marks do not lie at the ends of the lines that lead to what they measure. */
export function looseDimensions(scene: Scene): readonly string[] {
  return [...walk(scene.items)].flatMap((item) =>
    item.kind === 'group' && item.items.some((i) => i.kind === 'line' && i.head === 'both ticks')
      ? item.items.flatMap((i) => (i.kind === 'line' && i.head === 'both ticks' ? ends(i, item) : []))
      : [],
  );
}

type Line = Extract<Item, { kind: 'line' }>;

const ends = (measure: Line, group: Group): readonly string[] => {
  const extensionLines = group.items.filter((i): i is Line => i.kind === 'line' && i !== measure);
  return [measure.from, measure.to].flatMap((end) =>
    extensionLines.some((h) => awayFrom(h, end) < 0.3) ? [] : [group.key],
  );
};

/** How far a place is from a line, mm. */
function awayFrom({ from, to }: Line, p: { readonly x: number; readonly y: number }): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const along = ((p.x - from.x) * x + (p.y - from.y) * y) / (x * x + y * y || 1);
  const t = Math.max(0, Math.min(1, along));
  return Math.hypot(p.x - from.x - t * x, p.y - from.y - t * y);
}

function crossesBox({ from, to }: Line, box: ReturnType<typeof textBox>): boolean {
  return Array.from({ length: 101 }, (_, i) => i / 100).some((t) => {
    const [x, y] = [from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t];
    return x > box.left + 0.1 && x < box.right - 0.1 && y > box.top + 0.1 && y < box.bottom - 0.1;
  });
}
