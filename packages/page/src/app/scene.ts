import {
  AmbientLight,
  Box3,
  DirectionalLight,
  DoubleSide,
  Group,
  LineBasicMaterial,
  Mesh,
  MeshLambertMaterial,
  OrthographicCamera,
  Raycaster,
  Scene,
  Sphere,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { type Piece, type PieceMesh, pieceMesh } from './piece-mesh.js';

/** How it is painted. */
export interface Paint {
  readonly sheet: string;
  readonly edge: string;
  readonly lit: string;
}

/** A view in space on a canvas. Nothing moves by itself: it is drawn when something changed. */
export interface SpaceView {
  readonly show: (pieces: readonly Piece[], keep: 'frame' | 'view') => void;
  /** Light a panel or bend of every piece of a part. */
  readonly light: (id: string | null, part: string) => void;
  readonly paint: (paint: Paint) => void;
  /** Turn by so many degrees round the upright axis and over it. */
  readonly turn: (round: number, over: number) => void;
  readonly zoom: (factor: number) => void;
  readonly resize: (width: number, height: number) => void;
  /** What lies under a point of the canvas, -1 to 1 both ways. */
  readonly under: (x: number, y: number) => { readonly piece: string; readonly id: string } | null;
  readonly close: () => void;
}

const FILLED = 0.85; // of the sphere round everything: corners of it are rare
const START = { round: -45, over: 35 }; // degrees, near the isometric view of the pictures

/** Open a view in space. @throws where the browser draws none */
export function spaceView(canvas: HTMLCanvasElement): SpaceView {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  const scene = new Scene();
  const camera = new OrthographicCamera();
  const lamp = new DirectionalLight('#fff', 1.6);
  scene.add(new AmbientLight('#fff', 1.7), lamp);
  const object = new Group();
  scene.add(object);
  const sheet = new MeshLambertMaterial({
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  const bright = sheet.clone();
  const line = new LineBasicMaterial();
  let look = { ...START };
  let zoomed = 1;
  let radius = 1;
  let lit: { readonly id: string | null; readonly part: string } = { id: null, part: '' };
  const centre = new Vector3();
  let waiting = 0;

  const draw = (): void => {
    waiting = 0;
    const [r, o] = [(look.round * Math.PI) / 180, (look.over * Math.PI) / 180];
    const towards = new Vector3(Math.cos(o) * Math.cos(r), Math.cos(o) * Math.sin(r), Math.sin(o));
    camera.position.copy(centre).addScaledVector(towards, radius * 4);
    camera.up.set(0, 0, 1);
    camera.lookAt(centre);
    lamp.position.copy(towards).applyAxisAngle(new Vector3(0, 0, 1), 0.6);
    const { width, height } = canvas;
    const [w, h] = [Math.max(width, 1), Math.max(height, 1)];
    const half = (radius * FILLED) / zoomed;
    const [across, up] = w > h ? [(half * w) / h, half] : [half, (half * h) / w];
    Object.assign(camera, { left: -across, right: across, top: up, bottom: -up, near: 0.1, far: radius * 8 });
    camera.updateProjectionMatrix();
    renderer.render(scene, camera);
  };
  const soon = (): void => {
    if (waiting === 0) waiting = requestAnimationFrame(draw);
  };
  let shown: readonly PieceMesh[] = [];
  const clear = (): void => {
    for (const { dispose } of shown) dispose();
    object.clear();
  };
  const relight = (): void => {
    for (const { piece, light } of shown) light(piece.part === lit.part ? lit.id : null);
    soon();
  };
  return {
    show: (pieces, keep) => {
      clear();
      shown = pieces.map((piece) => pieceMesh(piece, [sheet, bright], line));
      for (const { group } of shown) object.add(group);
      object.updateMatrixWorld(true);
      const box = new Box3().setFromObject(object);
      const around = box.getBoundingSphere(new Sphere());
      const reach = around.center.distanceTo(centre) + around.radius;
      // what folds or grows may come nearer to the rim, never over it
      if (keep === 'frame' || reach < radius / 2) {
        centre.copy(around.center);
        radius = Math.max(around.radius, 1);
      } else radius = Math.max(radius, reach);
      relight();
    },
    light: (id, part) => {
      lit = { id, part };
      relight();
    },
    paint: (paint) => {
      sheet.color.set(paint.sheet);
      bright.color.set(paint.lit);
      line.color.set(paint.edge);
      soon();
    },
    turn: (round, over) => {
      look = { round: look.round + round, over: Math.min(89, Math.max(-89, look.over + over)) };
      soon();
    },
    zoom: (factor) => {
      zoomed = Math.min(20, Math.max(0.5, zoomed * factor));
      soon();
    },
    resize: (width, height) => {
      renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
      renderer.setSize(width, height, false);
      soon();
    },
    under: (x, y) => {
      const ray = new Raycaster();
      ray.setFromCamera(new Vector2(x, y), camera);
      const hit = ray.intersectObject(object, true).find((h) => h.object instanceof Mesh);
      const of = shown.find(({ group }) => group === hit?.object.parent);
      return of === undefined ? null : { piece: of.piece.name, id: of.idOf(hit?.faceIndex ?? 0) };
    },
    close: () => {
      cancelAnimationFrame(waiting);
      clear();
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}
