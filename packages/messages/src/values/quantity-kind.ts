import { type Dimension, inSystem, type System, usualUnit } from '@cribwright/units';

/**
 * What kind of quantity a number is to its reader. Several kinds share a dimension and are shown in different units:
 * a `length` is a size at hand (inches, mm), a `place` lies along a vehicle (feet and inches, m), a `span` is the same
 * inside a calculation (feet, m), so that the printed numbers multiply out.
 */
export type QuantityKind = keyof typeof kinds;

interface KindSpec {
  readonly dimension: Dimension;
  /** Unit ids for US and SI readers; left out, the usual unit of the dimension. */
  readonly units?: readonly [us: string, si: string];
}

const kinds = {
  length: { dimension: 'length' },
  place: { dimension: 'length', units: ['ft in', 'm'] },
  span: { dimension: 'length', units: ['ft', 'm'] },
  force: { dimension: 'force' },
  angle: { dimension: 'angle' },
  area: { dimension: 'area' },
  stress: { dimension: 'pressure', units: ['psi', 'MPa'] },
  pressure: { dimension: 'pressure', units: ['psf', 'kPa'] },
  duration: { dimension: 'duration' },
  share: { dimension: 'ratio', units: ['%', '%'] },
  ratio: { dimension: 'ratio', units: ['', ''] },
  count: { dimension: 'count' },
  stiffness: { dimension: 'stiffness' },
  mass: { dimension: 'mass' },
  volume: { dimension: 'volume' },
  density: { dimension: 'density' },
  'unit weight': { dimension: 'unit weight' },
  moment: { dimension: 'moment' },
} as const satisfies Readonly<Record<string, KindSpec>>;

/** The dimension of a kind of quantity. */
export const dimensionOf = (kind: QuantityKind): Dimension => kinds[kind].dimension;

/** The unit id in which a kind of quantity is shown, or the counterpart of the one that its author wrote; empty for a plain number. `ft in` is feet with inches. */
export function unitOf(kind: QuantityKind, system: System, written?: string): string {
  if (written !== undefined) return inSystem(written, system);
  const spec: KindSpec = kinds[kind];
  return spec.units?.[system === 'us' ? 0 : 1] ?? usualUnit(spec.dimension, system);
}
