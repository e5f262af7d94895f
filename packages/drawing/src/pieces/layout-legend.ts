import { type TermId, term } from '@cribwright/messages';
import { gravest, type Look } from '../look/look.js';
import type { LegendEntry } from '../sheet/legend.js';
import { overused } from './support-label.js';

/** Only the signs that the drawing has. */
export function layoutLegend(look: Look, loads: boolean): readonly LegendEntry[] {
  const { plan } = look;
  const entries: LegendEntry[] = [];
  const put = (id: TermId, sign: LegendEntry['sign']) =>
    entries.push({ words: look.say.message(term(id)), sign });
  if (plan.vehicles.length > 0) {
    put('piece.legend-vehicle', { kind: 'fill', tone: 'vehicle', fill: 'light' });
    put('piece.legend-part', { kind: 'fill', tone: 'part', fill: 'light' });
  }
  if (plan.cribs.length + plan.stepChocks.length > 0)
    put('piece.legend-timber', { kind: 'fill', tone: 'timber', fill: 'light' });
  if (plan.struts.length > 0) put('piece.legend-strut', { kind: 'line', tone: 'strut' });
  if (plan.ties.length > 0) put('piece.legend-tie', { kind: 'line', tone: 'tie', dash: 'short dash' });
  if (plan.ties.some(({ from, to }) => from.kind === 'ground anchor' || to.kind === 'ground anchor'))
    put('piece.legend-anchor', { kind: 'fill', tone: 'tie', fill: 'light' });
  if (plan.chocks.length > 0) put('piece.legend-chock', { kind: 'fill', tone: 'chock', fill: 'solid' });
  if (plan.pads.length > 0) put('piece.legend-pad', { kind: 'fill', tone: 'pad', fill: 'light' });
  if (plan.egress.length > 0) put('piece.legend-egress', { kind: 'arrow', tone: 'egress' });
  if (look.analysis.bodies.length > 0) put('piece.legend-center', { kind: 'center' });
  if (loads) put('piece.legend-load', { kind: 'fill', tone: 'load', fill: 'light' });
  if (look.choice.stage !== undefined)
    put('piece.legend-later', { kind: 'line', tone: 'ghost', dash: 'dashed' });
  const levels = new Set(
    look.things.map((t) => (overused(t, look) ? 'danger' : gravest(look.findingsOn(t.id)))),
  );
  if (levels.has('danger')) put('piece.legend-unsafe', { kind: 'badge', level: 'danger' });
  if (levels.has('warning')) put('piece.legend-warning', { kind: 'badge', level: 'warning' });
  if (levels.has('note')) put('piece.legend-note', { kind: 'badge', level: 'note' });
  return entries;
}
