import { holeRow } from '../families/hole-row.js';
import type { Loop } from '../plane/loop.js';
import type { Point } from '../plane/point.js';
import { roundedRectangle, slotLoop } from '../plane/shapes.js';
import type { HardwareParams } from './params.js';

/** A convex solid of a bought part: `shape` from `low` to `high` along an axis. Frame: x right, y up, z off the face. mm */
export interface HardwareBlock {
  readonly id: string;
  /** Corners in the plane across the axis, counter-clockwise seen against it: x and y, or y and z. */
  readonly shape: readonly Point[];
  readonly axis: 'x' | 'z';
  readonly low: number;
  readonly high: number;
}

/** A hole it wants in a sheet: round, or another opening about its middle. mm */
export interface BodyHole {
  readonly on: 0 | 1;
  readonly at: Point;
  readonly diameter: number;
  /** Counter-clockwise, the same when mirrored; null for a round hole. */
  readonly opening: Loop | null;
}

/** A bought part on its face, or on two faces that meet in y = 0: the first below, the second above. mm */
export interface Body {
  readonly blocks: readonly HardwareBlock[];
  /** Holes in the sheet of the first (0) or the second (1) part. */
  readonly holes: readonly BodyHole[];
  /** Of what its fasteners go through. */
  readonly thickness: number;
  /** Along the line where two parts meet; 0 where it stands on one. */
  readonly along: number;
  /** The pin stands so far off the faces; null where nothing turns. */
  readonly pin: number | null;
}

const SIDES = 12; // of what is round

type Of<T extends HardwareParams['type']> = Extract<HardwareParams, { readonly type: T }>;

const BODIES: { readonly [T in HardwareParams['type']]: (p: Of<T>, sheet: number) => Body } = {
  hinge,
  hasp,
  handle,
  'rivet-nut': rivetNut,
  magnet,
  caster,
};

/** The solids and holes of a bought part. @param sheet thickness of the panel it stands on */
export const bodyOf = (p: HardwareParams, sheet: number): Body =>
  (BODIES[p.type] as (p: HardwareParams, sheet: number) => Body)(p, sheet);

const PLAIN = { along: 0, pin: null } as const;

function hinge(p: Of<'hinge'>): Body {
  const { length: l, leaf, knuckle, thickness: t, holes } = p;
  const row = (knuckle / 2 + leaf) / 2;
  return {
    blocks: [
      plate('leaf-1', [-l / 2, -leaf], [l / 2, 0], [0, t]),
      plate('leaf-2', [-l / 2, 0], [l / 2, leaf], [0, t]),
      { id: 'knuckle', shape: round([0, knuckle / 2], knuckle), axis: 'x', low: -l / 2, high: l / 2 },
    ],
    holes: pairOfRows(l, holes, [-row, row]),
    thickness: t,
    along: l,
    pin: knuckle / 2,
  };
}

function hasp(p: Of<'hasp'>): Body {
  const { width: w, strap, staple, thickness: t, reach, holes } = p;
  const tongue = w / 6;
  return {
    blocks: [
      plate('staple-plate', [-w / 2, -staple], [w / 2, 0], [0, t]),
      plate('staple', [-tongue / 2, -staple * 0.7], [tongue / 2, -staple * 0.3], [t, t + reach]),
      plate('strap', [-w / 2, 0], [w / 2, strap], [0, t]),
      plate('tongue', [-w / 4, -staple], [w / 4, strap / 2], [t, 2 * t]),
    ],
    holes: pairOfRows(w, holes, [-staple / 2, strap * 0.75]),
    thickness: t,
    along: w,
    pin: null,
  };
}

function handle(p: Of<'handle'>): Body {
  const { span, reach, grip: g, hole } = p;
  const ends = [-span / 2, span / 2];
  return {
    ...PLAIN,
    blocks: [
      ...ends.map((x, i) => plate(`leg-${i + 1}`, [x - g / 2, -g / 2], [x + g / 2, g / 2], [0, reach])),
      plate('grip', [-(span + g) / 2, -g / 2], [(span + g) / 2, g / 2], [reach, reach + g]),
    ],
    holes: ends.map((x) => ({ on: 0, at: [x, 0], diameter: hole, opening: openingOf(p, hole) })),
    thickness: 0,
  };
}

function rivetNut(p: Of<'rivet-nut'>, sheet: number): Body {
  const { hole, length, flange } = p;
  return {
    ...PLAIN,
    blocks: [
      disc('flange', flange ?? 1.4 * hole, [0, 1]),
      ...(length > sheet ? [disc('nut', hole, [-length, -sheet])] : []),
    ],
    holes: [{ on: 0, at: [0, 0], diameter: hole, opening: null }],
    thickness: 0,
  };
}

function magnet(p: Of<'magnet'>): Body {
  return {
    ...PLAIN,
    blocks: [disc('magnet', p.diameter, [0, p.height])],
    holes: p.hole === null ? [] : [{ on: 0, at: [0, 0], diameter: p.hole, opening: null }],
    thickness: p.height,
  };
}

function caster(p: Of<'caster'>): Body {
  const { length: l, width: w, height, wheel, holes } = p;
  const [x, y] = [holes.along / 2, holes.across / 2];
  const axle = height - wheel.diameter / 2;
  const fork = wheel.width / 2 + 4;
  return {
    ...PLAIN,
    blocks: [
      plate('plate', [-l / 2, -w / 2], [l / 2, w / 2], [0, PLATE]),
      plate('fork', [-fork, -fork], [fork, fork], [PLATE, Math.max(axle, 2 * PLATE)]),
      {
        id: 'wheel',
        shape: round([0, axle], wheel.diameter),
        axis: 'x',
        low: -wheel.width / 2,
        high: wheel.width / 2,
      },
    ],
    holes: [-x, x].flatMap((a) =>
      [-y, y].map((b) => ({
        on: 0 as const,
        at: [a, b] as const,
        diameter: holes.diameter,
        opening: openingOf(holes, holes.diameter),
      })),
    ),
    thickness: PLATE,
  };
}

interface Shaped {
  readonly shape: 'round' | 'square';
  readonly slot: number | null;
}

/** A slot, or a square as wide as the hole; null for a round one. */
function openingOf({ shape, slot }: Shaped, width: number): Loop | null {
  if (slot !== null && slot > width) return slotLoop(slot, width);
  return shape === 'square' ? roundedRectangle(width, width, 0) : null;
}

const PLATE = 3; // mm of a caster's plate; common practice, no source

const pairOfRows = (
  length: number,
  {
    diameter,
    count,
    edge,
    ...shape
  }: Shaped & { readonly diameter: number; readonly count: number; readonly edge: number | null },
  rows: readonly [number, number],
) =>
  rows.flatMap((y, on) =>
    holeRow(length, count, edge).map((x) => ({
      on: on as 0 | 1,
      at: [x - length / 2, y] as const,
      diameter,
      opening: openingOf(shape, diameter),
    })),
  );

function plate(id: string, [x, y]: Point, [u, v]: Point, [low, high]: Point): HardwareBlock {
  const shape: readonly Point[] = [
    [x, y],
    [u, y],
    [u, v],
    [x, v],
  ];
  return { id, shape, axis: 'z', low, high };
}

const disc = (id: string, diameter: number, [low, high]: Point): HardwareBlock => ({
  id,
  shape: round([0, 0], diameter),
  axis: 'z',
  low,
  high,
});

/** A circle as a polygon round it. */
function round([x, y]: Point, diameter: number): readonly Point[] {
  return Array.from({ length: SIDES }, (_, i): Point => {
    const a = (2 * Math.PI * (i + 0.5)) / SIDES;
    return [x + (diameter / 2) * Math.cos(a), y + (diameter / 2) * Math.sin(a)];
  });
}
