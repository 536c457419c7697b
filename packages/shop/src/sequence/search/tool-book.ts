import type { HeldSide } from '../part/line.js';
import { without } from '../part/mask.js';
import type { Work } from '../part/operations.js';
import type { Mounting, Station, Stretch } from '../stations/station.js';
import { chooseTools, NONE_ON, type StretchRoom, serves, type ToolSet, toolSetKey } from './fingers.js';

/** Chooses tools for a mounting by what is on. */
export type ToolBook = (current: ToolSet, mounting: Mounting, station: Station) => ToolSet | 'none';

/** What is on a machine when a job begins. */
export const setAtFirst = ({ wholeAtFirst }: Pick<Station, 'wholeAtFirst'>): ToolSet =>
  wholeAtFirst ? null : NONE_ON;

/**
 * Room for tools that end beside something: wider ones would push the bend off the middle of the machine. A set of width w
 * that ends with a line of length l stands in the middle of it as long as w − (l + L) / 2 is nothing: derived.
 */
function nearMiddle(stretches: readonly Stretch[], length: number | null): readonly Stretch[] {
  const [only, ...others] = stretches;
  if (length === null || only === undefined || others.length > 0) return stretches;
  if (Number.isFinite(only.from) === Number.isFinite(only.to)) return stretches;
  return [{ ...only, most: Math.min(only.most, (only.covered + length) / 2) }];
}

/**
 * Tools that are on when they serve and leave the bend in the middle, else the whole rack where that hangs in the machine,
 * else the best choice from it; choices are kept.
 * @param narrow room for tools where it is least on a machine: what is mounted first goes in there too, if it can
 */
export function toolBook(narrow: (station: Station) => readonly StretchRoom[] = () => []): ToolBook {
  const chosen = new Map<string, ToolSet | 'none'>();
  const anew = (current: ToolSet, stretches: readonly StretchRoom[], station: Station): ToolSet | 'none' => {
    const { rack } = station;
    const { inner } = station.gaps;
    const [only, ...others] = stretches;
    let found = chooseTools(current, stretches, rack, inner);
    if (current?.length !== 0 || only === undefined || others.length > 0) return found;
    let room: StretchRoom = only;
    for (const { least, most } of narrow(station)) {
      const both = { least: Math.max(room.least, least), most: Math.min(room.most, most) };
      const set = chooseTools(current, [both], rack, inner);
      if (set !== 'none') [room, found] = [both, set];
    }
    return found;
  };
  const choose = (current: ToolSet, stretches: readonly Stretch[], station: Station) => {
    const { id, rack, wholeAtFirst } = station;
    const { inner } = station.gaps;
    if (serves(current, stretches, rack, inner)) return current;
    if (wholeAtFirst && serves(null, stretches, rack, inner)) return null;
    const size = (v: number) => v.toFixed(3);
    const key = `${id} ${toolSetKey(current)} ${stretches.map((s) => `${size(s.least)} ${size(s.most)}`).join(' ')}`;
    const known = chosen.get(key) ?? anew(current, stretches, station);
    chosen.set(key, known);
    return known;
  };
  return (current, { stretches }, station) => {
    const near = nearMiddle(stretches, station.balance);
    const found = choose(current, near, station);
    return found === 'none' && near !== stretches ? choose(current, stretches, station) : found;
  };
}

const SIDES: readonly HeldSide[] = ['parent', 'child'];
const MOST_LINES = 24; // of a part: with more it takes too long to look at them all

/** Room for tools on a machine at every line that is bent last, the least first: none for lines that are open to a side then. */
export function narrowLines({ all, operations }: Work): (station: Station) => readonly StretchRoom[] {
  const known = new Map<string, readonly StretchRoom[]>();
  const looked = (station: Station): readonly StretchRoom[] =>
    operations
      .flatMap((o) => SIDES.map((held) => ({ o, held })))
      .filter(({ o, held }) => station.limits(o, held) === null)
      .map(({ o, held }) => station.mount(o, held, without(all, o.mask)))
      .filter(({ obstacle, stretches }) => obstacle === null && stretches.length === 1)
      .map(({ stretches }) => stretches[0] as Stretch)
      .filter(({ from, to }) => Number.isFinite(from) && Number.isFinite(to))
      .toSorted((a, b) => a.most - b.most || a.least - b.least);
  return (station) => {
    const before = known.get(station.id);
    if (before !== undefined) return before;
    const made = operations.length > MOST_LINES ? [] : looked(station);
    known.set(station.id, made);
    return made;
  };
}
