import { COLUMN, LEAF, ROW, type SlackTree } from './slack-tree.js';

/** The largest rectangle that a sheet could still give in one piece, and where it would join. */
export interface Spare {
  readonly area: number;
  readonly node: number;
  readonly direction: number;
  readonly w: number;
  readonly h: number;
}

/** The least offcut worth keeping, either way round. */
export interface Least {
  readonly x: number;
  readonly y: number;
}

const NOTHING: Spare = { area: 0, node: -1, direction: 0, w: 0, h: 0 };

/** The largest rectangle that can join a tree. */
export function largestSpare(tree: SlackTree, least: Least): Spare {
  const { room, kind, parent, w, h, roomX, roomY, length } = tree;
  let best = NOTHING;
  const offer = (node: number, direction: number, wide: number, high: number): void => {
    const area = wide * high;
    if (area <= best.area || !worthKeeping(wide, high, least)) return;
    best = { area, node, direction, w: wide, h: high };
  };
  for (let k = 0; k < length; k++) {
    const own = kind[k] as number;
    const only = k === 0 ? LEAF : own === LEAF ? ROW + COLUMN - (kind[parent[k] as number] as number) : own;
    const [wide, high] = [w[k] as number, h[k] as number];
    const [rx, ry] = k === 0 ? [room.x, room.y] : [roomX[k] as number, roomY[k] as number];
    const [cx, cy] = [Math.min(rx, room.cutX), Math.min(ry, room.cutY)];
    if (only !== COLUMN && high <= cy) offer(k, ROW, rx - wide, cy);
    if (only !== ROW && wide <= cx) offer(k, COLUMN, cx, ry - high);
  }
  return best;
}

/** True when a piece is at least as large as the least offcut, either way round. */
export function worthKeeping(w: number, h: number, { x, y }: Least): boolean {
  return (w >= x && h >= y) || (w >= y && h >= x);
}
