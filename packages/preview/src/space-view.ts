import type { SpaceScene } from '@cribwright/drawing/page';
import {
  AmbientLight,
  Color,
  DirectionalLight,
  GridHelper,
  Group,
  Mesh,
  OrthographicCamera,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { SpaceLabels } from './space-labels.js';
import type { Inks } from './space-shape.js';
import { discard, reachOf, SpaceThings } from './space-things.js';

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
 *
 * @param called what the view is called aloud
 */
export function openSpace(box: HTMLElement, called: string, picked: (element: string) => void): SpaceView {
  const renderer = new WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
  renderer.setPixelRatio(Math.min(window.devicePixelRatio, 2));
  const canvas = renderer.domElement;
  canvas.tabIndex = 0;
  canvas.setAttribute('role', 'img');
  canvas.setAttribute('aria-label', called);
  box.append(canvas);

  const scene = new Scene();
  const things = new SpaceThings();
  const labels = new SpaceLabels(box);
  const floor = new Group();
  scene.add(things.group, floor, new AmbientLight(0xffffff, 1.6));
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
      labels.place(camera);
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
    const inks = inksOf(document.body);
    things.show(space.things, inks, lit);
    labels.show(space.things);
    ({ middle, reach } = reachOf(space));
    discard(floor);
    const grid = new GridHelper(Math.ceil(reach) * 4, Math.ceil(reach) * 4, inks('ground'), inks('faint'));
    // It tells how far things are apart, and must not outshine them.
    Object.assign(grid.material, { transparent: true, opacity: 0.4 });
    grid.rotation.x = Math.PI / 2;
    grid.position.set(Math.round(middle.x), Math.round(middle.y), -0.01);
    floor.add(grid);
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
    const hit = ray.intersectObjects(things.group.children, true).find((h) => h.object instanceof Mesh);
    const element: unknown = hit?.object.parent?.userData.element;
    if (typeof element === 'string') picked(element);
  });
  const watch = new ResizeObserver(size);
  watch.observe(box);
  const repaint = new MutationObserver(() => {
    things.clear();
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
      things.clear();
      labels.clear();
      discard(floor);
      renderer.dispose();
      canvas.remove();
    },
  };
}

const inksOf = (page: Element): Inks => {
  const style = getComputedStyle(page);
  return (tone, part = 'solid') =>
    new Color(style.getPropertyValue(`--cw-${tone.replaceAll(' ', '-')}-${part}`).trim() || '#888888');
};
