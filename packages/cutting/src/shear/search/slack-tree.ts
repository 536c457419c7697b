/** Kinds of nodes of a slack tree. */
export const LEAF = 0;
/** Children side by side: their widths add up. */
export const ROW = 1;
/** Children one above the other: their heights add up. */
export const COLUMN = 2;

/** A sheet to fill: usable size and the longest cut that can be made across it (along x, along y), all one unit. */
export interface SlackRoom {
  readonly x: number;
  readonly y: number;
  readonly cutX: number;
  readonly cutY: number;
}

/** Rounding that may add up along a sheet; far below what `verifyShearPlan` lets pass. */
export const GRACE = 1e-7;

/**
 * What is placed on one sheet, as a tree of rows and columns that alternate, kept in preorder.
 * Every node knows its tight size and the room it may grow into, so whether a part can join it takes one comparison, and
 * no cut is fixed before all parts stand.
 */
export class SlackTree {
  length = 0;
  used = 0;
  /** Counts changes; what was found out about an older state does not hold for a newer one. */
  version = 0;
  kind: Int8Array;
  item: Int32Array;
  /** One past the last node below. */
  end: Int32Array;
  parent: Int32Array;
  w: Float64Array;
  h: Float64Array;
  roomX: Float64Array;
  roomY: Float64Array;

  room: SlackRoom;
  /** Which kind of sheet it is. */
  type: number;

  constructor(room: SlackRoom, type: number, capacity = 32) {
    this.room = room;
    this.type = type;
    this.kind = new Int8Array(capacity);
    this.item = new Int32Array(capacity);
    this.end = new Int32Array(capacity);
    this.parent = new Int32Array(capacity);
    this.w = new Float64Array(capacity);
    this.h = new Float64Array(capacity);
    this.roomX = new Float64Array(capacity);
    this.roomY = new Float64Array(capacity);
  }

  /** Become equal to another tree. */
  copy(from: SlackTree): void {
    const n = from.length;
    this.reserve(n);
    this.length = n;
    this.used = from.used;
    this.room = from.room;
    this.type = from.type;
    for (let k = 0; k < n; k++) {
      this.kind[k] = from.kind[k] as number;
      this.item[k] = from.item[k] as number;
      this.end[k] = from.end[k] as number;
      this.parent[k] = from.parent[k] as number;
      this.w[k] = from.w[k] as number;
      this.h[k] = from.h[k] as number;
      this.roomX[k] = from.roomX[k] as number;
      this.roomY[k] = from.roomY[k] as number;
    }
  }

  private reserve(size: number): void {
    if (size <= this.kind.length) return;
    const capacity = Math.max(size, 2 * this.kind.length);
    const bytes = new Int8Array(capacity);
    bytes.set(this.kind);
    this.kind = bytes;
    for (const name of ['item', 'end', 'parent'] as const) {
      const grown = new Int32Array(capacity);
      grown.set(this[name]);
      this[name] = grown;
    }
    for (const name of ['w', 'h', 'roomX', 'roomY'] as const) {
      const grown = new Float64Array(capacity);
      grown.set(this[name]);
      this[name] = grown;
    }
  }

  /** Put the first part on an empty sheet. */
  plant(item: number, w: number, h: number): void {
    this.length = 1;
    this.set(0, LEAF, item, -1, w, h);
    this.end[0] = 1;
    this.settle();
  }

  private set(k: number, kind: number, item: number, parent: number, w: number, h: number): void {
    this.kind[k] = kind;
    this.item[k] = item;
    this.parent[k] = parent;
    this.w[k] = w;
    this.h[k] = h;
  }

  /** Put a part beside (`ROW`) or above (`COLUMN`) node k. */
  join(k: number, direction: number, item: number, w: number, h: number): void {
    const { kind, parent, end } = this;
    const p = parent[k] as number;
    if (kind[k] === direction) this.append(k, end[k] as number, item, w, h);
    else if (p >= 0 && kind[p] === direction) this.append(p, end[k] as number, item, w, h);
    else {
      this.wrap(k, direction);
      this.append(k, this.end[k] as number, item, w, h);
    }
    this.settle();
  }

  private append(p: number, at: number, item: number, w: number, h: number): void {
    this.open(at);
    this.set(at, LEAF, item, p, w, h);
    this.end[at] = at + 1;
    for (let a = p; a >= 0; a = this.parent[a] as number) if (this.end[a] === at) this.end[a] = at + 1;
  }

  /** Put a new inner node over node k; it takes the index k. */
  private wrap(k: number, direction: number): void {
    const last = this.end[k] as number;
    const p = this.parent[k] as number;
    this.open(k);
    // nodes that ended behind k have moved; k itself has become k + 1
    this.set(k, direction, -1, p, 0, 0);
    this.end[k] = last + 1;
    this.parent[k + 1] = k;
  }

  /** Make room for one node at an index; ends and parents behind it move along. */
  private open(at: number): void {
    this.reserve(this.length + 1);
    const { kind, item, end, parent, w, h } = this;
    for (let j = 0; j < at; j++) if ((end[j] as number) > at) end[j] = (end[j] as number) + 1;
    for (let j = this.length; j > at; j--) {
      const i = j - 1;
      kind[j] = kind[i] as number;
      item[j] = item[i] as number;
      const p = parent[i] as number;
      parent[j] = p >= at ? p + 1 : p;
      end[j] = (end[i] as number) + 1;
      w[j] = w[i] as number;
      h[j] = h[i] as number;
    }
    this.length++;
  }

  /** Take node k with all below it away. What it carried has to be read first. */
  remove(k: number): void {
    const p = this.parent[k] as number;
    this.close(k, (this.end[k] as number) - k);
    if (p >= 0 && this.end[p + 1] === this.end[p]) this.lift(p);
    this.settle();
  }

  /** Node p has a single child left: the child takes its place, and joins the row above if it is one itself. */
  private lift(p: number): void {
    const above = this.parent[p] as number;
    this.parent[p + 1] = above;
    this.close(p, 1);
    if (above < 0 || this.kind[p] === LEAF || this.kind[p] !== this.kind[above]) return;
    const last = this.end[p] as number;
    for (let j = p + 1; j < last; j = this.end[j] as number) this.parent[j] = above;
    this.close(p, 1);
  }

  private close(from: number, count: number): void {
    const { kind, item, end, parent, w, h } = this;
    const next = from + count;
    for (let j = 0; j < from; j++) if ((end[j] as number) >= next) end[j] = (end[j] as number) - count;
    for (let i = next; i < this.length; i++) {
      const j = i - count;
      kind[j] = kind[i] as number;
      item[j] = item[i] as number;
      const p = parent[i] as number;
      parent[j] = p >= next ? p - count : p;
      end[j] = (end[i] as number) - count;
      w[j] = w[i] as number;
      h[j] = h[i] as number;
    }
    this.length -= count;
  }

  /** Tight sizes from the leaves up, room from the root down. */
  private settle(): void {
    const { kind, parent, w, h, length } = this;
    this.version++;
    for (let k = 0; k < length; k++)
      if (kind[k] !== LEAF) {
        w[k] = 0;
        h[k] = 0;
      }
    for (let k = length - 1; k > 0; k--) {
      const p = parent[k] as number;
      const wide = w[k] as number;
      const high = h[k] as number;
      if (kind[p] === ROW) {
        w[p] = (w[p] as number) + wide;
        if (high > (h[p] as number)) h[p] = high;
      } else {
        h[p] = (h[p] as number) + high;
        if (wide > (w[p] as number)) w[p] = wide;
      }
    }
    if (length > 0) this.spread();
  }

  private spread(): void {
    const { kind, parent, w, h, roomX, roomY, length } = this;
    const { x, y, cutX, cutY } = this.room;
    roomX[0] = kind[0] === COLUMN ? Math.min(x + GRACE, cutX) : x + GRACE;
    roomY[0] = kind[0] === ROW ? Math.min(y + GRACE, cutY) : y + GRACE;
    for (let k = 1; k < length; k++) {
      const p = parent[k] as number;
      let rx = roomX[p] as number;
      let ry = roomY[p] as number;
      if (kind[p] === ROW) rx += (w[k] as number) - (w[p] as number);
      else ry += (h[k] as number) - (h[p] as number);
      if (kind[k] === COLUMN && rx > cutX) rx = cutX;
      if (kind[k] === ROW && ry > cutY) ry = cutY;
      roomX[k] = rx;
      roomY[k] = ry;
    }
  }
}
