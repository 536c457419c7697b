/** A rectangle wanted, one piece; sizes in any one unit, kerf already added. */
export interface ShearItem {
  readonly w: number;
  readonly h: number;
}

/** One kind of sheet to cut from, kerf and trim already taken into account. */
export interface Bin {
  readonly x: number;
  readonly y: number;
  /** The longest cuts that can be made, along x and along y; Infinity where the shear sets no limit. */
  readonly cutX: number;
  readonly cutY: number;
  readonly cost: number;
  readonly count: number;
  /** For every item: bit 1 when it may lie as given, bit 2 when it may lie turned. */
  readonly ways: Uint8Array;
}

/** What the search is asked: all items on the cheapest sheets. */
export interface ShearProblem {
  readonly items: readonly ShearItem[];
  readonly bins: readonly Bin[];
}
