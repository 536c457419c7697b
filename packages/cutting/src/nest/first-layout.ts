import { type Bench, type FilledFrom, fill, fillsAgain } from './fill.js';
import type { BedKind, FilledBed, NestLayout } from './problem.js';
import { layoutArea } from './rank.js';

/**
 * A layout in one pass: bed after bed is filled, of the kind that is used best; offcuts before sheets, and for the
 * last pieces the cheapest kind that takes them all. @param pulse told of every bed; 'stop' ends it there
 */
export function firstLayout(bench: Bench, pulse: (so: NestLayout) => 'go' | 'stop'): NestLayout {
  const { kinds, quantities } = bench.problem;
  const left = [...quantities];
  const stock = kinds.map((k) => k.count);
  const beds: FilledBed[] = [];
  const last: (FilledFrom | undefined)[] = [];
  // of many equal pieces bed after bed comes out the same: it is filled once
  const filled = (k: number): FilledBed => {
    const known = last[k];
    if (known !== undefined && fillsAgain(bench, known, left)) return known.bed;
    const bed = fill(bench, k, left);
    last[k] = { bed, left: [...left] };
    return bed;
  };
  while (left.some((n) => n > 0)) {
    const tried = kinds.flatMap((_, k) => ((stock[k] as number) > 0 ? [filled(k)] : []));
    const used = tried.filter((bed) => bed.laid.length > 0);
    const best = used.toSorted((a, b) => order(bench, left, a, b))[0];
    if (best === undefined) break;
    beds.push(best);
    stock[best.kind] = (stock[best.kind] as number) - 1;
    for (const { item } of best.laid) left[item] = (left[item] as number) - 1;
    if (pulse({ beds: [...beds], left: [...left] }) === 'stop') break;
  }
  return { beds, left };
}

function order(bench: Bench, left: readonly number[], a: FilledBed, b: FilledBed): number {
  const [ka, kb] = [a, b].map((bed) => bench.problem.kinds[bed.kind] as BedKind) as [BedKind, BedKind];
  if (ka.origin !== kb.origin) return ka.origin === 'offcut' ? -1 : 1;
  const pieces = left.reduce((sum, n) => sum + n, 0);
  const [allA, allB] = [a.laid.length === pieces, b.laid.length === pieces];
  if (allA || allB) return Number(allB) - Number(allA) || ka.cost - kb.cost;
  const worth = (bed: FilledBed, k: BedKind) => layoutArea(bench.kit, bed.laid) / k.cost;
  return worth(b, kb) - worth(a, ka);
}
