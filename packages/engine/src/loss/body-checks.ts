import type { Figure } from '@cribwright/messages';
import { message, type Phrase, term } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import { computed, exactly, measured } from '@cribwright/model';
import { force, span } from '@cribwright/model/internal';
import type { SupportPoint } from '../supports/support-points.js';
import type { Component, JointCorner } from './components.js';

/** A place or a length in feet and tenths, or meters: to be multiplied by hand. */
export const feet = (key: string, label: Phrase, meters: number): Figure =>
  measured(span(key, label, 'nearest'), exactly(meters), term('figure.measured-in-the-plan'));

/** The loads under a body, less those on it, add up to its weight; and their middle is its center of gravity. */
export function bodyChecks(
  { component, corner }: { readonly component: Component; readonly corner: JointCorner },
  body: ElementId,
  index: number,
  own: readonly { readonly p: SupportPoint; readonly figure: Figure }[],
): readonly Figure[] {
  const found = component.bodies[index];
  const c = found?.corners[corner[index] ?? 0];
  if (found === undefined || c === undefined) return [];
  const pressed = own.filter(({ figure }) => (figure.value?.high ?? 0) > 0);
  const sign = (p: SupportPoint) => (p.upper === body ? '+' : '−');
  const terms = pressed
    .map(({ p }, i) => `${i === 0 && sign(p) === '+' ? '' : ` ${sign(p)} `}{f${i}}`)
    .join('');
  const loads = Object.fromEntries(pressed.map(({ figure }, i) => [`f${i}`, figure]));
  const sum = computed(
    force('sum', message('figure.weight-as-carried', { body: found.name }), 'nearest'),
    exactly(
      pressed.reduce((s, { p, figure }) => s + (p.upper === body ? 1 : -1) * (figure.value?.high ?? 0), 0),
    ),
    terms,
    loads,
  );
  const middle = (axis: 'x' | 'y', label: Phrase): Figure => {
    const places = Object.fromEntries(
      pressed.map(({ p }, i) => [`x${i}`, feet('place', term('figure.place'), p.at[axis])]),
    );
    const moment = pressed.reduce(
      (s, { p, figure }) => s + (p.upper === body ? 1 : -1) * (figure.value?.high ?? 0) * p.at[axis],
      0,
    );
    const formula = pressed
      .map(({ p }, i) => `${i === 0 && sign(p) === '+' ? '' : ` ${sign(p)} `}{f${i}} × {x${i}}`)
      .join('');
    return computed(
      span(`middle ${axis}`, label, 'nearest'),
      exactly(moment / (sum.value?.high ?? 1)),
      `(${formula}) ÷ {sum}`,
      { ...loads, ...places, sum },
    );
  };
  return [
    sum,
    middle('x', message('figure.middle-of-loads-back', { body: found.name })),
    middle('y', message('figure.middle-of-loads-aside', { body: found.name })),
  ];
}
