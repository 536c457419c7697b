import { has, type Mask, maskOf } from '../part/mask.js';

/** Which steps come before which, as it is found out; what comes before what is before is too. */
export class Before {
  private readonly low: Int32Array;
  private readonly high: Int32Array;

  /** @param done before all others */
  constructor(steps: number, done: Mask) {
    this.low = new Int32Array(steps).fill(done.low);
    this.high = new Int32Array(steps).fill(done.high);
  }

  /** Steps that come before one. */
  of(step: number): Mask {
    return { low: this.low[step] as number, high: this.high[step] as number };
  }

  is(first: number, later: number): boolean {
    return has(this.of(later), first);
  }

  /** Put a step and all that comes before it before another; true when that is news. */
  put(first: number, later: number): boolean {
    const own = maskOf([first]);
    const [low, high] = [this.low[later] as number, this.high[later] as number];
    const l = low | (this.low[first] as number) | own.low;
    const h = high | (this.high[first] as number) | own.high;
    if (l === low && h === high) return false;
    this.low[later] = l;
    this.high[later] = h;
    return true;
  }

  /** How many come before one. */
  count(step: number): number {
    return bits(this.low[step] as number) + bits(this.high[step] as number);
  }
}

function bits(mask: number): number {
  let count = 0;
  for (let m = mask; m !== 0; m &= m - 1) count += 1;
  return count;
}
