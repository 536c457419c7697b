import type { FlatBend, FlatMark, Point } from '@tinwright/core';
import { bendNumber, runsAcross, type Side } from './features.js';
import type { PatternAsk } from './pattern-ask.js';

/** What is marked along a line, at points on it, or between two points. */
export type MarkedThing =
  | { readonly kind: 'cut' }
  | { readonly kind: 'bend'; readonly numbers: readonly string[]; readonly bend: FlatBend }
  | { readonly kind: 'sight'; readonly number: string }
  | { readonly kind: 'hole'; readonly diameter: number; readonly purpose: string | null }
  | { readonly kind: 'mark'; readonly purpose: string };

/**
 * One thing to scribe. `edge`: the datum edge it is measured from, left or bottom, and `offset` from it; `reach`: from
 * and to, or points, from the other datum edge. A slanted line has its two ends, a relief its centre. mm of the pattern
 */
export type Marking =
  | {
      readonly kind: 'line';
      readonly edge: 'left' | 'bottom';
      readonly offset: number;
      readonly reach: readonly (readonly [number, number])[];
      readonly thing: MarkedThing;
    }
  | {
      readonly kind: 'points';
      readonly edge: 'left' | 'bottom';
      readonly offset: number;
      readonly at: readonly number[];
      readonly thing: MarkedThing;
    }
  | { readonly kind: 'slant'; readonly from: Point; readonly to: Point; readonly thing: MarkedThing }
  | { readonly kind: 'round'; readonly at: Point; readonly diameter: number };

const SAME = 1e-6;
const ACROSS = 10; // mm of nothing that a bend line is scribed across

type Ask = Pick<PatternAsk, 'flat' | 'features' | 'sights'>;

/**
 * Everything to mark on a blank in the order a hand does it: lines by their distance from the left edge, then from the
 * bottom edge, slanted lines as two points each, reliefs, then the centres of holes and marks.
 */
export function markings(ask: Ask): readonly Marking[] {
  return [
    ...linesFrom(ask, 'left'),
    ...linesFrom(ask, 'bottom'),
    ...slants(ask),
    ...unique(ask.features.rounds, (r) => [...r.centre, r.radius]).map(
      ({ centre, radius }): Marking => ({ kind: 'round', at: centre, diameter: 2 * radius }),
    ),
    ...centres(ask),
  ];
}

/** Lines that run across from a datum edge at one offset: edges to cut, bends, sight lines. */
function linesFrom({ flat, features, sights }: Ask, edge: 'left' | 'bottom'): readonly Marking[] {
  const [axis, other] = edge === 'left' ? ([0, 1] as const) : ([1, 0] as const);
  const span = ({ from, to }: Side): readonly [number, number] => [
    Math.min(from[other], to[other]),
    Math.max(from[other], to[other]),
  ];
  const sides = features.sides.filter((s) => runsAcross(s, axis) && !onBlank(s, axis, flat.blank.max[axis]));
  const cuts = gathered(sides, (s) => s.from[axis]).map(
    (list): Marking => ({
      kind: 'line',
      edge,
      offset: (list[0] as Side).from[axis],
      reach: joined(list.map(span), SAME),
      thing: { kind: 'cut' },
    }),
  );
  const numbered = flat.bends.map((b, i) => ({ ...sideOf(b.line), number: bendNumber(i), bend: b }));
  const bends = gathered(
    numbered.filter((b) => runsAcross(b, axis)),
    (b) => b.from[axis],
    (b) => `${b.bend.direction} ${b.bend.angle} ${b.bend.hem}`,
  ).map((list): Marking => {
    const [first] = list as [(typeof list)[number]];
    return {
      kind: 'line',
      edge,
      offset: first.from[axis],
      reach: joined(list.map(span), ACROSS),
      thing: { kind: 'bend', numbers: list.map((b) => b.number), bend: first.bend },
    };
  });
  const seen = sights.flatMap((s): readonly Marking[] => {
    const side = sideOf(s.line);
    const thing: MarkedThing = {
      kind: 'sight',
      number: bendNumber(flat.bends.findIndex((b) => b.id === s.bend)),
    };
    return runsAcross(side, axis)
      ? [{ kind: 'line', edge, offset: side.from[axis], reach: [span(side)], thing }]
      : [];
  });
  return [...cuts, ...bends, ...seen].toSorted((a, b) => offsetOf(a) - offsetOf(b));
}

const offsetOf = (m: Marking): number => ('offset' in m ? m.offset : 0);
const sideOf = ([from, to]: readonly [Point, Point]): Side => ({ from, to });

/** True for a side that is an edge of the blank already. */
const onBlank = ({ from }: Side, axis: 0 | 1, far: number) => from[axis] < SAME || from[axis] > far - SAME;

function slants({ flat, features, sights }: Ask): readonly Marking[] {
  const slanted = (s: Side) => !runsAcross(s, 0) && !runsAcross(s, 1);
  const ordered = (s: Side): Side => (apart(s.from[0], s.to[0]) <= 0 ? s : { from: s.to, to: s.from });
  const rows = [
    ...flat.bends.map((b, i) => ({
      ...ordered(sideOf(b.line)),
      thing: { kind: 'bend', numbers: [bendNumber(i)], bend: b } as MarkedThing,
    })),
    ...sights.map((s) => ({
      ...ordered(sideOf(s.line)),
      thing: {
        kind: 'sight',
        number: bendNumber(flat.bends.findIndex((b) => b.id === s.bend)),
      } as MarkedThing,
    })),
    ...features.sides
      .map((s) => ({ ...ordered(s), thing: { kind: 'cut' } as MarkedThing }))
      .toSorted((a, b) => apart(a.from[0], b.from[0]) || apart(a.from[1], b.from[1])),
  ];
  return rows.filter(slanted).map((r): Marking => ({ kind: 'slant', ...r }));
}

/** The difference, none where it is rounding. */
const apart = (a: number, b: number): number => (Math.abs(a - b) < SAME ? 0 : a - b);

/** Holes and marks by what they are, then by the line that holds most of those left. */
function centres({ flat, features }: Ask): readonly Marking[] {
  const holes = features.holes.map(({ at, diameter }) => ({
    at,
    thing: { kind: 'hole', diameter, purpose: null } as MarkedThing,
  }));
  const marks = flat.marks.map(({ at, kind, hole }: FlatMark) => ({
    at,
    thing: (hole === null
      ? { kind: 'mark', purpose: kind }
      : { kind: 'hole', diameter: hole, purpose: kind }) as MarkedThing,
  }));
  return gathered(
    [...holes, ...marks],
    () => 0,
    (c) => JSON.stringify(c.thing),
  ).flatMap((list) =>
    rowsOf(list.map((c) => c.at)).map(
      (row): Marking => ({ ...row, thing: (list[0] as { thing: MarkedThing }).thing }),
    ),
  );
}

type PointRow = Omit<Extract<Marking, { kind: 'points' }>, 'thing'>;

function rowsOf(points: readonly Point[]): readonly PointRow[] {
  const rows: PointRow[] = [];
  let left = points;
  while (left.length > 0) {
    const lines = ([0, 1] as const).flatMap((axis) =>
      gathered(left, (p) => p[axis]).map((list) => ({ axis, list })),
    );
    const [{ axis, list }] = lines.toSorted((a, b) => b.list.length - a.list.length) as [
      (typeof lines)[number],
    ];
    rows.push({
      kind: 'points',
      edge: axis === 0 ? 'left' : 'bottom',
      offset: (list[0] as Point)[axis],
      at: list.map((p) => p[axis === 0 ? 1 : 0]).toSorted((a, b) => a - b),
    });
    left = left.filter((p) => !list.includes(p));
  }
  return rows.toSorted((a, b) => (a.edge === b.edge ? a.offset - b.offset : a.edge === 'left' ? -1 : 1));
}

/** Things in groups of one value and key, by value. */
function gathered<T>(
  things: readonly T[],
  value: (t: T) => number,
  key: (t: T) => string = () => '',
): readonly (readonly T[])[] {
  const found: T[][] = [];
  for (const t of things) {
    const same = found.find(
      ([first]) => Math.abs(value(first as T) - value(t)) < SAME && key(first as T) === key(t),
    );
    if (same === undefined) found.push([t]);
    else same.push(t);
  }
  return found.toSorted((a, b) => value(a[0] as T) - value(b[0] as T));
}

/** Spans in order, those with no more than `gap` between them as one. */
function joined(
  spans: readonly (readonly [number, number])[],
  gap: number,
): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    const last = found.at(-1);
    if (last !== undefined && from - last[1] <= gap) last[1] = Math.max(last[1], to);
    else found.push([from, to]);
  }
  return found;
}

function unique<T>(things: readonly T[], numbers: (t: T) => readonly number[]): readonly T[] {
  const key = (t: T) =>
    numbers(t)
      .map((n) => n.toFixed(6))
      .join();
  return things.filter((t, i) => things.findIndex((u) => key(u) === key(t)) === i);
}
