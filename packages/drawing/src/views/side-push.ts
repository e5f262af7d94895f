import type { PushResult } from '@cribwright/engine';
import { message, name, term } from '@cribwright/messages';
import { headingOf } from '../look/heading-of.js';
import { type Look, momentOf } from '../look/look.js';
import { pushRose, radius, wayWords } from '../pieces/push-rose.js';
import { at, text } from '../scene/draw.js';
import { heading, sheet } from '../sheet/sheet.js';
import { leading, margin, sheetWidth, type } from '../sheet/sizes.js';
import { table } from '../sheet/table.js';
import { wrap } from '../text/wrap.js';
import { sentences } from '../words/sentences.js';
import type { View } from './view.js';

/** How hard a push the system holds up to, from every side, beside what the policy asks. */
export const view: View = {
  id: 'side push',
  order: 60,
  name: term('view.side-push'),
  shows: term('view.side-push-shows'),
  offered: (_plan, analysis) => analysis.push !== undefined,
  awaits: (plan) => plan.vehicles.length > 0,
  draw: (look) => {
    const { push } = look.analysis;
    if (push === undefined) throw new Error('the push was not worked out');
    const title = headingOf(look, term('view.side-push-title'));
    const head = heading(title);
    const center = at(margin + radius + 24, head.bottom + radius + 12);
    const asked = askedShare(look);
    const numbers = facts(push, look, margin + 2 * radius + 52, head.bottom + 8);
    return sheet({
      choice: look.choice,
      heading: title,
      spoken: spokenPush(push, look),
      body: [...pushRose(push, look, center, asked), ...numbers.items],
      bottom: Math.max(center.y + radius + 12, numbers.bottom),
      legend: [
        {
          words: look.say.message(term('view.holds-share')),
          sign: { kind: 'fill', tone: 'load', fill: 'light' },
        },
        { words: look.say.message(term('view.policy-requires')), sign: { kind: 'line', tone: 'danger' } },
        {
          words: look.say.message(term('view.less-than-required')),
          sign: { kind: 'badge', level: 'danger' },
        },
      ],
      words: look.say.words,
    });
  },
};

const askedShare = (look: Look): number => {
  const { value } = look.plan.policy.limits['push margin'];
  return typeof value === 'number' ? value : typeof value === 'string' ? 0 : value.high;
};

function facts(push: PushResult, look: Look, left: number, top: number) {
  const { say } = look;
  const worst = [...push.directions]
    .sort((a, b) => (a.share.value?.low ?? -1) - (b.share.value?.low ?? -1))
    .slice(0, 6);
  const width = sheetWidth - margin - left;
  const grid = table(
    'weakest',
    [
      { title: say.message(term('view.push-toward')), width: width - 31 },
      { title: say.message(term('view.holds-up-to')), width: 19, align: 'end' },
      { title: say.message(term('view.share')), width: 12, align: 'end' },
    ],
    worst.map((d, i) => ({
      key: String(i),
      cells: [say.message(wayWords(d.angle)), say.figure(d.holds), say.figure(d.share)],
    })),
    left,
    top,
  );
  const first = worst[0]?.givesFirst;
  const told = [
    say.message(
      message('view.push-facts', {
        height: name(say.figure(push.height)),
        least: name(say.figure(push.least)),
      }),
    ),
    ...(first === undefined ? [] : [say.message(message('view.fails-first', { how: first.how }))]),
    ...gripWords(push, look),
    say.message(term('view.push-no-promise')),
  ];
  let y = grid.bottom + 6;
  const lines = told.flatMap((words, n) => {
    const own = wrap(words, width, type.dimension).map((part, i) =>
      text(`fact ${n} ${i}`, at(left, y + i * type.dimension * leading), part, type.dimension),
    );
    y += own.length * type.dimension * leading + 1.5;
    return own;
  });
  return { items: [grid.item, ...lines], bottom: y };
}

/** What holds a vehicle that lies on the ground against sliding. */
const gripWords = ({ grip }: PushResult, look: Look): readonly string[] =>
  grip === undefined
    ? []
    : [
        look.say.message(
          message('view.lies-on-ground', {
            grip: name(`${look.say.words.label(grip)} ${look.say.figure(grip)}`),
            source: name(look.say.words.source(grip.source)),
          }),
        ),
      ];

const spokenPush = (push: PushResult, look: Look): string =>
  sentences([
    look.say.message(term('view.side-push-spoken')),
    ...momentOf(look),
    look.say.message(message('view.least-push', { least: name(look.say.figure(push.least)) })),
    ...gripWords(push, look),
    ...push.directions.map((d) =>
      look.say.message(
        message('view.toward-share', {
          direction: wayWords(d.angle),
          share: name(look.say.figure(d.share)),
        }),
      ),
    ),
  ]);
