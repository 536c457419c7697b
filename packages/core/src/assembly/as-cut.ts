import { compose3, type Pose, place3 } from '../fold/draft/space.js';
import type { FormedPanel } from '../fold/formed/formed.js';
import type { Part } from '../fold/settle/part.js';
import { boxOf } from '../plane/loop.js';
import { mix, ORIGIN, type Point, sub } from '../plane/point.js';
import type { AssemblyPart, Placed } from './types.js';

/**
 * From where the pattern has what was cut on a panel to where it lies on the part as it was found, in the panel's frame,
 * mm. Where along a measured size the part came out longer or shorter is not known: what was cut is taken to lie about
 * the middle, so that it is off by half the difference at most, and by the same on opposite walls.
 */
export function cutShift({ drawn, part }: Pick<AssemblyPart, 'drawn' | 'part'>, panel: string): Point {
  if (drawn === part) return ORIGIN;
  const [was, is] = [middleOf(drawn, panel), middleOf(part, panel)];
  return was === null || is === null ? ORIGIN : sub(is, was);
}

/** Where a panel's frame stands in the assembly as its pattern has it: what was cut at a point of it lies there. */
export function cutPose({ part, pose }: Pick<Placed, 'part' | 'pose'>, panel: string): Pose {
  const { pose: own } = part.formed.panels.find((p) => p.id === panel) as FormedPanel;
  const stands = compose3(pose, own);
  const [x, y] = cutShift(part, panel);
  return x === 0 && y === 0 ? stands : { ...stands, origin: place3(stands, [x, y, 0]) };
}

function middleOf({ panels }: Part, id: string): Point | null {
  const outline = panels.find((p) => p.id === id)?.outline;
  if (outline === undefined) return null;
  const { min, max } = boxOf(outline.map((e) => e.from));
  return mix(min, max, 0.5);
}
