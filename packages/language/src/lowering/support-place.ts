import { name } from '@cribwright/messages';
import type { Yields } from '../bound/shape.js';
import { problem } from '../problems/problem.js';
import type { cribProperties } from '../schema/crib.js';
import { alongOf } from './along.js';
import type { PropertyValue } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import { acrossOf, memberAt, type PlacedPart } from './placed-vehicles.js';
import { sideways } from './sideways.js';

type PlaceValues = Yields<typeof cribProperties.at>;

/** Where a support stands: by a place, near a crossmember, or under a part. */
export function supportPlace(
  m: LoweringContext,
  said: PropertyValue<PlaceValues> | undefined,
  uri: string,
  captured: PlacedPart | undefined,
): { readonly x: number; readonly y: number } | undefined {
  if (!said) return undefined;
  const { w, placedVehicles: cast, within } = m;
  const v = said.values;
  const offset = w.number(v.offset, within, uri, 'length');
  const across = (under: PlacedPart | undefined): number => {
    if (v.centerd) return 0;
    if (offset !== undefined) return sideways(v.side?.text, offset);
    return under && v.side ? acrossOf(under, v.side.text) : 0;
  };
  if (v.member) {
    const part = cast.part(w, undefined, v.member, within);
    const number = w.number(v.memberNumber, within, uri);
    const x = part && number !== undefined ? memberAt(part, number) : undefined;
    if (x === undefined) {
      const text = `${v.member.text} ${number ?? ''}`.trim();
      w.report(problem('value-unknown--member', said.line.span, { text: name(text) }), uri, within);
      return undefined;
    }
    return { x, y: across(captured ?? part) };
  }
  const x = alongOf(m, v, uri, cast.main, said.line.block ? [said.line.block] : []);
  if (x === undefined) return undefined;
  if (v.underPart) {
    const part = cast.part(w, v.underVehicle, v.underPart, within);
    return part && { x, y: acrossOf(part, v.side?.text) };
  }
  return { x, y: across(captured) };
}
