/** Poses of a lattice that were come to: a bit each, a row of them for every tilt and place across that is. */
export class Poses {
  readonly #planes: (Int32Array | undefined)[][] = [];
  readonly #far: number;
  readonly #side: number;
  readonly #tilts: number;

  /** @param far steps of the lattice to every side @param tilts either way */
  constructor(far: number, tilts: number) {
    this.#far = far;
    this.#side = 2 * far + 1;
    this.#tilts = tilts;
  }

  /** True for one that was not there before. */
  add(x: number, z: number, tilt: number): boolean {
    const row = this.#rowOf(x, tilt);
    const at = z + this.#far;
    const word = row[at >> 5] as number;
    const bit = 1 << (at & 31);
    row[at >> 5] = word | bit;
    return (word & bit) === 0;
  }

  #rowOf(x: number, tilt: number): Int32Array {
    this.#planes[tilt + this.#tilts] ??= [];
    const plane = this.#planes[tilt + this.#tilts] as (Int32Array | undefined)[];
    plane[x + this.#far] ??= new Int32Array((this.#side + 31) >> 5);
    return plane[x + this.#far] as Int32Array;
  }
}
