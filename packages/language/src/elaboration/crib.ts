import type { Capture, Crib, Pad, Policy, StandsOn, StepChock } from '@cribwright/engine';
import type { BoundBlock } from '../binding/bound-file.js';
import { typeChain } from '../binding/file-scope.js';
import type { Yields } from '../phrase/pattern.js';
import { problem } from '../problems/problem.js';
import { cribProperties, padProperties, stepChockProperties } from '../schema/crib.js';
import { stepChockTypeProperties } from '../schema/gear.js';
import { acrossOf, type Cast, memberAt, type PlacedPart } from './cast.js';
import { timberOf } from './material.js';
import { sideways } from './sideways.js';
import { type Expansion, outermost, type Said, type Writing } from './writing.js';

/** Where a support is made: in the plan, or by one use of a pattern. */
export interface Making {
  readonly w: Writing;
  readonly cast: Cast;
  readonly policy: Policy;
  readonly within: Expansion;
}

type PlaceValues = Yields<typeof cribProperties.at>;

/** Where a support stands: by a place, near a crossmember, or under a part. */
export function placeOf(
  { w, cast, within }: Making,
  said: Said<PlaceValues> | undefined,
  uri: string,
  captured: PlacedPart | undefined,
): { readonly x: number; readonly y: number } | undefined {
  if (!said) return undefined;
  const v = said.values;
  const offset = w.number(v.offset, within, uri, 'length');
  const across = (under: PlacedPart | undefined): number => {
    if (v.centred) return 0;
    if (offset !== undefined) return sideways(v.side?.text, offset);
    return under && v.side ? acrossOf(under, v.side.text) : 0;
  };
  if (v.member) {
    const part = cast.part(w, undefined, v.member, within);
    const number = w.number(v.memberNumber, within, uri);
    const x = part && number !== undefined ? memberAt(part, number) : undefined;
    if (x === undefined) {
      const text = `${v.member.text} ${number ?? ''}`.trim();
      w.tell(problem('value-unknown', said.line.span, { text, why: 'there is no such one' }), uri, within);
      return undefined;
    }
    return { x, y: across(captured ?? part) };
  }
  const x = w.number(v.back, within, uri, 'length');
  if (x === undefined) return undefined;
  if (v.underPart) {
    const part = cast.part(w, v.underVehicle, v.underPart, within);
    return part && { x, y: acrossOf(part, v.side?.text) };
  }
  return { x, y: across(captured) };
}

function capturesOf(
  { w, cast, within }: Making,
  said: Said<{ readonly parts: readonly CaptureValues[] }> | undefined,
  element: string,
): readonly (Capture & { readonly placed: PlacedPart })[] {
  const uri = said?.block.uri ?? w.plan.uri;
  const parts = said?.values.parts ?? [];
  return parts.flatMap((p, index) => {
    const placed = cast.part(w, p.vehicle, p.part, within);
    if (!placed) {
      if (p.part.target || within !== outermost) {
        w.tell(
          problem('unknown-part.none', p.part.span, {
            text: p.part.text,
            vehicle: p.vehicle?.text ?? 'the vehicle',
          }),
          uri,
          within,
        );
      } else w.partial = true;
      return [];
    }
    const pair = p.contacts?.text;
    const contacts =
      pair === undefined
        ? parts.length === 2
          ? ((['outer', 'inner'] as const)[index] ?? 'all')
          : undefined
        : pair === 'all'
          ? 'all'
          : pairs[pair];
    return [
      {
        vehicle: placed.vehicle.id,
        part: placed.part.id,
        ...(contacts === undefined ? {} : { contacts }),
        ref: { element, property: 'captures' },
        placed,
      },
    ];
  });
}

type CaptureValues = Yields<typeof cribProperties.captures>['parts'][number];

const pairs = {
  'outer pair': 'outer',
  'inner pair': 'inner',
  'front pair': 'front',
  'rear pair': 'rear',
} as const;

const bare = ({ placed: _placed, ...capture }: Capture & { readonly placed: PlacedPart }): Capture => capture;

export function cribOf(m: Making, block: BoundBlock): Crib | undefined {
  const { w, within, policy } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `crib/${name}`;
  w.placeBlock(id, block);
  const p = cribProperties;
  const uri = block.uri;
  const wood = w.said(block, p.timber);
  const long = w.number(wood?.values.length, within, uri, 'length');
  const timber = timberOf(w, w.resolve(wood?.values.timber, within)?.target.block, long);
  const layout = w.said(block, p.layout);
  const lengthwise = w.number(layout?.values.lengthwise, within, uri);
  const crosswise = w.number(layout?.values.crosswise, within, uri);
  const courses = w.number(w.said(block, p.courses)?.values.courses, within, uri);
  const captures = capturesOf(m, w.said(block, p.captures), id);
  const at = placeOf(m, w.said(block, p.at), uri, captures[0]?.placed);
  if (!timber || lengthwise === undefined || crosswise === undefined || courses === undefined || !at) {
    w.tell(problem('not-in-plan', block.headSpan, { what: `crib ${name}` }), uri, within);
    return undefined;
  }
  const least = policy.limits['least overhang'].value;
  const wedges = w.said(block, p.wedges);
  return {
    kind: 'crib',
    id,
    name,
    timber,
    layout: { lengthwise, crosswise },
    base: w.said(block, p.base)?.values.base.text ?? 'open',
    top: w.said(block, p.top)?.values.top.text ?? 'lengthwise',
    courses,
    overhang:
      w.number(w.said(block, p.overhang)?.values.overhang, within, uri, 'length') ??
      (typeof least === 'number' ? least : 0),
    wedges: wedges && wedgesOf(m, wedges.values, uri),
    shims: w.number(w.said(block, p.shims)?.values.thickness, within, uri, 'length') ?? 0,
    standsOn: standsOn(m, block, w.said(block, p.standsOn)),
    at,
    captures: captures.map(bare),
    slidIn: w.said(block, p.slidIn) !== undefined,
    ref: { element: id },
  };
}

type WedgeValues = Yields<typeof cribProperties.wedges>;

function wedgesOf({ w, within, policy }: Making, values: WedgeValues, uri: string): Crib['wedges'] {
  const usual = policy.limits['wedge travel'].value;
  const travel = w.interval(values.travel, within, uri, 'length');
  return {
    pairs: w.number(values.pairs, within, uri) ?? 1,
    travel:
      travel ?? (typeof usual === 'object' ? usual : { low: 0, high: typeof usual === 'number' ? usual : 0 }),
    preload: w.number(values.preload, within, uri, 'force') ?? 0,
  };
}

type FootingValues = Yields<typeof cribProperties.standsOn>;

function standsOn(m: Making, block: BoundBlock, said: Said<FootingValues> | undefined): StandsOn {
  const { w, cast, within } = m;
  if (!said || said.values.ground) return { kind: 'ground' };
  if (said.values.pad) {
    const pad = w.idOf(said.values.pad, within);
    return pad ? { kind: 'pad', pad } : { kind: 'ground' };
  }
  const placed = cast.part(w, said.values.vehicle, said.values.part, within);
  if (!placed) {
    w.tell(problem('not-in-plan', said.line.span, { what: 'what it stands on' }), block.uri, within);
    return { kind: 'ground' };
  }
  const { part, vehicle } = placed;
  const height = { low: part.height.low + part.depth, high: part.height.high + part.depth };
  return { kind: 'vehicle', vehicle: vehicle.id, part: part.id, height };
}

export function stepChockOf(m: Making, block: BoundBlock): StepChock | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `step chock/${name}`;
  w.placeBlock(id, block);
  const uri = block.uri;
  const type = w.resolve(block.type, within)?.target.block;
  const chain = type ? typeChain(type, w.around) : [];
  const heights = w.said(chain, stepChockTypeProperties.heights);
  const rating = w.said(chain, stepChockTypeProperties.rating);
  const captures = capturesOf(m, w.said(block, stepChockProperties.captures), id);
  const at = placeOf(m, w.said(block, stepChockProperties.at), uri, captures[0]?.placed);
  if (!at || !heights) {
    w.tell(problem('not-in-plan', block.headSpan, { what: `step chock ${name}` }), uri, within);
    return undefined;
  }
  return {
    kind: 'step chock',
    id,
    name,
    at,
    ...(type?.name === undefined ? {} : { typeName: type.name }),
    heights: heights.values.heights.flatMap(
      (h) => w.number(h.height, outermost, heights.block.uri, 'length') ?? [],
    ),
    capacity: rating && w.number(rating.values.rating, outermost, rating.block.uri, 'force'),
    captures: captures.map(bare),
    standsOn: standsOn(m, block, w.said(block, stepChockProperties.standsOn)),
    source: rating ? w.source(rating.values, [rating.block]) : { kind: 'unknown' },
    ref: { element: id },
  };
}

export function padOf(m: Making, block: BoundBlock): Pad | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `pad/${name}`;
  w.placeBlock(id, block);
  const size = w.said(block, padProperties.size);
  const length = w.number(size?.values.length, within, block.uri, 'length');
  const width = w.number(size?.values.width, within, block.uri, 'length');
  const thickness = w.number(
    w.said(block, padProperties.thickness)?.values.thickness,
    within,
    block.uri,
    'length',
  );
  const under = w.idOf(w.said(block, padProperties.under)?.values.under, within);
  if (length === undefined || width === undefined || thickness === undefined || under === undefined) {
    w.tell(problem('not-in-plan', block.headSpan, { what: `pad ${name}` }), block.uri, within);
    return undefined;
  }
  return { kind: 'pad', id, name, length, width, thickness, under, ref: { element: id } };
}
