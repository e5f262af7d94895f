import type { SourceNote } from '@cribwright/messages';
import type { Interval, StrutGear, Surface, Tie, Timber } from '@cribwright/model';
import { typeChain } from '../binding/file-scope.js';
import type { BoundBlock } from '../bound/bound-file.js';
import type { WrittenQuantity } from '../phrase/pattern.js';
import { strutTypeProperties, tieTypeProperties } from '../schema/gear.js';
import { speciesProperties, surfaceProperties, timberProperties } from '../schema/timber.js';
import { outermost } from './expansion.js';
import type { Lowering, PropertyValue } from './lowering.js';
import { notInPlan } from './not-in-plan.js';

const at0 = outermost;

/** A timber of a given length, with the values of its wood. */
export function timberOf(
  w: Lowering,
  block: BoundBlock | undefined,
  length: number | undefined,
): Timber | undefined {
  if (!block?.name || length === undefined) return undefined;
  const key = `${block.uri} ${block.name} ${length}`;
  const before = w.misses;
  const timber = w.timbers.get(key) ?? newTimber(w, block, length);
  // Where a line of it could not be read, everything that is made of it must know.
  if (timber && w.misses === before) w.timbers.set(key, timber);
  return timber;
}

function newTimber(w: Lowering, block: BoundBlock, length: number): Timber | undefined {
  const name = block.name ?? '';
  const id = `timber/${name}`;
  w.placeBlock(id, block);
  const size = w.propertyOf(block, timberProperties.size);
  const dressed = w.propertyOf(block, timberProperties.dressed);
  const species = w.resolve(w.propertyOf(block, timberProperties.species)?.values.species, at0)?.target.block;
  const width = w.number(dressed?.values.width, at0, block.uri, 'length');
  const depth = w.number(dressed?.values.depth, at0, block.uri, 'length');
  const value = (p: (typeof speciesProperties)['perpendicularToGrain']) => {
    const said = species && w.propertyOf(species, p);
    return said && w.number(said.values.value, at0, species.uri, 'pressure');
  };
  const perpendicularToGrain = value(speciesProperties.perpendicularToGrain);
  const parallelToGrain = value(speciesProperties.parallelToGrain);
  const modulusAcross = value(speciesProperties.modulusAcross);
  const modulusAlong = value(speciesProperties.modulusAlong);
  const modulusMin = value(speciesProperties.modulusMin);
  const dense = species && w.propertyOf(species, speciesProperties.density);
  const density = species && w.density(dense?.values.value, at0, species.uri)?.high;
  if (
    !size ||
    !species ||
    width === undefined ||
    depth === undefined ||
    perpendicularToGrain === undefined ||
    parallelToGrain === undefined ||
    modulusAcross === undefined ||
    modulusAlong === undefined ||
    modulusMin === undefined ||
    density === undefined
  ) {
    w.report(notInPlan(w.plan.headSpan, `timber ${name}`), w.plan.uri);
    return undefined;
  }
  const strength = w.propertyOf(species, speciesProperties.perpendicularToGrain);
  return {
    name,
    nominal: size.values.size.text,
    width,
    depth,
    length,
    species: species.title ?? species.name ?? '',
    perpendicularToGrain,
    modulusAcross,
    modulusAlong,
    modulusMin,
    parallelToGrain,
    wet: w.propertyOf(block, timberProperties.wet) !== undefined,
    density,
    ...(dense ? { densitySource: w.source(dense.values, [species]) } : {}),
    source: strength ? w.source(strength.values, [species]) : { kind: 'unknown' },
    ...(dressed ? { dressedSource: w.source(dressed.values, [block]) } : {}),
    ref: { element: id },
  };
}

export function surfaceOf(w: Lowering, block: BoundBlock | undefined): Surface | undefined {
  if (!block?.name) return undefined;
  const id = `surface/${block.name}`;
  w.placeBlock(id, block);
  const bearing = w.propertyOf(block, surfaceProperties.bearing);
  const tire = w.propertyOf(block, surfaceProperties.tireFriction);
  const timber = w.propertyOf(block, surfaceProperties.timberFriction);
  const ratio = (said: PropertyValue<{ readonly friction?: WrittenQuantity | undefined }> | undefined) =>
    w.interval(said?.values.friction, at0, block.uri, 'ratio');
  const frictionTire = ratio(tire);
  const frictionTimber = ratio(timber);
  const body = w.propertyOf(block, surfaceProperties.bodyFriction);
  const frictionBody = ratio(body);
  if (!frictionTire || !frictionTimber || !tire) return undefined;
  return {
    name: block.title ?? block.name,
    bearing: w.number(bearing?.values.bearing, at0, block.uri, 'pressure'),
    bearingSource: bearing ? w.source(bearing.values, [block]) : { kind: 'unknown' },
    frictionTire,
    frictionTimber,
    frictionSource: w.source(tire.values, [block]),
    ...(frictionBody && body ? { frictionBody, frictionBodySource: w.source(body.values, [block]) } : {}),
    ref: { element: id },
  };
}

/**
 * The ground where nobody says what it is: what it bears is not known, and it grips no better than the worst that
 * ships. What needs to know more says that it could not be checked.
 */
export function unknownGround(w: Lowering, surfaces: readonly BoundBlock[]): Surface | undefined {
  const known = surfaces.flatMap((block) => surfaceOf(w, block) ?? []);
  if (known.length === 0) return undefined;
  const least = (of: (s: Surface) => Interval): Interval => ({
    low: Math.min(...known.map((s) => of(s).low)),
    high: Math.min(...known.map((s) => of(s).high)),
  });
  return {
    name: 'unknown ground',
    bearing: undefined,
    bearingSource: unknown,
    frictionTire: least((s) => s.frictionTire),
    frictionTimber: least((s) => s.frictionTimber),
    frictionSource: unknown,
    ref: { element: 'ground' },
  };
}

const unknown: SourceNote = { kind: 'unknown' };

export function strutGearOf(
  w: Lowering,
  block: BoundBlock | undefined,
  length: number,
): StrutGear | undefined {
  if (!block?.name) return undefined;
  const id = `strut type/${block.name}`;
  w.placeBlock(id, block);
  const post = w.propertyOf(block, strutTypeProperties.post);
  if (post) {
    const timber = timberOf(w, w.resolve(post.values.timber, at0)?.target.block, length);
    if (!timber) return undefined;
    const plies = w.number(post.values.plies, at0, block.uri) ?? 1;
    return { kind: 'timber post', name: block.name, timber, plies, ref: { element: id } };
  }
  const extent = w.propertyOf(block, strutTypeProperties.length);
  const ends = w.interval(extent?.values.extent, at0, block.uri, 'length');
  if (!ends) {
    w.report(notInPlan(w.plan.headSpan, `strut type ${block.name}`), w.plan.uri);
    return undefined;
  }
  const lines = w.propertiesOf(block, strutTypeProperties.rating);
  const ratings = lines.flatMap(({ values }) => {
    const load = w.number(values.load, at0, block.uri, 'force');
    const at = w.number(values.length, at0, block.uri, 'length');
    return load === undefined || at === undefined ? [] : [{ load, length: at }];
  });
  const first = lines[0];
  const plate = w.propertyOf(block, strutTypeProperties.basePlate);
  const long = w.number(plate?.values.length, at0, block.uri, 'length');
  const wide = w.number(plate?.values.width, at0, block.uri, 'length');
  return {
    kind: 'rated strut',
    name: block.name,
    shortest: ends.low,
    longest: ends.high,
    ratings: ratings.sort((a, b) => a.length - b.length),
    ...(long === undefined || wide === undefined ? {} : { footArea: long * wide }),
    source: first ? w.source(first.values, [block]) : { kind: 'unknown' },
    ref: { element: id },
  };
}

export function tieGearOf(w: Lowering, block: BoundBlock | undefined): Tie['gear'] | undefined {
  if (!block?.name) return undefined;
  const keyword = block.schema.keyword;
  w.placeBlock(`${keyword}/${block.name}`, block);
  const said = w.propertyOf(typeChain(block, w.around), tieTypeProperties.rating);
  return {
    kind: keyword === 'chain type' ? 'chain' : keyword === 'wire rope type' ? 'wire rope' : 'strap',
    name: block.name,
    rating: w.number(said?.values.rating, at0, block.uri, 'force'),
    source: said ? w.source(said.values, [block]) : { kind: 'unknown' },
  };
}
