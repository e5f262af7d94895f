import type { Figure } from '@cribwright/messages';
import { name as nameHole } from '@cribwright/messages';
import type { Crew, Plan, Support, SupportKind } from '@cribwright/model';
import { findAtTop, type Surroundings, typeChain } from '../binding/file-scope.js';
import type { BoundBlock, Declaration } from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { patternUse } from '../schema/pattern-block.js';
import { compassPoints, groundProperties, planProperties } from '../schema/plan.js';
import { unitsOf } from './cache.js';
import { calculatedValue } from './calculated-value.js';
import { egressOf, loadOf, sizeUpOf } from './circumstances.js';
import { contactsOf } from './contacts.js';
import { cribOf } from './crib.js';
import { cribFigure } from './crib-figure.js';
import { type Elaborated, placeFinder } from './elaborated.js';
import { type Expansion, outermost } from './expansion.js';
import { acceptancesOf, expectationsOf } from './expectation.js';
import { Lowering } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import { surfaceOf, unknownGround } from './material.js';
import { notInPlan } from './not-in-plan.js';
import { padOf } from './pad.js';
import { figureOf, PlacedVehicles } from './placed-vehicles.js';
import { sizeProblems } from './plan-size.js';
import { policyOf } from './policy.js';
import { siteOf } from './site.js';
import { stepChockOf } from './step-chock.js';
import { stepsOf } from './steps.js';
import { chockOf, strutOf, tieOf } from './strut.js';
import { vehicleOf } from './vehicle.js';

const at0 = outermost;

export interface ElaboratedPlan {
  /** One plan as the engine takes it. `undefined` where nothing can be checked: a problem says why. */
  readonly made: Elaborated | undefined;
  readonly problems: readonly LanguageProblem[];
  /** What a `let` in it comes to; of one in a pattern, what it comes to in each use. */
  readonly valuesOf: (d: Declaration) => readonly Figure[];
}

/** A plan that cannot be checked, with what says so. */
function notMade(w: Lowering, block: BoundBlock, why: readonly LanguageProblem[]): ElaboratedPlan {
  for (const one of why) w.report(one, block.uri);
  const valuesOf = (d: Declaration) =>
    d.scope === block ? [calculatedValue(d, w.names(at0)) ?? []].flat() : [];
  return { made: undefined, problems: [...w.problems], valuesOf };
}

export function elaboratePlan(block: BoundBlock, around: Surroundings): ElaboratedPlan {
  const w = new Lowering(around, block);
  const title = block.title ?? 'plan';
  w.place({ element: 'plan' }, block.uri, block.headSpan, { block });
  w.placeBlock('plan', block);
  const top = (name: string, kinds: readonly Kind[]) => {
    const shape = around.shapeOf(block.uri);
    return shape && findAtTop(shape, around.seen, name, kinds)?.block;
  };
  const named = w.propertyOf(block, planProperties.policy);
  const policy = policyOf(w, w.resolve(named?.values.policy, at0)?.target.block, top('Shipped', ['policy']));
  const blocks = (keyword: string) => block.blocks.filter((b) => b.schema.keyword === keyword);
  const groundBlock = blocks('ground')[0];
  const surfaceSaid = groundBlock && w.propertyOf(groundBlock, groundProperties.surface);
  const shape = around.shapeOf(block.uri);
  const surfaces = [shape, ...around.seen].flatMap((f) =>
    [...(f?.names.get('file')?.values() ?? [])]
      .flat()
      .flatMap((d) => (d.kind === 'surface' ? (d.block ?? []) : [])),
  );
  const stated = surfaceOf(w, w.resolve(surfaceSaid?.values.surface, at0)?.target.block);
  const surface = stated ?? unknownGround(w, surfaces);
  const groups = w.propertiesOf(block, patternUse).flatMap(({ values, line }) => {
    const pattern = w.resolve(values.pattern, at0)?.target.block;
    const within: Expansion = {
      prefix: values.name ? `${values.name.text}.` : '',
      given: new Map(values.arguments.map((a) => [a.name.text, a])),
      outer: at0,
      span: line.span,
    };
    return pattern ? [{ within, pattern }] : [];
  });
  const tooLarge = sizeProblems(
    block,
    groups.map((g) => g.pattern),
    (vehicle) => typeChain(vehicle, around),
  );
  if (tooLarge.length > 0) return notMade(w, block, tooLarge);
  const vehicleBlocks = blocks('vehicle');
  // Of two vehicles with one name, only the first is known by it.
  const vehicles = vehicleBlocks
    .filter((b, i) => vehicleBlocks.findIndex((other) => other.name === b.name) === i)
    .flatMap((b) => vehicleOf(w, b) ?? []);
  if (vehicleBlocks.length === 0) {
    w.report(
      problem('vehicle-missing', block.headSpan, { example: nameHole('vehicle trailer : VanTrailer53') }),
      block.uri,
    );
  }
  if (!stated) w.report(groundMissing(block, groundBlock), block.uri);
  // Places are said from the main vehicle: without it, nothing stands where the plan says.
  const mainThere = vehicles[0]?.name === vehicleBlocks[0]?.name;
  if (!policy || !surface || vehicles.length === 0 || !mainThere) {
    const unchecked = block.title
      ? problem('plan-unchecked--titled', block.headSpan, { title: nameHole(block.title) })
      : problem('plan-unchecked', block.headSpan, {});
    return notMade(w, block, [unchecked]);
  }
  const cast = new PlacedVehicles(vehicles);
  w.figures = (e) => figureOf(w, cast, e) ?? cribFigure(w, policy, e);
  if (groundBlock) w.placeBlock('ground', groundBlock);

  const own: LoweringContext = { w, placedVehicles: cast, policy, within: at0 };
  const all = <T>(
    keywords: readonly string[],
    make: (m: LoweringContext, b: BoundBlock) => T | undefined,
  ): readonly T[] =>
    [{ within: at0, pattern: block }, ...groups].flatMap(({ within, pattern }) =>
      pattern.blocks.flatMap((b) => {
        if (!keywords.includes(b.schema.keyword)) return [];
        const making = { ...own, within };
        const before = w.misses;
        const made = b.name === undefined ? undefined : make(making, b);
        if (made !== undefined && w.misses === before && !b.misread && !b.hasStray) return [made];
        // What is usual may be looser than what the line says that could not be read.
        if (made !== undefined) w.report(notInPlan(b.headSpan, labelOf(making, b)), b.uri, within);
        w.partial = true;
        return [];
      }),
    );
  const chocks = all(['chock'], chockOf);
  const stepped = stepsOf(w, blocks('steps'), chocks);
  const grade = groundBlock && w.propertyOf(groundBlock, groundProperties.grade);
  const fall = w.slope(grade?.values.grade, at0, block.uri);
  const facing = groundBlock && w.propertyOf(groundBlock, groundProperties.compass)?.values.facing.text;
  const units = unitsOf(w, block);
  const site = siteOf(w, block, around.shapeOf(block.uri)?.blocks ?? []);
  const crews = w.propertiesOf(block, planProperties.crew).flatMap(({ values }): readonly Crew[] => {
    const people = w.number(values.people, at0, block.uri);
    return people === undefined ? [] : [{ name: values.name?.text ?? 'crew', people }];
  });
  const supports: { readonly [K in SupportKind]: readonly Extract<Support, { kind: K }>[] } = {
    crib: all(['crib'], cribOf),
    'step chock': all(['step chock'], stepChockOf),
    strut: all(['strut'], strutOf),
    tie: all(['strap', 'chain', 'wire rope'], tieOf),
    chock: [...chocks, ...stepped.chocks],
    pad: all(['pad'], padOf),
  };
  const plan: Plan = {
    id: 'plan',
    title,
    display: w.propertyOf(block, planProperties.units)?.values.system.text ?? 'us',
    policy,
    ground: {
      surface,
      grade: fall ?? 0,
      toward: grade?.values.toward?.text ?? 'rear',
      unsaid: fall === undefined ? 'grade' : fall > 0 && !grade?.values.toward ? 'direction' : undefined,
      facing: facing === undefined ? undefined : (compassPoints.indexOf(facing) * Math.PI) / 4,
      ref: { element: 'ground' },
    },
    vehicles,
    contacts: contactsOf(w, cast, vehicleBlocks),
    cribs: supports.crib,
    stepChocks: supports['step chock'],
    struts: supports.strut,
    ties: supports.tie,
    chocks: supports.chock,
    pads: supports.pad,
    steps: stepped.steps,
    crews,
    units,
    toolLoads: blocks('load').flatMap((b) => loadOf(own, b) ?? []),
    egress: blocks('egress').flatMap((b) => egressOf(own, b, policy.limits['egress width'].value) ?? []),
    sizeUp: blocks('size up').flatMap((b) => sizeUpOf(w, b)),
    expectations: expectationsOf(w, block),
    acceptances: acceptancesOf(w, block),
    lifts: w.propertyOf(block, planProperties.lift) !== undefined,
    ...(site === undefined ? {} : { site }),
    ref: { element: 'plan' },
  };
  const text = around.shapeOf(block.uri)?.text ?? '';
  const places = w.places;
  const made: Elaborated = {
    plan,
    places,
    block,
    text,
    partial: w.partial,
    unread: [],
    placeOf: placeFinder(places, block, text),
  };
  const valuesOf = (d: Declaration): readonly Figure[] => {
    if (d.scope === block) return [calculatedValue(d, w.names(at0)) ?? []].flat();
    return groups.flatMap(({ within, pattern }) => {
      const label = `${within.prefix}${d.name}`;
      return d.scope === pattern ? (calculatedValue(d, w.names(within), label) ?? []) : [];
    });
  };
  return { made, problems: [...w.problems], valuesOf };
}

const labelOf = ({ within }: LoweringContext, { schema, name }: BoundBlock): string =>
  `${schema.keyword} ${within.prefix}${name ?? ''}`;

const groundMissing = (block: BoundBlock, ground: BoundBlock | undefined): LanguageProblem => {
  if (ground) return problem('ground-missing', ground.headSpan, {});
  const at = (block.bodySpan?.start ?? block.span.end - 1) + 1;
  const edits = [{ span: { start: at, end: at }, text: '\n  ground {\n    surface asphalt\n  }' }];
  return problem(
    'ground-missing',
    block.headSpan,
    {},
    {
      fixes: block.bodySpan ? [{ title: problemMessage('ground-missing--fix', {}), edits, safe: false }] : [],
    },
  );
};
