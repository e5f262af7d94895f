import { message, name, term } from '@cribwright/messages';
import { type PlacedCrib, place } from '@cribwright/model';
import { headingOf } from '../look/heading-of.js';
import type { Look } from '../look/look.js';
import { contactPlan } from '../pieces/contact-plan.js';
import { contactTable } from '../pieces/contact-table.js';
import { courseBuild } from '../pieces/course-build.js';
import { cribElevation } from '../pieces/crib-elevation.js';
import { findingsBlock } from '../pieces/findings-block.js';
import { useLegend } from '../pieces/use-level.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, sheetWidth } from '../sheet/sizes.js';
import { standardScale } from '../sheet/standard-scale.js';
import { baseHeight } from '../space/crib-solids.js';
import { shortName } from '../text/short-name.js';
import { describe } from '../words/describe.js';
import type { View } from './view.js';

/** One crib close up: both faces, the build course by course, its contacts with loads and capacities. */
export const view: View = {
  id: 'crib',
  order: 40,
  name: term('view.crib'),
  shows: term('view.crib-shows'),
  subject: ['crib'],
  offered: (plan) => plan.cribs.length > 0,
  awaits: (plan) => plan.cribs.length > 0,
  draw: (look) => {
    const placed = chosenCrib(look);
    if (placed === undefined) throw new Error('the plan has no crib');
    const { crib } = placed;
    const title = headingOf(look, message('view.crib-title', { name: name(shortName(crib.name)) }));
    const head = heading(title);
    const high = tallest(placed, look);
    const scale = standardScale(
      { across: crib.timber.length, down: high },
      { across: 42, down: 74 },
      look.say.words.units,
    );
    const top = head.bottom + 12;
    const elevations = (['side', 'end'] as const).map((face, i) =>
      cribElevation(placed, look, { face, scale, top, center: margin + 40 + i * 66, high }),
    );
    const bottoms = elevations.map((e) => e.bottom);
    const build = courseBuild(
      placed,
      {
        left: 160,
        right: sheetWidth - margin,
        top: head.bottom + 4,
      },
      look.say,
    );
    const second = Math.max(...bottoms, build.bottom) + 3;
    const contacts = contactPlan(placed, look, { left: margin, top: second, scale });
    const table = contactTable(crib, look, { left: contacts.right + 4, top: second + 3 });
    const found = findingsBlock(crib.id, look, Math.max(contacts.bottom, table.bottom, build.bottom) + 2);
    return sheet({
      choice: { ...look.choice, subject: crib.id },
      heading: title,
      spoken: describe(
        { ...look, things: look.things.filter((t) => t.id === crib.id) },
        look.say.message(message('view.crib-spoken', { name: name(crib.name) })),
      ),
      body: [...elevations.map((e) => e.item), build.item, contacts.item, table.item, ...found.items],
      bottom: found.bottom,
      legend: [
        {
          words: look.say.message(term('view.timber')),
          sign: { kind: 'fill', tone: 'timber', fill: 'light' },
        },
        {
          words: look.say.message(term('view.end-of-a-timber')),
          sign: { kind: 'fill', tone: 'timber end', fill: 'light' },
        },
        ...(crib.wedges === undefined
          ? []
          : [
              {
                words: look.say.message(term('view.wedges')),
                sign: { kind: 'fill', tone: 'wedge', fill: 'light' },
              } as const,
            ]),
        ...useLegend(look.say),
      ],
      scale,
      words: look.say.words,
    });
  },
};

/** The crib that is asked for; without one, the crib with the gravest finding, or the first. */
export function chosenCrib(look: Look): PlacedCrib | undefined {
  const cribs = place(look.plan).cribs.all;
  const asked = cribs.find((c) => c.crib.id === look.choice.subject);
  if (asked !== undefined) return asked;
  const unsafe = cribs.find((c) => look.findingsOn(c.crib.id).some((f) => f.severity === 'danger'));
  return unsafe ?? cribs[0];
}

function tallest(placed: PlacedCrib, look: Look): number {
  const { crib, captured, heightWithShims: stack } = placed;
  const limit = look.support(crib.id)?.figures.heightLimit?.value?.low;
  return Math.max(
    stack,
    captured === undefined ? 0 : Math.min(captured.low - baseHeight(placed), stack * 1.6),
    limit === undefined ? 0 : Math.min(limit, stack * 1.6),
  );
}
