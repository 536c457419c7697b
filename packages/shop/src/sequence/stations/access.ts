import type { Brake } from '../../machines/shop.js';
import { type Convex, meet } from '../../sweep/polygon.js';
import { shifted, swept } from '../../sweep/shift.js';
import { hasWayOut } from '../../sweep/way-out.js';
import type { LeafTools } from '../../tools/leaf-tools.js';
import type { LineSection } from '../part/line-stands.js';
import type { RemovalWay } from './station.js';
import type { Interval } from './stretches.js';

/** A part between jaw and bed: the sections of its solids as they stand, and where fingers stand along the line. */
export interface Lying {
  readonly sections: readonly LineSection[];
  readonly fingers: readonly Interval[];
}

const FAR = 2000; // mm, out of the machine
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
  const leaf = brake.leaf.width;
  return (lying) => {
    const seen = inReach(lying);
    const jaw = tools.finger.map(smaller);
    if (seen.every((s) => s.low >= -LIFTED && s.high <= brake.opening) && rises(seen, jaw, brake.opening))
      return 'straight';
    const key = seen.map(nameOf).sort().join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const way = wayFor({ seen, lying, brake, tools, thickness, leaf });
    if (known.size >= MOST_KEPT) known.clear();
    known.set(key, way);
    return way;
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
  readonly brake: Brake;
  readonly tools: LeafTools;
  readonly thickness: number;
  readonly leaf: number;
}

/** What stands up or hangs down; the flat sheet between jaw and bed is in nobody's way. */
function inReach({ sections, fingers }: Lying): readonly Seen[] {
  return sections.map(({ section, y }) => {
    const zs = section.map((p) => p[1]);
    const under = fingers.some(([a, b]) => y[1] > a + 1e-6 && y[0] < b - 1e-6);
    return { section, y, under, low: Math.min(...zs), high: Math.max(...zs) };
  });
}

const nameOf = ({ section, under, y }: Seen): string =>
  `${under ? 'u' : `b${y[0].toFixed(0)}:${y[1].toFixed(0)}`}${section.map((p) => `${p[0].toFixed(1)},${p[1].toFixed(1)}`).join(';')}`;

function wayFor(asked: Asked): RemovalWay | null {
  let first: Asked | undefined;
  for (const place of pushed(asked)) {
    if (straight(place)) return 'straight';
    first ??= place;
  }
  if (along(asked)) return 'along';
  if (first !== undefined && tilted(first)) return 'tilted';
  return withFingers(asked) ? 'with-fingers' : null;
}

/** A little smaller, towards its middle. */
function smaller(shape: Convex): Convex {
  const [xs, zs] = [shape.map((p) => p[0]), shape.map((p) => p[1])];
  const [cx, cz] = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...zs) + Math.max(...zs)) / 2];
  return shape.map(([x, z]) => [x - Math.sign(x - cx) * PLAY, z - Math.sign(z - cz) * PLAY] as const);
}

/** True when the fingers pass nothing of the part as the jaw lifts. */
function rises(seen: readonly Seen[], fingers: readonly Convex[], by: number): boolean {
  const paths = fingers.map((f) => swept(shifted(f, 0, LOOSE), 0, by - LOOSE));
  return seen.every(({ section, under }) => !under || !paths.some((p) => meet(section, p)));
}

/** The part pushed to the front or the back under a jaw that only lets go of it, as far as the jaw can be lifted then. */
function* pushed(asked: Asked): Generator<Asked> {
  const { seen, tools, brake, leaf } = asked;
  const fingers = tools.finger.map(smaller);
  const still = [tools.beam, shifted(floor(brake, leaf), 0, -LIFTED)];
  for (const by of PUSHES) {
    const passes = seen.every(({ section, under }) => {
      const path = swept(section, by, 0);
      return ![...still, ...(under ? fingers : [])].some((o) => meet(path, o));
    });
    const there = seen.map((s) => ({ ...s, section: shifted(s.section, by, 0) }));
    if (passes && rises(there, fingers, brake.opening)) yield { ...asked, seen: there };
  }
}

/** The jaw as the lifted part sees it: the part stays, the jaw rises. */
function jaw({ tools, brake }: Asked, up: number) {
  const rise = (shape: Convex) => shifted(shape, 0, Math.min(up, brake.opening));
  return { fingers: tools.finger.map(rise), beam: rise(tools.beam) };
}

/** Straight out to the front, or back from where it came, on the bed or lifted off it. */
function straight(asked: Asked): boolean {
  const { seen, brake, thickness, leaf } = asked;
  const { fingers, beam } = jaw(asked, brake.opening);
  const bed = floor(brake, leaf);
  const clear = brake.opening - thickness - LIFTED;
  return [0, clear].some((raised) =>
    [FAR, -FAR].some((to) =>
      seen.every(({ section, under }) => {
        const path = swept(shifted(section, 0, raised + LIFTED), to, 0);
        const against = under ? [...fingers, beam, bed] : [beam, bed];
        return !against.some((o) => meet(path, o));
      }),
    ),
  );
}

/** Bed and leaf, drawn level, as one block. */
const floor = ({ bed }: Brake, leaf: number): Convex => [
  [-bed, -FAR],
  [leaf, -FAR],
  [leaf, 0],
  [-bed, 0],
];

/** Along the line: nothing that reaches into the jaw's section may have to pass the fingers. */
function along(asked: Asked): boolean {
  const { seen, lying, brake, tools } = asked;
  const ends: Interval = [
    Math.min(...lying.fingers.map((f) => f[0])),
    Math.max(...lying.fingers.map((f) => f[1])),
  ];
  const still = tools.finger.map(smaller);
  return [brake.opening, brake.opening / 2, 1, LOOSE].some((up) => {
    if (!rises(seen, still, up)) return false;
    const { fingers } = jaw(asked, up);
    const inside = seen.filter(({ section }) => fingers.some((f) => meet(section, f)));
    return inside.every((s) => s.y[0] >= ends[1] - 1e-6) || inside.every((s) => s.y[1] <= ends[0] + 1e-6);
  });
}

/** Tilted and drawn round the foot to the front. */
function tilted({ seen, brake, tools, leaf }: Asked): boolean {
  const { finger, beam } = tools;
  const bed = shifted(floor(brake, leaf), 0, -brake.opening);
  return hasWayOut({
    body: seen.map(({ section, under }) => ({
      piece: section,
      against: [...(under ? finger : []), beam, bed],
    })),
    past: -tools.setBack,
    down: brake.opening,
  });
}

const SHIFTS = [0, 5, 10, 15, 20, 30, 40, 60]; // mm the fingers are pushed back inside the part before they are lifted

/** The fingers loosened from the jaw: part and fingers come out to the front together, then the fingers out of it. */
function withFingers(asked: Asked): boolean {
  const { seen, brake, tools, leaf } = asked;
  const { beam } = jaw(asked, brake.opening);
  const bed = floor(brake, leaf);
  const out = seen.every(({ section }) => {
    const path = swept(shifted(section, 0, LIFTED), FAR, 0);
    return !meet(path, beam) && !meet(path, bed);
  });
  const near = seen.filter((s) => s.under);
  const passes = (path: Convex) => near.every(({ section }) => !meet(path, section));
  return (
    out &&
    SHIFTS.some((back) =>
      tools.finger.every((f) => {
        const loose = shifted(f, 0, LIFTED);
        return passes(swept(loose, -back, 0)) && passes(swept(shifted(loose, -back, 0), 0, FAR));
      }),
    )
  );
}
