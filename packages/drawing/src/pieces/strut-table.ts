import { message, term } from '@cribwright/messages';
import type { Strut } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { at, group, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { leading, type } from '../sheet/sizes.js';
import { rowHeight, table } from '../sheet/table.js';
import { wrap } from '../text/wrap.js';
import { lockWords } from '../words/lock-words.js';
import { useBar } from './use-bar.js';
import { useLimit } from './use-level.js';

/** The strut's figures, the sum behind its load, and how it is held. */
export function strutTable(
  strut: Strut,
  look: Look,
  field: { readonly left: number; readonly top: number; readonly width: number },
): { readonly item: Item; readonly bottom: number } {
  const { say } = look;
  const figures = look.support(strut.id)?.figures ?? {};
  const rows = [
    { key: 'kind', cells: [say.message(term('piece.kind')), strut.gear.name] },
    {
      key: 'lock',
      cells: [
        say.message(term('piece.lock')),
        say.message(strut.lock === undefined ? term('piece.none-stated') : lockWords(strut.lock)),
      ],
    },
    ...Object.values(figures).map((f) => ({
      key: f.key,
      cells: [say.words.label(f), say.figure(f)],
      strong: f.key === 'use',
    })),
  ];
  const grid = table(
    'figures',
    [
      { title: say.message(term('piece.figure')), width: field.width - 40 },
      { title: say.message(term('piece.value')), width: 40, align: 'end' },
    ],
    rows,
    field.left,
    field.top,
  );
  const bar = useBar(
    'use',
    field.left,
    grid.bottom + 2,
    field.width - 8,
    3.2,
    figures.use,
    useLimit(look.plan),
  );
  const governs = figures.load?.governs;
  const lines =
    governs === undefined
      ? []
      : wrap(say.message(message('piece.governing-case', { case: governs })), field.width, type.dimension);
  const top = grid.bottom + 2 + rowHeight + 4;
  return {
    item: group('strut in numbers', [
      grid.item,
      bar,
      ...lines.map((words, i) =>
        text(`governs ${i}`, at(field.left, top + i * type.dimension * leading), words, type.dimension),
      ),
    ]),
    bottom: top + lines.length * type.dimension * leading,
  };
}
