import { type Crib, type Plan, posed, underside } from '@cribwright/engine';
import { block, type Solid } from './solid.js';
import { at3 } from './vector.js';

export interface Course {
  /** 1 is the lowest. */
  readonly number: number;
  readonly runs: 'lengthwise' | 'crosswise';
  /** Laid side by side, without gaps. */
  readonly solid: boolean;
  /** Center lines of its timbers, off the crib's center, across the way they run, m. */
  readonly offsets: readonly number[];
  /** Underside above the crib's own base, m. */
  readonly bottom: number;
}

/** How a crib is stacked, from the ground up. */
export function coursesOf(crib: Crib): readonly Course[] {
  const { timber, layout } = crib;
  const other = crib.top === 'lengthwise' ? 'crosswise' : 'lengthwise';
  return Array.from({ length: Math.max(0, Math.min(crib.courses, mostCourses)) }, (_, i) => {
    const runs = (crib.courses - 1 - i) % 2 === 0 ? crib.top : other;
    const solid = i === 0 && crib.base === 'solid';
    const count = solid ? Math.floor(timber.length / timber.width + 1e-6) : layout[runs];
    const reach = solid
      ? (count * timber.width) / 2 - timber.width / 2
      : timber.length / 2 - crib.overhang - timber.width / 2;
    return { number: i + 1, runs, solid, offsets: spread(count, reach), bottom: i * timber.depth };
  });
}

/** More courses than this are not drawn one by one; nobody builds them. */
const mostCourses = 60;

const spread = (count: number, reach: number): readonly number[] =>
  count <= 1 ? [0] : Array.from({ length: count }, (_, i) => -reach + (2 * reach * i) / (count - 1));

/** Height of what the crib stands on, above the ground. */
export function baseHeight(crib: Crib, plan: Plan): number {
  const on = crib.standsOn;
  if (on.kind === 'ground') return 0;
  if (on.kind === 'vehicle') return on.height.high;
  return plan.pads.find((p) => p.id === on.pad)?.thickness ?? 0;
}

/** Height of timbers and shims alone, without wedges. */
export const stackHeight = (crib: Crib): number => crib.courses * crib.timber.depth + crib.shims;

/** Height of the lowest part that the crib is to capture, or `undefined` where the plan names none that is known. */
export function captureHeight(crib: Crib, plan: Plan): number | undefined {
  const heights = crib.captures.flatMap((capture) => {
    const vehicle = plan.vehicles.find((v) => v.id === capture.vehicle);
    if (vehicle === undefined) return [];
    const lying = posed(vehicle);
    const part = lying.parts.find((p) => p.name === capture.part || p.id === capture.part);
    return part === undefined ? [] : [underside(lying, part, crib.at).low];
  });
  return heights.length === 0 ? undefined : Math.min(...heights);
}

/** The gap that wedges are to close; `undefined` where what is captured is not known or lies below the top. */
export function wedgeGap(crib: Crib, plan: Plan): number | undefined {
  const capture = captureHeight(crib, plan);
  if (capture === undefined) return undefined;
  const gap = capture - baseHeight(crib, plan) - stackHeight(crib);
  return gap < 0 ? undefined : gap;
}

export function cribSolids(crib: Crib, plan: Plan): readonly Solid[] {
  const ground = baseHeight(crib, plan);
  const { timber, at } = crib;
  const half = timber.length / 2;
  const courses = coursesOf(crib);
  const timbers = courses.flatMap((course) =>
    course.offsets.map((offset, i) => {
      const [dx, dy] = course.runs === 'lengthwise' ? [half, timber.width / 2] : [timber.width / 2, half];
      const [cx, cy] = course.runs === 'lengthwise' ? [at.x, at.y + offset] : [at.x + offset, at.y];
      const bottom = ground + course.bottom;
      return block(
        `course ${course.number} timber ${i + 1}`,
        'timber',
        at3(cx - dx, cy - dy, bottom),
        at3(cx + dx, cy + dy, bottom + timber.depth),
      );
    }),
  );
  return [...timbers, ...wedges(crib, plan, courses, ground + stackHeight(crib))];
}

/** Wedges over the crossings of the top course, as thick as the gap that they close. */
function wedges(crib: Crib, plan: Plan, courses: readonly Course[], top: number): readonly Solid[] {
  const gap = wedgeGap(crib, plan);
  if (crib.wedges === undefined || gap === undefined || gap <= 0 || gap > crib.wedges.travel.high + 1e-6)
    return [];
  const [upper, below] = [courses.at(-1), courses.at(-2)];
  if (upper === undefined) return [];
  const along = below === undefined || below.solid ? spreadOf(crib) : below.offsets;
  const half = crib.timber.width / 2;
  return upper.offsets.flatMap((across, i) =>
    along.map((place, j) => {
      const [dx, dy] = upper.runs === 'lengthwise' ? [place, across] : [across, place];
      const center = at3(crib.at.x + dx, crib.at.y + dy, top);
      return block(
        `wedge ${i + 1}.${j + 1}`,
        'wedge',
        at3(center.x - half, center.y - half, top),
        at3(center.x + half, center.y + half, top + gap),
      );
    }),
  );
}

const spreadOf = (crib: Crib): readonly number[] => {
  const reach = crib.timber.length / 2 - crib.overhang - crib.timber.width / 2;
  return [-reach, reach];
};
