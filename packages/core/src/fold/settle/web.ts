import type { Path, Refusal } from '../../errors/problem.js';
import { contains, distanceToSegment } from '../../plane/inside.js';
import { distance, type Point } from '../../plane/point.js';
import { LEAST_METAL, reaches } from '../draft/least.js';
import type { Lookup } from '../draft/lookup.js';
import type { Bend, Draft, Edge, Outline, Panel } from '../draft/tree.js';

const NOBODY: readonly Path[] = [[], []];

/**
 * Holes and slots beside which less than `LEAST_METAL` would be left: to an edge, to where a bend starts, to each other.
 * More than that a shop may want, and its checks say so.
 */
export function thinWebs(draft: Draft, lookup: Lookup): readonly Refusal[] {
  const pierced = draft.panels.filter((p) => p.holes.length + p.slots.length > 0).map(withoutAsked);
  return pierced.flatMap((panel) => {
    const edges = edgesOf(panel, lookup.bends(panel));
    return [...holesNearEdges(panel, edges), ...holesNearHoles(panel), ...slots(panel, edges)];
  });
}

/** Openings that the job asks for are looked at once the corners are cut. */
const withoutAsked = (panel: Panel): Panel =>
  panel.holes.some((h) => h.asked !== undefined)
    ? { ...panel, holes: panel.holes.filter((h) => h.asked === undefined) }
    : panel;

/** An edge, and how far the bend on it reaches into the panel. mm */
interface Side {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly bend: number;
  /** Axis of the panel across it. */
  readonly across: 0 | 1;
}

function edgesOf({ outline }: Panel, bends: readonly (Bend | null)[]): readonly Side[] {
  return outline.map(({ name, from }, i): Side => {
    const to = (outline[(i + 1) % outline.length] as Edge).from;
    const across = Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]) ? 0 : 1;
    return { name, from, to, bend: bends[i]?.setback ?? 0, across };
  });
}

/** Metal between a point and an edge, or where the bend on it starts; less than none outside. */
function metal(p: Point, { from, to, bend }: Side, outline: Outline): number {
  const away = distanceToSegment(p, { from, to, bulge: 0 });
  const within = contains(
    outline.map((e) => ({ at: e.from, bulge: 0 })),
    p,
  );
  return (within ? away : -away) - bend;
}

function holesNearEdges(panel: Panel, edges: readonly Side[]): readonly Refusal[] {
  return panel.holes.flatMap(({ at, diameter, by }) =>
    edges.flatMap((edge): readonly Refusal[] => {
      if (reaches(metal(at, edge, panel.outline), diameter / 2 + LEAST_METAL)) return [];
      const [own, size] = [(by?.at ?? NOBODY)[edge.across] as Path, by?.diameter ?? []];
      return [thin(own.length > 0 ? own : size, besideEdge(panel.id, edge))];
    }),
  );
}

function holesNearHoles({ id, holes }: Panel): readonly Refusal[] {
  return holes.flatMap((a, i) =>
    holes.slice(0, i).some((b) => !reaches(distance(a.at, b.at), (a.diameter + b.diameter) / 2 + LEAST_METAL))
      ? [thin(a.by?.diameter ?? [], `too little metal would be left between the holes of panel "${id}"`)]
      : [],
  );
}

function slots(panel: Panel, edges: readonly Side[]): readonly Refusal[] {
  return panel.slots.flatMap(({ corners, by }) =>
    edges.flatMap((edge): readonly Refusal[] => {
      const beside = corners.some((c) => distance(c, edge.from) === 0 || distance(c, edge.to) === 0);
      if (beside) return [];
      const least = Math.min(...corners.map((c) => distanceToSegment(c, { ...edge, bulge: 0 })));
      if (reaches(least - edge.bend, LEAST_METAL)) return [];
      return [thin(edge.across === by.axis ? by.at : by.depth, besideEdge(panel.id, edge))];
    }),
  );
}

const besideEdge = (id: string, { name, bend }: Side): string =>
  bend > 0
    ? `too near the bend at edge "${name}" of panel "${id}"`
    : `too little metal would be left to edge "${name}" of panel "${id}"`;

const thin = (path: Path, message: string): Refusal => ({ code: 'web-thin', path, message, fix: '' });
