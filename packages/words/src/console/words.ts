/** What a terminal says of sheets that were planned and of files that were written. Counts are numbers, sizes and shares are text already. */
export interface ConsoleWords {
  /** Between the whole and its parts of a number. */
  readonly decimal: '.' | ',';
  readonly sheet: (n: number) => string;
  readonly blanks: (n: number) => string;
  readonly parts: (n: number) => string;
  readonly used: (share: string) => string;
  readonly ofSheet: (share: string) => string;
  readonly upTo: (to: string, of: string) => string;
  readonly offcut: (size: string) => string;
  readonly noOffcut: string;
  readonly cuts: (cuts: number, settings: number) => string;
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
}
