/** What a heap is ordered by: the lower key first, then the lower second one, then what went in first. */
export interface Keyed {
  readonly key: number;
  readonly second: number;
}

interface Item<T> extends Keyed {
  readonly value: T;
  readonly turn: number;
}

/** A queue that gives the item with the least key; equals come out in the order they went in. */
export class Heap<T> {
  private readonly items: Item<T>[] = [];
  private turn = 0;

  /** How many wait. */
  get size(): number {
    return this.items.length;
  }

  push(value: T, key: number, second: number): void {
    const { items } = this;
    const item = { value, key, second, turn: this.turn++ };
    let i = items.length;
    items.push(item);
    while (i > 0) {
      const up = (i - 1) >> 1;
      const parent = items[up] as Item<T>;
      if (!before(item, parent)) break;
      items[i] = parent;
      i = up;
    }
    items[i] = item;
  }

  pop(): T | undefined {
    return this.popItem()?.value;
  }

  /** The item with its keys. */
  popItem(): (Keyed & { readonly value: T }) | undefined {
    const { items } = this;
    const [top] = items;
    const last = items.pop();
    if (top === undefined || last === undefined || items.length === 0) return top;
    let i = 0;
    for (;;) {
      let child = 2 * i + 1;
      if (child >= items.length) break;
      if (child + 1 < items.length && before(items[child + 1] as Item<T>, items[child] as Item<T>))
        child += 1;
      if (!before(items[child] as Item<T>, last)) break;
      items[i] = items[child] as Item<T>;
      i = child;
    }
    items[i] = last;
    return top;
  }
}

function before(a: Item<unknown>, b: Item<unknown>): boolean {
  if (a.key !== b.key) return a.key < b.key;
  if (a.second !== b.second) return a.second < b.second;
  return a.turn < b.turn;
}
