import type { Bin, ShearItem, ShearProblem } from '../problem.js';
import { bestJoin, type JoinSpot, MATCH, SEAM, SLACK, type Taste, TIGHT } from './best-join.js';
import type { Packing, PackingSlot } from './packing.js';
import type { Random } from './random.js';
import type { SlackTree } from './slack-tree.js';

const BLINK = 0.03;
/** Nodes looked at in sheets a step has not touched: all of a hundred parts, fewer of many so that steps stay short. */
const LOOK = { least: 60, most: 400, of: 20_000 } as const;
/** A new sheet is as good as a place that wastes this share of it. */
const OPENING = 0.5;

/** Nothing overlooked, little waste at the seams: for the first plan. */
export function firstTaste(random: Random): Taste {
  return { kind: MATCH, blink: 0, look: Number.POSITIVE_INFINITY, random };
}

/** How the items left out are put back once. @param items how many there are in all */
export function randomTaste(random: Random, items: number): Taste {
  const q = random.next();
  const kind = q < 0.45 ? MATCH : q < 0.7 ? SLACK : q < 0.85 ? TIGHT : SEAM;
  const look = Math.max(LOOK.least, Math.min(LOOK.most, LOOK.of / items));
  return { kind, blink: BLINK, look, random };
}

/** Ranks of all items in each of the orders they are put back in: by area, longer side, height, width; largest first. */
export function ranksOf(items: ShearProblem['items']): readonly Int32Array[] {
  const orders = [
    (i: ShearItem) => i.w * i.h,
    (i: ShearItem) => Math.max(i.w, i.h),
    (i: ShearItem) => i.h,
    (i: ShearItem) => i.w,
  ];
  return orders.map((of) => {
    const sorted = items.map((item, i) => ({ key: of(item), i })).sort((a, b) => b.key - a.key || a.i - b.i);
    const ranks = new Int32Array(items.length);
    sorted.forEach(({ i }, rank) => {
      ranks[i] = rank;
    });
    return ranks;
  });
}

/** Bring items into one of five orders, with a little disorder now and then. Changes the list it is given. */
export function randomOrder(list: number[], ranks: readonly Int32Array[], random: Random): void {
  const q = random.next();
  const order = q < 0.6 ? 0 : q < 0.75 ? 1 : q < 0.85 ? 2 : q < 0.95 ? 3 : 4;
  if (order < 4) sortBy(list, ranks[order] as Int32Array);
  else for (let i = list.length - 1; i > 0; i--) swap(list, i, random.int(i + 1));
  if (random.next() < 0.3)
    for (let i = 0; i + 1 < list.length; i++) if (random.next() < 0.2) swap(list, i, i + 1);
}

/** Insertion sort: the lists are short. */
function sortBy(list: number[], rank: Int32Array): void {
  for (let i = 1; i < list.length; i++) {
    const item = list[i] as number;
    const own = rank[item] as number;
    let j = i - 1;
    while (j >= 0 && (rank[list[j] as number] as number) > own) {
      list[j + 1] = list[j] as number;
      j--;
    }
    list[j + 1] = item;
  }
}

function swap(list: number[], i: number, j: number): void {
  const kept = list[i] as number;
  list[i] = list[j] as number;
  list[j] = kept;
}

/** Put back what is left out, each item where it fits best; what fits nowhere within the budget stays out. */
export function recreate(packing: Packing, budget: number, taste: Taste): void {
  const waiting = packing.out;
  packing.out = [];
  for (const item of waiting) if (!insert(packing, item, budget, taste)) packing.out.push(item);
}

function insert(packing: Packing, item: number, budget: number, taste: Taste): boolean {
  const spot = bestSpot(packing, item, taste);
  const type = openable(packing, item, budget, spot.score, taste);
  if (type >= 0) {
    const { w, h } = packing.problem.items[item] as ShearItem;
    const ways = (packing.problem.bins[type] as Bin).ways[item] as number;
    if ((ways & 1) !== 0) packing.open(type, item, w, h);
    else packing.open(type, item, h, w);
    return true;
  }
  if (spot.tree < 0) return false;
  packing.join(spot.tree, spot.node, spot.direction, item, spot.w, spot.h);
  return true;
}

/** The best place for an item on the sheets in use; those touched in this step are always looked at. */
function bestSpot(packing: Packing, item: number, taste: Taste): JoinSpot {
  const spot: JoinSpot = { score: Number.POSITIVE_INFINITY, tree: -1, node: -1, direction: 0, w: 0, h: 0 };
  const { slots } = packing;
  const size = packing.sizeOf[item] as number;
  const from = slots.length > 1 ? taste.random.int(slots.length) : 0;
  let { look } = taste;
  for (let n = 0; n < slots.length; n++) {
    const i = n + from < slots.length ? n + from : n + from - slots.length;
    const slot = slots[i] as PackingSlot;
    if (slot.barred[size] === 1 || (look < 0 && !slot.fresh)) continue;
    if (!slot.fresh) look -= slot.tree.length;
    if (!tryTree(packing, slot.tree, i, item, taste, spot)) slot.barred[size] = 1;
  }
  return spot;
}

/** @returns whether the tree had any place for the item */
function tryTree(
  packing: Packing,
  tree: SlackTree,
  index: number,
  item: number,
  taste: Taste,
  spot: JoinSpot,
): boolean {
  if (tree.room.x * tree.room.y - tree.used < (packing.areas[item] as number)) return false;
  const { w, h } = packing.problem.items[item] as ShearItem;
  const ways = (packing.problem.bins[tree.type] as Bin).ways[item] as number;
  let any = false;
  if ((ways & 1) !== 0 && bestJoin(tree, index, w, h, taste, spot)) any = true;
  if ((ways & 2) !== 0 && bestJoin(tree, index, h, w, taste, spot)) any = true;
  return any;
}

/** The kind of sheet to open for an item rather than take the best place there is; -1 for none. */
function openable(packing: Packing, item: number, budget: number, score: number, taste: Taste): number {
  const { bins } = packing.problem;
  let best = score;
  let found = -1;
  for (let t = 0; t < bins.length; t++) {
    const bin = bins[t] as Bin;
    if (
      packing.cost + bin.cost >= budget ||
      (packing.taken[t] as number) >= bin.count ||
      bin.ways[item] === 0
    )
      continue;
    const s = OPENING * bin.x * bin.y;
    if (s >= best || taste.random.next() < taste.blink) continue;
    best = s;
    found = t;
  }
  return found;
}
