import {
  type FlatBend,
  type FlatPattern,
  overlapDepth,
  type Point,
  type Prism,
  plainNumber,
  prismBetween,
  radians,
  type Vec3,
} from '@tinwright/core';
import type { Brake, Shop } from '../machines/shop.js';
import type { BendStep } from './plan.js';

/** Something wrong with a plan when it is replayed. */
export interface SequenceFlaw {
  readonly step: number;
  readonly message: string;
}

const ALLOWED = 0.75; // mm two things may share: the planner lets edges touch
const STEPS = 24; // positions of a stroke looked at

/**
 * Replay a plan step by step from the flat pattern, with a fold routine and tools of its own: every bend once, hems
 * folded before they are closed, lines that are bent together still in one line, and at every position of every stroke
 * on the brake no panel in the bed, the beam, the fingers where they are said to stand, the leaf, or the part itself.
 * Empty when all holds.
 */
export function verifySequence(
  flat: FlatPattern,
  steps: readonly BendStep[],
  shop: Shop,
): readonly SequenceFlaw[] {
  const done = new Map<string, 'folded' | 'done'>();
  for (const [i, step] of steps.entries()) {
    const wrong = [...outOfTurn(flat, step, done), ...inStep(flat, step, done, shop)];
    if (wrong.length > 0) return wrong.map((message) => ({ step: i + 1, message }));
    for (const id of step.bends) done.set(id, step.action === 'fold' ? 'folded' : 'done');
  }
  const left = flat.bends.filter((b) => done.get(b.id) !== 'done').map((b) => b.id);
  return left.length === 0 ? [] : [{ step: steps.length, message: `${left.join(', ')} never bent` }];
}

function outOfTurn(flat: FlatPattern, { bends, action }: BendStep, done: Stages): readonly string[] {
  const wanted = action === 'close' ? 'folded' : undefined;
  return bends.flatMap((id) => {
    if (!flat.bends.some((b) => b.id === id)) return [`there is no bend ${id}`];
    return done.get(id) === wanted ? [] : [`${id} is ${done.get(id) ?? 'flat'} already`];
  });
}

type Stages = ReadonlyMap<string, 'folded' | 'done'>;

/** A rigid move: p ↦ m·p + t, rows of m. */
interface Rigid {
  readonly m: readonly [Vec3, Vec3, Vec3];
  readonly t: Vec3;
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const apply = ({ m, t }: Rigid, p: Vec3): Vec3 => [
  dot(m[0], p) + t[0],
  dot(m[1], p) + t[1],
  dot(m[2], p) + t[2],
];

function after(a: Rigid, b: Rigid): Rigid {
  const column = (k: 0 | 1 | 2): Vec3 => [b.m[0][k], b.m[1][k], b.m[2][k]];
  const row = (r: Vec3): Vec3 => [dot(r, column(0)), dot(r, column(1)), dot(r, column(2))];
  return { m: [row(a.m[0]), row(a.m[1]), row(a.m[2])], t: apply(a, b.t) };
}

const STILL: Rigid = {
  m: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  t: [0, 0, 0],
};

/** Turn about the line through a point, by Rodrigues. */
function spin([ux, uy, uz]: Vec3, at: Vec3, angle: number): Rigid {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const v = 1 - c;
  const m: Rigid['m'] = [
    [c + ux * ux * v, ux * uy * v - uz * s, ux * uz * v + uy * s],
    [uy * ux * v + uz * s, c + uy * uy * v, uy * uz * v - ux * s],
    [uz * ux * v - uy * s, uz * uy * v + ux * s, c + uz * uz * v],
  ];
  const moved = apply({ m, t: [0, 0, 0] }, at);
  return { m, t: [at[0] - moved[0], at[1] - moved[1], at[2] - moved[2]] };
}

/** What crossing a bend does to the sheet beyond it, seen from the side with this tangent line. */
function crossing(bend: FlatBend, thickness: number, fromParent: boolean, through: number): Rigid {
  if (through === 0) return STILL;
  const [near, far] = fromParent ? bend.tangents : [bend.tangents[1], bend.tangents[0]];
  const [a, b] = near;
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: Vec3 = [(b[0] - a[0]) / l, (b[1] - a[1]) / l, 0];
  const side = Math.sign(along[0] * (far[0][1] - a[1]) - along[1] * (far[0][0] - a[0]));
  const out: Point = [-along[1] * side, along[0] * side];
  const up = bend.direction === 'up';
  // bent material winds up from this side at one radius; what is not yet bent goes on straight
  const full = radians(bend.angle);
  const wound = bend.zone * Math.min(1, through / full);
  const radius =
    through < full - 1e-9 && bend.hem !== null
      ? Math.max(0, wound / through - thickness / 2)
      : bend.insideRadius;
  const axis: Vec3 = [a[0], a[1], up ? thickness + radius : -radius];
  const turn = spin(along, axis, side * (up ? through : -through));
  const back: Rigid = { ...STILL, t: [-out[0] * wound, -out[1] * wound, 0] };
  return after(turn, back);
}

/** Panels folded as far as said, one of them at rest on the flat. */
function folded(
  flat: FlatPattern,
  root: string,
  through: (bend: FlatBend) => number,
): ReadonlyMap<string, Rigid> {
  const poses = new Map<string, Rigid>([[root, STILL]]);
  for (let ring: readonly string[] = [root]; ring.length > 0; ) {
    const next: string[] = [];
    for (const bend of flat.bends)
      for (const [from, to] of [
        [bend.parent, bend.id],
        [bend.id, bend.parent],
      ] as const) {
        const pose = poses.get(from);
        if (!ring.includes(from) || poses.has(to) || pose === undefined) continue;
        poses.set(to, after(pose, crossing(bend, flat.thickness, from === bend.parent, through(bend))));
        next.push(to);
      }
    ring = next;
  }
  return poses;
}

function inStep(flat: FlatPattern, step: BendStep, done: Stages, shop: Shop): readonly string[] {
  const bends = step.bends.map((id) => flat.bends.find((b) => b.id === id) as FlatBend);
  if (step.machine !== 'brake' || shop.brake === null || step.action === 'roll') return [];
  const foldedTo = radians(step.action === 'fold' ? step.angle : 126);
  const angleAt = (share: number) => (bend: FlatBend) => {
    if (bends.includes(bend) && step.action !== 'close') return radians(step.angle) * share;
    const stage = done.get(bend.id);
    if (stage === 'done') return radians(bend.angle);
    return stage === 'folded' ? Math.min(foldedTo, radians(bend.angle)) : 0;
  };
  const root = step.held;
  const moving = movingPanels(flat, root, step.bends);
  const place = machineFrame(flat, step, bends[0] as FlatBend, shop.brake);
  // the operator's left is where y is greatest
  const left = Math.max(...bends.flatMap((b) => b.line.map((p) => apply(place, [p[0], p[1], 0])[1])));
  const count = step.action === 'close' ? 0 : STEPS;
  for (let i = 0; i <= count; i++) {
    const share = count === 0 ? 0 : i / count;
    const poses = folded(flat, root, angleAt(share));
    const solids = flat.panels
      .filter((p) => step.action !== 'close' || !step.bends.includes(p.id))
      .map((p) => ({
        id: p.id,
        prisms: prismsOf(p.shape, flat.thickness, after(place, poses.get(p.id) ?? STILL)),
      }));
    const wrong = clash(flat, step, solids, moving, shop.brake, radians(step.angle) * share, left);
    if (wrong !== null) return [`${wrong} at ${plainNumber(step.angle * share, 0)} degrees`];
  }
  return [];
}

/** Panels that are on the other side of the bends from the one that is held. */
function movingPanels(flat: FlatPattern, root: string, bends: readonly string[]): ReadonlySet<string> {
  const seen = new Set([root]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const b of flat.bends) {
      if (bends.includes(b.id) || seen.has(b.id) === seen.has(b.parent)) continue;
      seen.add(b.id).add(b.parent);
      grown = true;
    }
  }
  // panels of other bends on the same line hang on the held side too
  return new Set(flat.panels.map((p) => p.id).filter((id) => !seen.has(id)));
}

/** From the flat coordinates of the held panel to the machine's: x to the operator, z up, the hinge at the origin. */
function machineFrame(flat: FlatPattern, step: BendStep, bend: FlatBend, brake: Brake): Rigid {
  const fromParent = step.heldSide === 'parent';
  const [near, far] = fromParent ? bend.tangents : [bend.tangents[1], bend.tangents[0]];
  const [a, b] = near;
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: Point = [(b[0] - a[0]) / l, (b[1] - a[1]) / l];
  const side = Math.sign(along[0] * (far[0][1] - a[1]) - along[1] * (far[0][0] - a[0]));
  const out: Point = [-along[1] * side, along[0] * side];
  const up = step.faceUp === 'marked';
  const leg = step.action === 'close' ? closingLeg(flat, bend) : 0;
  const origin = step.action === 'close' ? 0 : bend.terms.setback;
  // while a hem is closed its fold lies at the nose, or as far behind it as the hem is wide
  const setBack = step.setBack ?? (brake.setBack[0] as number) * flat.thickness;
  const shift = step.action === 'close' ? -setBack - (fromParent ? 0 : leg) : 0;
  // y to the operator's left: z × x
  const left: Point = up ? [-out[1], out[0]] : [out[1], -out[0]];
  const at: Point = [a[0] + out[0] * origin, a[1] + out[1] * origin];
  return {
    m: [
      [out[0], out[1], 0],
      [left[0], left[1], 0],
      [0, 0, up ? 1 : -1],
    ],
    t: [
      -(out[0] * at[0] + out[1] * at[1]) + shift,
      -(left[0] * at[0] + left[1] * at[1]),
      up ? 0 : flat.thickness,
    ],
  };
}

function closingLeg(flat: FlatPattern, bend: FlatBend): number {
  const shape = flat.panels.find((p) => p.id === bend.id)?.shape ?? [];
  const [[a, b]] = [bend.tangents[1]];
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const far = shape.map((p) => Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / l);
  return Math.max(...far) + bend.terms.setback;
}

/** A panel as convex pieces: a fan is enough where the outline is convex; else its triangles by ears. */
function prismsOf(shape: readonly Point[], thickness: number, pose: Rigid): readonly Prism[] {
  return ears(shape).map((piece) => {
    const ring = (z: number) => piece.map(([x, y]): Vec3 => apply(pose, [x, y, z]));
    return prismBetween(ring(0), ring(thickness));
  });
}

/** Triangles of a simple counter-clockwise polygon, by cutting ears. */
function ears(shape: readonly Point[]): readonly (readonly Point[])[] {
  const left = [...shape];
  const found: (readonly Point[])[] = [];
  const turn = (a: Point, b: Point, c: Point) =>
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  for (let tries = 0; left.length > 3 && tries < 10_000; tries++) {
    const i = left.findIndex((b, k) => {
      const [a, c] = [left.at(k - 1) as Point, left[(k + 1) % left.length] as Point];
      if (turn(a, b, c) <= 1e-12) return false;
      return left.every(
        (p) => [a, b, c].includes(p) || turn(a, b, p) < 0 || turn(b, c, p) < 0 || turn(c, a, p) < 0,
      );
    });
    if (i < 0) break;
    found.push([left.at(i - 1) as Point, left[i] as Point, left[(i + 1) % left.length] as Point]);
    left.splice(i, 1);
  }
  return left.length === 3 ? [...found, left] : found;
}

interface Solid {
  readonly id: string;
  readonly prisms: readonly Prism[];
}

function clash(
  flat: FlatPattern,
  step: BendStep,
  solids: readonly Solid[],
  moving: ReadonlySet<string>,
  brake: Brake,
  turn: number,
  left: number,
): string | null {
  const T = flat.thickness;
  const tools = toolsOf(step, brake, T, turn, left);
  const flush = (id: string) => id === step.held || step.bends.includes(id);
  for (const { id, prisms } of solids)
    for (const tool of tools) {
      // the sheet at the line lies between the tools
      if (flush(id) && tool.name !== 'beam') continue;
      if (tool.name === 'leaf' && moving.has(id) && turn > 0) continue; // it turns with the leaf: looked at when flat
      const depth = Math.max(0, ...prisms.flatMap((p) => tool.prisms.map((q) => overlapDepth(p, q))));
      if (depth > ALLOWED) return `${id} runs ${plainNumber(depth, 1)} mm into the ${tool.name}`;
    }
  for (const a of solids.filter((s) => moving.has(s.id)))
    for (const b of solids.filter((s) => !moving.has(s.id))) {
      const depth = Math.max(0, ...a.prisms.flatMap((p) => b.prisms.map((q) => overlapDepth(p, q))));
      if (depth > ALLOWED) return `${a.id} runs ${plainNumber(depth, 1)} mm into ${b.id}`;
    }
  return null;
}

const FAR = 1500; // mm, half the length of a tool that covers everything

/** The brake's tools as solids at a turn of the leaf, without any margin. */
function toolsOf(
  step: BendStep,
  brake: Brake,
  T: number,
  turn: number,
  left: number,
): readonly { name: string; prisms: readonly Prism[] }[] {
  const s = step.setBack ?? (brake.setBack[0] as number) * T;
  const { foot, upright, noseAngle } = brake.finger;
  const rise = Math.min(upright * Math.tan(radians(noseAngle)), brake.clearHeight);
  const bar = (section: readonly Point[], [y0, y1]: readonly [number, number]): Prism => {
    // counter-clockwise in x and z is clockwise seen from +y
    const ring = (y: number) => section.map(([x, z]): Vec3 => [x, y, z]);
    return prismBetween(ring(y1), ring(y0));
  };
  const all = [-FAR, FAR] as const;
  const box = (x0: number, z0: number, x1: number, z1: number): readonly Point[] => [
    [x0, z0],
    [x1, z0],
    [x1, z1],
    [x0, z1],
  ];
  const spun = (section: readonly Point[]) =>
    section.map(
      ([x, z]): Point => [x * Math.cos(turn) - z * Math.sin(turn), x * Math.sin(turn) + z * Math.cos(turn)],
    );
  const top = T + brake.clearHeight;
  const nose: readonly Point[] = [
    [-s - foot, T],
    [-s, T],
    [-s - upright, T + rise],
    [-s - foot, T + rise],
  ];
  const groups = fingerSpans(step, left);
  return [
    { name: 'bed', prisms: [bar(box(-brake.bed, -300, 0, 0), all)] },
    { name: 'beam', prisms: [bar(box(-s - brake.beam - 300, top, -s - brake.beam, top + 300), all)] },
    { name: 'leaf', prisms: [bar(spun(box(0, -40, brake.leaf.width, 0)), all)] },
    {
      name: 'fingers',
      prisms: groups.flatMap((g) => [bar(nose, g), bar(box(-s - foot, T + rise, -s - upright, top), g)]),
    },
  ];
}

/** Where fingers stand along y; the line's left end, as the operator sees it, is where y is greatest. */
function fingerSpans(step: BendStep, left: number): readonly (readonly [number, number])[] {
  if (step.tools === null) return [[-FAR, FAR]];
  return step.tools.map(({ pieces, from, gap }) => {
    const wide = pieces.reduce((a, b) => a + b, 0) + gap * (pieces.length - 1);
    return [left - from - wide, left - from];
  });
}
