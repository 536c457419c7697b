import { contactAngle } from '../../sweep/contact.js';
import { type Convex, meet } from '../../sweep/polygon.js';
import type { JawTools } from '../../tools/jaw-tools.js';
import { type LineFrame, spanOf } from '../part/line.js';
import type { LineSolid } from '../part/line-stands.js';
import type { Clause, StandingLump } from './bench.js';
import { meetsEarly, type Swing } from './slide-out.js';
import type { Obstacle } from './station.js';
import type { Interval } from './stretches.js';

/** What stands off the sheet by no more is let down under a bar, mm; judgement. */
export const LOW = 4;

/** One convex solid against jaws as wide as anything: it takes the place where it is from them. */
export function jawClause(
  { corners, section, y }: LineSolid,
  moves: boolean,
  flat: boolean,
  { jaws, depth, back, slide }: JawTools & { readonly back: number; readonly slide: (at: number) => number },
  turn: number,
): Clause<'jaws'> {
  if (flat) return { stops: null, takes: between(corners, -Infinity, moves ? back : -depth) };
  const hit = jaws.filter((j) =>
    moves ? contactAngle(section, j, turn) <= turn || meetsEarly(section, j, slide, turn) : meet(section, j),
  );
  if (hit.length === 0) return { stops: null, takes: null };
  if (moves) return { stops: null, takes: y };
  // what lies aslant takes room only where the jaws are
  const xs = hit.flat().map((q) => q[0]);
  return { stops: null, takes: between(corners, Math.min(...xs), Math.max(...xs)) };
}

/** Where along the line a solid lies from one distance to it to another; null where nowhere. */
function between(corners: LineSolid['corners'], from: number, to: number): Interval | null {
  const ys = corners.flatMap((p, i) => [
    ...(p[0] > from && p[0] < to ? [p[1]] : []),
    ...corners.slice(i + 1).flatMap((q) =>
      [from, to].flatMap((x) => {
        if (p[0] < x === q[0] < x || !Number.isFinite(x)) return [];
        return [p[1] + ((q[1] - p[1]) * (x - p[0])) / (q[0] - p[0])];
      }),
    ),
  ]);
  return ys.length === 0 ? null : [Math.min(...ys), Math.max(...ys)];
}

/** Room for bars as long as the line, and for the bench behind one of them. */
export function judge(
  tools: JawTools,
  frame: LineFrame,
  standing: readonly StandingLump<'jaws'>[],
  swing: Swing,
): Obstacle | null {
  const taken = standing.flatMap((s) =>
    s.clauses.flatMap((c) => (c.takes === null ? [] : [{ span: c.takes, standing: s }])),
  );
  const spans = spanOf(frame.spans);
  // bars are cut to the line: what stands past its ends is beside them
  const over = ([a, b]: Interval, room: number) => b > spans[0] - room + 1e-6 && a < spans[1] + room - 1e-6;
  const inside = taken.filter(({ span, standing: { flat, moves, top, bottom } }) => {
    if (flat) return over(span, 0);
    // past its ends a bar is let down on folds that lie on the sheet; over the line it would not hold there
    return over(span, 0) || (over(span, tools.clamps) && (moves || top > LOW || bottom < -LOW));
  });
  const [first] = inside.toSorted((p, q) => Number(q.standing.flat) - Number(p.standing.flat));
  if (first !== undefined) {
    const { lump, flat, moves, x } = first.standing;
    const deep = flat && !moves ? { value: -x[0], limit: tools.depth } : {};
    return { code: 'jaws', panel: lump.panel, ...deep };
  }
  return onBench(tools, standing, swing);
}

/** The vise is turned so that what stands off does so away from the bench. */
function onBench(
  { benches, fixed }: JawTools,
  standing: readonly StandingLump[],
  swing: Swing,
): Obstacle | null {
  const hits = (tool: Convex) =>
    standing.find((s) => s.solids.some(({ section }) => hitsBench(section, s.moves, tool, swing))) ?? null;
  const always = fixed.map(hits).find((s) => s !== null);
  if (always !== undefined) return { code: 'jaws', panel: always.lump.panel };
  const blocked = benches.map(hits);
  const [first = null] = blocked;
  return first === null || blocked.includes(null) ? null : { code: 'jaws', panel: first.lump.panel };
}

export const hitsBench = (section: Convex, moves: boolean, bench: Convex, { turn, slide }: Swing): boolean =>
  moves
    ? contactAngle(section, bench, turn) <= turn || meetsEarly(section, bench, slide, turn)
    : meet(section, bench);
