import { polygonArea } from '../../plane/convex.js';
import { loopArea } from '../../plane/loop.js';
import { radians } from '../../units/angle.js';
import { bent } from '../draft/hinge.js';
import { homePose, type Pose, sub3 } from '../draft/space.js';
import { holesOf, type Part, type PartPanel } from '../settle/part.js';
import { boxOfPieces } from './extent.js';
import type { Formed, FormedBend, FormedPanel } from './formed.js';

/**
 * Fold a part: every panel's pose and every bend as a piece of a hollow cylinder, with the extent they fill.
 * Units mm. Frame: the first panel's, unmarked face at z = 0, marked face at z = T.
 */
export function form(part: Part): Formed {
  const { thickness } = part.sheet;
  const poses = new Map<string, Pose>();
  const bends: FormedBend[] = [];
  const panels = part.panels.map((p): FormedPanel => {
    const { id, shape, hang } = p;
    const stands = hang === null ? null : bentBy(hang, poses, thickness);
    const pose = stands?.pose ?? homePose();
    poses.set(id, pose);
    if (hang !== null && stands !== null) bends.push(bendPiece(id, hang, stands.axis, thickness));
    return {
      id,
      pose,
      shape: shape.map((e) => e.from),
      edges: shape.map((e) => e.name),
      holes: holesOf(p),
      cutouts: p.cutouts.map((c) => c.loop),
    };
  });
  const box = boxOfPieces(panels, bends, thickness);
  return {
    thickness,
    panels,
    bends,
    box,
    size: sub3(box.max, box.min),
    volume: volumeOf(panels, bends, thickness),
  };
}

type Hang = NonNullable<PartPanel['hang']>;

function bentBy({ bend, hinge }: Hang, poses: ReadonlyMap<string, Pose>, thickness: number) {
  const turn = { angle: bend.angle, insideRadius: bend.insideRadius, setback: bend.metal.setback };
  return bent(poses.get(bend.parent) as Pose, hinge, turn, thickness);
}

const bendPiece = (id: string, { bend, zone }: Hang, axis: Pose, thickness: number): FormedBend => ({
  id,
  parent: bend.parent,
  frame: axis,
  sweep: radians(Math.abs(bend.angle)),
  insideRadius: bend.insideRadius,
  outsideRadius: bend.insideRadius + thickness,
  low: [zone.parentSide[0], zone.childSide[0]],
  high: [zone.parentSide[1], zone.childSide[1]],
});

const holeArea = ({ holes, cutouts }: FormedPanel) =>
  holes.reduce((s, h) => s + (Math.PI * h.diameter ** 2) / 4, 0) +
  cutouts.reduce((s, loop) => s + loopArea(loop), 0);
const midLength = (b: FormedBend) => (b.high[0] - b.low[0] + b.high[1] - b.low[1]) / 2;

function volumeOf(panels: readonly FormedPanel[], bends: readonly FormedBend[], thickness: number): number {
  const flat = panels.reduce((s, p) => s + (polygonArea(p.shape) - holeArea(p)) * thickness, 0);
  return bends.reduce((s, b) => {
    const ring = (b.outsideRadius ** 2 - b.insideRadius ** 2) / 2;
    return s + ring * b.sweep * midLength(b);
  }, flat);
}
