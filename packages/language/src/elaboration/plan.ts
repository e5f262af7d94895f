import type {
  Acceptance,
  Crew,
  Egress,
  Expectation,
  Plan,
  RespondingUnit,
  SizeUpItem,
  StockItem,
  WorkingLoad,
} from '@cribwright/engine';
import type { BoundBlock } from '../binding/bound-file.js';
import type { Kind } from '../binding/declaration.js';
import { findAtTop, type Surroundings } from '../binding/file-scope.js';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { say } from '../problems/words.js';
import { accept } from '../schema/accept.js';
import { cacheProperties, stockLine } from '../schema/cache.js';
import { expectation } from '../schema/expect.js';
import { patternUse } from '../schema/pattern-block.js';
import {
  groundProperties,
  loadProperties,
  planProperties,
  sizeUpProperties,
  wayOutProperties,
} from '../schema/plan.js';
import { Cast, figureOf } from './cast.js';
import { contactsOf } from './contacts.js';
import { cribOf, type Making, padOf, stepChockOf } from './crib.js';
import { cribFigure } from './crib-figure.js';
import type { Elaborated } from './elaborate.js';
import { surfaceOf } from './material.js';
import { policyOf } from './policy.js';
import { stepsOf } from './steps.js';
import { chockOf, strutOf, tieOf } from './strut.js';
import { sideways, vehicleOf } from './vehicle.js';
import { type Expansion, outermost, Writing } from './writing.js';

const at0 = outermost;

/** One plan as the engine takes it. `undefined` where nothing can be checked: a problem says why. */
export function elaboratePlan(
  block: BoundBlock,
  around: Surroundings,
  display: 'us' | 'si' | undefined,
): { readonly made: Elaborated | undefined; readonly problems: Writing['problems'] } {
  const w = new Writing(around, block);
  const title = block.title ?? 'plan';
  w.place({ element: 'plan' }, block.uri, block.headSpan, { block });
  w.placeBlock('plan', block);
  const top = (name: string, kinds: readonly Kind[]) => {
    const shape = around.shapeOf(block.uri);
    return shape && findAtTop(shape, around.seen, name, kinds)?.block;
  };
  const named = w.said(block, planProperties.policy);
  const policy = policyOf(w, w.resolve(named?.values.policy, at0)?.target.block, top('Shipped', ['policy']));
  const blocks = (keyword: string) => block.blocks.filter((b) => b.schema.keyword === keyword);
  const groundBlock = blocks('ground')[0];
  const surfaceSaid = groundBlock && w.said(groundBlock, groundProperties.surface);
  const surface = surfaceOf(w, w.resolve(surfaceSaid?.values.surface, at0)?.target.block);
  const vehicleBlocks = blocks('vehicle');
  const vehicles = vehicleBlocks.flatMap((b) => vehicleOf(w, b) ?? []);
  if (vehicleBlocks.length === 0) {
    w.tell(
      problem('vehicle-missing', block.headSpan, { example: 'vehicle trailer : VanTrailer53' }),
      block.uri,
    );
  }
  if (!groundBlock) w.tell(groundMissing(block), block.uri);
  // Places are said from the main vehicle: without it, nothing stands where the plan says.
  const mainThere = vehicles[0]?.name === vehicleBlocks[0]?.name;
  if (!policy || !surface || vehicles.length === 0 || !mainThere) {
    w.tell(
      problem('plan-unchecked', block.headSpan, {
        plan: block.title ? `The plan “${block.title}”` : 'This plan',
      }),
      block.uri,
    );
    return { made: undefined, problems: w.problems };
  }
  const cast = new Cast(vehicles);
  w.figures = (e) => figureOf(w, cast, e) ?? cribFigure(w, e);
  if (groundBlock) w.placeBlock('ground', groundBlock);

  const own: Making = { w, cast, policy, within: at0 };
  const groups = w.all(block, patternUse).flatMap(({ values, line }) => {
    const pattern = w.resolve(values.pattern, at0)?.target.block;
    const within: Expansion = {
      prefix: values.name ? `${values.name.text}.` : '',
      given: new Map(values.arguments.map((a) => [a.name.text, a])),
      outer: at0,
      span: line.span,
    };
    return pattern ? [{ making: { ...own, within }, pattern }] : [];
  });
  const all = <T>(
    keywords: readonly string[],
    make: (m: Making, b: BoundBlock) => T | undefined,
  ): readonly T[] =>
    [{ making: own, pattern: block }, ...groups].flatMap(({ making, pattern }) =>
      pattern.blocks.flatMap((b) => {
        if (!keywords.includes(b.schema.keyword)) return [];
        const made = b.name === undefined ? undefined : make(making, b);
        if (made === undefined) w.partial = true;
        return made === undefined ? [] : [made];
      }),
    );
  const chocks = all(['chock'], chockOf);
  const stepped = stepsOf(w, blocks('steps'), chocks);
  const grade = groundBlock && w.said(groundBlock, groundProperties.grade);
  const units = unitsOf(w, block);
  const crews = w.all(block, planProperties.crew).flatMap(({ values }): readonly Crew[] => {
    const people = w.number(values.people, at0, block.uri);
    return people === undefined ? [] : [{ name: values.name?.text ?? 'crew', people }];
  });
  const plan: Plan = {
    id: 'plan',
    title,
    display: display ?? w.said(block, planProperties.units)?.values.system.text ?? 'us',
    policy,
    ground: {
      surface,
      grade: w.slope(grade?.values.grade, at0) ?? 0,
      toward: grade?.values.toward?.text ?? 'rear',
      ref: { element: 'ground' },
    },
    vehicles,
    contacts: contactsOf(w, cast, vehicleBlocks),
    cribs: all(['crib'], cribOf),
    stepChocks: all(['step chock'], stepChockOf),
    struts: all(['strut'], strutOf),
    ties: all(['strap', 'chain', 'wire rope'], tieOf),
    chocks: [...chocks, ...stepped.chocks],
    pads: all(['pad'], padOf),
    steps: stepped.steps,
    crews,
    units,
    workingLoads: blocks('load').flatMap((b) => loadOf(w, b) ?? []),
    egress: blocks('way out').flatMap((b) => wayOutOf(w, b, policy.limits['egress width'].value) ?? []),
    sizeUp: blocks('size up').flatMap((b) => sizeUpOf(w, b)),
    expectations: expectationsOf(w, block),
    acceptances: acceptancesOf(w, block),
    lifts: w.said(block, planProperties.lift) !== undefined,
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
    placeOf: (ref) =>
      (ref.property === undefined ? undefined : places.get(`${ref.element}#${ref.property}`)) ??
      places.get(ref.element) ?? { uri: block.uri, span: block.headSpan, text, block },
  };
  return { made, problems: w.problems };
}

const groundMissing = (block: BoundBlock): LanguageProblem => {
  const at = (block.bodySpan?.start ?? block.span.end - 1) + 1;
  const edits = [{ span: { start: at, end: at }, text: '\n  ground {\n    surface asphalt\n  }' }];
  return problem(
    'ground-missing',
    block.headSpan,
    {},
    {
      fixes: block.bodySpan ? [{ title: say('ground-missing.fix', {}), edits, safe: false }] : [],
    },
  );
};

function unitsOf(w: Writing, block: BoundBlock): readonly RespondingUnit[] {
  const lines = [...w.all(block, planProperties.respond), ...w.all(block, planProperties.responds)];
  return lines.flatMap(({ values }) =>
    values.caches.flatMap(({ cache }): readonly RespondingUnit[] => {
      const from = w.resolve(cache, at0)?.target.block;
      if (!from?.name) return [];
      const id = `cache/${from.name}`;
      w.placeBlock(id, from);
      const ref = { element: id };
      return [
        {
          id,
          name: from.title ?? from.name,
          people: w.number(w.said(from, cacheProperties.people)?.values.people, at0, from.uri),
          carries: w.all(from, stockLine).flatMap((said, index) => {
            const item = stockOf(w, said.values, Number(said.line.key.replaceAll(',', '')), from.uri);
            if (!item) return [];
            const itemRef = { element: id, property: `line ${index + 1}` };
            w.place(itemRef, from.uri, said.line.span);
            return [{ ...item, ref: itemRef }];
          }),
          ref,
        },
      ];
    }),
  );
}

type Stock = typeof stockLine extends { phrase: { yields?: (() => infer T) | undefined } } ? T : never;

const gearKinds: Readonly<Record<string, StockItem['kind']>> = {
  'strut type': 'strut',
  'strap type': 'strap',
  'chain type': 'chain',
  'wire rope type': 'chain',
  'step chock type': 'step chock',
};

function stockOf(w: Writing, v: Stock, count: number, uri: string): Omit<StockItem, 'ref'> | undefined {
  if (v.timber) {
    const length = w.number(v.timber.length, at0, uri, 'length');
    const item = w.resolve(v.timber.timber, at0)?.name;
    return item === undefined || length === undefined ? undefined : { kind: 'timber', item, length, count };
  }
  if (v.gear) {
    const found = w.resolve(v.gear.type, at0);
    const kind = gearKinds[found?.target.kind ?? ''];
    return found && kind ? { kind, item: found.name, count } : undefined;
  }
  if (v.pad) {
    const length = w.number(v.pad.length, at0, uri, 'length');
    return length === undefined ? undefined : { kind: 'pad', item: 'pad', length, count };
  }
  if (v.wedges) return { kind: 'wedge pair', item: 'wedge pair', count };
  if (v.chocks) return { kind: 'chock', item: 'wheel chock', count };
  return v.shims ? { kind: 'shim', item: 'shim', count } : undefined;
}

const directions = {
  front: { x: -1, y: 0, z: 0 },
  rear: { x: 1, y: 0, z: 0 },
  'driver side': { x: 0, y: -1, z: 0 },
  'passenger side': { x: 0, y: 1, z: 0 },
  up: { x: 0, y: 0, z: 1 },
  down: { x: 0, y: 0, z: -1 },
} as const;

function loadOf(w: Writing, block: BoundBlock): WorkingLoad | undefined {
  const id = `load/${block.name ?? ''}`;
  w.placeBlock(id, block);
  const p = loadProperties;
  const at = w.said(block, p.at)?.values;
  const on = w.idOf(w.said(block, p.on)?.values.vehicle, at0);
  const x = w.number(at?.back, at0, block.uri, 'length');
  const force = w.interval(w.said(block, p.force)?.values.force, at0, block.uri, 'force');
  const toward = w.said(block, p.toward)?.values.toward.text;
  if (!block.name || !on || x === undefined || !force || !toward) {
    w.tell(problem('not-in-plan', block.headSpan, { what: `load ${block.name ?? ''}` }), block.uri);
    return undefined;
  }
  const y = sideways(at?.side?.text, w.number(at?.offset, at0, block.uri, 'length') ?? 0);
  const z = w.number(at?.high, at0, block.uri, 'length') ?? 0;
  return {
    id,
    name: block.name,
    on,
    at: { x, y, z },
    force,
    direction: directions[toward],
    ref: { element: id },
  };
}

function wayOutOf(w: Writing, block: BoundBlock, usual: unknown): Egress | undefined {
  const id = `way out/${block.name ?? ''}`;
  w.placeBlock(id, block);
  const p = wayOutProperties;
  const spots = [...w.all(block, p.from).slice(0, 1), ...w.all(block, p.to)];
  const points = spots.flatMap(({ values }) => {
    const x = w.number(values.back, at0, block.uri, 'length');
    const offset = w.number(values.offset, at0, block.uri, 'length') ?? 0;
    return x === undefined ? [] : [{ x, y: sideways(values.side?.text, offset) }];
  });
  if (!block.name || points.length < 2) {
    w.tell(problem('not-in-plan', block.headSpan, { what: `way out ${block.name ?? ''}` }), block.uri);
    return undefined;
  }
  const width = w.number(w.said(block, p.width)?.values.width, at0, block.uri, 'length');
  return {
    id,
    name: block.name,
    points,
    width: width ?? (typeof usual === 'number' ? usual : 0),
    ref: { element: id },
  };
}

function sizeUpOf(w: Writing, block: BoundBlock): readonly SizeUpItem[] {
  w.placeBlock('size up', block);
  return (Object.keys(sizeUpProperties) as (keyof typeof sizeUpProperties)[]).flatMap((item) => {
    const finding = w.said(block, sizeUpProperties[item])?.values.finding.text;
    return finding === undefined ? [] : [{ item, finding, ref: { element: 'size up', property: item } }];
  });
}

/** The name that the engine gives to a figure. */
export const figureKey = (words: string): string =>
  words.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());

function expectationsOf(w: Writing, block: BoundBlock): readonly Expectation[] {
  return w.all(block, expectation).flatMap(({ values: v, line }, index): readonly Expectation[] => {
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

function acceptancesOf(w: Writing, block: BoundBlock): readonly Acceptance[] {
  return w.all(block, accept).flatMap(({ values: v, line }, index): readonly Acceptance[] => {
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
