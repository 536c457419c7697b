import type { Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import type { BackGauge, Brake, Die } from '../../machines/shop.js';
import type { Convex } from '../../sweep/polygon.js';
import { fingerSection, REAR_STOP_WIDTH, rearStopSection } from '../../tools/stop-tools.js';
import { type FoldTree, foldedTurn, type TreeBend } from '../part/fold-tree.js';
import type { LineFrame } from '../part/line.js';
import type { LineStroke } from '../part/operations.js';
import type { StopBody } from './stop-room.js';

const MOMENTS = 8; // of a stroke looked at

/** A stroke on a press, as its back gauge sees it. */
export interface GaugedStroke {
  readonly tree: FoldTree;
  readonly frame: LineFrame;
  readonly operation: LineStroke;
  readonly bend: TreeBend;
  readonly overbend: number;
}

/** The rear stop of a leaf brake: what is held lies still. */
export function rearStopBody(
  { rearStopHeight }: Pick<Brake, 'rearStopHeight'>,
  { reach }: LineFrame,
): StopBody | null {
  if (rearStopHeight === null) return null;
  return {
    width: REAR_STOP_WIDTH,
    against: ({ distance }) => rearStopSection(rearStopHeight, -reach.held - distance),
    reach: ({ distance }) => reach.held + distance,
    moments: ({ section }, moves) => (moves ? [] : [section]),
  };
}

/** A finger of a back gauge: it stands still with the die, while both sides of the line rise and draw in. */
export function gaugeBody({ finger }: BackGauge, die: Die, stroke: GaugedStroke): StopBody {
  const { tree, frame, bend } = stroke;
  const half = bend.allowance / 2;
  const moments = momentsOf(stroke, die);
  const slack = 2 * tree.thickness + bend.insideRadius + Math.max(frame.reach.held, frame.reach.free);
  return {
    width: finger.width,
    against: ({ distance }) => fingerSection(finger, die, distance + half),
    reach: ({ distance }) => distance - slack,
    moments: ({ section }, moves) => {
      // outwards from the punch line, up from the underside of the sheet as it lies on the die
      const side = section.map(([x, z]): Point => {
        const out = moves ? x - frame.reach.free : -frame.reach.held - x;
        return [out + half, z];
      });
      return moments.map((m) => m(side, moves));
    },
  };
}

/** A section of a side, outwards from the punch line, as it stands then in the frame of the die. */
type Moment = (side: readonly Point[], moves: boolean) => Convex;

/** A side of the line at every moment of a stroke, in the frame of the die. */
function momentsOf({ tree, operation, bend, overbend }: GaugedStroke, { opening }: Die): readonly Moment[] {
  const T = tree.thickness;
  const fold = operation.action === 'fold' ? foldedTurn(tree, bend) : null;
  const through = fold === null ? Math.abs(operation.angle) : Math.abs(fold.turn.angle);
  const R = fold?.turn.insideRadius ?? bend.insideRadius;
  const metal = bend.allowance - (fold?.left ?? 0);
  const most = fold === null ? through + overbend : through;
  return Array.from({ length: MOMENTS + 1 }, (_, i) => {
    const h = radians((most * i) / MOMENTS) / 2;
    const wound = (metal / 2) * Math.min(1, (2 * h) / radians(through));
    const [c, s] = [Math.cos(h), Math.sin(h)];
    const up = R * (1 - c) - shoulderAt(opening / 2, R, T, h);
    return (side, moves) =>
      side.map(([out, z]): Point => {
        const [a, b] = [out - wound, z - T];
        return [(a * c - b * s + R * s) * (moves ? 1 : -1), a * s + b * c + up];
      });
  });
}

/** Height of the top of a die under the point of the punch: its shoulders touch the underside of the sheet. mm */
function shoulderAt(v: number, R: number, T: number, h: number): number {
  const [x, z] = [R * Math.sin(h), R * (1 - Math.cos(h))];
  if (v < (R + T) * Math.sin(h)) return R - Math.sqrt((R + T) ** 2 - v ** 2);
  return z + (v - x) * Math.tan(h) - T / Math.cos(h);
}
