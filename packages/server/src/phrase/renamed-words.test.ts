import { renamedWords } from '@cribwright/language/internal';
import { expect, it } from 'vitest';
import { contextOf } from '../testing/context-of.js';

const uses = 'use "library/vehicles.crib"\nuse "library/gear.crib"\nuse "library/ties.crib"\n';
const inPlan = (lines: string) => `${uses}plan "p" {\n${lines}\n}\n`;
const inVehicle = (line: string) => inPlan(`vehicle v : VanTrailer53 {\n  ${line}\n}`);
const inSpecies = (line: string) => `species Fir {\n  ${line}\n}\n`;
const strut = (lines: string, type = 'Strut4to8ft') =>
  `strut S1 : ${type} {\n  head v rail near 26 ft, passenger side\n  ${lines}\n}`;

/** A plan for each row, by its place and old form, with the row's form in the place of `@`. */
const plans: Readonly<Record<string, string>> = {
  'line no tyre at': inVehicle('@ axle 1, driver side'),
  'line tyres': inVehicle('axle 9 {\n    @ 2 each side\n  }'),
  'line centre': inVehicle('@ 28 ft back, 4 ft high'),
  'words centre': inVehicle('points p {\n    at 3 ft\n    height 12 in\n    offset @\n  }'),
  'line crossmembers': inVehicle('@ joists {\n    spacing 16 in\n  }'),
  'line way out': inPlan('@ Back {\n  from 24 ft, driver side 5 ft\n  to 24 ft, driver side 20 ft\n}'),
  'line foot plate': 'strut type T {\n  @ 10 in by 10 in\n}\n',
  'line foot': inPlan(`vehicle v : VanTrailer53\n${strut('@ 4 ft out')}`),
  'words foot': inPlan(
    `vehicle v : VanTrailer53\n${strut('base 4 ft out')}\nstrap T1 : RatchetStrap4in {\n  from S1 @ to v rail\n}`,
  ),
  'words backed off': inPlan(`vehicle v : VanTrailer53\n${strut('base 4 ft out\n  lock @')}`),
  'line ways both': inPlan('vehicle v : VanTrailer53\nchock K1 {\n  under v\n  @\n}'),
  'line ways': inPlan('vehicle v : VanTrailer53\nchock K1 {\n  under v\n  @ forward\n}'),
  'words both ways': inPlan('vehicle v : VanTrailer53\nsteps {\n  1 chock v @ crew 1\n}'),
  'words both': inPlan('vehicle v : VanTrailer53\nchock K1 {\n  under v\n  holds @\n}'),
  'line people': 'cache C {\n  @ 4\n}\n',
  'line units respond': `cache C {\n  staffing 4\n}\n${inPlan('@ C').replace(uses, '')}`,
  'line responds': `cache C {\n  staffing 4\n}\n${inPlan('@ C').replace(uses, '')}`,
  'words facing': inVehicle('heading @'),
  'line posture': inVehicle('@ on its driver side'),
  'line along grain': inSpecies('@ 1,000 psi source invented'),
  'line across grain': inSpecies('@ 625 psi source invented'),
  'line modulus along': inSpecies('@ 1,600 ksi source invented'),
  'line modulus across': inSpecies('@ 65 ksi source invented'),
  'line friction strut foot': 'policy P {\n  @ 0.3 because "measured"\n}\n',
  'name ShortStrut': inPlan(`vehicle v : VanTrailer53\n${strut('base 4 ft out', '@')}`),
  'name LongStrut': inPlan(`vehicle v : VanTrailer53\n${strut('base 4 ft out', '@')}`),
  'name TallStrut': inPlan(`vehicle v : VanTrailer53\n${strut('base 4 ft out', '@')}`),
};

it('has a plan for each row, and no other', () =>
  expect(Object.keys(plans).sort()).toEqual(renamedWords.map((w) => `${w.at} ${w.old}`).sort()));

it.each(renamedWords.map((w) => [`${w.at} ${w.old}`, w] as const))(
  'answers %s with a fix',
  async (key, w) => {
    const shown = plans[key] ?? '';
    const written = shown.replace('@', w.old);
    const problems = async (text: string) => {
      const desk = contextOf({ 'plan.crib': text });
      return (await desk.file('memory:/plan.crib'))?.problems ?? [];
    };
    const at = shown.indexOf('@');
    const found = (await problems(written)).filter((p) => p.span.start === at);
    expect(found.map((p) => p.span)).toEqual([{ start: at, end: at + w.old.length }]);
    expect(found[0]?.fixes.map(({ edits }) => edits.map((e) => e.text))).toEqual([[w.now]]);
    // What the fix makes of it is read: nothing is left to say at that place.
    expect((await problems(shown.replace('@', w.now))).filter((p) => p.span.start === at)).toEqual([]);
  },
);
