/** Random numbers from a seed: the same seed, the same numbers on every machine (xorshift, 32 bits). */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0 || 1;
  }

  /** At least 0, less than 1. */
  next(): number {
    let s = this.state;
    s ^= s << 13;
    s ^= s >>> 17;
    s ^= s << 5;
    this.state = s >>> 0;
    return this.state / 4294967296;
  }

  /** A whole number from 0 to `below` - 1. */
  int(below: number): number {
    return (this.next() * below) | 0;
  }
}
