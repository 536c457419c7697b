/** Poses of a lattice that were come to: a bit each, a plane of them for every tilt that is. */
export class Poses {
  readonly #planes: (Int32Array | undefined)[] = [];
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
    const plane = this.#planeOf(tilt);
    const at = (x + this.#far) * this.#side + z + this.#far;
    const word = plane[at >> 5] as number;
    const bit = 1 << (at & 31);
    plane[at >> 5] = word | bit;
    return (word & bit) === 0;
  }

  #planeOf(tilt: number): Int32Array {
    this.#planes[tilt + this.#tilts] ??= new Int32Array((this.#side * this.#side + 31) >> 5);
    return this.#planes[tilt + this.#tilts] as Int32Array;
  }
}
