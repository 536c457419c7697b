import type { Assembly, Placed, Seated } from '@tinwright/core';
import { measuredBox, stand } from '@tinwright/core/internal';

/** A panel where it stands. mm */
type Solid = ReturnType<typeof measuredBox>;

const CLOSE = 0.05; // mm that neighbours may touch by

/**
 * Pieces that only stand in place, in an order in which each can still be moved in along a straight line: what closes a
 * space comes after all that goes into it. Groups that do not mind keep their order.
 */
export function placingOrder(
  groups: readonly (readonly Seated[])[],
  assembly: Assembly | null,
): readonly (readonly Seated[])[] {
  const solids = new Map((assembly?.placed ?? []).map((p) => [p.piece, solidsOf(p)]));
  const joints = (piece: string) =>
    (assembly?.seated ?? []).filter((s) => s.from.piece === piece || s.to.piece === piece).length;
  const guests = groups.map((group) => [...new Set(group.map((s) => guestOf(s, joints)))]);
  const closes = (a: number, b: number) =>
    (guests[b] as readonly string[]).some((piece) => {
      const others = (without: readonly string[]) =>
        [...solids].flatMap(([name, list]) => (name === piece || without.includes(name) ? [] : list));
      const own = solids.get(piece) ?? [];
      const lids = (guests[a] as readonly string[]).filter((g) => g !== piece);
      return lids.length > 0 && !leaves(own, others([])) && leaves(own, others(lids));
    });
  const order: number[] = [];
  for (let left = groups.map((_, i) => i); left.length > 0; ) {
    // where every one of them closes in another there is no such order: the first goes on
    const next = left.find((a) => !left.some((b) => b !== a && closes(a, b))) ?? (left[0] as number);
    order.push(next);
    left = left.filter((i) => i !== next);
  }
  return order.map((i) => groups[i] as readonly Seated[]);
}

/**
 * True for pieces of a group that no straight way leads to their places by: what they are put into, as it stands, has to
 * give way.
 */
export function springsIn(group: readonly Seated[], assembly: Assembly | null): boolean {
  const seated = assembly?.seated ?? [];
  const joints = (piece: string) =>
    seated.filter((s) => s.from.piece === piece || s.to.piece === piece).length;
  return group.some((s) => {
    const guest = guestOf(s, joints);
    const [own, host] = guest === s.from.piece ? [s.from, s.to] : [s.to, s.from];
    if (guest === host.piece) return false;
    const [solids, others] = [solidsOf(own), solidsOf(host)];
    return !leaves(solids, others) && !SHIFTS.some((by) => leavesAside(solids, others, by));
  });
}

/** How far a piece with play is first moved aside, mm. */
const SHIFTS = [0.5, 1, 2, 3, 4, 5, 6];

/** True when something can be moved out after it was moved aside a little, where there is room to. */
const leavesAside = (own: readonly Solid[], others: readonly Solid[], by: number): boolean =>
  [by, -by].some((off) =>
    MOVES.some(([x, y, z]) => {
      const aside = own.map((s) => put(s, [off * x, off * y, off * z]));
      return !aside.some((a) => others.some((b) => overlap(a, b))) && leaves(aside, others);
    }),
  );

const MOVES = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const;

const put = ({ min, max }: Solid, [x, y, z]: readonly [number, number, number]): Solid => ({
  min: [min[0] + x, min[1] + y, min[2] + z],
  max: [max[0] + x, max[1] + y, max[2] + z],
});

const overlap = (a: Solid, b: Solid): boolean =>
  ([0, 1, 2] as const).every((k) => a.max[k] > b.min[k] + CLOSE && b.max[k] > a.min[k] + CLOSE);

/** The piece that is brought: of the two the one with fewer joints. */
const guestOf = ({ from, to }: Seated, joints: (piece: string) => number): string =>
  joints(from.piece) < joints(to.piece) ? from.piece : to.piece;

function solidsOf({ part: { formed }, pose }: Placed): readonly Solid[] {
  const { panels, bends } = stand(formed, pose);
  return panels.map((p) =>
    measuredBox({ panels, bends, thickness: formed.thickness }, { panels: [p.id], bends: [] }),
  );
}

/** True when something can be moved out along one of the axes with nothing in the way. */
function leaves(own: readonly Solid[], others: readonly Solid[]): boolean {
  return ([0, 1, 2] as const).some((axis) =>
    ([1, -1] as const).some((way) => !own.some((a) => others.some((b) => inTheWay(a, b, axis, way)))),
  );
}

/** True when a solid lies before another that moves along an axis. */
function inTheWay(a: Solid, b: Solid, axis: 0 | 1 | 2, way: 1 | -1): boolean {
  const beside = ([0, 1, 2] as const).some(
    (k) => k !== axis && (a.max[k] <= b.min[k] + CLOSE || b.max[k] <= a.min[k] + CLOSE),
  );
  if (beside) return false;
  return way === 1 ? b.min[axis] >= a.max[axis] - CLOSE : b.max[axis] <= a.min[axis] + CLOSE;
}
