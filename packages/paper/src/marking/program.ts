import type { FlatPattern, Line, Point } from '@tinwright/core';
import { joined } from '../pattern/gather.js';
import type { SightLine } from '../pattern/pattern-ask.js';
import type { BlankEdge, MarkingRow } from './row.js';
import { type MarkedSpot, type MarkedStroke, NEAR, spotsOf, strokesOf } from './strokes.js';

const ACROSS = 10; // mm of nothing that a line is scribed across
const SLANT = 45; // degrees a square is laid on at

/**
 * The shortest list of settings of rule and square that scribes a pattern on its blank: every line along an edge by its
 * distance from an edge, equal distances in one row whichever edges they are from; then what is laid on at 45°; then
 * points that are joined; circles and centre-punch marks last.
 * @param sights lines to set under the nose of a brake
 */
export function markingProgram(flat: FlatPattern, sights: readonly SightLine[] = []): readonly MarkingRow[] {
  const strokes = strokesOf(flat, sights);
  const size = flat.blank.max;
  const level = strokes.filter((s) => axisOf(s.line) !== null);
  const slanted = strokes.filter((s) => axisOf(s.line) === null);
  const laid = slanted.filter((s) => Math.abs(angleOf(s.line) - SLANT) < 1e-3);
  return [
    ...parallels(level, size),
    ...(laid.length === 0
      ? []
      : [row('angle', { angle: SLANT, strokes: laid.map((s) => s.line), for: names(laid) })]),
    ...joins(slanted.filter((s) => !laid.includes(s))),
    ...spots(spotsOf(flat), size),
  ];
}

/** The axis of equal value: 0 for an upright line, 1 for a level one, null for a slanted one. */
export function axisOf([a, b]: Line): 0 | 1 | null {
  if (Math.abs(a[0] - b[0]) < NEAR) return 0;
  return Math.abs(a[1] - b[1]) < NEAR ? 1 : null;
}

/** Acute angle to the x axis, degrees. */
const angleOf = ([a, b]: Line): number =>
  (Math.atan2(Math.abs(b[1] - a[1]), Math.abs(b[0] - a[0])) * 180) / Math.PI;

const names = (list: readonly { readonly for: string }[]): readonly string[] => [
  ...new Set(list.map((s) => s.for)),
];

function row(
  kind: MarkingRow['kind'],
  {
    set = null,
    from = [],
    angle = null,
    strokes,
    ...rest
  }: Partial<MarkingRow> & Pick<MarkingRow, 'strokes' | 'for'>,
): MarkingRow {
  return { kind, set, from, angle, strokes, for: rest.for };
}

/** A thing with the two distances it can be set at, and the edges those are from. */
interface Placed<T> {
  readonly thing: T;
  readonly ways: readonly { readonly set: number; readonly from: BlankEdge }[];
}

const EDGES = [
  ['west', 'east'],
  ['south', 'north'],
] as const;

const waysOf = (axis: 0 | 1, value: number, size: Point): Placed<unknown>['ways'] => [
  { set: value, from: EDGES[axis][0] },
  { set: size[axis] - value, from: EDGES[axis][1] },
];

/** Few settings for all: the one that serves most is taken first, the shorter of equals. */
function settings<T>(placed: readonly Placed<T>[]): readonly {
  readonly set: number;
  readonly members: readonly { readonly thing: T; readonly from: BlankEdge }[];
}[] {
  const found: { set: number; members: { thing: T; from: BlankEdge }[] }[] = [];
  for (let left = [...placed]; left.length > 0; ) {
    const sets = left.flatMap((p) => p.ways.map((w) => w.set));
    const served = (set: number) =>
      left.filter((p) => p.ways.some((w) => Math.abs(w.set - set) < NEAR)).length;
    const best = sets.reduce((a, b) => {
      const more = served(b) - served(a);
      return more > 0 || (more === 0 && b < a - NEAR) ? b : a;
    });
    const way = (p: Placed<T>) => p.ways.find((w) => Math.abs(w.set - best) < NEAR);
    found.push({
      set: best,
      members: left.flatMap((p) => {
        const by = way(p);
        return by === undefined ? [] : [{ thing: p.thing, from: by.from }];
      }),
    });
    left = left.filter((p) => way(p) === undefined);
  }
  return found.toSorted((a, b) => a.set - b.set);
}

function parallels(strokes: readonly MarkedStroke[], size: Point): readonly MarkingRow[] {
  const placed = strokes.map((thing): Placed<MarkedStroke> => {
    const axis = axisOf(thing.line) as 0 | 1;
    return { thing, ways: waysOf(axis, thing.line[0][axis], size) };
  });
  return settings(placed).map(({ set, members }) =>
    row('parallel', {
      set,
      from: EDGES.flat().filter((e) => members.some((m) => m.from === e)),
      strokes: scribed(members.map((m) => m.thing)),
      for: names(members.map((m) => m.thing)),
    }),
  );
}

/** Lines on one another, or nearly end to end, are scribed in one stroke. */
function scribed(strokes: readonly MarkedStroke[]): readonly Line[] {
  const lines: { readonly axis: 0 | 1; readonly at: number; readonly own: MarkedStroke[] }[] = [];
  for (const stroke of strokes) {
    const axis = axisOf(stroke.line) as 0 | 1;
    const at = stroke.line[0][axis];
    const line = lines.find((l) => l.axis === axis && Math.abs(l.at - at) < NEAR);
    if (line === undefined) lines.push({ axis, at, own: [stroke] });
    else line.own.push(stroke);
  }
  return lines.flatMap(({ axis, at, own }) => {
    const spans = own.map(({ line: [a, b] }) => {
      const [u, v] = [a[1 - axis] as number, b[1 - axis] as number];
      return [Math.min(u, v), Math.max(u, v)] as const;
    });
    // only bend lines run over nothing
    const gap = own.some((s) => s.for !== 'notch') ? ACROSS : NEAR;
    return joined(spans, gap).map(
      ([from, to]): Line =>
        axis === 0
          ? [
              [at, from],
              [at, to],
            ]
          : [
              [from, at],
              [to, at],
            ],
    );
  });
}

/** Slanted lines by two points; equal ones, turned or mirrored, share a row. */
function joins(strokes: readonly MarkedStroke[]): readonly MarkingRow[] {
  const groups: MarkedStroke[][] = [];
  const run = ({ line: [a, b] }: MarkedStroke): Point => [Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])];
  for (const stroke of strokes) {
    const [dx, dy] = run(stroke);
    const group = groups.find(([first]) => {
      const [x, y] = run(first as MarkedStroke);
      return Math.abs(x - dx) < NEAR && Math.abs(y - dy) < NEAR;
    });
    if (group === undefined) groups.push([stroke]);
    else group.push(stroke);
  }
  return groups.map((g) => row('join', { strokes: g.map((s) => s.line), for: names(g) }));
}

/** Circles by their diameter, points by the distance that most of them share. */
function spots(all: readonly MarkedSpot[], size: Point): readonly MarkingRow[] {
  const circles = all.filter((s) => s.diameter !== null);
  const diameters = [...new Set(circles.map((c) => (c.diameter as number).toFixed(4)))];
  const points = all.filter((s) => s.diameter === null);
  const placed = points.map((thing): Placed<MarkedSpot> => {
    return { thing, ways: ([0, 1] as const).flatMap((axis) => waysOf(axis, thing.at[axis], size)) };
  });
  return [
    ...diameters.map((d) => {
      const own = circles.filter((c) => (c.diameter as number).toFixed(4) === d);
      const radius = Number(d) / 2;
      const strokes = own.map(({ at }): Line => [at, [at[0] + radius, at[1]]]);
      return row('circle', { set: Number(d), strokes, for: names(own) });
    }),
    ...settings(placed).map(({ set, members }) =>
      row('punch', {
        set,
        from: EDGES.flat().filter((e) => members.some((m) => m.from === e)),
        strokes: members.map((m): Line => [m.thing.at, m.thing.at]),
        for: names(members.map((m) => m.thing)),
      }),
    ),
  ];
}
