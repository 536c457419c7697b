/** What a terminal says of sheets that were planned. Counts are numbers, sizes and shares are text already. */
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
  readonly sheetsIn: (n: number, folder: string) => string;
  /** While a nest is searched, and when it is interrupted. */
  readonly soFar: (sheets: number, seed: number) => string;
  readonly ending: string;
}
