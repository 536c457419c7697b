import type { Refusal } from '../../errors/problem.js';
import type { Lookup } from './lookup.js';
import { type HalfPlane, inside } from './outline.js';
import type { Bend, Draft, EdgeFold, Outline, Panel } from './tree.js';

/** Least metal left between two bends, along a bend and beside a hole or slot, mm. Common practice, no source. */
export const LEAST_METAL = 0.5;

const ROUND = 1e-9; // mm

/** At least, with room for rounding. mm */
export const reaches = (value: number, least: number): boolean => value >= least - ROUND;

/**
 * Legs too short for the bends at their ends: what is left straight is less than `LEAST_METAL`. More than that a shop
 * may want, and its checks say so.
 */
export function shortLegs(draft: Draft, lookup: Lookup): readonly Refusal[] {
  const refused: Refusal[] = [];
  for (const panel of draft.panels) {
    const bent = bentEdges(panel, lookup.bends(panel));
    bent.forEach((edge, i) => {
      const { x, y } = edge.half;
      const next = bent.find((o) => x * o.half.x + y * o.half.y < -SQUARE);
      if (next !== undefined && bent.indexOf(next) < i) return; // told from its other end
      // the leg of a hem or a roll that ends free is the verb's to say
      if (next === undefined && edge.finish !== null && panel.bend?.hem === edge.finish) return;
      const least = edge.setback + (next?.setback ?? 0) + LEAST_METAL;
      if (!reaches(depthOf(panel.outline, edge.half), least))
        refused.push(short(panel, Math.abs(x) > Math.abs(y) ? 0 : 1, least));
    });
  }
  return refused;
}

/** A bent edge: the side of it that its panel lies on, and what the bend takes of the panel. mm */
interface BentEdge {
  readonly half: HalfPlane;
  readonly setback: number;
  readonly finish: EdgeFold | null;
}

function bentEdges({ outline }: Panel, bends: readonly (Bend | null)[]): readonly BentEdge[] {
  const bent: BentEdge[] = [];
  bends.forEach((bend, i) => {
    if (bend !== null) bent.push({ half: inside(outline, i, 0), setback: bend.setback, finish: bend.hem });
  });
  return bent;
}

/** How far an outline reaches into a half plane, mm. */
function depthOf(outline: Outline, { x, y, c }: HalfPlane): number {
  let depth = -Infinity;
  for (const { from } of outline) depth = Math.max(depth, x * from[0] + y * from[1] - c);
  return depth;
}

const SQUARE = 1 - 1e-9;

function short({ id, by }: Panel, axis: 0 | 1, least: number): Refusal {
  const message: Refusal['message'] = (say) =>
    `panel "${id}" has to reach past its bends, which take ${say.least(least)}`;
  return { code: 'leg-short', path: by[axis], message, fix: '' };
}

/** Leg of a panel: from its bend's mould line to its far edge, the shortest where that slants. mm */
export function legOf({ outline }: Panel): number {
  const far = outline.flatMap((e, i) =>
    e.name === 'far' ? [e.from[1], (outline[(i + 1) % outline.length] ?? e).from[1]] : [],
  );
  return far.length > 0 ? Math.min(...far) : Math.max(...outline.map((e) => e.from[1]));
}
