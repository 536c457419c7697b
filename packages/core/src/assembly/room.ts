import type { Unsaid } from '../errors/finding.js';
import type { FormedPanel } from '../fold/formed.js';
import { add3, compose3, type Pose, place3, scale3, type Vec3 } from '../fold/space.js';
import type { Hole } from '../fold/tree.js';
import { contains, distanceToLoop } from '../plane/inside.js';
import type { Loop } from '../plane/loop.js';
import { distance, type Point } from '../plane/point.js';
import { type Fastener, type FastenerEnd, SAME_PLACE } from './fastener.js';
import { seenOn } from './overlap.js';
import type { Placed } from './types.js';

const WEB = 0.5; // mm of metal left round a hole; common practice, no source
const BESIDE = 0.25; // mm from a hole's rim to the point of metal that stands for it
const NEAR = 0.05; // mm such a point stays off rims and edges
const DIRECTIONS = 16;

/** What is cut in a panel of a part so far, by all its pieces: holes, and the points of metal told beside them. */
interface Cuts {
  readonly holes: Hole[];
  readonly told: FastenerEnd[];
}

/** Where a fastener meets a panel: the panel's outline, where it stands, what is cut in it. */
interface Ground extends Cuts {
  readonly part: string;
  readonly loop: Loop;
  readonly pose: Pose;
}

/**
 * Fasteners with the holes there is room for: one that would run into another of its part's pattern, or over the edge
 * of its panel, is left uncut and told. Beside every hole a point is found that lies on the metal of all its sheets;
 * pieces that share a hole share that point where they can.
 */
export function withRoom(
  fasteners: readonly Fastener[],
  placed: readonly Placed[],
): { readonly fasteners: readonly Fastener[]; readonly findings: readonly Unsaid[] } {
  const cuts = new Map<string, Cuts>();
  const crowded = new Map<string, Crowd>();
  const groundOf = ({ piece, panel }: FastenerEnd): Ground => {
    const { part, pose } = placed.find((p) => p.piece === piece) as Placed;
    const formed = part.formed.panels.find((p) => p.id === panel) as FormedPanel;
    const key = `${part.name}.${panel}`;
    const own = cuts.get(key) ?? { holes: [...formed.holes], told: [] };
    cuts.set(key, own);
    const loop = formed.shape.map((at) => ({ at, bulge: 0 }));
    return { part: part.name, loop, pose: compose3(pose, formed.pose), ...own };
  };
  const drilled = (end: FastenerEnd, joint: string): FastenerEnd => {
    if (end.hole === null) return end;
    const ground = groundOf(end);
    const hole = { at: end.at, diameter: end.hole };
    if (ground.holes.some((h) => distance(h.at, hole.at) < SAME_PLACE && h.diameter === hole.diameter))
      return end;
    if (clear(ground, hole.at, hole.diameter / 2 + WEB)) {
      ground.holes.push(hole);
      return end;
    }
    const key = `${joint}.${ground.part}`;
    crowded.set(key, { joint, part: ground.part, count: (crowded.get(key)?.count ?? 0) + 1 });
    return { ...end, hole: null };
  };
  const cut = fasteners.map((f) => ({ ...f, on: f.on.map((end) => drilled(end, f.joint)) }));
  return {
    // only once every hole is known
    fasteners: cut.map((f, i) => besideHole(f, fasteners[i] as Fastener, groundOf)),
    findings: [...crowded.values()].map(crowdFinding),
  };
}

/** True when `p` keeps `room` to every edge and hole of a panel. */
const clear = ({ loop, holes }: Ground, p: Point, room: number) =>
  contains(loop, p) &&
  distanceToLoop(p, loop) >= room &&
  holes.every((h) => distance(h.at, p) >= h.diameter / 2 + room);

const hasBeside = ({ at, beside }: FastenerEnd) => distance(at, beside) > SAME_PLACE;

/** The fastener with a point of metal beside its holes; those of parts that are made keep theirs. */
function besideHole(
  fastener: Fastener,
  { on: wanted }: Fastener,
  groundOf: (end: FastenerEnd) => Ground,
): Fastener {
  const largest = Math.max(0, ...wanted.map((e) => e.hole ?? 0));
  if (wanted.every(hasBeside) || (largest === 0 && !wanted.some(hasBeside))) return fastener;
  const ends = fastener.on.map((end) => ({ end, ground: groundOf(end) }));
  const known = ends.flatMap(({ end, ground: { pose, told } }) =>
    [end, ...told.filter((t) => distance(t.at, end.at) < SAME_PLACE)]
      .filter(hasBeside)
      .map(({ beside }): Vec3 => place3(pose, [...beside, 0])),
  );
  const { x, y } = (ends[0] as (typeof ends)[number]).ground.pose;
  const round = Array.from({ length: DIRECTIONS }, (_, i) => {
    const [turn, r] = [(2 * Math.PI * i) / DIRECTIONS, largest / 2 + BESIDE];
    return [x, y].reduce(
      (p, axis, k) => add3(p, scale3(axis, r * Math.cos(turn - (k * Math.PI) / 2))),
      fastener.at,
    );
  });
  const onMetal = (at: Vec3) => ends.every(({ ground }) => clear(ground, seenOn(ground, at), NEAR));
  const at = [...known, ...round].find(onMetal) ?? fastener.at;
  const on = ends.map(({ end, ground }) => {
    const found = { ...end, beside: seenOn(ground, at) };
    ground.told.push(found);
    return found;
  });
  return { ...fastener, on };
}

interface Crowd {
  readonly joint: string;
  readonly part: string;
  readonly count: number;
}

function crowdFinding({ joint, part, count }: Crowd): Unsaid {
  return {
    code: 'hole-crowded',
    severity: 'warning',
    part,
    value: count,
    limit: 0,
    unit: '',
    message: `joint ${joint}: ${part} has no room for ${count === 1 ? 'a hole' : `${count} holes`} beside its edges and other holes; marked, not cut`,
    source: 'computed; common practice, no source',
    fix: 'drill through the other part, or ask for the same count at each piece',
  };
}
