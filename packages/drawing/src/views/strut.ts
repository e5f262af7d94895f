import { message, name, term } from '@cribwright/messages';
import { type PlacedStrut, place } from '@cribwright/model';
import { headingOf } from '../look/heading-of.js';
import type { Look } from '../look/look.js';
import { findingsBlock } from '../pieces/findings-block.js';
import { strutTable } from '../pieces/strut-table.js';
import { strutTriangle } from '../pieces/strut-triangle.js';
import { useLegend } from '../pieces/use-level.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, sheetWidth } from '../sheet/sizes.js';
import { shortName } from '../text/short-name.js';
import { describe } from '../words/describe.js';
import type { View } from './view.js';

/** One strut as a triangle: its angle, its lengths, what it carries and what ties its base. */
export const view: View = {
  id: 'strut',
  order: 50,
  name: term('view.strut'),
  shows: term('view.strut-shows'),
  subject: ['strut'],
  offered: (plan) => plan.struts.length > 0,
  awaits: (plan) => plan.struts.length > 0,
  draw: (look) => {
    const placed = chosenStrut(look);
    if (placed === undefined) throw new Error('the plan has no strut');
    const { strut } = placed;
    const title = headingOf(look, message('view.strut-title', { name: name(shortName(strut.name)) }));
    const head = heading(title);
    const triangle = strutTriangle(placed, look, {
      left: margin,
      right: sheetWidth - margin - 114,
      top: head.bottom + 8,
    });
    const table = strutTable(strut, look, {
      left: sheetWidth - margin - 108,
      top: head.bottom + 6,
      width: 108,
    });
    const found = findingsBlock(strut.id, look, Math.max(triangle.bottom, table.bottom) + 2);
    return sheet({
      choice: { ...look.choice, subject: strut.id },
      heading: title,
      spoken: describe(
        { ...look, things: look.things.filter((t) => t.id === strut.id || t.kind === 'tie') },
        look.say.message(message('view.strut-spoken', { name: name(strut.name) })),
      ),
      body: [triangle.item, table.item, ...found.items],
      bottom: found.bottom,
      legend: [
        { words: look.say.message(term('view.strut-sign')), sign: { kind: 'line', tone: 'strut' } },
        {
          words: look.say.message(term('view.tie-sign')),
          sign: { kind: 'line', tone: 'tie', dash: 'short dash' },
        },
        { words: look.say.message(term('view.force')), sign: { kind: 'arrow', tone: 'load' } },
        {
          words: look.say.message(term('view.allowed-angles')),
          sign: { kind: 'fill', tone: 'good', fill: 'light' },
        },
        ...useLegend(look.say),
      ],
      scale: triangle.scale,
      words: look.say.words,
    });
  },
};

/** The strut that is asked for; without one, the strut with the gravest finding, or the first. */
function chosenStrut(look: Look): PlacedStrut | undefined {
  const struts = place(look.plan).struts.all;
  const asked = struts.find((s) => s.strut.id === look.choice.subject);
  if (asked !== undefined) return asked;
  return struts.find((s) => look.findingsOn(s.strut.id).some((f) => f.severity === 'danger')) ?? struts[0];
}
