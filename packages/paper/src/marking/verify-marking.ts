import { type FlatPattern, type Line, type Point, segments } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';
import type { BlankEdge, MarkingRow } from './row.js';

const CLOSE = 0.01; // mm

/**
 * Replay a marking program with a rule's and compasses' geometry: every stroke has to lie where its row says, and
 * together they have to scribe every line of the pattern but the edges of its blank. What is wrong, in words for the
 * program's makers; none when it holds.
 */
export function verifyMarking(program: readonly MarkingRow[], flat: FlatPattern): readonly string[] {
  const misplaced = program.flatMap((r, i) =>
    r.strokes.flatMap((s) =>
      lies(r, s, flat.blank.max) ? [] : [`row ${i + 1}: a stroke at ${s.join(' to ')}`],
    ),
  );
  return [...misplaced, ...missing(program, flat)];
}

/** How far a point lies from an edge of the blank. */
function away([px, py]: Point, edge: BlankEdge, [x, y]: Point): number {
  const distances = { west: px, east: x - px, south: py, north: y - py };
  return distances[edge];
}

function lies({ kind, set, from, angle }: MarkingRow, [a, b]: Line, size: Point): boolean {
  const level = from.some((e) => [a, b].every((p) => Math.abs(away(p, e, size) - (set ?? 0)) < CLOSE));
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (kind === 'parallel') return level;
  if (kind === 'punch') return level && length < CLOSE;
  if (kind === 'circle') return Math.abs(2 * length - (set ?? 0)) < CLOSE;
  if (kind === 'join') return length > CLOSE;
  // the far end of a stroke laid on at the angle from the near one
  const turn = ((angle ?? 0) * Math.PI) / 180;
  const [dx, dy] = [Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])];
  return Math.abs(dx - length * Math.cos(turn)) < CLOSE && Math.abs(dy - length * Math.sin(turn)) < CLOSE;
}

function missing(
  program: readonly MarkingRow[],
  { outline, bends, scribes, marks, holes, blank }: FlatPattern,
): readonly string[] {
  const strokes = program.filter((r) => r.kind !== 'circle' && r.kind !== 'punch').flatMap((r) => r.strokes);
  const [x, y] = blank.max;
  const edges: readonly Line[] = [
    [
      [0, 0],
      [x, 0],
    ],
    [
      [x, 0],
      [x, y],
    ],
    [
      [x, y],
      [0, y],
    ],
    [
      [0, y],
      [0, 0],
    ],
  ];
  const lines = [
    ...bends.map((b) => ({ line: b.line, name: `bend ${b.id}` })),
    ...scribes.map((line) => ({ line, name: 'a line to scribe' })),
    ...segments(outline)
      .filter((s) => s.bulge === 0)
      .map((s) => ({ line: [s.from, s.to] as Line, name: 'outline' })),
    ...holes
      .flatMap(segments)
      .filter((s) => s.bulge === 0)
      .map((s) => ({ line: [s.from, s.to] as Line, name: 'a cut-out' })),
  ];
  const rims = program.filter((r) => r.kind === 'circle').flatMap((r) => r.strokes);
  const arcs = [outline, ...holes].flatMap((l) =>
    segments(l)
      .filter((s) => s.bulge !== 0)
      .map(arcOf),
  );
  const points = program.filter((r) => r.kind === 'punch').flatMap((r) => r.strokes.map(([p]) => p));
  const gap = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]);
  return [
    ...lines
      .filter(({ line }) => !scribed(line, [...strokes, ...edges]))
      .map(({ line, name }) => `${name} is not scribed: ${line.join(' to ')}`),
    ...arcs
      .filter(
        (a) => !rims.some(([c, p]) => gap(c, a.centre) < CLOSE && Math.abs(gap(c, p) - a.radius) < CLOSE),
      )
      .map((a) => `no circle about ${a.centre}`),
    ...marks
      .filter((m) => ![...points, ...rims.map(([c]) => c)].some((p) => gap(p, m.at) < CLOSE))
      .map((m) => `no mark at ${m.at}`),
  ];
}

/** True when a line lies on strokes from end to end. */
function scribed([a, b]: Line, strokes: readonly Line[]): boolean {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [u, v] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const along = (p: Point) => (p[0] - a[0]) * u + (p[1] - a[1]) * v;
  const aside = (p: Point) => Math.abs((p[1] - a[1]) * u - (p[0] - a[0]) * v);
  const spans = strokes
    .filter(([p, q]) => aside(p) < CLOSE && aside(q) < CLOSE && Math.hypot(q[0] - p[0], q[1] - p[1]) > 0)
    .map(([p, q]) => [Math.min(along(p), along(q)), Math.max(along(p), along(q))] as const)
    .toSorted((s, t) => s[0] - t[0]);
  let reached = 0;
  for (const [from, to] of spans) if (from <= reached + CLOSE) reached = Math.max(reached, to);
  return reached >= length - CLOSE;
}
