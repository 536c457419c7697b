import type { Loop, Point } from '@tinwright/core';
import { distanceToLoop, loopArea } from '@tinwright/core/internal';
import type { NestPart } from '../nest/ask.js';
import type { NestPiece } from '../nest/result.js';
import { reversed } from '../outline/around.js';
import type { Contour } from './contour.js';
import type { CutRemark } from './cut-findings.js';
import { offsetLoop } from './offset-loop.js';

/** A cut before it has a beginning: what it should go round, and how it goes. */
export interface Raw {
  readonly piece: string;
  readonly kind: Contour['kind'];
  readonly drawn: Loop;
  readonly path: Loop;
}

/** The cuts of a piece, holes first, and what a cut so wide cannot reach. */
export function rawCuts(
  piece: NestPiece,
  part: NestPart,
  kerf: number,
): { raws: readonly Raw[]; remarks: readonly CutRemark[] } {
  const [a, b, c, d, e, f] = piece.matrix;
  const laid = (loop: Loop): Loop =>
    loop.map(({ at: [x, y], bulge }) => ({ at: [a * x + c * y + e, b * x + d * y + f], bulge }));
  const remarks: CutRemark[] = [];
  const raws: Raw[] = [];
  const add = (kind: Raw['kind'], loop: Loop, by: number) => {
    const drawn = laid(loop);
    const paths = offsetLoop(drawn, by).filter((p) => loopArea(p) > 0);
    const path = paths.reduce<Loop | undefined>(
      (best, p) => (best === undefined || loopArea(p) > loopArea(best) ? p : best),
      undefined,
    );
    if (path === undefined)
      remarks.push({
        code: 'hole-closes',
        piece: piece.id,
        at: (drawn[0] as Loop[number]).at,
        value: widthOf(drawn),
        limit: kerf,
      });
    else raws.push({ piece: piece.id, kind, drawn, path: kind === 'outline' ? reversed(path) : path });
    const missed = path && unreached(drawn, path, Math.abs(by));
    if (missed)
      remarks.push({
        code: 'slot-closes',
        piece: piece.id,
        at: missed,
        value: 2 * distanceToLoop(missed, path),
        limit: kerf,
      });
  };
  for (const hole of part.holes) add('hole', hole, -kerf / 2);
  add('outline', part.outline, kerf / 2);
  return { raws, remarks };
}

/** A corner of a drawn line that a torch cannot come near: much further from its path than a sharp corner leaves. */
function unreached(drawn: Loop, path: Loop, by: number): Point | undefined {
  return drawn.map((v) => v.at).find((p) => by > 0 && distanceToLoop(p, path) > 3 * by);
}

/** The lesser extent of a hole, mm. */
export function widthOf(loop: Loop): number {
  const xs = loop.map((v) => v.at[0]);
  const ys = loop.map((v) => v.at[1]);
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
