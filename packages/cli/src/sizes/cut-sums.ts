import { plainNumber } from '@tinwright/core/internal';
import { many } from '../host/console.js';
import { linesOf } from './journal.js';

/** What all sizes of a list are cut from, each by itself. kg, the shop's money */
export interface CutSums {
  /** Sizes that a sheet is known for. */
  readonly sizes: number;
  readonly sheets: number;
  readonly mass: number;
  /** null where a size has none. */
  readonly price: number | null;
}

/** Adds up a list of sizes, those made before too. */
export async function cutSums(file: string): Promise<CutSums> {
  let [sizes, sheets, mass, price] = [0, 0, 0, 0 as number | null];
  for await (const line of linesOf(file)) {
    if (line.status !== 'made' || line.sheets === '') continue;
    sizes += 1;
    sheets += Number(line.sheets);
    mass += Number(line.mass);
    price = price === null || line.price === '' ? null : price + Number(line.price);
  }
  return { sizes, sheets, mass: Number(mass.toFixed(3)), price: price && Number(price.toFixed(2)) };
}

/** The sums in a line. */
export function cutSumsText({ sizes, sheets, mass, price }: CutSums): string {
  if (sizes === 0) return 'No cut lists: neither --rack, job nor shop say what sheets there are.';
  const paid = price === null ? '' : `, price ${plainNumber(price, 2)}`;
  return `Cut by themselves, ${many(sizes, 'size')} ${sizes === 1 ? 'takes' : 'take'} ${many(sheets, 'sheet')}, ${plainNumber(mass, 3)} kg${paid}. tinwright shear plans several jobs, or with --sizes those of a job, together.`;
}
