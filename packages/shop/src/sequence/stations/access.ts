import type { Brake } from '../../machines/shop.js';
import { type Convex, meet, meetsOnWay, rectangle } from '../../sweep/polygon.js';
import { shifted } from '../../sweep/shift.js';
import { hasWayOut } from '../../sweep/way-out.js';
import type { LeafTools } from '../../tools/leaf-tools.js';
import { spanOf } from '../part/line.js';
import type { LineSection } from '../part/line-stands.js';
import { OUT } from './out.js';
import type { RemovalWay } from './station.js';
import type { Interval } from './stretches.js';

/** A part between jaw and bed: the sections of its solids as they stand, and where fingers stand along the line. */
export interface Lying {
  readonly sections: readonly LineSection[];
  readonly fingers: readonly Interval[];
}

const LIFTED = 0.5; // mm the sheet is free under the jaw
const LOOSE = 0.1; // mm the jaw is lifted to let go of the sheet
const PLAY = 0.3; // mm the part may lean on a finger: it gives way
const PUSHES = [0, 3, -3, 6, -6, 10, -10, 15, -15, 20, -20, 30, -30, 45, -45]; // mm to the front or the back

const MOST_KEPT = 4096;

/** Ways that take long to find are looked up once for every section of a part. */
export type AccessBook = (lying: Lying) => RemovalWay | null;

/** The ways of one brake at one set-back; null where the part is trapped. @param tools without margin */
export function accessBook(brake: Brake, tools: LeafTools, thickness: number): AccessBook {
  const known = new Map<string, RemovalWay | null>();
  const jaw = jawOf(brake, tools, thickness);
  return (lying) => {
    const seen = inReach(lying);
    const level = seen.every((s) => s.low >= -LIFTED && s.high <= jaw.opening);
    if (level && rises(seen, jaw, jaw.opening)) return 'straight';
    const asked: Asked = { seen, lying, jaw };
    let first: Asked | undefined;
    for (const place of pushed(asked)) {
      if (straight(place)) return 'straight';
      first ??= place;
    }
    if (along(asked)) return 'along';
    const key = seen.map(nameOf).sort().join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const way = drawnOut(asked, first);
    if (known.size >= MOST_KEPT) known.clear();
    known.set(key, way);
    return way;
  };
}

/** Jaw and bed as a lifted part sees them. mm */
interface Jaw {
  readonly opening: number;
  /** How far the part can be lifted off the bed. */
  readonly clear: number;
  readonly setBack: number;
  readonly finger: readonly Convex[];
  readonly beam: Convex;
  /** The fingers a little smaller: the part may lean on them. */
  readonly smaller: readonly Convex[];
  /** Fingers and beam with the jaw lifted by its opening. */
  readonly lifted: { readonly fingers: readonly Convex[]; readonly beam: Convex };
  /** Bed and leaf, drawn level, as one block. */
  readonly floor: Convex;
}

function jawOf({ opening, bed, leaf }: Brake, { finger, beam, setBack }: LeafTools, thickness: number): Jaw {
  const up = (shape: Convex) => shifted(shape, 0, opening);
  return {
    opening,
    clear: opening - thickness - LIFTED,
    setBack,
    finger,
    beam,
    smaller: finger.map(smaller),
    lifted: { fingers: finger.map(up), beam: up(beam) },
    floor: rectangle(-bed, -OUT, leaf.width, 0),
  };
}

/** A section of a solid against the jaw. */
interface Seen {
  readonly section: Convex;
  readonly y: Interval;
  /** Fingers stand where it is. */
  readonly under: boolean;
  readonly low: number;
  readonly high: number;
}

interface Asked {
  readonly seen: readonly Seen[];
  readonly lying: Lying;
  readonly jaw: Jaw;
}

/** What stands up or hangs down; the flat sheet between jaw and bed is in nobody's way. */
function inReach({ sections, fingers }: Lying): readonly Seen[] {
  return sections.map(({ section, y }) => {
    let [low, high] = [Infinity, -Infinity];
    for (const [, z] of section) {
      low = Math.min(low, z);
      high = Math.max(high, z);
    }
    const under = fingers.some(([a, b]) => y[1] > a + 1e-6 && y[0] < b - 1e-6);
    return { section, y, under, low, high };
  });
}

const nameOf = ({ section, under, y }: Seen): string =>
  `${under ? 'u' : `b${y[0].toFixed(0)}:${y[1].toFixed(0)}`}${section.map((p) => `${p[0].toFixed(1)},${p[1].toFixed(1)}`).join(';')}`;

/** Ways that are looked for step by step. @param place where the part lies with the jaw lifted, if it can be */
function drawnOut(asked: Asked, place: Asked | undefined): RemovalWay | null {
  if (place !== undefined && tilted(place)) return 'tilted';
  return withFingers(asked) ? 'with-fingers' : null;
}

/** A little smaller, towards its middle. */
function smaller(shape: Convex): Convex {
  const [xs, zs] = [shape.map((p) => p[0]), shape.map((p) => p[1])];
  const [cx, cz] = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...zs) + Math.max(...zs)) / 2];
  return shape.map(([x, z]) => [x - Math.sign(x - cx) * PLAY, z - Math.sign(z - cz) * PLAY] as const);
}

/** True when the fingers pass nothing of the part as the jaw lifts. */
function rises(seen: readonly Seen[], { smaller }: Jaw, by: number): boolean {
  const fingers = smaller.map((f) => shifted(f, 0, LOOSE));
  return seen.every(
    ({ section, under }) => !under || !fingers.some((f) => meetsOnWay(f, 0, by - LOOSE, section)),
  );
}

/** The part pushed to the front or the back under a jaw that only lets go of it, as far as the jaw can be lifted then. */
function* pushed({ seen, lying, jaw }: Asked): Generator<Asked> {
  const still = [jaw.beam, shifted(jaw.floor, 0, -LIFTED)];
  for (const by of PUSHES) {
    const passes = seen.every(
      ({ section, under }) =>
        !still.some((o) => meetsOnWay(section, by, 0, o)) &&
        !(under && jaw.smaller.some((o) => meetsOnWay(section, by, 0, o))),
    );
    if (!passes) continue;
    const there = seen.map((s) => ({ ...s, section: shifted(s.section, by, 0) }));
    if (rises(there, jaw, jaw.opening)) yield { seen: there, lying, jaw };
  }
}

/** Straight out to the front, or back from where it came, on the bed or lifted off it. */
function straight({ seen, jaw: { clear, lifted, floor } }: Asked): boolean {
  const still = [lifted.beam, floor];
  return [0, clear].some((raised) => {
    const up = seen.map((s) => ({ under: s.under, section: shifted(s.section, 0, raised + LIFTED) }));
    return [OUT, -OUT].some((to) =>
      up.every(
        ({ section, under }) =>
          !still.some((o) => meetsOnWay(section, to, 0, o)) &&
          !(under && lifted.fingers.some((o) => meetsOnWay(section, to, 0, o))),
      ),
    );
  });
}

/** Along the line: nothing that reaches into the jaw's section may have to pass the fingers. */
function along({ seen, lying, jaw }: Asked): boolean {
  const ends = spanOf(lying.fingers);
  return [jaw.opening, jaw.opening / 2, 1, LOOSE].some((up) => {
    if (!rises(seen, jaw, up)) return false;
    const fingers = jaw.finger.map((f) => shifted(f, 0, Math.min(up, jaw.opening)));
    const inside = seen.filter(({ section }) => fingers.some((f) => meet(section, f)));
    return inside.every((s) => s.y[0] >= ends[1] - 1e-6) || inside.every((s) => s.y[1] <= ends[0] + 1e-6);
  });
}

/** Tilted and drawn round the foot to the front. */
function tilted({ seen, jaw: { finger, beam, floor, opening, setBack } }: Asked): boolean {
  const bed = shifted(floor, 0, -opening);
  return hasWayOut({
    body: seen.map(({ section, under }) => ({
      piece: section,
      against: [...(under ? finger : []), beam, bed],
    })),
    past: -setBack,
    down: opening,
  });
}

const SHIFTS = [0, 5, 10, 15, 20, 30, 40, 60]; // mm the fingers are pushed back inside the part before they are lifted

/** The fingers loosened from the jaw: part and fingers come out to the front together, then the fingers out of it. */
function withFingers({ seen, jaw: { finger, lifted, floor } }: Asked): boolean {
  const out = seen.every(({ section }) => {
    const up = shifted(section, 0, LIFTED);
    return !meetsOnWay(up, OUT, 0, lifted.beam) && !meetsOnWay(up, OUT, 0, floor);
  });
  const near = seen.filter((s) => s.under);
  const passes = (shape: Convex, dx: number, dz: number) =>
    near.every(({ section }) => !meetsOnWay(shape, dx, dz, section));
  return (
    out &&
    SHIFTS.some((back) =>
      finger.every((f) => {
        const loose = shifted(f, 0, LIFTED);
        return passes(loose, -back, 0) && passes(shifted(loose, -back, 0), 0, OUT);
      }),
    )
  );
}
