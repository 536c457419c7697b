/** Something every family has to hold. */
export interface Duty {
  /** The case, then what is true of it. */
  readonly title: string;
  /** @throws Error that says what does not hold */
  readonly check: () => void;
}
