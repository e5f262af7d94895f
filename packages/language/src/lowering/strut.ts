import { name as nameHole } from '@cribwright/messages';
import {
  type Anchor,
  type Chock,
  type Strut,
  stepToPlan,
  type Tie,
  toPlan,
  toVehicle,
  underside,
} from '@cribwright/model';
import { capitalized } from '../binding/place-words.js';
import type { BoundBlock } from '../bound/bound-file.js';
import type { Yields } from '../bound/shape.js';
import { problem } from '../problems/problem.js';
import { anchorProperties, chockProperties, strutProperties, tieProperties } from '../schema/strut.js';
import { alongOf } from './along.js';
import type { PropertyValue } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import { strutGearOf, tieGearOf } from './material.js';
import { notInPlan } from './not-in-plan.js';
import { acrossOf, type PlacedPart } from './placed-vehicles.js';
import { sideways } from './sideways.js';

type HeadValues = Yields<typeof strutProperties.head>;
type FootValues = Yields<typeof strutProperties.foot>;
type AnchorValues = Yields<typeof tieProperties.to>['to'];

export function strutOf(m: LoweringContext, block: BoundBlock): Strut | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `strut/${name}`;
  w.placeBlock(id, block);
  const uri = block.uri;
  const head = headOf(m, w.propertyOf(block, strutProperties.head), uri, id);
  const foot = head && footOf(m, w.propertyOf(block, strutProperties.foot), uri, id, head);
  const type = w.resolve(block.type, within)?.target.block;
  const long = head && foot ? Math.hypot(head.x - foot.x, head.y - foot.y, head.z.high) : 0;
  const gear = strutGearOf(w, type, long);
  if (!head || !foot || !gear) {
    w.report(notInPlan(block.headSpan, `strut ${name}`), uri, within);
    return undefined;
  }
  return {
    kind: 'strut',
    id,
    name,
    gear,
    head,
    foot,
    statedAngle: w.number(w.propertyOf(block, strutProperties.angle)?.values.angle, within, uri, 'angle'),
    lock: w.propertyOf(block, strutProperties.lock)?.values.lock.text,
    preload:
      w.number(w.propertyOf(block, strutProperties.preload)?.values.preload, within, uri, 'force') ?? 0,
    ref: { element: id },
  };
}

function headOf(
  m: LoweringContext,
  said: PropertyValue<HeadValues> | undefined,
  uri: string,
  id: string,
): Strut['head'] | undefined {
  if (!said) return undefined;
  const { w, placedVehicles: cast, within } = m;
  const v = said.values;
  const placed = cast.part(w, v.vehicle, v.part, within);
  const x = alongOf(m, v, uri, placed?.vehicle, said.line.block ? [said.line.block] : []);
  if (!placed || x === undefined) return undefined;
  const offset = w.number(v.offset, within, uri, 'length');
  const y = v.centerd
    ? 0
    : offset === undefined
      ? acrossOf(placed, v.side?.text)
      : sideways(v.side?.text, offset);
  return {
    vehicle: placed.vehicle.id,
    part: placed.part.id,
    x,
    y,
    z: w.interval(v.high, within, uri, 'length') ?? underside(placed.vehicle, placed.part, { x, y }),
    ref: { element: id, property: 'head' },
  };
}

/** `4 ft out` goes straight away from the vehicle, on the side that the head is on. */
function footOf(
  m: LoweringContext,
  said: PropertyValue<FootValues> | undefined,
  uri: string,
  id: string,
  head: Strut['head'],
): Strut['foot'] | undefined {
  if (!said) return undefined;
  const { w, placedVehicles: cast, within } = m;
  const v = said.values;
  const pad = v.pad && w.idOf(v.pad, within);
  const rest = { ...(pad ? { pad } : {}), ref: { element: id, property: 'base' } };
  const out = w.number(v.out, within, uri, 'length');
  if (out !== undefined) {
    const vehicle = cast.vehicle(head.vehicle);
    const own = vehicle && toVehicle(vehicle, head);
    const aside = { x: 0, y: own && own.y < 0 ? -out : out };
    const step = vehicle ? stepToPlan(vehicle, aside) : aside;
    return { x: head.x + step.x, y: head.y + step.y, ...rest };
  }
  const x = alongOf(m, v, uri, cast.vehicle(head.vehicle), said.line.block ? [said.line.block] : []);
  if (x === undefined) return undefined;
  const offset = w.number(v.offset, within, uri, 'length');
  const y = v.centerd ? 0 : offset === undefined ? head.y : sideways(v.side?.text, offset);
  return { x, y, ...rest };
}

export function tieOf(m: LoweringContext, block: BoundBlock): Tie | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `tie/${name}`;
  w.placeBlock(id, block);
  const uri = block.uri;
  const first = w.propertyOf(block, tieProperties.from);
  const second = w.propertyOf(block, tieProperties.to);
  const from = first && anchorOf(m, first.values.from, uri);
  const end = first?.values.to ?? second?.values.to;
  const to = end && anchorOf(m, end, uri);
  const gear = tieGearOf(w, w.resolve(block.type, within)?.target.block);
  if (!from || !to || !gear) {
    if (first && !end)
      w.report(
        problem('tie-end-missing', first.line.span, {
          what: capitalized(`${block.schema.keyword} ${name}`),
          example: nameHole(tieProperties.from.example),
        }),
        uri,
        within,
      );
    else w.report(notInPlan(block.headSpan, `${block.schema.keyword} ${name}`), uri, within);
    return undefined;
  }
  return {
    kind: 'tie',
    id,
    name,
    gear,
    from,
    to,
    pretension:
      w.number(w.propertyOf(block, tieProperties.tension)?.values.tension, within, uri, 'force') ?? 0,
    ref: { element: id },
  };
}

function anchorOf(m: LoweringContext, v: AnchorValues, uri: string): Anchor | undefined {
  const { w, placedVehicles: cast, within } = m;
  if (v.strut) {
    const strut = w.idOf(v.strut, within);
    return strut === undefined
      ? undefined
      : { kind: v.end?.text === 'head' ? 'strut head' : 'strut base', strut };
  }
  if (v.anchor) {
    const found = w.resolve(v.anchor, within);
    const block = found?.target.block;
    const at = block && w.propertyOf(block, anchorProperties.at);
    const x = block && alongOf(m, at?.values, block.uri, cast.main, [block]);
    if (!found || !block || !at || x === undefined) return undefined;
    const offset = w.number(at.values.offset, within, block.uri, 'length') ?? 0;
    const holds = w.propertyOf(block, anchorProperties.holds);
    return {
      kind: 'ground anchor',
      name: found.name,
      x,
      y: sideways(at.values.side?.text, offset),
      holds: w.number(holds?.values.holds, within, block.uri, 'force'),
    };
  }
  const placed = cast.part(w, v.vehicle, v.part, within);
  if (!placed) return undefined;
  const { vehicle, part } = placed;
  const offset = w.number(v.offset, within, uri, 'length');
  const x = v.back ? alongOf(m, v, uri, vehicle) : middle(placed);
  if (x === undefined) return undefined;
  const y = v.centerd
    ? 0
    : offset === undefined
      ? acrossOf(placed, v.side?.text)
      : sideways(v.side?.text, offset);
  return {
    kind: 'vehicle part',
    vehicle: vehicle.id,
    part: part.id,
    x,
    y,
    z: underside(vehicle, part, { x, y }).low,
  };
}

const middle = ({ vehicle, part }: PlacedPart): number =>
  toPlan(vehicle, { x: (part.from + part.to) / 2, y: 0 }).x;

export function chockOf({ w, within }: LoweringContext, block: BoundBlock): Chock | undefined {
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `chock/${name}`;
  w.placeBlock(id, block);
  const said = w.propertyOf(block, chockProperties.under);
  const vehicle = w.idOf(said?.values.vehicle, within);
  if (!vehicle) {
    w.report(notInPlan(block.headSpan, `chock ${name}`), block.uri, within);
    return undefined;
  }
  const axle = said?.values.axle?.text;
  return {
    kind: 'chock',
    id,
    name,
    vehicle,
    axle: axle === undefined ? undefined : `axle ${axle}`,
    ways: oneWay(w.propertyOf(block, chockProperties.holds)?.values.ways.text),
    ref: { element: id },
  };
}

/** One way in which wheels are kept from rolling, or both. */
const oneWay = (text: string | undefined): Chock['ways'] =>
  text === 'forward' || text === 'rearward' ? text : 'both';
