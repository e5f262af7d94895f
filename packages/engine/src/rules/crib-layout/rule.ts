import { shown } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { messages } from '../../finding/message.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'one-timber':
    'Crib {crib} has {timbers} timber in a course. It takes at least 2 in every course to stand by itself. Use a layout of 2 by 2.',
  'no-room':
    'Crib {crib}: {timbers} timbers of {width} do not fit beside each other in {room}. Use at most {most}.',
  'no-width':
    'Crib {crib}: timbers of {length} with an overhang of {overhang} leave no width between the contacts. Use longer timbers or less overhang.',
  'no-courses': 'Crib {crib} has {courses} courses. It takes at least 1.',
  'part-course': 'Crib {crib} has {courses} courses. A course is whole or it is not there: use {whole}.',
  'fix-layout': 'Use a layout of {layout}',
} as const;
const say = messages('crib-layout', words);

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
      message: say('no-courses', {
        crib: crib.name,
        courses: `${crib.courses}`,
      }),
      figures,
    };
  if (!Number.isInteger(crib.courses))
    return {
      subject,
      at: at('courses'),
      message: say('part-course', {
        crib: crib.name,
        courses: `${crib.courses}`,
        whole: `${Math.floor(crib.courses)}`,
      }),
      figures,
    };
  const fewest = Math.min(crib.layout.lengthwise, crib.layout.crosswise);
  if (fewest < 2)
    return {
      subject,
      at: at('layout'),
      message: say('one-timber', { crib: crib.name, timbers: `${fewest}` }),
      figures,
      fixes: [
        {
          title: say('fix-layout', { layout: '2 by 2' }),
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
      message: say('no-width', {
        crib: crib.name,
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
    message: say('no-room', {
      crib: crib.name,
      timbers: `${timbers}`,
      width: shown({
        ...c.width,
        value: { low: crib.timber.width, high: crib.timber.width },
      }),
      room: shown(c.width),
      most: `${most}`,
    }),
    figures,
    fixes: [
      {
        title: say('fix-layout', { layout }),
        edits: [{ kind: 'set', at: at('layout'), text: layout }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'crib-layout',
  title: 'Courses that cannot be laid so',
  family: 'timber and cribs',
  severity: 'danger',
  protects:
    'A crib with a single timber in a course rolls over; one with more timbers than fit cannot be built as drawn.',
  sources: [practice],
  compares: ['width'],
  words,
  check: (w) => w.cribs().flatMap((c) => badLayout(c) ?? []),
};
