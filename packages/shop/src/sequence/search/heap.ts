import TinyQueue from 'tinyqueue';

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
  private readonly items = new TinyQueue<Item<T>>([], order);
  private turn = 0;

  /** How many wait. */
  get size(): number {
    return this.items.length;
  }

  push(value: T, key: number, second: number): void {
    this.items.push({ value, key, second, turn: this.turn++ });
  }

  pop(): T | undefined {
    return this.items.pop()?.value;
  }

  /** The item with its keys. */
  popItem(): (Keyed & { readonly value: T }) | undefined {
    return this.items.pop();
  }
}

const order = (a: Item<unknown>, b: Item<unknown>): number =>
  a.key - b.key || a.second - b.second || a.turn - b.turn;
