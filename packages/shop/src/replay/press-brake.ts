import type { FlatBend, Point } from '@tinwright/core';
import { type Prism, radians } from '@tinwright/core/internal';
import type { Die, Horns, Press, PressTool } from '../machines/shop.js';
import type { BendStep } from '../sequence/answer/plan.js';
import { after } from './rigid.js';
import { placed, type ReplayMachine, type ReplayTool } from './setup.js';
import { ears } from './solids.js';
import { type Along, bar, box, EVERYWHERE, leftOf, stands } from './tool-solids.js';

/** A press brake: the punch's point at the origin, both sides of the line rising by half the angle. */
export function pressBrake(press: Press): ReplayMachine {
  return (flat, step, bends, share) => {
    const bend = bends[0] as FlatBend;
    const { thickness } = flat;
    const half = step.action === 'close' ? 0 : (radians(step.angle) * share) / 2;
    // where the inner faces of both sides meet, before the tangent line by the radius and half the turn
    const corner = bend.insideRadius * Math.tan(half);
    const lying = placed(step, bend, thickness, corner);
    const down = { m: IDENTITY, t: [0, 0, -thickness] as const };
    const place = after({ m: raised(half), t: [0, 0, 0] }, after(down, lying));
    const punch = press.punches.find((p) => p.name === step.press?.punch);
    const die = press.dies.find((d) => d.name === step.press?.die);
    const where = stands(step, bends, lying);
    const still = { clamps: true, turns: false };
    const { half: wide, height } = press.ram;
    const tools: readonly ReplayTool[] = [
      {
        id: 'ram',
        prisms: [bar(box(-wide, height, wide, height + 300), EVERYWHERE)],
        clamps: false,
        turns: false,
      },
      { id: 'punch', prisms: punchSolids(punch, where, step.press?.horns ?? null), ...still },
      {
        id: 'die',
        prisms: (die?.sectioned === true ? where : [EVERYWHERE]).flatMap((g) =>
          solid(die, shoulder(die?.opening ?? 0, half, thickness), g),
        ),
        ...still,
      },
      {
        id: 'bed',
        prisms: [bar(bedUnder(press, die, shoulder(die?.opening ?? 0, half, thickness)), EVERYWHERE)],
        ...still,
      },
      ...gauge(press, step, {
        bend,
        half,
        share,
        left: leftOf(bends, lying),
        top: shoulder(die?.opening ?? 0, half, thickness),
      }),
    ];
    return { place, tools: step.action === 'close' ? [] : tools };
  };
}

/** What the die stands on. */
function bedUnder({ bed: { half } }: Press, die: Die | undefined, up: number): readonly Point[] {
  const foot = up + Math.min(0, ...(die?.section ?? []).map((p) => p[1]));
  return box(-half, foot - 300, half, foot);
}

/** A finger of the back gauge where it is said to touch; it rises with the die. */
function gauge(
  { backGauge: { finger }, dies }: Press,
  { press, touches }: BendStep,
  {
    bend,
    half,
    share,
    left,
    top,
  }: {
    readonly bend: FlatBend;
    readonly half: number;
    readonly share: number;
    readonly left: number;
    readonly top: number;
  },
): readonly ReplayTool[] {
  if (press === null || press.gauge === null || touches === null) return [];
  const { over, under, length, width } = finger;
  const rear = Math.min(...(dies.find((d) => d.name === press.die)?.section ?? []).map((p) => p[0]));
  const low = top + (-press.gauge > rear ? 0 : -under);
  // metal of the bend that is not wound up yet is no part of the panels here
  const front = -press.gauge + (bend.zone / 2) * (1 - share) * Math.cos(half);
  const along: Along = [left + touches.at - width / 2, left + touches.at + width / 2];
  const pieces = [
    box(front - length, low, front, top + over),
    box(front - length - 300, top - 300, front - length, top + over),
  ];
  return [{ id: 'back gauge', prisms: pieces.map((p) => bar(p, along)), clamps: false, turns: false }];
}

const IDENTITY = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const;

/** The held side, behind the line, rises. */
function raised(half: number): Parameters<typeof after>[0]['m'] {
  const [c, s] = [Math.cos(half), Math.sin(half)];
  return [
    [c, 0, s],
    [0, 1, 0],
    [-s, 0, c],
  ];
}

/** Top of the die under the punch's point: its shoulders touch the underside of the sheet. */
const shoulder = (opening: number, half: number, thickness: number): number =>
  (opening / 2) * Math.tan(half) - thickness / Math.cos(half);

/** A punch, between its ends whole; over the feet of horns only what is lower than the gap over them, or higher. */
function punchSolids(
  punch: PressTool | undefined,
  where: readonly Along[],
  horns: Horns | null,
): readonly Prism[] {
  if (horns === null) return where.flatMap((g) => solid(punch, 0, g));
  const { reach, foot, height } = horns;
  const [left, right] = [where[0]?.[0] ?? 0, where.at(-1)?.[1] ?? 0];
  const feet: readonly Along[] = [
    [left, left + reach],
    [right - reach, right],
  ];
  const whole = where.flatMap(([a, b]) =>
    solid(punch, 0, [Math.max(a, left + reach), Math.min(b, right - reach)]),
  );
  const ends = ears(counterClockwise(punch?.section ?? [])).flatMap((piece) =>
    [clipped(piece, -1, foot), clipped(piece, 1, height)].filter((p) => p.length > 2),
  );
  return [...whole, ...feet.flatMap((g) => ends.map((piece) => bar(piece, g)))];
}

/** What of a convex outline lies under a height, or with `side` 1 over it. */
function clipped(piece: readonly Point[], side: 1 | -1, at: number): readonly Point[] {
  const inside = (p: Point) => side * (p[1] - at) >= 0;
  return piece.flatMap((p, i) => {
    const q = piece[(i + 1) % piece.length] as Point;
    const share = (at - p[1]) / (q[1] - p[1]);
    const cut: readonly Point[] = inside(p) === inside(q) ? [] : [[p[0] + share * (q[0] - p[0]), at]];
    return [...(inside(p) ? [p] : []), ...cut];
  });
}

function solid(tool: PressTool | undefined, up: number, along: Along): readonly Prism[] {
  const section = (tool?.section ?? []).map(([x, z]): Point => [x, z + up]);
  return ears(counterClockwise(section)).map((piece) => bar(piece, along));
}

function counterClockwise(section: readonly Point[]): readonly Point[] {
  const area = section.reduce((s, p, i) => {
    const q = section[(i + 1) % section.length] as Point;
    return s + p[0] * q[1] - q[0] * p[1];
  }, 0);
  return area < 0 ? section.toReversed() : section;
}
