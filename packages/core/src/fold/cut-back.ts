import { contains } from '../plane/inside.js';
import { leastEdges } from '../plane/least-edges.js';
import { type Box, type Loop, loopArea, loopBox, loopLength, type Segment, segments } from '../plane/loop.js';
import { meetings } from '../plane/meet.js';
import { distance, mix, type Point } from '../plane/point.js';
import type { FlatBend, FlatPattern, Line } from './flat.js';

/** Who follows the outlines: snips and shears, or a cutting table. */
export type CutTool = 'hand' | 'table';

/**
 * What outlines are cut with: by hand they stay as the corners make them; for a table no straight edge stays under
 * `leastEdge`, mm, where taking metal off can help.
 */
export type CutBy = { readonly by: 'hand' } | { readonly by: 'table'; readonly leastEdge: number };

/**
 * A pattern without straight edges of its outline under `least`, mm, as far as taking metal off can help (`leastEdges`),
 * its bend lines no longer than the metal that is left. The pattern itself where nothing is to be done. What is formed
 * of it is what was formed before, less slivers no wider than about `least` at its corners.
 */
export function cutBack(flat: FlatPattern, least: number): FlatPattern {
  const outline = leastEdges(flat.outline, least);
  if (outline === flat.outline || !sameBox(loopBox(outline), loopBox(flat.outline))) return flat;
  const off = loopArea(flat.outline) - loopArea(outline);
  const shorter = loopLength(flat.outline) - loopLength(outline);
  const edges = segments(outline);
  const bends = flat.bends.map((b): FlatBend => ({ ...b, line: within(b.line, outline, edges) }));
  return { ...flat, outline, bends, area: flat.area - off, cutLength: flat.cutLength - shorter };
}

const sameBox = (a: Box, b: Box): boolean => distance(a.min, b.min) + distance(a.max, b.max) < 1e-6;

/** A line whose ends are brought back onto the outline where they lie beyond it. */
function within(line: Line, outline: Loop, edges: readonly Segment[]): Line {
  const middle = mix(line[0], line[1], 0.5);
  const end = (p: Point): Point => {
    if (contains(outline, mix(p, middle, 1e-4))) return p;
    const met = edges.flatMap((e) => meetings({ from: p, to: middle, bulge: 0 }, e));
    return met.reduce((near, q) => (distance(q, middle) < distance(near, middle) ? q : near), p);
  };
  return [end(line[0]), end(line[1])];
}
