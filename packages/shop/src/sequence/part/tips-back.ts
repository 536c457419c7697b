import { place3 } from '@tinwright/core/internal';
import { type LineFrame, poseInMachine } from './line.js';
import type { Work } from './operations.js';

/** Of sheet in front of a punch by which hands hold it, mm; common practice, no source. */
const HOLD = 50;
/** Behind it, mm: a part that reaches less far lies on the die well enough; judgement. */
const SMALL = 100;

/**
 * True where most of a part lies behind the punch and too little in front to hold it by: it would tip off the die. Told by
 * the flat, which reaches as far as the part does or further.
 */
export function tipsBack(work: Work, frame: LineFrame): boolean {
  const reach = [0, 0];
  for (const [panel, { panel: flat }] of work.tree.panels.entries()) {
    const pose = poseInMachine(work, frame, { kind: 'panel', panel }, () => 'flat');
    const side = frame.moves[panel] === true ? 0 : 1;
    for (const e of flat.shape) {
      const [x] = place3(pose, [...e.from, 0]);
      reach[side] = Math.max(reach[side] as number, side === 0 ? x : -x);
    }
  }
  const [front, behind] = reach as [number, number];
  return front < HOLD && behind > SMALL && !frame.swings;
}
