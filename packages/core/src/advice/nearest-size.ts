import type { Unit } from '../units/length.js';

/**
 * What a trial of a size tells: the room it leaves, 0 or more where it works, less where it fails by so much; null
 * where it fails and nobody can say by how much.
 */
export type Room = number | null;

/** How far and how finely a size is searched. mm, or the size's own unit */
export interface SearchBudget {
  /** Found sizes are whole multiples of it: what a person writes, and what is printed. See `stepOf`. */
  readonly step: number;
  /** Most rungs climbed either way before the search is given up. Default: all of them, to 10,000 × and 1 ÷ 1,000. */
  readonly rungs?: number;
  /** Least size tried; default: more than nothing. */
  readonly least?: number;
  /** Greatest size tried. */
  readonly most?: number;
}

/** The nearest size that works, and which way its limit holds. */
export interface Found {
  readonly found: number;
  /** `least`: found or more; `most`: found or less. */
  readonly bound: 'least' | 'most';
}

/** The step sizes are printed in: a hundredth of a millimetre, a thousandth of an inch. mm */
export const stepOf = (unit: Unit): number => (unit === 'mm' ? 0.01 : 0.0254);

// close enough that sizes between two limits a half apart are not stepped over
const DOWN = [
  0.98, 0.9, 0.75, 0.6, 0.5, 0.4, 0.3, 0.22, 0.16, 0.12, 0.09, 0.065, 0.05, 0.035, 0.025, 0.018, 0.012, 0.008,
  0.003, 0.001,
];
const UP = [1.02, 1.1, 1.3, 1.6, 2, 2.6, 3.5, 5, 7, 10, 14, 20, 30, 50, 100, 300, 1000, 10_000];
const FLAT = 1e-9; // room that does not grow by more leads nowhere

/**
 * The size nearest to one that fails which works, searched downwards and upwards; null when there is none within the
 * budget. The answer is a multiple of the step, has itself been tried, and the multiple before it has failed (as far
 * as what works has one edge). Where trials tell how much room is left their slope is followed: towards the size that
 * passes in few trials, and not at all where a change makes it worse.
 * @param given the size that fails
 * @param room tries a size; see `passing` for a plain yes or no
 */
export function nearestSize(given: number, room: (size: number) => Room, budget: SearchBudget): Found | null {
  const start = room(given);
  const below = search(given, start, room, { ...budget, way: -1 });
  const above = search(given, start, room, { ...budget, way: 1 });
  const down = below === null ? null : ({ found: below, bound: 'most' } as const);
  const up = above === null ? null : ({ found: above, bound: 'least' } as const);
  if (down === null || up === null) return down ?? up;
  return changeOf(given, down.found) <= changeOf(given, up.found) ? down : up;
}

/** A trial of yes or no. */
export function passing(works: (size: number) => boolean): (size: number) => Room {
  return (size) => (works(size) ? 0 : null);
}

/** How much a size changes, the same for a half and for the double. */
export function changeOf(given: number, found: number): number {
  return Math.abs(Math.log(Math.max(found, 1e-3) / Math.max(given, 1e-3)));
}

interface Search extends SearchBudget {
  readonly way: 1 | -1;
}

/** A size tried, counted in steps. */
interface Tried {
  readonly at: number;
  readonly room: Room;
}

function search(given: number, start: Room, room: (size: number) => Room, search: Search): number | null {
  const { step, way } = search;
  const size = (at: number) => Number((at * step).toFixed(9));
  const ends = climb(given, start, (at) => room(size(at)), search);
  if (ends === null) return null;
  let [{ at: fails, room: lack }, good] = [ends.failed, ends.good];
  while (Math.abs(good.at - fails) > 1) {
    const at = between(fails, lack, good, way);
    const found = room(size(at));
    if (works(found)) good = { at, room: found };
    else [fails, lack] = [at, found];
  }
  return size(good.at);
}

/** Rung by rung away from the size given: the last that fails and the first that works. */
function climb(given: number, start: Room, room: (at: number) => Room, search: Search) {
  const { step, way, rungs = UP.length, least = 0, most = Infinity } = search;
  const first = Math.max(given, step);
  const ladder = (way > 0 ? UP : DOWN)
    .slice(0, rungs)
    .map((f) => outward((first * f) / step, way))
    .filter((at) => at !== given / step);
  let failed: Tried = { at: inward(given / step, way), room: start };
  for (let [i, leap] = [0, failed.at]; i < ladder.length; i++) {
    const rung = ladder[i] as number;
    const at = way > 0 ? Math.max(rung, leap) : Math.min(rung, leap);
    if (at <= 0 || at * step < least - FLAT || at * step > most + FLAT) return null;
    const tried: Tried = { at, room: room(at) };
    if (works(tried.room)) return { failed, good: tried };
    if (failed.room !== null) {
      // a slope is followed as long as it leads up
      if (tried.room === null || tried.room <= failed.room + FLAT) return null;
      const slope = (tried.room - failed.room) / (tried.at - failed.at);
      leap = outward(tried.at - tried.room / slope, way);
    }
    failed = tried;
  }
  return null;
}

/** The next size to try: where the straight line between two rooms comes to nothing, else the middle. */
function between(fails: number, lack: Room, good: Tried, way: 1 | -1): number {
  const middle = Math.trunc((fails + good.at) / 2);
  if (lack === null || good.room === null || good.room - lack < FLAT) return middle;
  const guess = outward(fails + ((good.at - fails) * -lack) / (good.room - lack), way);
  const inner = [fails + way, good.at - way].toSorted((a, b) => a - b) as [number, number];
  return Math.min(Math.max(guess, inner[0]), inner[1]);
}

const works = (room: Room) => room !== null && room >= 0;

/** To whole steps, a little past; rounding of the arithmetic is none. */
const outward = (at: number, way: 1 | -1) => (way > 0 ? Math.ceil(at - 1e-6) : Math.floor(at + 1e-6));
const inward = (at: number, way: 1 | -1) => (way > 0 ? Math.floor(at + 1e-6) : Math.ceil(at - 1e-6));
