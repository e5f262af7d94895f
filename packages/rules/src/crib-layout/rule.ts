import type { CribWorking } from '@cribwright/engine/internal';
import { count, message, name, shown, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function badLayout(c: CribWorking): RuleFinding | undefined {
  const { crib } = c;
  const at = (property: string) => ({ element: crib.id, property });
  const subject = { element: crib.id };
  const figures = [c.width];
  const [, overhang] = c.width.inputs;
  if (!(crib.courses >= 1))
    return {
      subject,
      at: at('courses'),
      message: message('crib-layout.no-courses', {
        crib: name(crib.name),
        courses: count(crib.courses),
      }),
      figures,
    };
  if (!Number.isInteger(crib.courses))
    return {
      subject,
      at: at('courses'),
      message: message('crib-layout.part-course', {
        crib: name(crib.name),
        courses: count(crib.courses),
        whole: count(Math.floor(crib.courses)),
      }),
      figures,
    };
  const fewest = Math.min(crib.layout.lengthwise, crib.layout.crosswise);
  if (fewest < 2)
    return {
      subject,
      at: at('layout'),
      message: message('crib-layout.one-timber', { crib: name(crib.name), timbers: count(fewest) }),
      figures,
      fixes: [
        {
          title: message('crib-layout.fix-layout', { layout: name('2 by 2') }),
          edits: [{ kind: 'set', at: at('layout'), text: '2 by 2' }],
          safe: false,
        },
      ],
    };
  const room = c.placed.width;
  if (!(room > crib.timber.width))
    return {
      subject,
      at: at('overhang'),
      message: message('crib-layout.no-width', {
        crib: name(crib.name),
        length: shown(c.width.inputs[0] ?? c.width),
        overhang: shown(overhang ?? c.overhang),
      }),
      figures,
    };
  const timbers = Math.max(crib.layout.lengthwise, crib.layout.crosswise);
  if (!exceeds(timbers * crib.timber.width, room)) return undefined;
  const most = Math.max(2, Math.floor(room / crib.timber.width + 1e-9));
  const layout = `${Math.min(most, crib.layout.lengthwise)} by ${Math.min(most, crib.layout.crosswise)}`;
  return {
    subject,
    at: at('layout'),
    message: message('crib-layout.no-room', {
      crib: name(crib.name),
      timbers: count(timbers),
      width: shown({
        ...c.width,
        value: { low: crib.timber.width, high: crib.timber.width },
      }),
      room: shown(c.width),
      most: count(most),
    }),
    figures,
    fixes: [
      {
        title: message('crib-layout.fix-layout', { layout: name(layout) }),
        edits: [{ kind: 'set', at: at('layout'), text: layout }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'crib-layout',
  title: term('crib-layout.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'element',
  protects: term('crib-layout.protects'),
  sources: [practice],
  compares: ['width'],
  check: (w) => w.cribs().flatMap((c) => badLayout(c) ?? []),
};
