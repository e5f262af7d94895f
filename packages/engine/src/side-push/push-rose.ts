import type { Figure } from '@cribwright/messages';
import { type List, list, type Message, message, term } from '@cribwright/messages';
import type { ElementId, Vehicle } from '@cribwright/model';
import { exactly, given, measured } from '@cribwright/model';
import { force, length, lies, limitValue, limitWord } from '@cribwright/model/internal';
import type { PushResult } from '../analysis/analysis.js';
import type { JointCorner } from '../loss/components.js';
import { cornerWords } from '../loss/corner-words.js';
import type { ComponentRun, LossWorking } from '../loss/loss-working.js';
import { bodyFriction, whyNoGrip } from '../push/body-friction.js';
import { givesWords } from '../push/gives-words.js';
import { type HeldPush, heldPushes } from '../push/held-push.js';
import { planPushSystem } from '../push/plan-push-system.js';
import type { Counted } from '../push/program.js';
import { pushAssumptions } from '../push/push-contacts.js';
import type { PushSystem } from '../push/push-system.js';
import { governingCorners } from '../standing/corner-order.js';
import type { Standing } from '../standing/standing.js';
import { inOneGo } from '../stepwise/stepwise.js';
import type { BodyCorner, PlanBody } from '../supports/plan-bodies.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { leastOf, shareFigure } from './least-push.js';
import { lesserPush } from './lesser-push.js';

const directions = 24;

/** The supports of a plan, how it all rests on them, and how it stands in space. */
export interface RestingWorkings extends SupportWorkings {
  readonly resting: () => LossWorking;
  readonly standing: () => Standing;
}

/** Why the push could not be worked out; or the rose. */
export type PushRose = { readonly why: Message } | PushResult;

/** One vehicle of the plan and how hard a push it holds. */
export interface VehicleRose {
  readonly vehicle: ElementId;
  readonly rose: PushRose;
}

/**
 * How hard a push the finished plan holds on the main vehicle: by the linear program alone, which is a bound, unless the
 * pushes are asked for; then by the model in space too.
 */
export const pushRose = (w: RestingWorkings): PushRose =>
  inOneGo(pushRosesSteps(w, w.plan.vehicles.slice(0, 1)))[0]?.rose ?? { why: term('push.weight-not-known') };

/**
 * How hard a push the finished plan holds on each vehicle, from 24 directions: the least over every corner of the
 * ranges, with the tool loads off and on. The linear program gives a bound; the model in space says what is held. The
 * less of the two is the answer, and where either has none there is none. The most that can be held is a concave
 * function of the weights, so that no place inside the ranges is worse than all corners. Stops after each direction.
 */
export function* pushRosesSteps(
  w: RestingWorkings,
  vehicles: readonly Vehicle[] = w.plan.vehicles,
): Generator<void, readonly VehicleRose[]> {
  const roses: VehicleRose[] = [];
  for (const vehicle of vehicles) roses.push({ vehicle: vehicle.id, rose: yield* roseSteps(w, vehicle) });
  return roses;
}

function* roseSteps(w: RestingWorkings, vehicle: Vehicle): Generator<void, PushRose> {
  const set = setUp(w, vehicle);
  if ('why' in set) return set;
  const isAsked = w.options.push === true;
  const found = (isAsked ? w.standing().groups : [])
    .flatMap((g) => g.pushes.map((push) => ({ push, group: g.group })))
    .find(({ push }) => push.vehicle === vehicle.id);
  // Where the model in space was asked and says nothing, nothing is known.
  if (found === undefined && isAsked) return { why: term('push.not-solved') };
  const worst: WorstPush[] = [];
  for (let i = 0; i < directions; i++) {
    const angle = (2 * Math.PI * i) / directions;
    const bound = worstPush(set, angle, 'resisting');
    yield;
    // No strut that leans the way of the push is counted, and so it may not stand at all. What the model in space has
    // found is bounded by the program with every strut, at every corner.
    const held = found?.push.directions[i]?.push ?? 0;
    worst.push(bound.held.kind === 'cannot stand' && held > 0 ? worstPush(set, angle, 'all') : bound);
    yield;
  }
  const rose = roseOf(w, set, worst);
  return 'why' in rose || found === undefined ? rose : lesserPush(w, rose, found.push, found.group);
}

interface SetUp {
  readonly part: ComponentRun;
  readonly body: PlanBody;
  readonly height: Figure;
  /** Of the vehicle's own metal on the ground, where it lies there. */
  readonly grip: Figure | undefined;
  readonly cases: readonly Case[];
}

interface Case {
  readonly corner: JointCorner;
  readonly working: boolean;
  readonly center: BodyCorner;
  readonly system: PushSystem;
}

interface WorstPush {
  readonly angle: number;
  readonly held: HeldPush;
  readonly of: Case | undefined;
}

function setUp(w: RestingWorkings, vehicle: Vehicle): SetUp | { readonly why: Message } {
  const resting = w.resting();
  const part = resting.parts.find((p) => p.component.bodies.some((b) => b.id === vehicle.id));
  const body = part?.component.bodies.find((b) => b.id === vehicle.id);
  if (part === undefined || body === undefined) return { why: term('push.weight-not-known') };
  const height = pushHeight(w, body);
  if (height.value === undefined || body.centerHeight === undefined)
    return { why: term('push.height-not-known') };
  const grip = lies(vehicle) ? bodyFriction(w) : undefined;
  if (grip !== undefined && grip.value === undefined) return { why: whyNoGrip };
  const last = part.stages.at(-1)?.asBuilt;
  const standing = resting.stages.at(-1)?.standing ?? [];
  const there = part.component.points.filter((_, i) => last?.there[i] === true);
  // The main vehicle at every mix of the ranges, the others all lightest and all heaviest: they have the model in space.
  const all = withoutLoads(part);
  const corners = vehicle === w.plan.vehicles[0] ? all : governingCorners(part.component).slice(0, 2);
  const cases = corners.flatMap((corner) => {
    const center = body.corners[corner[part.component.bodies.indexOf(body)] ?? 0];
    return center === undefined
      ? []
      : (w.plan.toolLoads.length > 0 ? [false, true] : [false]).map((working) => ({
          corner,
          working,
          center,
          system: planPushSystem(w, part.component, there, standing, corner, working),
        }));
  });
  return { part, body, height, grip, cases };
}

/** The corners without what the push system puts on by itself. */
export const withoutLoads = ({ corners, component }: ComponentRun): readonly JointCorner[] =>
  corners.filter((corner) => component.bodies.every((b, i) => b.corners[corner[i] ?? 0]?.working !== true));

/** The case in which least of its own weight is held. */
function worstPush({ body, height, cases }: SetUp, angle: number, counted: Counted): WorstPush {
  const direction = { x: Math.cos(angle), y: Math.sin(angle), z: 0 };
  const z = height.value?.high ?? 0;
  const pushes = heldPushes(
    cases.map(({ system, center }) => ({
      system,
      push: { body: body.id, at: { ...(center.center ?? { x: center.x, y: center.y }), z }, direction },
    })),
    counted,
  );
  let worst: WorstPush | undefined;
  let i = 0;
  for (const held of pushes) {
    const of = cases[i++];
    if (of === undefined) break;
    // Of equal shares the first, which is the lightest: it takes the smaller force.
    if (worst?.of === undefined || shareOf(held, of) < shareOf(worst.held, worst.of) - 1e-9)
      worst = { angle, held, of };
  }
  return worst ?? { angle, held: { kind: 'unsolved' }, of: undefined };
}

function roseOf(
  w: SupportWorkings,
  { part, body, height, grip }: SetUp,
  worst: readonly WorstPush[],
): PushRose {
  if (worst.some(({ held }) => held.kind === 'unsolved')) return { why: term('push.not-solved') };
  const results = worst.map(({ angle, held, of }) => {
    const governs = governingCase(part, of);
    const weight = measured(
      force('weight', message('figure.weight-of', { body: body.name }), 'up'),
      exactly(of?.center.weight ?? 0),
      term('figure.empty-vehicle-cargo-in-this-case'),
    );
    const holds = measured(
      force('holds', term('figure.push-that-it-holds-up-to'), 'down', {
        governs,
        assumes: pushAssumptions,
      }),
      exactly(held.kind === 'holds' ? held.force : 0),
      term('figure.greatest-push-that-forces-within-friction-and'),
    );
    return {
      angle,
      holds,
      share: shareFigure(holds, weight, governs),
      givesFirst:
        held.kind === 'holds'
          ? givesWords(held.gives, w)
          : { ref: { element: body.vehicle }, how: message('push.nothing-holds', { vehicle: body.name }) },
    };
  });
  return {
    vehicle: body.vehicle,
    height,
    ...(grip === undefined ? {} : { grip }),
    directions: results,
    least: leastOf(results),
  };
}

function governingCase(part: ComponentRun, of: Case | undefined): List | undefined {
  const corner = cornerWords(part, of?.corner ?? []);
  const words = [
    ...(corner === undefined ? [] : [corner]),
    ...(of?.working === true ? [term('range.tool-loads')] : []),
  ];
  return words.length === 0 ? undefined : list(words, 'plain');
}

const shareOf = (held: HeldPush, { center }: Case): number =>
  held.kind === 'holds'
    ? held.force / center.weight
    : held.kind === 'unsolved'
      ? Number.NEGATIVE_INFINITY
      : 0;

/** At the height that the policy sets; of a range the high end, which tips sooner. */
function pushHeight(w: SupportWorkings, body: PlanBody): Figure {
  const limit = w.plan.policy.limits['push height'];
  const word = limitWord(w.plan.policy, 'push height');
  const head = length('pushHeight', term('figure.height-of-the-push-above-the-ground'), 'up', {
    ref: limit.ref,
    governs: word === 'cargo center' ? term('figure.the-high-end') : undefined,
  });
  const source = {
    kind: 'policy',
    policy: w.plan.policy.name,
    limit: 'push height',
    of: limit.source,
  } as const;
  if (word === 'cargo center')
    return given(head, body.centerHeight === undefined ? undefined : exactly(body.centerHeight.high), source);
  if (word === 'top of body') {
    const top = w.placed.vehicles.byId.get(body.vehicle)?.top;
    return given(head, top && exactly(top.high), source);
  }
  return given(head, limitValue(w.plan.policy, 'push height'), source);
}
