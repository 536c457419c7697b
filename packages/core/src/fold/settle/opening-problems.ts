import type { Path, Refusal } from '../../errors/problem.js';
import { contains } from '../../plane/inside.js';
import {
  type Box,
  boxOf,
  circleLoop,
  type Loop,
  loopBox,
  reach,
  type Segment,
  segments,
} from '../../plane/loop.js';
import { loopsNear } from '../../plane/loops-near.js';
import { nearPairs } from '../../plane/near-pairs.js';
import { segmentDistance } from '../../plane/segment-distance.js';
import { LEAST_METAL, reaches } from '../draft/least.js';
import type { Part, PartPanel } from './part.js';

/** An opening of a panel; `by` is null where the family answers for it. */
interface Opening {
  readonly loop: Loop;
  readonly box: Box;
  readonly by: Path | null;
}

/**
 * Openings that cannot be where they were asked for: over an edge or into a bend of their panel, larger than it, over
 * or in each other. `LEAST_METAL` stays on every side; more than that a shop may want, and its checks say so.
 */
export function openingProblems(part: Part): readonly Refusal[] {
  const pierced = part.panels.filter(
    (p) => p.cutouts.length > 0 || p.holes.some((h) => h.asked !== undefined),
  );
  return pierced.flatMap((panel) => {
    const openings = openingsOf(panel);
    const sides = sidesOf(part, panel);
    const off = openings.map((o) => offPanel(panel, sides, o));
    // what cannot stay where it is, is not held against the others
    return [...off.flat(), ...together(openings.filter((_, i) => off[i]?.length === 0))];
  });
}

function openingsOf({ holes, cutouts }: PartPanel): readonly Opening[] {
  const all = [
    ...holes.map((h) => ({ loop: circleLoop(h.at, h.diameter / 2), by: h.asked ?? null })),
    ...cutouts,
  ];
  return all.map(({ loop, by }) => ({ loop, by, box: loopBox(loop) }));
}

/** A side of a panel, and what is there in words. */
interface Side {
  readonly segment: Segment;
  readonly box: Box;
  readonly what: string;
}

function sidesOf({ panels }: Part, { id, shape, hang }: PartPanel): readonly Side[] {
  const bent = new Map(
    panels.flatMap((p) => (p.hang?.bend.parent === id ? [[p.hang.bend.edge, p.id] as const] : [])),
  );
  return segments(shape.map(({ from }) => ({ at: from, bulge: 0 }))).map((segment, i) => {
    const name = shape[i]?.name ?? '';
    const flange = name === 'near' && hang !== null ? id : bent.get(name);
    const what = flange === undefined ? `the edge "${name}" of panel "${id}"` : `the bend "${flange}"`;
    return { segment, box: boxOf([segment.from, segment.to]), what };
  });
}

function offPanel({ id, shape }: PartPanel, sides: readonly Side[], opening: Opening): readonly Refusal[] {
  const { loop, box, by } = opening;
  if (by === null) return [];
  const room = boxOf(shape.map((e) => e.from));
  const wide = ([0, 1] as const).map((k) => room.max[k] - room.min[k]);
  const need = ([0, 1] as const).map((k) => box.max[k] - box.min[k] + 2 * LEAST_METAL);
  if (need.some((n, k) => !reaches(wide[k] as number, n)))
    return [
      refusal('cutout-large', by, (say) => {
        const [x, y] = wide as [number, number];
        return `larger than panel "${id}" between its bends and edges, ${say.size(x)} × ${say.size(y)}`;
      }),
    ];
  const cuts = segments(loop);
  const near = nearPairs(
    cuts.map((s) => boxOf(reach(s))),
    LEAST_METAL,
    sides.map((s) => s.box),
  );
  const close = near.find(
    ([i, j]) => !reaches(segmentDistance(cuts[i] as Segment, (sides[j] as Side).segment), LEAST_METAL),
  );
  if (close !== undefined) {
    const { what } = sides[close[1]] as Side;
    return [
      refusal('cutout-off', by, (say) => `leaves less than ${say.least(LEAST_METAL)} of metal to ${what}`),
    ];
  }
  const outline = shape.map(({ from }) => ({ at: from, bulge: 0 }));
  const [first] = loop;
  if (first !== undefined && contains(outline, first.at)) return [];
  return [refusal('cutout-off', by, `lies outside panel "${id}"`)];
}

/** Which of the cut-outs an opening is; null for one of the family, which may have a size of its own that asks for it. */
function indexOf(by: Path | null): number | null {
  const last = by?.at(-1);
  return typeof last === 'number' ? last : null;
}

/** In the order they were asked for, those of the family first. */
const inOrder = (a: Opening, b: Opening) => (indexOf(a.by) ?? -1) - (indexOf(b.by) ?? -1);

/** What an opening is called that another one runs into. */
function named(by: Path): string {
  const index = indexOf(by);
  return index === null ? `the opening that ${by.join('.')} asks for` : `cut-out ${index + 1}`;
}

/** Openings nearer to each other than a little metal, or in one another; told of the later one. */
function together(openings: readonly Opening[]): readonly Refusal[] {
  const told = new Set<string>(); // one opening of a row or field that meets another is enough
  return nearPairs(
    openings.map((o) => o.box),
    LEAST_METAL,
  ).flatMap(([i, j]) => {
    const [a, b] = [openings[i] as Opening, openings[j] as Opening].toSorted(inOrder) as [Opening, Opening];
    const by = b.by ?? a.by;
    const key = `${a.by?.join()} ${b.by?.join()}`;
    if (by === null || told.has(key)) return [];
    if (!loopsNear(a.loop, b.loop, LEAST_METAL)) return [];
    told.add(key);
    const other =
      a.by === null || b.by === null
        ? 'a hole of the part itself'
        : a.by.join() === b.by.join()
          ? 'its own next one'
          : named(a.by);
    return [
      refusal('cutout-over', by, (say) => `leaves less than ${say.least(LEAST_METAL)} of metal to ${other}`),
    ];
  });
}

const refusal = (code: string, path: Path, message: Refusal['message']): Refusal => ({
  code,
  path,
  message,
  fix: '',
});
