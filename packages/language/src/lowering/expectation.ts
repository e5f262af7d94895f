import type { Acceptance, Expectation } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { accept } from '../schema/accept.js';
import { expectation } from '../schema/expect.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';

/** The name that the engine gives to a figure. */
export const figureKey = (words: string): string =>
  words.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());

export function expectationsOf(w: Lowering, block: BoundBlock): readonly Expectation[] {
  return w.propertiesOf(block, expectation).flatMap(({ values: v, line }, index): readonly Expectation[] => {
    const ref = { element: 'plan', property: `expect ${index + 1}` };
    w.place(ref, block.uri, line.span);
    if (v.safe) return [{ kind: 'safe', ref }];
    const on = v.on && w.idOf(v.on, at0);
    if (v.rule) return [{ kind: 'finding', rule: v.rule.text, on, ref }];
    const value = w.interval(v.value, at0, block.uri);
    if (!v.figure || !on || !value) return [];
    const within = w.number(v.within, at0, block.uri) ?? (v.about ? 0.05 : 0.005);
    const contact = w.number(v.contact, at0, block.uri);
    return [{ kind: 'figure', figure: figureKey(v.figure.text), on, contact, value, within, ref }];
  });
}

export function acceptancesOf(w: Lowering, block: BoundBlock): readonly Acceptance[] {
  return w.propertiesOf(block, accept).flatMap(({ values: v, line }, index): readonly Acceptance[] => {
    const on = w.idOf(v.on, at0);
    if (!on) return [];
    const id = `accept/${index + 1}`;
    w.place({ element: id }, block.uri, line.span);
    return [
      {
        id,
        rule: v.rule.text,
        on,
        reason: v.reason.text,
        by: v.by.text,
        until: v.until.text,
        ref: { element: id },
      },
    ];
  });
}
