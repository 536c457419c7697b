export type Values = Readonly<Record<string, unknown>>;
export type Way = readonly (string | number)[];

/** A size that cannot be, and the nearest that can. mm */
export interface SizeCase {
  readonly family: string;
  readonly way: Way;
  readonly given: number;
  /** The number that the message has to name. */
  readonly limit: number;
  readonly side: 'less' | 'more';
  readonly also?: Values;
  readonly why: string;
}
