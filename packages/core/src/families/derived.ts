/** A size of a finished part that is no parameter. mm */
export interface DerivedSize {
  readonly name: string;
  readonly value: number;
  /** The parameter it grows with, one to one. */
  readonly follows: string;
  /** What it is, for help. */
  readonly words: string;
}

/** A derived size in one row. */
export const derivedSize = (name: string, value: number, follows: string, words: string): DerivedSize => ({
  name,
  value,
  follows,
  words,
});
