import type { FlatBend, FlatPattern, Point, Vec3 } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { after, type Rigid, STILL, spin } from './rigid.js';

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
export function folded(
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

/** Panels that are on the other side of the bends from the one that is held. */
export function movingPanels(flat: FlatPattern, root: string, bends: readonly string[]): ReadonlySet<string> {
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
