import type { FlatMark, Point } from '@tinwright/core';
import { gathered } from '../pattern/gather.js';
import type { MarkedThing, Marking, MarkingAsk } from '../pattern/marked.js';

/** Holes and marks by what they are, then by the line that holds most of those left. */
export function centres({ flat, features }: MarkingAsk): readonly Marking[] {
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
