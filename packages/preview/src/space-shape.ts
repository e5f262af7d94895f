import { blockFaces, type SpaceScene } from '@cribwright/drawing/page';
import {
  BufferGeometry,
  type Color,
  CylinderGeometry,
  EdgesGeometry,
  Float32BufferAttribute,
  Group,
  LineBasicMaterial,
  LineSegments,
  Matrix4,
  Mesh,
  MeshLambertMaterial,
  Quaternion,
  Vector3,
} from 'three';
import { mergeGeometries } from 'three/examples/jsm/utils/BufferGeometryUtils.js';

export type SpaceThing = SpaceScene['things'][number];
type Solid = SpaceThing['solids'][number];

/** The color of a tone in the theme of the page. */
export type Inks = (tone: Solid['tone'], part?: 'line' | 'solid' | 'light') => Color;

/**
 * One element in space: solid where it stands, see-through where it is a body, comes later, or is lost. All its
 * pieces of one tone are one shape, however many they are.
 */
export function spaceShape(thing: SpaceThing, inks: Inks, lit: boolean): Group {
  const group = new Group();
  group.userData.element = thing.ref.element;
  const faint = thing.standing === 'later' || thing.standing === 'lost';
  for (const [own, solids] of byTone(thing.solids)) {
    const opacity = faint ? 0.12 : own === 'vehicle' ? 0.22 : 1;
    const tone = thing.standing === 'lost' ? 'danger' : own;
    // In high contrast a solid has the color of its edges: there the faces are paper, so that the edges show.
    const plain = inks(tone, 'solid').equals(inks(tone, 'line'));
    const shapes = solids.map(geometry);
    group.add(
      new Mesh(
        mergeGeometries(shapes),
        new MeshLambertMaterial({
          color: inks(tone, plain && !faint ? 'light' : 'solid'),
          transparent: opacity < 1,
          opacity,
          depthWrite: opacity === 1,
        }),
      ),
      new LineSegments(
        mergeGeometries(solids.map((solid, i) => edges(solid, shapes[i]))),
        new LineBasicMaterial({
          color: inks(lit ? 'note' : own, 'line'),
          transparent: faint,
          opacity: faint ? 0.5 : 1,
        }),
      ),
    );
    for (const shape of shapes) shape.dispose();
  }
  return group;
}

const byTone = (solids: readonly Solid[]): ReadonlyMap<Solid['tone'], readonly Solid[]> => {
  const found = new Map<Solid['tone'], Solid[]>();
  for (const solid of solids) found.set(solid.tone, [...(found.get(solid.tone) ?? []), solid]);
  return found;
};

const bars = [0, 1, 1, 2, 2, 3, 3, 0, 4, 5, 5, 6, 6, 7, 7, 4, 0, 4, 1, 5, 2, 6, 3, 7] as const;

function geometry(solid: Solid): BufferGeometry {
  if (solid.kind !== 'block') return round(solid);
  const shape = new BufferGeometry();
  const corners = blockFaces.flatMap(([a, b, c, d]) => [a, b, c, a, c, d]);
  shape.setAttribute('position', at(solid, corners));
  shape.computeVertexNormals();
  return shape;
}

const edges = (solid: Solid, shape: BufferGeometry | undefined): BufferGeometry => {
  if (solid.kind !== 'block') return new EdgesGeometry(shape, 30);
  return new BufferGeometry().setAttribute('position', at(solid, bars));
};

const at = (solid: Extract<Solid, { kind: 'block' }>, corners: readonly number[]): Float32BufferAttribute =>
  new Float32BufferAttribute(
    corners.flatMap((i) => {
      const p = solid.corners[i] ?? { x: 0, y: 0, z: 0 };
      return [p.x, p.y, p.z];
    }),
    3,
  );

/** A cylinder is made upright about y; here it is laid between its two ends. */
function round(solid: Exclude<Solid, { kind: 'block' }>): BufferGeometry {
  const [from, to] = [solid.from, solid.to].map((p) => new Vector3(p.x, p.y, p.z)) as [Vector3, Vector3];
  const radius = solid.kind === 'rod' ? solid.thickness / 2 : solid.radius;
  const upright = new CylinderGeometry(radius, radius, from.distanceTo(to), solid.kind === 'rod' ? 10 : 28);
  const shape = upright.toNonIndexed();
  upright.dispose();
  shape.deleteAttribute('uv');
  const way = to.clone().sub(from).normalize();
  const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), way);
  const middle = from.clone().add(to).multiplyScalar(0.5);
  return shape.applyMatrix4(new Matrix4().compose(middle, turn, new Vector3(1, 1, 1)));
}
