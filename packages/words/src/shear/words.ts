/** Words of a shear plan's pages. */
export interface ShearWords {
  readonly title: (job: string) => string;
  readonly sheet: (n: number) => string;
  readonly strip: (sheet: number, letter: string) => string;
  readonly offcut: (sheet: number, n: number) => string;
  readonly scrap: string;
  /** Sides of a cut as seen on the diagram. */
  readonly sides: Readonly<Record<'left' | 'right' | 'lower' | 'upper', string>>;
  readonly side: (side: string, piece: string) => string;
  readonly steps: string;
  readonly columns: Readonly<Record<'cut' | 'piece' | 'stop' | 'behind' | 'front', string>>;
  readonly marked: (size: string) => string;
  readonly same: string;
  readonly notes: readonly string[];
  readonly sheets: string;
  readonly sheetColumns: Readonly<Record<'sheet' | 'stock' | 'size' | 'blanks' | 'used' | 'offcut', string>>;
  readonly missing: (part: string, count: number) => string;
  readonly alt: (sheet: number, stock: string, blanks: number) => string;
  readonly totals: (settings: number, cuts: number) => string;
  readonly proved: string;
  readonly gap: (sheets: string) => string;
  /** What all the cutting takes. */
  readonly sums: Readonly<
    Record<
      | 'heading'
      | 'what'
      | 'amount'
      | 'used'
      | 'kept'
      | 'waste'
      | 'mass'
      | 'price'
      | 'shear'
      | 'table'
      | 'joining'
      | 'estimate',
      string
    >
  > & {
    readonly minutes: (count: string) => string;
    readonly cuts: (length: string, pierces: number, minutes: string) => string;
  };
  readonly fasteners: {
    readonly heading: string;
    readonly columns: Readonly<Record<'kind' | 'diameter' | 'length' | 'stack' | 'count', string>>;
  };
}
