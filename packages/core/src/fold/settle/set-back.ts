import { fail } from '../../errors/problem.js';
import { mix, type Point, SAME } from '../../plane/point.js';
import type { HalfPlane } from '../draft/outline.js';
import type { Edge, Outline } from '../draft/tree.js';

/** An end of the moved edge: where it is, and the next corner that stays; the same where `at` is null. */
interface End {
  readonly at: Point | null;
  readonly keep: number;
  readonly stepped: boolean;
}

/**
 * Move one edge in to the rim of a half plane that runs along it. Neighbours that turn inwards are shortened; at an end
 * where the outline goes straight on or turns outwards the edge steps in at right angles, as a relief cut does.
 * What else lies beyond the half plane stays. Empty when nothing stays of the outline.
 * @throws JobError `edge-overrun` where the outline comes back out past the edge while still within the strip
 */
export function setBack(outline: Outline, name: string, half: HalfPlane): Outline {
  const n = outline.length;
  const i = outline.findIndex((e) => e.name === name);
  if (i < 0) return outline;
  const corner = (k: number) => outline[k % n] as Edge;
  const depth = (p: Point) => half.x * p[0] + half.y * p[1] - half.c;
  const level = depth(corner(i).from);
  if (level >= -SAME) return outline;
  const endFrom = (start: number, step: 1 | -1): End | null => {
    for (let k = start; Math.abs(k - start) < n - 2; k += step) {
      const p = corner(k).from;
      const q = corner(k + step).from;
      const a = depth(p);
      const b = depth(q);
      if (b >= SAME) return { at: mix(p, q, a / (a - b)), keep: k + step, stepped: false };
      if (b >= -SAME) return { at: null, keep: k + step, stepped: false };
      if (b < level + SAME && k !== start) return overrun(name);
      if (b < level + SAME) return { at: [p[0] - a * half.x, p[1] - a * half.y], keep: k, stepped: true };
    }
    return null;
  };
  const [first, last] = [endFrom(i + n, -1), endFrom(i + 1, 1)];
  if (first === null || last === null || last.keep > first.keep) return [];
  const moved: Edge[] = [];
  if (last.at !== null)
    moved.push({ name: last.stepped ? 'relief' : corner(last.keep + n - 1).name, from: last.at });
  for (let k = last.keep; k < first.keep; k++) moved.push(corner(k));
  const before = corner(first.keep);
  if (first.at === null) moved.push({ name, from: before.from });
  else
    moved.push({ name: first.stepped ? 'relief' : before.name, from: before.from }, { name, from: first.at });
  return moved.length < 3 ? [] : moved;
}

function overrun(name: string): never {
  return fail(
    'edge-overrun',
    [],
    `edge "${name}" cannot be set back for its bend: the outline comes out past it again`,
    'Make the stretch beside the bend longer than the bend is wide',
  );
}
