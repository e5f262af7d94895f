import type { SpaceScene } from '@cribwright/drawing/page';
import {
  AmbientLight,
  BufferGeometry,
  Color,
  CylinderGeometry,
  DirectionalLight,
  EdgesGeometry,
  Float32BufferAttribute,
  GridHelper,
  Group,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  MeshLambertMaterial,
  type Object3D,
  OrthographicCamera,
  PerspectiveCamera,
  Quaternion,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';

type Thing = SpaceScene['things'][number];
type Solid = Thing['solids'][number];

export interface SpaceView {
  readonly show: (space: SpaceScene) => void;
  readonly light: (element: string | undefined) => void;
  readonly parallel: (on: boolean) => void;
  readonly lookFrom: (from: 'corner' | 'above' | 'side' | 'behind') => void;
  readonly close: () => void;
}

/** Eye directions in plan axes, from the middle of what stands. */
const eyes = {
  corner: new Vector3(0.7, -1, 0.6),
  above: new Vector3(0, -0.001, 1),
  side: new Vector3(0, -1, 0.08),
  behind: new Vector3(1, 0, 0.08),
} as const;

/**
 * Opens a view in space that can be turned, moved and zoomed. z points up, as in the plan.
 * Throws where the page has no means to draw it.
 */
export function openSpace(box: HTMLElement, picked: (element: string) => void): SpaceView {
  const renderer = new WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
  renderer.setPixelRatio(Math.min(window.devicePixelRatio, 2));
  const canvas = renderer.domElement;
  canvas.tabIndex = 0;
  canvas.setAttribute('role', 'img');
  canvas.setAttribute(
    'aria-label',
    'The layout in space. The flat drawing and the words below it say the same.',
  );
  box.append(canvas);

  const scene = new Scene();
  const things = new Group();
  scene.add(things, new AmbientLight(0xffffff, 1.6));
  const sun = new DirectionalLight(0xffffff, 1.8);
  sun.position.set(4, -8, 12);
  scene.add(sun);
  const wide = new PerspectiveCamera(40, 1, 0.1, 500);
  const flat = new OrthographicCamera(-10, 10, 10, -10, -200, 500);
  let camera: PerspectiveCamera | OrthographicCamera = wide;
  let controls: OrbitControls<PerspectiveCamera | OrthographicCamera> = new OrbitControls(camera, canvas);
  let middle = new Vector3();
  let reach = 8;
  let shown: SpaceScene | undefined;
  let lit: string | undefined;
  let waiting = 0;

  const paint = () => {
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(() => {
      const style = getComputedStyle(document.body);
      scene.background = new Color(style.getPropertyValue('--cw-paper') || '#fdfcf8');
      renderer.render(scene, camera);
    });
  };
  const take = (next: typeof camera) => {
    next.up.set(0, 0, 1);
    next.position.copy(camera.position);
    controls.dispose();
    camera = next;
    controls = new OrbitControls(camera, canvas);
    controls.target.copy(middle);
    controls.listenToKeyEvents(canvas);
    controls.addEventListener('change', paint);
    controls.update();
  };
  const size = () => {
    const [w, h] = [Math.max(1, box.clientWidth), Math.max(1, box.clientHeight)];
    renderer.setSize(w, h);
    wide.aspect = w / h;
    wide.updateProjectionMatrix();
    Object.assign(flat, { left: (-reach * w) / h, right: (reach * w) / h, top: reach, bottom: -reach });
    flat.updateProjectionMatrix();
    paint();
  };
  const lookFrom: SpaceView['lookFrom'] = (from) => {
    camera.position
      .copy(middle)
      .addScaledVector(eyes[from].clone().normalize(), reach * 3.1 * Math.max(1, 1.25 / wide.aspect));
    controls.target.copy(middle);
    controls.update();
    paint();
  };
  const show = (space: SpaceScene) => {
    const first = shown === undefined;
    shown = space;
    clear(things);
    const inks = inksOf(document.body);
    for (const thing of space.things) things.add(built(thing, inks, thing.ref.element === lit));
    const bounds = boundsOf(space);
    middle = bounds.middle;
    reach = bounds.reach;
    const grid = new GridHelper(Math.ceil(reach) * 4, Math.ceil(reach) * 4, inks('ground'), inks('faint'));
    grid.rotation.x = Math.PI / 2;
    grid.position.set(Math.round(middle.x), Math.round(middle.y), -0.01);
    things.add(grid);
    if (first) {
      take(wide);
      size();
      lookFrom('corner');
    }
    paint();
  };

  let pressed = new Vector2();
  const spot = (event: PointerEvent) => new Vector2(event.clientX, event.clientY);
  canvas.addEventListener('pointerdown', (event) => {
    pressed = spot(event);
  });
  canvas.addEventListener('pointerup', (event) => {
    if (pressed.distanceTo(spot(event)) > 4) return;
    const frame = canvas.getBoundingClientRect();
    const at = new Vector2(
      ((event.clientX - frame.left) / frame.width) * 2 - 1,
      1 - ((event.clientY - frame.top) / frame.height) * 2,
    );
    const ray = new Raycaster();
    ray.setFromCamera(at, camera);
    const hit = ray.intersectObjects(things.children, true).find((h) => h.object instanceof Mesh);
    const element: unknown = hit?.object.parent?.userData.element;
    if (typeof element === 'string') picked(element);
  });
  const watch = new ResizeObserver(size);
  watch.observe(box);
  const repaint = new MutationObserver(() => {
    if (shown !== undefined) show(shown);
  });
  repaint.observe(document.body, { attributes: true, attributeFilter: ['class'] });

  return {
    show,
    lookFrom,
    light: (element) => {
      lit = element;
      if (shown !== undefined) show(shown);
    },
    parallel: (on) => {
      take(on ? flat : wide);
      size();
    },
    close: () => {
      cancelAnimationFrame(waiting);
      watch.disconnect();
      repaint.disconnect();
      controls.dispose();
      clear(things);
      renderer.dispose();
      canvas.remove();
    },
  };
}

type Inks = (tone: Solid['tone'], part?: 'line' | 'solid' | 'light') => Color;

const inksOf = (page: Element): Inks => {
  const style = getComputedStyle(page);
  return (tone, part = 'solid') =>
    new Color(style.getPropertyValue(`--cw-${tone.replaceAll(' ', '-')}-${part}`).trim() || '#888888');
};

/** One element: solid where it stands, see-through where it is a body, comes later, or is lost. */
function built(thing: Thing, inks: Inks, lit: boolean): Object3D {
  const group = new Group();
  group.userData.element = thing.ref.element;
  const faint = thing.standing === 'later' || thing.standing === 'lost';
  for (const solid of thing.solids) {
    const shape = geometry(solid);
    const body = solid.tone === 'vehicle';
    const opacity = faint ? 0.12 : body ? 0.22 : 1;
    const tone = thing.standing === 'lost' ? 'danger' : solid.tone;
    // In high contrast a solid has the colour of its edges: there the faces are paper, so that the edges show.
    const plain = inks(tone, 'solid').equals(inks(tone, 'line'));
    const colour = inks(tone, plain && !faint ? 'light' : 'solid');
    const mesh = new Mesh(
      shape,
      new MeshLambertMaterial({
        color: colour,
        transparent: opacity < 1,
        opacity,
        depthWrite: opacity === 1,
      }),
    );
    const edges = new LineSegments(
      new EdgesGeometry(shape, 30),
      new LineBasicMaterial({
        color: inks(lit ? 'note' : solid.tone, 'line'),
        transparent: faint,
        opacity: faint ? 0.5 : 1,
      }),
    );
    for (const part of [mesh, edges]) {
      if (solid.kind !== 'block') along(part, solid);
      group.add(part);
    }
  }
  return group;
}

const quads = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
] as const;

function geometry(solid: Solid): BufferGeometry {
  if (solid.kind !== 'block') {
    const { from, to } = solid;
    const long = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
    const radius = solid.kind === 'rod' ? solid.thickness / 2 : solid.radius;
    return new CylinderGeometry(radius, radius, long, solid.kind === 'rod' ? 10 : 28);
  }
  const points = quads.flatMap(([a, b, c, d]) =>
    [a, b, c, a, c, d].flatMap((i) => {
      const p = solid.corners[i] ?? { x: 0, y: 0, z: 0 };
      return [p.x, p.y, p.z];
    }),
  );
  const shape = new BufferGeometry();
  shape.setAttribute('position', new Float32BufferAttribute(points, 3));
  shape.computeVertexNormals();
  return shape;
}

/** A cylinder is made upright about y; this lays it between its two ends. */
function along(part: Object3D, { from, to }: Exclude<Solid, { kind: 'block' }>): void {
  const way = new Vector3(to.x - from.x, to.y - from.y, to.z - from.z).normalize();
  part.position.set((from.x + to.x) / 2, (from.y + to.y) / 2, (from.z + to.z) / 2);
  part.quaternion.copy(new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), way));
}

function boundsOf(space: SpaceScene): { readonly middle: Vector3; readonly reach: number } {
  const low = new Vector3(Infinity, Infinity, Infinity);
  const high = new Vector3(-Infinity, -Infinity, -Infinity);
  for (const { solids } of space.things) {
    for (const solid of solids) {
      for (const p of solid.kind === 'block' ? solid.corners : [solid.from, solid.to]) {
        low.min(new Vector3(p.x, p.y, p.z));
        high.max(new Vector3(p.x, p.y, p.z));
      }
    }
  }
  if (low.x > high.x) return { middle: new Vector3(), reach: 4 };
  return {
    middle: low.clone().add(high).multiplyScalar(0.5),
    reach: Math.max(2, low.distanceTo(high) / 2.4),
  };
}

function clear(group: Group): void {
  group.traverse((part) => {
    if (part instanceof Mesh || part instanceof LineSegments) {
      part.geometry.dispose();
      for (const material of [part.material].flat() as Material[]) material.dispose();
    }
  });
  group.clear();
}
