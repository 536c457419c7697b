import TinyQueue from 'tinyqueue';

interface Entry<T> {
  readonly key: number;
  readonly age: number;
  readonly value: T;
}

/** Blocks by promise: the one that may still become most comes first; equal ones by age. */
export class ValueHeap<T> {
  private readonly entries = new TinyQueue<Entry<T>>([], (a, b) => b.key - a.key || a.age - b.age);
  private ages = 0;

  push(key: number, value: T): void {
    this.entries.push({ key, age: this.ages++, value });
  }

  /** The first with its key; undefined when none is left. */
  pop(): { readonly key: number; readonly value: T } | undefined {
    return this.entries.pop();
  }
}
