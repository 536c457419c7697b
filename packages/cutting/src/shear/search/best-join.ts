import type { Random } from './random.js';
import { COLUMN, GRACE, LEAF, ROW, type SlackTree } from './slack-tree.js';

/**
 * What makes a place good: `match` little waste at the seam, a little for slack left; `slack` both in full;
 * `tight` the nearest fit; `seam` waste at the seam alone. Numbers, for the innermost loop.
 */
export const MATCH = 0;
export const SLACK = 1;
export const TIGHT = 2;
export const SEAM = 3;

/** The best place found so far for one item, over as many trees as were looked through. */
export interface JoinSpot {
  score: number;
  tree: number;
  node: number;
  direction: number;
  w: number;
  h: number;
}

/** How one insertion looks at places. */
export interface Taste {
  readonly kind: number;
  /** Share of the places that are overlooked. */
  readonly blink: number;
  /** Nodes looked at in sheets this step has not touched, about; on many sheets not every one is looked at. */
  readonly look: number;
  readonly random: Random;
}

function score(kind: number, slack: number, across: number, miss: number, room: number): number {
  if (kind === MATCH) return miss + 0.1 * slack * across;
  if (kind === SLACK) return miss + slack * room;
  return kind === TIGHT ? Math.min(slack, room - across) : miss;
}

/**
 * Look through a tree for the best place of a part w by h and note it in `spot` where it beats what is there.
 * Each node is tried only in the direction its parent does not cover; the first one in both.
 * @returns whether there was any place, overlooked or not
 */
export function bestJoin(
  tree: SlackTree,
  index: number,
  w: number,
  h: number,
  taste: Taste,
  spot: JoinSpot,
): boolean {
  const { kind, end, parent, roomX, roomY, length, room } = tree;
  let any = beside(tree, index, 0, w, h, room.x + GRACE, taste, spot);
  if (above(tree, index, 0, w, h, room.y + GRACE, taste, spot)) any = true;
  let k = w > (roomX[0] as number) || h > (roomY[0] as number) ? length : 1;
  while (k < length) {
    const rx = roomX[k] as number; // a list taken apart here costs a third of all steps
    const ry = roomY[k] as number;
    if (w > rx || h > ry) {
      k = end[k] as number;
      continue;
    }
    const own = kind[k] as number;
    const direction = own === LEAF ? ROW + COLUMN - (kind[parent[k] as number] as number) : own;
    if (direction === ROW) {
      if (beside(tree, index, k, w, h, rx, taste, spot)) any = true;
    } else if (above(tree, index, k, w, h, ry, taste, spot)) any = true;
    k++;
  }
  return any;
}

function beside(
  tree: SlackTree,
  index: number,
  k: number,
  w: number,
  h: number,
  roomX: number,
  taste: Taste,
  spot: JoinSpot,
): boolean {
  const wide = tree.w[k] as number;
  const slack = roomX - wide - w;
  if (slack < 0) return false;
  const high = tree.h[k] as number;
  const roomY = Math.min(tree.roomY[k] as number, tree.room.cutY);
  if (h > roomY || high > roomY) return false;
  const over = high - h;
  const miss = over > 0 ? over * w : -over * wide;
  const s = score(taste.kind, slack, h, miss, roomY);
  if (s < spot.score && !(taste.random.next() < taste.blink)) note(spot, s, index, k, ROW, w, h);
  return true;
}

function above(
  tree: SlackTree,
  index: number,
  k: number,
  w: number,
  h: number,
  roomY: number,
  taste: Taste,
  spot: JoinSpot,
): boolean {
  const high = tree.h[k] as number;
  const slack = roomY - high - h;
  if (slack < 0) return false;
  const wide = tree.w[k] as number;
  const roomX = Math.min(tree.roomX[k] as number, tree.room.cutX);
  if (w > roomX || wide > roomX) return false;
  const over = wide - w;
  const miss = over > 0 ? over * h : -over * high;
  const s = score(taste.kind, slack, w, miss, roomX);
  if (s < spot.score && !(taste.random.next() < taste.blink)) note(spot, s, index, k, COLUMN, w, h);
  return true;
}

function note(
  spot: JoinSpot,
  s: number,
  tree: number,
  node: number,
  direction: number,
  w: number,
  h: number,
): void {
  spot.score = s;
  spot.tree = tree;
  spot.node = node;
  spot.direction = direction;
  spot.w = w;
  spot.h = h;
}
