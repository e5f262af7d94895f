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
