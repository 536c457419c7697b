/** A queue that gives the first by an order; equals come out in the order they went in. */
export class Heap<T> {
  private readonly items: { readonly value: T; readonly turn: number }[] = [];
  private turn = 0;
  private readonly before: (a: T, b: T) => boolean;

  constructor(before: (a: T, b: T) => boolean) {
    this.before = before;
  }

  push(value: T): void {
    const { items } = this;
    items.push({ value, turn: this.turn++ });
    for (let i = items.length - 1; i > 0; ) {
      const up = (i - 1) >> 1;
      if (!this.first(i, up)) return;
      this.swap(i, up);
      i = up;
    }
  }

  pop(): T | undefined {
    const { items } = this;
    const [top] = items;
    const last = items.pop();
    if (top === undefined || last === undefined || items.length === 0) return top?.value;
    items[0] = last;
    for (let i = 0; ; ) {
      const [l, r] = [2 * i + 1, 2 * i + 2];
      let least = i;
      if (l < items.length && this.first(l, least)) least = l;
      if (r < items.length && this.first(r, least)) least = r;
      if (least === i) return top.value;
      this.swap(i, least);
      i = least;
    }
  }

  private first(i: number, j: number): boolean {
    const [a, b] = [this.items[i], this.items[j]] as [Item<T>, Item<T>];
    if (this.before(a.value, b.value)) return true;
    return !this.before(b.value, a.value) && a.turn < b.turn;
  }

  private swap(i: number, j: number): void {
    const [a, b] = [this.items[i], this.items[j]] as [Item<T>, Item<T>];
    this.items[i] = b;
    this.items[j] = a;
  }
}

interface Item<T> {
  readonly value: T;
  readonly turn: number;
}
