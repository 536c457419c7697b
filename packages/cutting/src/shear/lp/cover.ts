/** A column of a programme: what one of it costs, and how much of which rows it covers. */
export interface CoverColumn {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly amounts: readonly number[];
}

/** Least cost of columns, any share of each, that cover every row at least so far. */
export interface Cover {
  readonly least: readonly number[];
  readonly columns: readonly CoverColumn[];
}

/** How much of every column, and what one more of every row would cost. */
export interface CoverAnswer {
  readonly amounts: ArrayLike<number>;
  readonly prices: ArrayLike<number>;
}

/** Solves such linear programmes; null where none of its columns can cover the rows. */
export type CoverSolver = (cover: Cover) => CoverAnswer | null;
