/** A size of a finished part that is no parameter. mm */
export interface DerivedSize {
  readonly name: string;
  readonly value: number;
  /** The parameter it grows with, one to one unless `rate` says otherwise. */
  readonly follows: string;
  /** How much it grows by for 1 mm of that parameter. */
  readonly rate?: number;
  /** What it is, for help. */
  readonly words: string;
}

/** A derived size in one row. @param value mm @param follows path of the parameter it grows with, one to one */
export const derivedSize = (name: string, value: number, follows: string, words: string): DerivedSize => ({
  name,
  value,
  follows,
  words,
});
