import { list, name as nameHole } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { typeChain } from '../binding/file-scope.js';
import type { BoundBlock } from '../bound/bound-file.js';
import { problem } from '../problems/problem.js';
import { partForms } from '../schema/part.js';
import { vehicleProperties, vehicleTypeProperties } from '../schema/vehicle.js';
import { axleOf, missingAt } from './axle.js';
import { cabOf } from './cab.js';
import { cargoOf } from './cargo.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import { notInPlan } from './not-in-plan.js';
import { partOf } from './part.js';
import { sideways } from './sideways.js';
import { headingOf, onDock, positionOf } from './standing.js';

/** A vehicle of the plan with everything that its types say, the plan's own words first. */
export function vehicleOf(w: Lowering, block: BoundBlock): Vehicle | undefined {
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
    const said = w.propertyOf(chain, p as (typeof vehicleTypeProperties)['length']);
    const values = said?.values as Readonly<Record<string, unknown>> | undefined;
    return w.number(values?.[key] as never, at0, said?.block.uri ?? uri, 'length');
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
    w.report(
      typeGone
        ? notInPlan(block.headSpan, `vehicle ${name}`)
        : problem('vehicle-size', block.headSpan, {
            vehicle: nameHole(name),
            what: list(
              missing.map((key) => nameHole(key)),
              'and',
            ),
            example: nameHole(examples),
          }),
      uri,
    );
    return undefined;
  }

  const axles = merged(w, chain, 'axle').flatMap((blocks) => axleOf(w, id, blocks) ?? []);
  const missing = w.propertiesOf(block, vehicleProperties.tire);
  const parts = Object.keys(partForms).flatMap((keyword) =>
    merged(w, chain, keyword).flatMap(
      (blocks) => partOf(w, id, blocks, keyword as keyof typeof partForms) ?? [],
    ),
  );
  const cargo = cargoOf(w, id, chain);
  const stated = w.propertyOf(chain, vehicleTypeProperties.weight);
  const statedWeight = w.interval(stated?.values.weight, at0, stated?.block.uri ?? uri, 'force');
  const center = centerOf(w, chain);
  const carriers = parts.some((p) => p.carries?.emptyLoad);
  if (axles.length === 0 && !statedWeight && !carriers) {
    w.report(problem('vehicle-weight', block.headSpan, { vehicle: nameHole(name) }), uri);
    return undefined;
  }
  const place = w.propertyOf(block, vehicleProperties.at);
  const cab = cabOf(w, id, chain);
  const brakes = w.propertyOf(chain, vehicleProperties.brakes)?.values.brakes.text;
  const vehicle: Vehicle = {
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
    position: positionOf(w, block),
    ...(statedWeight && stated
      ? { statedWeight, statedWeightSource: w.source(stated.values, [stated.block]) }
      : {}),
    ...(center?.x
      ? { statedCenter: { x: center.x, y: center.y, z: center.z ?? { low: 0, high: height } } }
      : {}),
    emptyCenterHeight: center?.z,
    axles: axles.map((axle) => ({ ...axle, missing: missingAt(axle, missing) })),
    parts,
    cargo,
    ...(cab ? { cab } : {}),
    brakesSet: brakes === 'set' ? true : brakes === 'released' ? false : undefined,
    source: w.blockSource(chain),
  };
  return onDock(w, block, vehicle);
}

/**
 * The blocks of one keyword, those of the same name together, nearest first; in the order of the base type. A part that
 * a nearer type says it does not have is gone with all that is said of it further back.
 */
function merged(
  w: Lowering,
  chain: readonly BoundBlock[],
  keyword: string,
): readonly (readonly BoundBlock[])[] {
  const byName = new Map<string, BoundBlock[]>();
  for (const type of [...chain].reverse()) {
    if (keyword !== 'axle') for (const gone of withoutParts(w, type)) byName.delete(gone);
    for (const block of type.blocks) {
      if (block.schema.keyword !== keyword || block.name === undefined) continue;
      byName.set(block.name, [block, ...(byName.get(block.name) ?? [])]);
    }
  }
  return [...byName.values()];
}

const withoutParts = (w: Lowering, type: BoundBlock): readonly string[] =>
  w
    .propertiesOf(type, vehicleTypeProperties.without)
    .flatMap(({ values }) => values.parts.map(({ part }) => part.text));

function centerOf(w: Lowering, chain: readonly BoundBlock[]) {
  const x = chain.flatMap((b) => w.propertiesOf(b, vehicleTypeProperties.center)).find((s) => s.values.back);
  const z = chain.flatMap((b) => w.propertiesOf(b, vehicleTypeProperties.center)).find((s) => s.values.high);
  const offset = w.number(x?.values.offset, at0, x?.block.uri ?? '', 'length') ?? 0;
  const y = sideways(x?.values.side?.text, offset);
  return {
    x: w.interval(x?.values.back, at0, x?.block.uri ?? '', 'length'),
    y: { low: y, high: y },
    z: w.interval(z?.values.high, at0, z?.block.uri ?? '', 'length'),
  };
}
