import type { Horns } from '../../machines/shop.js';
import type { PressTools } from '../../tools/press-tools.js';
import type { StandingLump } from './bench.js';
import { comesOffEndFirst } from './end-first.js';
import { hooks, risen, slidesOff, tiltsOff, type UnderPunch } from './press-access.js';
import { seenFromTip, type Tip } from './press-tip.js';
import type { Obstacle, RemovalWay } from './station.js';
import type { Interval } from './stretches.js';

/** What keeps a part on the punch or from under it, or how it comes there and off; null for what lies on a table. */
export interface Off {
  readonly obstacle: Obstacle | null;
  readonly putIn: RemovalWay | null;
  readonly takeOff: RemovalWay | null;
}

/** Nothing is over it. */
export const OPEN_TABLE: Off = { obstacle: null, putIn: null, takeOff: null };

/** Nothing of it takes the punch along. */
const DOWN: Off = { obstacle: null, putIn: 'straight', takeOff: 'straight' };

/** A part that is to come under an open punch, and off it once bent. */
export interface TakingOff {
  /** True for what would take the punch along. */
  readonly hooked: (standing: StandingLump) => boolean;
  /** @param stands where pieces of the punch stand along the line, horns with them */
  readonly way: (standing: readonly StandingLump[], stands: readonly Interval[]) => Off;
}

/** A lump under the punch, the side it lies on risen by an angle, radians. */
type Posed = (standing: StandingLump, rise: number) => readonly UnderPunch[];

/** The same, each looked at once: it stands so in many states. */
function posedBook(pose: Posed): Posed {
  const known = new WeakMap<StandingLump, Map<number, readonly UnderPunch[]>>();
  return (standing, rise) => {
    const byRise = known.get(standing) ?? new Map<number, readonly UnderPunch[]>();
    known.set(standing, byRise);
    const made = byRise.get(rise) ?? pose(standing, rise);
    byRise.set(rise, made);
    return made;
  };
}

/** @param tools without margin  @param bend where the point lies, radians that either side rises in the end, mm */
export function takingOff(
  tools: () => PressTools,
  {
    tip,
    half,
    thickness,
    horns,
  }: {
    readonly tip: Tip;
    readonly half: number;
    readonly thickness: number;
    readonly horns: Horns | null;
  },
): TakingOff {
  const pose: Posed = (s, rise) =>
    s.solids.map(({ section, y }) => ({
      section: risen(
        seenFromTip(section, s.moves, rise === 0 ? { ...tip, over: 0 } : tip, thickness),
        s.moves,
        rise,
      ),
      y,
      flat: s.flat,
    }));
  const posed = posedBook(pose);
  const hooking = new WeakMap<StandingLump, boolean>();
  const hooked = (s: StandingLump): boolean => {
    const made = hooking.get(s) ?? [0, half].some((h) => pose(s, h).some((p) => hooks(p.section, tools())));
    hooking.set(s, made);
    return made;
  };
  const off = (
    standing: readonly StandingLump[],
    stands: readonly Interval[],
    rise: number,
  ): RemovalWay | 'none' => {
    const parts = standing.flatMap((s) => posed(s, rise));
    const slides = slidesOff(parts, tools(), stands);
    if (slides !== null) return slides;
    if (horns === null) return tiltsOff(parts, tools(), stands) ? 'tilted' : 'none';
    const [only] = stands as [Interval];
    const single = stands.length === 1 && Number.isFinite(only[1] - only[0]);
    return single && comesOffEndFirst(parts, tools(), only) ? 'end-first' : 'none';
  };
  return {
    hooked,
    way: (standing, stands) => {
      if (!standing.some(hooked)) return DOWN;
      const [putIn, takeOff] = [off(standing, stands, 0), off(standing, stands, half)];
      if (putIn !== 'none' && takeOff !== 'none') return { obstacle: null, putIn, takeOff };
      const panel = standing.find(hooked)?.lump.panel ?? -1;
      const obstacle: Obstacle = { code: putIn === 'none' ? 'put-in' : 'take-off', panel };
      return { obstacle, putIn: null, takeOff: null };
    },
  };
}
