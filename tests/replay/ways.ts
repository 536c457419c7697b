// How a part comes under a lifted jaw or off it: every way tried as a body that moves.
import { type LeafTools, lifted, type Tool } from './machine.js';
import { shift, type V2, type V3 } from './rigid.js';
import { meets, moved, type Solid } from './solid.js';
import type { Way } from './step.js';
import { type Piece, wayOut } from './way-out.js';

/** A part as it lies between jaw and bed before the jaw lifts. */
export interface Trapped {
  readonly solids: readonly Solid[];
  readonly tools: LeafTools;
  /** How far the jaw lifts, mm. */
  readonly opening: number;
  readonly setBack: number;
  readonly thickness: number;
}

const FAR = 3000; // mm
const LOOSE = 0.1; // mm: no longer clamped
const HALF = 0.5; // mm the sheet is held off what it lies on

const free = (solids: readonly Solid[], tools: readonly Tool[], by?: V3): boolean =>
  solids.every((s) => tools.every((t) => t.solids.every((o) => !meets(s, o, by))));

const up = (solids: readonly Solid[], by: number) => solids.map((s) => moved(s, shift(0, 0, by)));

/** The jaw raised, if nothing of the part is in its way; null else. */
function raised({ solids, tools }: Trapped, by: number): readonly Tool[] | null {
  const jaw = [tools.fingers, tools.beam];
  const passes = jaw.every((t) => t.solids.every((o) => solids.every((s) => !meets(o, s, [0, 0, by]))));
  return passes ? jaw.map((t) => lifted(t, shift(0, 0, by))) : null;
}

/** True when the part comes off by that way. */
export function comes(way: Way, trapped: Trapped): boolean {
  if (way === 'straight') return straight(trapped);
  if (way === 'along') return along(trapped);
  if (way === 'end-first') return false;
  return way === 'tilted' ? tilted(trapped) : withFingers(trapped);
}

const heights = ({ opening }: Trapped) => [opening, opening / 2, opening / 4, 1, LOOSE];
const SLIDES = [0, 3, 6, 10, 15, 20, 30, 45]; // mm

/** The part as it lies, and pushed to the front or the back under a jaw that is only loosened. */
function pushed(trapped: Trapped): readonly Trapped[] {
  const { solids, tools } = trapped;
  const jaw = raised(trapped, LOOSE);
  if (jaw === null) return [trapped];
  return SLIDES.flatMap((by) =>
    (by === 0 ? [0] : [by, -by]).flatMap((to) =>
      free(solids, [...jaw, tools.bed, tools.leaf], [to, 0, 0])
        ? [{ ...trapped, solids: solids.map((s) => moved(s, shift(to, 0, 0))) }]
        : [],
    ),
  );
}

const straight = (trapped: Trapped): boolean => pushed(trapped).some(straightFrom);

function straightFrom(trapped: Trapped): boolean {
  const { solids, tools, thickness } = trapped;
  const table = [tools.bed, tools.leaf];
  return heights(trapped).some((by) => {
    const jaw = raised(trapped, by);
    if (jaw === null) return false;
    return [0, Math.max(0, by - thickness - HALF)].some((off) => {
      if (off > 0 && !free(solids, jaw, [0, 0, off])) return false;
      const lying = up(solids, off);
      return [FAR, -FAR].some((to) => free(lying, [...jaw, ...table], [to, 0, 0]));
    });
  });
}

function along(trapped: Trapped): boolean {
  const { solids, tools } = trapped;
  return heights(trapped).some((by) => {
    const jaw = raised(trapped, by);
    return (
      jaw !== null && [FAR, -FAR].some((to) => free(solids, [...jaw, tools.bed, tools.leaf], [0, to, 0]))
    );
  });
}

function withFingers(trapped: Trapped): boolean {
  const { solids, tools } = trapped;
  const beam = tools.beam.solids.map((s) => moved(s, shift(0, 0, trapped.opening)));
  const off: readonly Tool[] = [{ id: 'beam', solids: beam }, tools.bed, tools.leaf];
  if (!free(solids, off, [FAR, 0, 0])) return false;
  const loose = tools.fingers.solids.map((s) => moved(s, shift(0, 0, HALF)));
  const part: readonly Tool[] = [{ id: 'part', solids }];
  return [0, 3, 6, 10, 15, 20, 30, 40, 60].some(
    (back) =>
      free(loose, part, [-back, 0, 0]) &&
      free(
        loose.map((s) => moved(s, shift(-back, 0, 0))),
        part,
        [0, 0, FAR],
      ),
  );
}

/** From the first place where the jaw can be lifted. */
function tilted(trapped: Trapped): boolean {
  const first = pushed(trapped).find((t) => raised(t, t.opening) !== null);
  return first !== undefined && tiltedFrom(first);
}

function tiltedFrom(trapped: Trapped): boolean {
  const { solids, tools, opening, setBack } = trapped;
  const jaw = raised(trapped, opening) as readonly Tool[];
  const table = [tools.bed, tools.leaf];
  const still = [...jaw, ...table].flatMap((t) => t.solids);
  return wayOut(piecesAgainst(solids, still), { past: -setBack });
}

/** Sections of a part, each with what stands in its way. */
export const piecesAgainst = (solids: readonly Solid[], still: readonly Solid[]): readonly Piece[] =>
  solids.map((s) => ({
    section: sectionOf(s),
    against: still.flatMap((o) => {
      const [from, to] = [Math.max(s.low[1], o.low[1]), Math.min(s.high[1], o.high[1])];
      return to - from < 1e-6 ? [] : [{ own: sectionBetween(s, from, to), other: sectionOf(o) }];
    }),
  }));

/** Seen along y. */
const sectionOf = (s: Solid): readonly V2[] => hull(s.points.map(([x, , z]): V2 => [x, z]));

/** What of a solid lies between two planes across y, seen along it. */
function sectionBetween(s: Solid, from: number, to: number): readonly V2[] {
  if (s.low[1] >= from - 1e-9 && s.high[1] <= to + 1e-9) return sectionOf(s);
  const inside = s.points.filter((p) => p[1] >= from && p[1] <= to);
  const cut = [from, to].flatMap((y) =>
    s.points.flatMap((p, i) =>
      s.points.slice(i + 1).flatMap((q): V3[] => {
        if (p[1] < y === q[1] < y) return [];
        const t = (y - p[1]) / (q[1] - p[1]);
        return [[p[0] + (q[0] - p[0]) * t, y, p[2] + (q[2] - p[2]) * t]];
      }),
    ),
  );
  return hull([...inside, ...cut].map(([x, , z]): V2 => [x, z]));
}

/** Convex hull, counter-clockwise; Andrew's chains. */
function hull(points: readonly V2[]): readonly V2[] {
  const sorted = points.toSorted((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (list: readonly V2[]) =>
    list.reduce<V2[]>((row, p) => {
      while (row.length > 1) {
        const [a, b] = row.slice(-2) as [V2, V2];
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 1e-9) break;
        row.pop();
      }
      row.push(p);
      return row;
    }, []);
  const [low, high] = [half(sorted), half(sorted.toReversed())];
  return [...low.slice(0, -1), ...high.slice(0, -1)];
}
