import type { Packing, PackingSlot } from './packing.js';
import type { Random } from './random.js';

const SHEETS = 3;
const ITEMS = 8;
/** Share of the steps that clear whole sheets. */
const WHOLE = 0.1;
/** Nodes of the largest tree that is cleared whole; more would take many times longer to fill again. */
const CLEARED = 32;
/** Chance to take another piece out of the same sheet, and how often at most. */
const AGAIN = 0.6;
const BITES = 5;

/** Take one to eight items out of one to three sheets: whole subtrees, small ones rather than large ones. */
export function ruin(packing: Packing, random: Random): void {
  const sheets = 1 + random.int(SHEETS);
  const whole = random.next() < WHOLE;
  let left = 1 + random.int(ITEMS);
  for (let q = 0; q < sheets && left > 0 && packing.slots.length > 0; q++) {
    const index = random.int(packing.slots.length);
    if (whole && (packing.slots[index] as PackingSlot).tree.length <= CLEARED)
      left -= packing.remove(index, 0);
    else left -= bite(packing, index, left, random);
  }
}

function bite(packing: Packing, index: number, most: number, random: Random): number {
  const sheets = packing.slots.length;
  let taken = 0;
  for (let i = 0; i < BITES; i++) {
    taken += packing.remove(index, smallerOfTwo(packing.slots[index] as PackingSlot, random));
    if (taken >= most || packing.slots.length < sheets || random.next() >= AGAIN) break;
  }
  return taken;
}

function smallerOfTwo({ tree }: PackingSlot, random: Random): number {
  const i = random.int(tree.length);
  const j = random.int(tree.length);
  const area = (k: number) => (tree.w[k] as number) * (tree.h[k] as number);
  return area(j) < area(i) ? j : i;
}
