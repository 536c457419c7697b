import { leastEdges } from '../../plane/least-edges.js';
import { type Box, loopArea, loopBox, loopLength, segments } from '../../plane/loop.js';
import { distance } from '../../plane/point.js';
import type { FlatBend, FlatPattern } from './flat.js';
import { lineOnMetal } from './line-on-metal.js';

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
  const bends = flat.bends.map((b): FlatBend => ({ ...b, line: lineOnMetal(b.line, outline, edges) }));
  return { ...flat, outline, bends, area: flat.area - off, cutLength: flat.cutLength - shorter };
}

const sameBox = (a: Box, b: Box): boolean => distance(a.min, b.min) + distance(a.max, b.max) < 1e-6;
