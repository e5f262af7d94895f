import { wordsIn } from '@cribwright/messages';
import { partNamed, place, undersideAlong } from '@cribwright/model';
import fc from 'fast-check';
import { it } from 'vitest';
import { jsonReport } from '../../packages/cli/src/report/json.js';
import { lensesOf } from '../../packages/server/src/features/code-lens.js';
import { hoverAt } from '../../packages/server/src/features/hover/hover.js';
import { hintsOf } from '../../packages/server/src/features/inlay-hint.js';
import { atCursor } from '../../packages/server/src/testing/context-of.js';
import { readPlans } from '../examples/read-plans.js';
import { expectShown } from './shown.js';

const whole = (low: number, high: number) => fc.integer({ min: low, max: high });

/** A plan as people write one: US and SI lengths mixed, green or dry 8x8, shims, a trailer that pitches, a pad. */
const texts: fc.Arbitrary<string> = fc
  .record({
    units: fc.constantFrom('us', 'si'),
    size: fc.constantFrom('dry', 'green'),
    timber: fc.constantFrom(
      'Fir4x4 24 in long',
      'Fir8x8 36 in long',
      'Fir8x8 950 mm long',
      'Fir6x6 0.75 m long',
    ),
    layout: fc.constantFrom('2 by 2', '3 by 2', '2 by 3'),
    courses: whole(1, 14),
    overhang: fc.constantFrom('4 in', '110 mm', '5.5 in'),
    shims: fc.constantFrom('', '    shims 1.5 in\n', '    shims 20 mm\n', '    shims 3 in\n'),
    pitch: fc.constantFrom('', '    position pitched 3 deg nose down\n'),
    out: whole(3, 7),
    high: whole(3, 6),
  })
  .map(
    (v) => `use "library/vehicles.crib"
use "library/gear.crib"
policy Ours : Shipped {
  dressed size of 8x8 ${v.size} because "as the yard has it"
}
plan "Mixed units" {
  units ${v.units}
  policy Ours
  ground { surface asphalt }
  vehicle trailer : VanTrailer53 {
${v.pitch}    cargo 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber ${v.timber}
    layout ${v.layout}
    courses ${v.courses}
    overhang ${v.overhang}
${v.shims}    at 6.1 m, driver side 3 ft 6 in
    captures rail, joists
  }
  strut S1 : Strut4to8ft {
    head rail at 30 ft, driver side, ${v.high} ft high
    base ${v.out} ft out
    lock pinned
  }
  let high = A height
  let wide = A width
  let long = A length
  let rail = trailer rail height
  let roof = trailer height
}
`,
  );

it('says in the editor and for programs what was derived, whatever the plan says', async () => {
  await fc.assert(
    fc.asyncProperty(texts, async (text) => {
      const words = wordsIn('en', text.includes('units si') ? 'si' : 'us');
      const { desk, file } = await atCursor(`<|>${text}`);
      const reply = desk.workspace.check(file.uri).plans[0];
      const placed = reply && place(reply.plan);
      const crib = placed?.cribs.all[0];
      const strut = placed?.struts.all[0];
      const body = placed?.vehicles.all[0];
      if (crib === undefined || strut === undefined || body === undefined)
        throw new Error(
          `not made: ${desk.workspace
            .check(file.uri)
            .problems.map((p) => words.message(p.message))
            .join()}`,
        );

      const value = (name: string) =>
        desk.workspace
          .valuesAt(file.uri, text.indexOf(`let ${name}`) + 4)
          .map((f) => words.value(f))
          .join();
      expectShown(value('high'), crib.height, 'let of the height');
      expectShown(value('wide'), crib.width, 'let of the width');
      expectShown(value('long'), crib.crib.timber.length, 'let of the length');
      expectShown(value('roof'), body.top, 'let of the top of the trailer');

      const rail = partNamed(body.vehicle, 'rail');
      expectShown(value('rail'), rail && undersideAlong(body.vehicle, rail), 'let of the rail');

      const hovered = async (words: string) => {
        const found = await hoverAt(desk, file, text.indexOf(words) + 5);
        const contents = found?.contents;
        return contents && typeof contents === 'object' && 'value' in contents
          ? contents.value.replaceAll('\\', '')
          : '';
      };
      const bold = (page: string, label: string) =>
        new RegExp(`\\*\\*${label}: ([^*]*)\\*\\*`).exec(page)?.[1] ?? '';
      const aboutCrib = await hovered('crib A');
      expectShown(bold(aboutCrib, 'height'), crib.height, 'hover of the height');
      expectShown(bold(aboutCrib, 'width outside to outside of contacts'), crib.width, 'hover of the width');
      expectShown(bold(aboutCrib, 'gap to close'), crib.gap, 'hover of the gap');
      const aboutStrut = await hovered('strut S1');
      expectShown(bold(aboutStrut, 'length'), strut.length, 'hover of the strut');
      expectShown(bold(aboutStrut, 'angle to the ground'), strut.angle, 'hover of its angle');

      const checked = desk.workspace.check(file.uri);
      const hints = hintsOf(desk, file, checked, { start: 0, end: text.length }).map((h) => String(h.label));
      expectShown(hints[0] ?? '', crib.height, 'hint beside the crib');
      const lens = lensesOf(desk, file, checked).find((l) => l.command?.arguments?.[1] === 'crib/A');
      expectShown(lens?.command?.title ?? '', crib.height, 'lens above the crib');

      const report = JSON.parse(jsonReport(await readPlans(['-'], text)));
      const figures = (name: string) =>
        report.files[0].plans[0].supports.find((s: { name: string }) => s.name === name).figures;
      expectShown(figures('A').height.text, crib.height, 'JSON of the height');
      expectShown(figures('A').width.text, crib.width, 'JSON of the width');
      expectShown(figures('S1').length.text, strut.length, 'JSON of the strut');
      expectShown(figures('S1').angle.text, strut.angle, 'JSON of its angle');
    }),
    { numRuns: 12, endOnFailure: true },
  );
});
