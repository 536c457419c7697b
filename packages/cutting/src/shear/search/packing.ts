import type { ShearProblem } from '../problem.js';
import { LEAF, SlackTree } from './slack-tree.js';

/** A sheet in use. */
export interface PackingSlot {
  readonly tree: SlackTree;
  /** Sizes known not to fit any more; what is added bars no less, what is taken out may bar less. */
  readonly barred: Uint8Array;
  /** Area of the largest piece it could still give; -1 where nobody has looked since it changed. */
  spare: number;
  /** Made in the step that is going on. */
  fresh: boolean;
  inUse: boolean;
}

/** A state to come back to. */
export interface HeldPlan {
  readonly slots: readonly SlackTree[];
  readonly out: readonly number[];
  readonly cost: number;
}

interface Before {
  readonly slots: PackingSlot[];
  readonly out: number[];
  readonly cost: number;
}

/**
 * Sheets being filled and the items left out, changed in place with one level of undo: `begin`, changes, then `undo`
 * or the next `begin`. Only sheets a step touches are copied.
 */
export class Packing {
  readonly areas: Float64Array;
  /** Items of equal size have the same number. */
  readonly sizeOf: Int32Array;
  slots: PackingSlot[] = [];
  out: number[] = [];
  cost = 0;
  /** Sheets in use of each kind. */
  readonly taken: Int32Array;
  private readonly sizes: number;
  private readonly spare: PackingSlot[] = [];
  private fresh: PackingSlot[] = [];
  private stale: PackingSlot[] = [];
  private before: Before = { slots: [], out: [], cost: 0 };

  readonly problem: ShearProblem;

  constructor(problem: ShearProblem) {
    this.problem = problem;
    this.areas = Float64Array.from(problem.items, ({ w, h }) => w * h);
    const known = new Map<string, number>();
    this.sizeOf = Int32Array.from(problem.items, ({ w, h }) => {
      const id = known.get(`${w} ${h}`) ?? known.size;
      known.set(`${w} ${h}`, id);
      return id;
    });
    this.sizes = known.size;
    this.taken = new Int32Array(problem.bins.length);
  }

  /** From here on changes can be undone; those before are settled. */
  begin(): void {
    for (const slot of this.stale) this.spare.push(slot);
    for (const slot of this.fresh) {
      slot.fresh = false;
      if (!slot.inUse) this.spare.push(slot);
    }
    this.stale = [];
    this.fresh = [];
    this.before = { slots: this.slots.slice(), out: this.out.slice(), cost: this.cost };
  }

  /** Back to the last `begin`. */
  undo(): void {
    for (const slot of this.fresh) this.spare.push(slot);
    this.fresh = [];
    for (const slot of this.stale) slot.inUse = true;
    this.stale = [];
    if (this.cost !== this.before.cost || this.slots.length !== this.before.slots.length) {
      this.taken.fill(0);
      for (const { tree } of this.before.slots) this.taken[tree.type] = (this.taken[tree.type] as number) + 1;
    }
    this.slots = this.before.slots;
    this.out = this.before.out;
    this.cost = this.before.cost;
  }

  /** Area of the items left out. */
  areaOut(): number {
    return this.out.reduce((sum, item) => sum + (this.areas[item] as number), 0);
  }

  /** What one sheet of a kind costs. */
  costOf(type: number): number {
    return (this.problem.bins[type] as { cost: number }).cost;
  }

  /** The state as it is, to come back to. */
  hold(): HeldPlan {
    const slots = this.slots.map(({ tree }) => {
      const kept = new SlackTree(tree.room, tree.type, tree.length);
      kept.copy(tree);
      return kept;
    });
    return { slots, out: [...this.out], cost: this.cost };
  }

  /** Back to a state held before. */
  restore(held: HeldPlan): void {
    this.begin();
    for (const slot of this.slots) this.spare.push(slot);
    this.slots = [];
    this.taken.fill(0);
    for (const tree of held.slots) {
      const slot = this.fetch(tree.type);
      slot.tree.copy(tree);
      slot.barred.fill(0);
      this.slots.push(slot);
      this.taken[tree.type] = (this.taken[tree.type] as number) + 1;
    }
    this.out = [...held.out];
    this.cost = held.cost;
    this.begin();
  }

  private fetch(type: number): PackingSlot {
    const bin = this.problem.bins[type];
    if (bin === undefined) throw new Error(`no kind of sheet ${type}`);
    const slot = this.spare.pop() ?? {
      tree: new SlackTree(bin, type),
      barred: new Uint8Array(this.sizes),
      spare: -1,
      fresh: true,
      inUse: true,
    };
    slot.fresh = true;
    slot.inUse = true;
    slot.spare = -1;
    slot.tree.room = bin;
    slot.tree.type = type;
    this.fresh.push(slot);
    return slot;
  }

  /** The sheet at an index, as a copy of its own for this step. */
  private touched(index: number): PackingSlot {
    const old = this.slots[index] as PackingSlot;
    if (old.fresh) return old;
    const slot = this.fetch(old.tree.type);
    slot.tree.copy(old.tree);
    slot.barred.set(old.barred);
    old.inUse = false;
    this.stale.push(old);
    this.slots[index] = slot;
    return slot;
  }

  /** Put an item on a new sheet of a kind. */
  open(type: number, item: number, w: number, h: number): void {
    const slot = this.fetch(type);
    slot.barred.fill(0);
    slot.tree.plant(item, w, h);
    slot.tree.used = this.areas[item] as number;
    this.slots.push(slot);
    this.taken[type] = (this.taken[type] as number) + 1;
    this.cost += this.costOf(type);
  }

  /** Put an item beside or above a node. */
  join(index: number, node: number, direction: number, item: number, w: number, h: number): void {
    const slot = this.touched(index);
    const { tree } = slot;
    slot.spare = -1;
    tree.join(node, direction, item, w, h);
    tree.used += this.areas[item] as number;
  }

  /** Take a node with all its items out of a sheet. @returns how many items; the sheet is closed when none is left */
  remove(index: number, node: number): number {
    const slot = this.touched(index);
    const { tree, barred } = slot;
    slot.spare = -1;
    const last = tree.end[node] as number;
    let count = 0;
    for (let k = node; k < last; k++) {
      if (tree.kind[k] !== LEAF) continue;
      const item = tree.item[k] as number;
      this.out.push(item);
      tree.used -= this.areas[item] as number;
      count++;
    }
    tree.remove(node);
    barred.fill(0);
    if (tree.length === 0) this.shut(index);
    return count;
  }

  private shut(index: number): void {
    const slot = this.slots[index] as PackingSlot;
    const { type } = slot.tree;
    slot.inUse = false;
    this.slots[index] = this.slots[this.slots.length - 1] as PackingSlot;
    this.slots.pop();
    this.taken[type] = (this.taken[type] as number) - 1;
    this.cost -= this.costOf(type);
  }
}
