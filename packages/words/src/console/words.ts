import type { BendStep, SetUpChange } from '@tinwright/shop';

/** What a terminal says of findings, bend orders, sheets that were planned and files that were written. Counts are numbers, sizes and shares are text already. */
export interface ConsoleWords {
  readonly sheet: (n: number) => string;
  readonly blanks: (n: number) => string;
  readonly parts: (n: number) => string;
  readonly used: (share: string) => string;
  readonly ofSheet: (share: string) => string;
  readonly upTo: (to: string, of: string) => string;
  readonly offcut: (size: string) => string;
  readonly noOffcut: string;
  readonly cuts: (cuts: number, settings: number) => string;
  /** Where nobody says what sheets there are: sizes that are taken to be usual. */
  readonly usualSheets: (sizes: readonly string[]) => string;
  readonly open: (file: string) => string;
  /** A part made of a blank of that size. */
  readonly blank: (size: string) => string;
  readonly filesIn: (n: number, folder: string, open: string) => string;
  /** Where a finding is an error: what became of the files. */
  readonly notWritten: string;
  readonly writtenAll: string;
  readonly sheetsIn: (n: number, folder: string) => string;
  /** What a torch has to do on a sheet; lengths and minutes as texts, minutes an estimate. */
  readonly torch: (work: {
    readonly length: string;
    readonly spared: string;
    readonly pierces: number;
    readonly starts: number;
    readonly minutes: string;
  }) => string;
  /** While a nest is searched, and when it is interrupted. */
  readonly soFar: (sheets: number, seed: number) => string;
  readonly ending: string;
  /** In front of what mends a finding; whose it is where it belongs to no part. */
  readonly fix: string;
  readonly job: string;
  readonly fit: FitWords;
  /** So many parts of so many pieces, and how many findings; of a row of sizes, how many of them are errors. */
  readonly checked: (parts: number, pieces: number, findings: number) => string;
  readonly checkedSize: (size: string, findings: number, errors: number) => string;
  readonly order: OrderWords;
  readonly family: FamilyListWords;
}

/** Under the parameters of a family. */
export interface FamilyListWords {
  /** Over sizes that others may follow; how that is written. */
  readonly follow: (written: string) => string;
  readonly sites: (names: string) => string;
  readonly starter: (command: string) => string;
}

/** How the parts of an object fit. */
export interface FitWords {
  readonly joint: string;
  readonly asked: string;
  readonly found: string;
  readonly between: string;
  /** Nothing is near. */
  readonly clear: string;
  readonly and: string;
}

/** Bend orders of the parts of a job. Times are text already. */
export interface OrderWords {
  /** In which shop, and from where places along a line are measured. @param shop null where it has no name */
  readonly shop: (shop: string | null) => string;
  readonly helps: (mend: string) => string;
  readonly machines: Readonly<Record<BendStep['machine'], string>>;
  readonly force: (formula: string) => string;
  readonly batch: (together: string, apart: string) => string;
  readonly to: string;
  readonly changes: Readonly<Record<SetUpChange, string>>;
}
