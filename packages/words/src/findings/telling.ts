import type { Basis, Change, Say, Severity, SourceKind, Spot, Wording } from '@tinwright/core';

/** A finding as its words see it: what its code needs, with number, limit and place. */
export type SeenFinding<Values> = Values & {
  readonly value: number;
  readonly limit: number;
  readonly severity: Severity;
  readonly names: readonly string[];
};

/** What the words of a finding lean on: lengths in the unit of the job, names in the language. */
export interface Tongue extends Say {
  readonly material: (name: string) => string;
  readonly spot: (spot: Spot) => string;
  readonly number: (value: number, digits: number) => string;
  /** Words that wait for the unit. */
  readonly worded: (wording: Wording) => string;
}

/** How a finding is told: what is found, the number that would pass, and what else can be done. */
export interface Telling<Values> {
  readonly message: (finding: SeenFinding<Values>, tongue: Tongue) => string;
  /** Told where no value of the job by itself would pass. */
  readonly aim?: (finding: SeenFinding<Values>, tongue: Tongue) => string;
  readonly remedy?: (finding: SeenFinding<Values>, tongue: Tongue) => string;
}

/** How every finding of a map from code to values is told; one that is missing does not compile. */
export type Tellings<Map> = { readonly [C in keyof Map]: Telling<Map[C]> };

/** What findings share in a language. */
export interface FindingGrammar {
  readonly severity: Readonly<Record<Severity, string>>;
  /** In front of what holds for joints. */
  readonly joints: (names: readonly string[]) => string;
  /** After what is found at the worst place: names of others, how many of them, or how many more there. */
  readonly others: (names: readonly string[]) => string;
  readonly places: (count: number) => string;
  readonly there: (count: number) => string;
  readonly and: string;
  readonly or: string;
  readonly spot: (spot: Spot) => string;
  readonly change: (change: Change, tongue: Tongue) => string;
  readonly basis: Readonly<Record<Basis, string>>;
  readonly kinds: Readonly<Record<SourceKind, string>>;
  readonly by: (rule: string, work: string) => string;
  readonly profile: Readonly<Record<'strict' | 'usual', string>>;
  readonly assumed: (paths: readonly string[]) => string;
}
