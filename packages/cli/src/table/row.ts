import type { Path } from '@tinwright/core';

/** Where something stands in a table, counted from 1. */
export interface CellPlace {
  readonly line: number;
  readonly column: number;
}

/** One value of a row: where it goes in the job, and where it stands. Plain data, so that it crosses to a worker. */
export interface SizeCell extends CellPlace {
  readonly path: Path;
  readonly value: unknown;
}

/** A size to make: the job with some of its values written over. */
export interface Row extends CellPlace {
  /** Counted from 1, in the order of the table. */
  readonly number: number;
  readonly name: string;
  readonly cells: readonly SizeCell[];
  /** Why it cannot be made, found while it was read. */
  readonly refused?: string;
}

/** Rows of a table at most: what is remembered of them stays within 200 MB. */
export const MOST_ROWS = 2_000_000;

/** What is wrong with a table as a whole. */
export class TableError extends Error {
  override readonly name = 'TableError';
  readonly place: CellPlace;
  constructor(place: CellPlace, message: string) {
    super(message);
    this.place = place;
  }
}

/** Data with a value written over; groups on the way are made where there are none. The given data stays as it is. */
export function writtenOver(data: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(data)) {
    const at = Number(step);
    return data.map((entry, i) => (i === at ? writtenOver(entry, rest, value) : entry));
  }
  const group = typeof data === 'object' && data !== null ? data : {};
  return { ...group, [step]: writtenOver((group as Record<string | number, unknown>)[step], rest, value) };
}
