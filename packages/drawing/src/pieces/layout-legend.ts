import { gravest, type Look } from '../look/look.js';
import type { LegendEntry } from '../sheet/legend.js';
import { overused } from './support-label.js';

/** Only the signs that the drawing has. */
export function layoutLegend(look: Look, loads: boolean): readonly LegendEntry[] {
  const { plan } = look;
  const entries: LegendEntry[] = [];
  const put = (words: string, sign: LegendEntry['sign']) => entries.push({ words, sign });
  if (plan.vehicles.length > 0) {
    put('vehicle (outline for recognition only)', { kind: 'fill', tone: 'vehicle', fill: 'light' });
    put('rail, joist or other part', { kind: 'fill', tone: 'part', fill: 'light' });
  }
  if (plan.cribs.length + plan.stepChocks.length > 0)
    put('timber', { kind: 'fill', tone: 'timber', fill: 'light' });
  if (plan.struts.length > 0) put('strut', { kind: 'line', tone: 'strut' });
  if (plan.ties.length > 0)
    put('strap, chain or wire rope', { kind: 'line', tone: 'tie', dash: 'short dash' });
  if (plan.ties.some(({ from, to }) => from.kind === 'ground anchor' || to.kind === 'ground anchor'))
    put('anchor in the ground', { kind: 'fill', tone: 'tie', fill: 'light' });
  if (plan.chocks.length > 0) put('wheel chock', { kind: 'fill', tone: 'chock', fill: 'solid' });
  if (plan.pads.length > 0) put('ground pad', { kind: 'fill', tone: 'pad', fill: 'light' });
  if (plan.egress.length > 0) put('egress', { kind: 'arrow', tone: 'egress' });
  if (look.analysis.bodies.length > 0) put('center of gravity, and where it may lie', { kind: 'center' });
  if (loads) put('load on a contact, by area', { kind: 'fill', tone: 'load', fill: 'light' });
  if (look.choice.stage !== undefined) put('comes later', { kind: 'line', tone: 'ghost', dash: 'dashed' });
  const levels = new Set(
    look.things.map((t) => (overused(t, look) ? 'danger' : gravest(look.findingsOn(t.id)))),
  );
  if (levels.has('danger')) put('unsafe', { kind: 'badge', level: 'danger' });
  if (levels.has('warning')) put('warning', { kind: 'badge', level: 'warning' });
  if (levels.has('note')) put('note', { kind: 'badge', level: 'note' });
  return entries;
}
