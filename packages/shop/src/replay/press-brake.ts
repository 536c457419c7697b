import type { FlatBend, Point } from '@tinwright/core';
import { type Prism, radians } from '@tinwright/core/internal';
import type { Press, PressTool } from '../machines/shop.js';
import { after } from './rigid.js';
import { placed, type ReplayMachine, type ReplayTool } from './setup.js';
import { ears } from './solids.js';
import { type Along, bar, box, EVERYWHERE, stands } from './tool-solids.js';

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
      { id: 'punch', prisms: where.flatMap((g) => solid(punch, 0, g)), ...still },
      {
        id: 'die',
        prisms: (die?.sectioned === true ? where : [EVERYWHERE]).flatMap((g) =>
          solid(die, shoulder(die?.opening ?? 0, half, thickness), g),
        ),
        ...still,
      },
    ];
    return { place, tools: step.action === 'close' ? [] : tools };
  };
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

function solid(tool: PressTool | undefined, up: number, along: Along): readonly Prism[] {
  const section = (tool?.section ?? []).map(([x, z]): Point => [x, z + up]);
  const area = section.reduce((s, p, i) => {
    const q = section[(i + 1) % section.length] as Point;
    return s + p[0] * q[1] - q[0] * p[1];
  }, 0);
  return ears(area < 0 ? section.toReversed() : section).map((piece) => bar(piece, along));
}
