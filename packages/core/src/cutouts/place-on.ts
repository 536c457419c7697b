import { suggestion } from '../errors/nearest.js';
import { fail, JobError } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import type { Edge, Outline } from '../fold/draft/tree.js';
import { boxOf } from '../plane/loop.js';
import { add, cross, mix, outward, type Point, scale, sub, unit } from '../plane/point.js';

/**
 * The point of a panel that lies so far from its edges, in its frame: from none the middle, from one at the middle of
 * that edge, from two where both hold. mm
 * @throws JobError for edges the panel does not have, that run side by side, or are too many
 */
export function placeOn(panel: string, outline: Outline, from: Readonly<Record<string, number>>): Point {
  const lines = Object.entries(from).map(([name, off]) => lineOff(panel, outline, name, off));
  const [a, b, c] = lines;
  if (c !== undefined)
    return fail('place-edges', ['from'], `${lines.length} edges given, two say where it is`, 'Leave one out');
  if (a === undefined) {
    const { min, max } = boxOf(outline.map((e) => e.from));
    return mix(min, max, 0.5);
  }
  if (b === undefined) return a.middle;
  const turn = cross(a.along, b.along);
  if (Math.abs(turn) < LEVEL)
    return fail(
      'place-edges',
      ['from'],
      `the edges ${quoted(a.name)} and ${quoted(b.name)} run side by side`,
      'Give one of the two, or two that run towards each other',
    );
  const t = cross(sub(b.middle, a.middle), b.along) / turn;
  return add(a.middle, scale(a.along, t));
}

const LEVEL = 1e-3; // sine of the angle between two edges

function lineOff(panel: string, outline: Outline, name: string, off: number) {
  const i = outline.findIndex((e) => e.name === name);
  if (i < 0) {
    const names = [...new Set(outline.map((e) => e.name))];
    const message = `panel ${quoted(panel)} has no edge ${quoted(name)}`;
    const fix = suggestion(name, names);
    throw new JobError([{ code: 'edge-unknown', path: ['from', name], message, fix, at: 'key' }]);
  }
  const [p, q] = [(outline[i] as Edge).from, (outline[(i + 1) % outline.length] as Edge).from];
  const along = unit(sub(q, p));
  return { name, along, middle: add(mix(p, q, 0.5), scale(outward(along), -off)) };
}
