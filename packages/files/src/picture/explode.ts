import type { Assembly, Vec3 } from '@tinwright/core';
import { add3, length3, scale3, siteFrame } from '@tinwright/core/internal';

const LITTLE = 0.2;

/**
 * How far each piece moves in an exploded view: along the normals of the joints that hold it to what stands already,
 * upright where those cancel out; with its neighbours, and `step` mm further.
 */
export function explode({ placed, seated }: Assembly, step: number): ReadonlyMap<string, Vec3> {
  const moves = new Map<string, Vec3>();
  const order = placeOrder(
    placed.map((p) => p.piece),
    seated,
  );
  for (const piece of order) {
    const holds = seated.flatMap((s) => {
      if (s.to.piece === piece && moves.has(s.from.piece)) return [{ host: s.from, site: s.sites[0] }];
      if (s.from.piece === piece && moves.has(s.to.piece)) return [{ host: s.to, site: s.sites[1] }];
      return [];
    });
    const frames = holds.map(({ host, site }) => siteFrame(host.part.formed, site, host.pose));
    const sum = frames.reduce<Vec3>((v, f) => add3(v, f.normal), [0, 0, 0]);
    const way = length3(sum) > LITTLE ? scale3(sum, 1 / length3(sum)) : (frames[0]?.up ?? [0, 0, 0]);
    const carried = holds.reduce<Vec3>(
      (v, { host }) => add3(v, scale3(moves.get(host.piece) as Vec3, 1 / holds.length)),
      [0, 0, 0],
    );
    moves.set(piece, add3(carried, scale3(way, holds.length === 0 ? 0 : step)));
  }
  return moves;
}

/** Pieces in rounds outwards from the first: a piece comes after all that are nearer to the first than it is. */
function placeOrder(pieces: readonly string[], seated: Assembly['seated']): readonly string[] {
  const order: string[] = pieces.slice(0, 1);
  for (let ring: readonly string[] = order.slice(); ring.length > 0; ) {
    const next = pieces.filter(
      (p) =>
        !order.includes(p) &&
        seated.some(
          (s) =>
            (s.from.piece === p && ring.includes(s.to.piece)) ||
            (s.to.piece === p && ring.includes(s.from.piece)),
        ),
    );
    order.push(...next);
    ring = next;
  }
  return order;
}
