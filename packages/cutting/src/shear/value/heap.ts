/** Blocks by promise: the one that may still become most comes first; equal ones by age. */
export class Heap<T> {
  private readonly entries: { readonly key: number; readonly age: number; readonly value: T }[] = [];
  private ages = 0;

  push(key: number, value: T): void {
    const { entries } = this;
    const entry = { key, age: this.ages++, value };
    let i = entries.push(entry) - 1;
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (!this.before(i, up)) break;
      this.swap(i, up);
      i = up;
    }
  }

  /** The first with its key; undefined when none is left. */
  pop(): { readonly key: number; readonly value: T } | undefined {
    const { entries } = this;
    const first = entries[0];
    const last = entries.pop();
    if (first === undefined || last === undefined || entries.length === 0) return first;
    entries[0] = last;
    for (let i = 0; ; ) {
      let next = i;
      for (const child of [2 * i + 1, 2 * i + 2])
        if (child < entries.length && this.before(child, next)) next = child;
      if (next === i) return first;
      this.swap(i, next);
      i = next;
    }
  }

  private before(i: number, j: number): boolean {
    const [a, b] = [this.entries[i], this.entries[j]];
    if (a === undefined || b === undefined) return false;
    return a.key > b.key || (a.key === b.key && a.age < b.age);
  }

  private swap(i: number, j: number): void {
    const [a, b] = [this.entries[i], this.entries[j]];
    if (a === undefined || b === undefined) return;
    this.entries[i] = b;
    this.entries[j] = a;
  }
}
