import { type FlatBend, type FlatPattern, outsideSetback, type Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import type { Brake } from '../machines/shop.js';
import type { BendStep } from '../sequence/answer/plan.js';
import { placed, type ReplayMachine, type ReplayTool } from './setup.js';
import { type Along, bar, box, EVERYWHERE, leftOf, stands } from './tool-solids.js';

const REAR_STOP = 30; // mm of it along the line; judgement

/** A leaf brake: the hinge at the origin, the free side turning with the leaf. */
export function leafBrake(brake: Brake): ReplayMachine {
  return (flat, step, bends, share) => {
    const bend = bends[0] as FlatBend;
    const s = step.setBack ?? (brake.setBack[0] as number) * flat.thickness;
    const closing = step.action === 'close';
    // while a hem is closed its fold lies at the nose, or as far behind it as the hem is wide
    const leg = closing && step.heldSide === 'child' ? legOf(flat, bend) : 0;
    const place = placed(
      step,
      bend,
      flat.thickness,
      closing ? s + leg : hinge(step, bend, { thickness: flat.thickness, s }),
    );
    const turn = closing ? 0 : radians(step.angle) * share;
    return { place, tools: tools(step, bends, brake, { thickness: flat.thickness, s, turn }, place) };
  };
}

/** How far the hinge lies in front of the held tangent line: where the outer faces meet, for a fold a set-back off its line. */
function hinge(
  { action, angle }: BendStep,
  bend: FlatBend,
  at: { readonly thickness: number; readonly s: number },
): number {
  if (action === 'fold') return at.s;
  const outside = outsideSetback({ ...bend, thickness: at.thickness });
  return angle > 90 ? outside * Math.tan(radians(angle) / 2) : outside;
}

function tools(
  step: BendStep,
  bends: readonly FlatBend[],
  brake: Brake,
  { thickness, s, turn }: { readonly thickness: number; readonly s: number; readonly turn: number },
  place: Parameters<typeof stands>[2],
): readonly ReplayTool[] {
  const { foot, upright, noseAngle } = brake.finger;
  const rise = Math.min(upright * Math.tan(radians(noseAngle)), brake.clearHeight);
  const top = thickness + brake.clearHeight;
  const nose: readonly Point[] = [
    [-s - foot, thickness],
    [-s, thickness],
    [-s - upright, thickness + rise],
    [-s - foot, thickness + rise],
  ];
  const still = { clamps: true, turns: false };
  const high = box(-s - brake.beam - 300, top, -s - brake.beam, top + 300);
  return [
    { id: 'bed', prisms: [bar(box(-brake.bed, -300, 0, 0), EVERYWHERE)], ...still },
    { id: 'beam', prisms: [bar(high, EVERYWHERE)], clamps: false, turns: false },
    {
      id: 'leaf',
      prisms: [bar(spun(box(0, -40, brake.leaf.width, 0), turn), EVERYWHERE)],
      clamps: true,
      turns: true,
    },
    {
      id: 'fingers',
      prisms: stands(step, bends, place).flatMap((g) => [
        bar(nose, g),
        bar(box(-s - foot, thickness + rise, -s - upright, top), g),
      ]),
      ...still,
    },
    ...rearStop(step, brake, s, leftOf(bends, place)),
  ];
}

/** The rear stop where it is said to touch, as far as its height is known. */
function rearStop(
  { stopDistance, touches }: BendStep,
  { rearStopHeight }: Brake,
  setBack: number,
  left: number,
): readonly ReplayTool[] {
  if (rearStopHeight === null || stopDistance === null || touches === null) return [];
  const front = -setBack - stopDistance;
  const along: Along = [left + touches.at - REAR_STOP / 2, left + touches.at + REAR_STOP / 2];
  const prisms = [bar(box(front - 300, 0, front, rearStopHeight), along)];
  return [{ id: 'rear stop', prisms, clamps: false, turns: false }];
}

const spun = (section: readonly Point[], turn: number) =>
  section.map(
    ([x, z]): Point => [x * Math.cos(turn) - z * Math.sin(turn), x * Math.sin(turn) + z * Math.cos(turn)],
  );

/** Outside leg of a hem. */
function legOf(flat: FlatPattern, bend: FlatBend): number {
  const shape = flat.panels.find((p) => p.id === bend.id)?.shape ?? [];
  const [[a, b]] = [bend.tangents[1]];
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const far = shape.map((p) => Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / l);
  return Math.max(...far) + outsideSetback({ ...bend, thickness: flat.thickness });
}
