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
  name: 'Strut',
  shows: 'One strut as a triangle, with its angle, forces and tie',
  subject: ['strut'],
  offered: (plan) => plan.struts.length > 0,
  awaits: (plan) => plan.struts.length > 0,
  draw: (look) => {
    const placed = chosenStrut(look);
    if (placed === undefined) throw new Error('the plan has no strut');
    const { strut } = placed;
    const title = headingOf(look, `Strut ${shortName(strut.name)}`);
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
      words: describe(
        { ...look, things: look.things.filter((t) => t.id === strut.id || t.kind === 'tie') },
        `Strut ${strut.name} as a triangle`,
      ),
      body: [triangle.item, table.item, ...found.items],
      bottom: found.bottom,
      legend: [
        { words: 'strut', sign: { kind: 'line', tone: 'strut' } },
        { words: 'strap, chain or wire rope', sign: { kind: 'line', tone: 'tie', dash: 'short dash' } },
        { words: 'force', sign: { kind: 'arrow', tone: 'load' } },
        { words: 'angles that the policy allows', sign: { kind: 'fill', tone: 'good', fill: 'light' } },
        ...useLegend,
      ],
      scale: triangle.scale,
      display: look.plan.display,
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
