import type { Axle, Cab, Cargo, Interval, Part, Posture, SourceNote, Vehicle } from '@cribwright/engine';
import type { BoundBlock } from '../binding/bound-file.js';
import { typeChain } from '../binding/file-scope.js';
import { problem } from '../problems/problem.js';
import { axleProperties } from '../schema/axle.js';
import { cabProperties } from '../schema/cab.js';
import { partForms, partProperties } from '../schema/part.js';
import { cargoTypeProperties } from '../schema/timber.js';
import { cargoLine, vehicleProperties, vehicleTypeProperties } from '../schema/vehicle.js';
import { outermost, type Writing } from './writing.js';

const at0 = outermost;
/** lb/in as N/m. */
const poundPerInch = 4.4482216152605 / 0.0254;

/**
 * One end of an axle, tyre and suspension together, where a plan says nothing: round figures from memory. The
 * analysis varies stiffnesses by the policy's spread and says where that matters.
 */
const usualStiffness = { air: 3000 * poundPerInch, spring: 5000 * poundPerInch, rigid: 8000 * poundPerInch };
const usualMount = { air: 300 * poundPerInch, spring: 1500 * poundPerInch, rigid: 20_000 * poundPerInch };
const usualPoint = 20_000 * poundPerInch;
const fromMemory: SourceNote = { kind: 'from memory' };

/** A vehicle of the plan with everything that its types say, the plan's own words first. */
export function vehicleOf(w: Writing, block: BoundBlock): Vehicle | undefined {
  const name = block.name;
  if (name === undefined) return undefined;
  const id = `vehicle/${name}`;
  const chain = typeChain(block, w.around);
  w.placeBlock(id, block);
  for (const b of chain.slice(1)) for (const line of b.properties) w.placeLine(id, line, b.uri);
  const uri = block.uri;
  const measure = (
    p: (typeof vehicleTypeProperties)['length' | 'width' | 'height'],
    key: 'length' | 'width' | 'height',
  ) => {
    const said = w.said(chain, p as (typeof vehicleTypeProperties)['length']);
    const values = said?.values as Readonly<Record<string, unknown>> | undefined;
    const value = w.number(values?.[key] as never, at0, said?.block.uri ?? uri, 'length');
    if (value === undefined) {
      w.tell(problem('vehicle-size', block.headSpan, { vehicle: name, what: key, example: p.example }), uri);
    }
    return value;
  };
  const length = measure(vehicleTypeProperties.length, 'length');
  const width = measure(vehicleTypeProperties.width as never, 'width');
  const height = measure(vehicleTypeProperties.height as never, 'height');
  if (length === undefined || width === undefined || height === undefined) {
    const typeGone =
      chain.length === 1 && (block.type !== undefined || block.headSpan.end > (block.nameSpan?.end ?? 0));
    const missing = Object.entries({ length, width, height }).flatMap(([k, v]) =>
      v === undefined ? [k] : [],
    );
    const examples = missing.map((k) => vehicleTypeProperties[k as 'length'].example).join('; ');
    w.tell(
      typeGone
        ? problem('not-in-plan', block.headSpan, { what: `vehicle ${name}` })
        : problem('vehicle-size', block.headSpan, {
            vehicle: name,
            what: missing.join(' and no '),
            example: examples,
          }),
      uri,
    );
    return undefined;
  }

  const axles = merged(chain, 'axle').flatMap((blocks) => axleOf(w, id, blocks) ?? []);
  const missing = w.all(block, vehicleProperties.tyre);
  const parts = Object.keys(partForms).flatMap((keyword) =>
    merged(chain, keyword).flatMap(
      (blocks) => partOf(w, id, blocks, keyword as keyof typeof partForms) ?? [],
    ),
  );
  const cargo = cargoOf(w, id, chain);
  const stated = w.said(chain, vehicleTypeProperties.weight);
  const statedWeight = w.interval(stated?.values.weight, at0, stated?.block.uri ?? uri, 'force');
  const centre = centreOf(w, chain);
  const carriers = parts.some((p) => p.carries?.emptyLoad);
  if (axles.length === 0 && !statedWeight && !carriers) {
    w.tell(problem('vehicle-weight', block.headSpan, { vehicle: name }), uri);
    return undefined;
  }
  const place = w.said(block, vehicleProperties.at);
  const cab = cabOf(w, id, chain);
  const brakes = w.said(chain, vehicleProperties.brakes)?.values.brakes.text;
  return {
    kind: 'vehicle',
    id,
    name,
    types: chain.slice(1).flatMap((b) => b.name ?? []),
    length,
    width,
    height,
    at: {
      x: w.number(place?.values.back, at0, uri) ?? 0,
      y: sideways(place?.values.side?.text, w.number(place?.values.offset, at0, uri) ?? 0),
    },
    heading: headingOf(w, block),
    posture: postureOf(w, block),
    ...(statedWeight ? { statedWeight } : {}),
    ...(centre?.x
      ? { statedCentre: { x: centre.x, y: centre.y, z: centre.z ?? { low: 0, high: height } } }
      : {}),
    emptyCentreHeight: centre?.z,
    axles: axles.map((axle) => ({ ...axle, missing: missingAt(axle, missing) })),
    parts,
    cargo,
    ...(cab ? { cab } : {}),
    brakesSet: brakes === 'set' ? true : brakes === 'released' ? false : undefined,
    source: w.blockSource(chain),
  };
}

/** The blocks of one keyword, those of the same name together, nearest first; in the order of the base type. */
function merged(chain: readonly BoundBlock[], keyword: string): readonly (readonly BoundBlock[])[] {
  const byName = new Map<string, BoundBlock[]>();
  for (const type of [...chain].reverse()) {
    for (const block of type.blocks) {
      if (block.schema.keyword !== keyword || block.name === undefined) continue;
      byName.set(block.name, [block, ...(byName.get(block.name) ?? [])]);
    }
  }
  return [...byName.values()];
}

function axleOf(w: Writing, vehicle: string, blocks: readonly BoundBlock[]): Axle | undefined {
  const own = blocks[0];
  if (own?.name === undefined) return undefined;
  const name = `axle ${own.name}`;
  const ref = { element: vehicle, property: name };
  w.place(ref, own.uri, own.headSpan, { block: own });
  for (const block of blocks) {
    for (const line of block.properties) {
      w.place({ element: vehicle, property: `${name}/${line.schema.key}` }, block.uri, line.span);
    }
  }
  const at = w.said(blocks, axleProperties.at);
  const empty = w.said(blocks, axleProperties.empty);
  const track = w.said(blocks, axleProperties.track);
  const x = w.number(at?.values.back, at0, at?.block.uri ?? own.uri, 'length');
  const load = w.interval(empty?.values.load, at0, empty?.block.uri ?? own.uri, 'force');
  const wide = w.number(track?.values.track, at0, track?.block.uri ?? own.uri, 'length');
  if (x === undefined || load === undefined || wide === undefined) {
    w.tell(problem('not-in-plan', own.headSpan, { what: name }), own.uri);
    return undefined;
  }
  const suspension = w.said(blocks, axleProperties.suspension)?.values.suspension.text ?? 'spring';
  const stiff = w.said(blocks, axleProperties.stiffness);
  const stiffness = w.number(stiff?.values.stiffness, at0, stiff?.block.uri ?? own.uri, 'stiffness');
  const each = w.number(w.said(blocks, axleProperties.tyres)?.values.each, at0, own.uri);
  return {
    id: name,
    name,
    x,
    emptyLoad: load,
    track: wide,
    tyresEachSide: each === 1 ? 1 : 2,
    suspension,
    stiffness: stiffness ?? usualStiffness[suspension],
    stiffnessSource: stiffness !== undefined && stiff ? w.source(stiff.values, [stiff.block]) : fromMemory,
    missing: [],
    ref,
  };
}

type Missing = readonly {
  readonly values: {
    readonly axle?: { readonly text: string } | undefined;
    readonly side?: { readonly text: string } | undefined;
  };
}[];

const missingAt = (axle: Axle, lines: Missing): readonly ('driver' | 'passenger')[] => {
  const sides = lines.flatMap(({ values }) => {
    if (values.axle === undefined || axle.name !== `axle ${values.axle.text}`) return [];
    if (!values.side) return ['driver', 'passenger'] as const;
    return [values.side.text === 'driver side' ? ('driver' as const) : ('passenger' as const)];
  });
  return [...new Set(sides)];
};

function partOf(
  w: Writing,
  vehicle: string,
  blocks: readonly BoundBlock[],
  keyword: keyof typeof partForms,
): Part | undefined {
  const own = blocks[0];
  if (own?.name === undefined) return undefined;
  const name = own.name;
  const ref = { element: vehicle, property: name };
  w.place(ref, own.uri, own.headSpan, { block: own });
  const uriOf = (said: { block: BoundBlock } | undefined) => said?.block.uri ?? own.uri;
  const runs = w.said(blocks, partProperties.runs);
  const at = w.said(blocks, partProperties.at);
  const spacing = w.said(blocks, partProperties.spacing);
  const high = w.said(blocks, partProperties.height);
  const extent = w.interval(runs?.values.extent, at0, uriOf(runs), 'length');
  const back = w.number(at?.values.back, at0, uriOf(at), 'length');
  const height = w.interval(high?.values.height, at0, uriOf(high), 'length');
  const every = w.number(spacing?.values.spacing, at0, uriOf(spacing), 'length');
  const from = keyword === 'points' ? back : extent?.low;
  const to = keyword === 'points' ? back : extent?.high;
  if (
    from === undefined ||
    to === undefined ||
    !height ||
    (keyword === 'crossmembers' && !(every && every > 0))
  ) {
    w.tell(problem('not-in-plan', own.headSpan, { what: name }), own.uri);
    return undefined;
  }
  const bear = w.said(blocks, partProperties.bear);
  const not = w.said(blocks, partProperties.notBear);
  const mayBear =
    bear !== undefined && (not === undefined || blocks.indexOf(bear.block) < blocks.indexOf(not.block));
  const remark = mayBear ? bear?.values.remark?.text : not?.values.remark?.text;
  const rated = w.said(blocks, partProperties.rating);
  const rating = w.number(rated?.values.rating, at0, uriOf(rated), 'force');
  const carries = carriesOf(w, blocks);
  const wide = w.said(blocks, partProperties.width);
  const deep = w.said(blocks, partProperties.depth);
  return {
    id: name,
    name: blocks.find((b) => b.title !== undefined)?.title ?? name,
    form: partForms[keyword],
    from,
    to,
    ...(keyword === 'crossmembers' && every !== undefined ? { spacing: every } : {}),
    offsets: offsetsOf(w, blocks),
    height,
    width: w.number(wide?.values.width, at0, uriOf(wide), 'length') ?? 0.0762,
    depth: w.number(deep?.values.depth, at0, uriOf(deep), 'length') ?? 0.1016,
    mayBear,
    ...(remark === undefined
      ? mayBear || not
        ? {}
        : { remark: 'The plan does not say that it may bear.' }
      : { remark }),
    moves: w.said(blocks, partProperties.moves) !== undefined,
    ...(rating === undefined ? {} : { rating }),
    ...(carries ? { carries } : {}),
    ref,
  };
}

function carriesOf(w: Writing, blocks: readonly BoundBlock[]): Part['carries'] | undefined {
  const said = w.said(blocks, partProperties.carries);
  if (!said) return undefined;
  const { empty, stiffness, raised } = said.values;
  const emptyLoad = w.interval(empty, at0, said.block.uri, 'force');
  return {
    stiffness: w.number(stiffness, at0, said.block.uri, 'stiffness') ?? usualPoint,
    down: raised !== true,
    ...(emptyLoad ? { emptyLoad } : {}),
  };
}

/** From the driver side to the passenger side. One length means as much to each side. */
function offsetsOf(w: Writing, blocks: readonly BoundBlock[]): readonly number[] {
  const said = w.said(blocks, partProperties.offset);
  if (!said || said.values.centred) return [0];
  const one = w.number(said.values.offset, at0, said.block.uri, 'length');
  if (one !== undefined) return one === 0 ? [0] : [-one, one];
  const each = said.values.sides?.flatMap((s) => {
    const offset = w.number(s.offset, at0, said.block.uri, 'length');
    return offset === undefined ? [] : [sideways(s.side.text, offset)];
  });
  return each && each.length > 0 ? each.sort((a, b) => a - b) : [0];
}

/** Driver side is negative. */
export const sideways = (side: string | undefined, offset: number): number =>
  side === 'driver side' ? -offset : offset;

function cargoOf(w: Writing, vehicle: string, chain: readonly BoundBlock[]): readonly Cargo[] {
  // A plan that names its cargo replaces what a type would carry.
  const block = chain.find((b) => b.properties.some((p) => p.schema === cargoLine));
  if (!block) return [];
  return w.all(block, cargoLine).flatMap(({ values, line }, index): readonly Cargo[] => {
    const uri = block.uri;
    const type = w.resolve(values.type, at0)?.target;
    const typeBlock = type?.block;
    const ref = { element: vehicle, property: 'cargo' };
    w.placeLine(vehicle, line, uri);
    const weight = values.weight
      ? w.interval(values.weight, at0, uri, 'force')
      : weightByVolume(w, w.interval(values.volume, at0, uri, 'volume'), typeBlock);
    const from = w.number(values.from, at0, uri, 'length');
    const to = w.number(values.to, at0, uri, 'length');
    if (!weight || from === undefined || to === undefined) {
      w.tell(problem('not-in-plan', line.span, { what: 'the cargo' }), uri);
      return [];
    }
    const centre = w.interval(values.centre, at0, uri, 'length');
    const offset = w.interval(values.offset, at0, uri, 'length');
    const side = values.offsetSide?.text;
    const shifts =
      values.shifts === true ||
      (typeBlock !== undefined && w.said(typeBlock, cargoTypeProperties.shifts) !== undefined);
    return [
      {
        id: `${vehicle}/cargo ${index + 1}`,
        name: values.label?.text ?? type?.block?.title ?? type?.name ?? 'cargo',
        weight,
        from: Math.min(from, to),
        to: Math.max(from, to),
        ...(centre ? { centre } : {}),
        offset: offset ? mirrored(offset, side) : { low: 0, high: 0 },
        height: w.interval(values.height, at0, uri, 'length'),
        shifts,
        ref,
      },
    ];
  });
}

const mirrored = (i: Interval, side: string | undefined): Interval =>
  side === 'driver side' ? { low: -i.high, high: -i.low } : i;

/** Standard gravity, exact (NIST SP 811). */
const gravity = 9.80665;

function weightByVolume(
  w: Writing,
  volume: Interval | undefined,
  type: BoundBlock | undefined,
): Interval | undefined {
  const said = type && w.said(type, cargoTypeProperties.density);
  const density = w.density(said?.values.density, at0);
  return (
    volume &&
    density && { low: volume.low * density.low * gravity, high: volume.high * density.high * gravity }
  );
}

function centreOf(w: Writing, chain: readonly BoundBlock[]) {
  const x = chain.flatMap((b) => w.all(b, vehicleTypeProperties.centre)).find((s) => s.values.back);
  const z = chain.flatMap((b) => w.all(b, vehicleTypeProperties.centre)).find((s) => s.values.high);
  const offset = w.number(x?.values.offset, at0, x?.block.uri ?? '', 'length') ?? 0;
  const y = sideways(x?.values.side?.text, offset);
  return {
    x: w.interval(x?.values.back, at0, x?.block.uri ?? '', 'length'),
    y: { low: y, high: y },
    z: w.interval(z?.values.high, at0, z?.block.uri ?? '', 'length'),
  };
}

function headingOf(w: Writing, block: BoundBlock): number {
  const said = w.said(block, vehicleProperties.heading);
  if (!said) return 0;
  const { facing, acrossDriver, acrossPassenger, angle } = said.values;
  if (facing) return Math.PI;
  // Its front toward the driver side: its own length runs back toward the passenger side.
  if (acrossDriver) return Math.PI / 2;
  if (acrossPassenger) return -Math.PI / 2;
  return w.number(angle, at0, block.uri, 'angle') ?? 0;
}

function postureOf(w: Writing, block: BoundBlock): Posture {
  const said = w.said(block, vehicleProperties.posture);
  if (!said) return { kind: 'upright' };
  const { angle, nose, side, roof } = said.values;
  if (roof) return { kind: 'on its roof' };
  if (side) return { kind: 'on its side', side: side.text === 'driver side' ? 'driver' : 'passenger' };
  const pitch = w.number(angle, at0, block.uri, 'angle');
  if (pitch !== undefined) return { kind: 'pitched', angle: nose?.text === 'nose up' ? -pitch : pitch };
  return { kind: 'upright' };
}

function cabOf(w: Writing, vehicle: string, chain: readonly BoundBlock[]): Cab | undefined {
  const blocks = chain.flatMap((b) => b.blocks.filter((c) => c.schema.keyword === 'cab'));
  const own = blocks[0];
  if (!own) return undefined;
  const ref = { element: vehicle, property: 'cab' };
  w.place(ref, own.uri, own.headSpan, { block: own });
  const runs = w.said(blocks, cabProperties.runs);
  const heavy = w.said(blocks, cabProperties.weight);
  const centre = w.said(blocks, cabProperties.centre);
  const extent = w.interval(runs?.values.extent, at0, runs?.block.uri ?? own.uri, 'length');
  const weight = w.interval(heavy?.values.weight, at0, heavy?.block.uri ?? own.uri, 'force');
  const x = w.interval(centre?.values.back, at0, centre?.block.uri ?? own.uri, 'length');
  const z = w.interval(centre?.values.high, at0, centre?.block.uri ?? own.uri, 'length');
  const home = blocks.find((b) => w.all(b, cabProperties.mount).length > 0);
  if (!extent || !weight || !x || !z || !home) {
    w.tell(problem('not-in-plan', own.headSpan, { what: 'the cab' }), own.uri);
    return undefined;
  }
  const mounts = w.all(home, cabProperties.mount).flatMap(({ values, block }) => {
    const back = w.number(values.back, at0, block.uri, 'length');
    const offset = w.number(values.offset, at0, block.uri, 'length');
    if (back === undefined || offset === undefined) return [];
    const spring = values.spring.text;
    const stiffness = w.number(values.stiffness, at0, block.uri, 'stiffness') ?? usualMount[spring];
    return [
      { name: values.name.text, x: back, offsets: offset === 0 ? [0] : [-offset, offset], spring, stiffness },
    ];
  });
  return { from: extent.low, to: extent.high, weight, centre: { x, z }, mounts, ref };
}
