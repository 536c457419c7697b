import { convexHull, radians } from '@tinwright/core/internal';
import { turned } from '../../sweep/polygon.js';
import type { LineSection } from '../part/line-stands.js';
import type { StandingLump } from './bench.js';
import type { LeafTool } from './leaf-clause.js';
import { type LeafLineSetup, legOf } from './leaf-setup.js';
import type { Mounting, Obstacle, Stretch } from './station.js';
import { bareBy, type Interval, stretchesFor } from './stretches.js';

const BESIDE = 5; // mm from the end of a hem that count as its end; judgement

/** A state under a line judged: what stops it first, or where fingers have to stand and how the part comes in and off. */
export function judgeLeaf(setup: LeafLineSetup, standing: readonly StandingLump<LeafTool>[]): Mounting {
  const { brake, operation, frame } = setup;
  const answer = (obstacle: Obstacle | null, more: Partial<Mounting> = {}): Mounting => ({
    operation,
    held: frame.held,
    obstacle,
    stretches: [],
    putIn: null,
    takeOff: null,
    swings: operation.action !== 'close' && frame.swings,
    ...more,
  });
  const stopped =
    stoppedBy(standing) ??
    (operation.action === 'close' ? tooHigh(setup) : tooShort(setup, standing)) ??
    (operation.action === 'bend' ? null : besideHem(setup, standing));
  if (stopped !== null) return answer(stopped);
  const taken = standing.flatMap((s) => s.clauses.flatMap((c) => (c.takes === null ? [] : [c.takes])));
  const free = stretchesFor(frame.spans, taken, brake.gaps, brake.length);
  if ('stretches' in free) {
    const ways = waysOf(setup, standing, free.stretches);
    return 'code' in ways ? answer(ways) : answer(null, { stretches: free.stretches, ...ways });
  }
  const [from, to] = free.bare;
  const owner = standing.find((s) =>
    s.clauses.some((c) => c.takes !== null && c.takes[0] <= to && c.takes[1] >= from),
  );
  const panel = owner?.lump.panel ?? -1;
  return answer({ code: 'fingers', panel, ...bareBy(free.bare, frame.spans, brake.gaps.end) });
}

function stoppedBy(standing: readonly StandingLump<LeafTool>[]): Obstacle | null {
  for (const { lump, clauses } of standing)
    for (const { stops } of clauses) if (stops !== null) return { code: stops, panel: lump.panel };
  return null;
}

/** A hem is folded and closed on its whole length: nothing may stand at its ends. Common practice, no source. */
function besideHem({ frame }: LeafLineSetup, standing: readonly StandingLump<LeafTool>[]): Obstacle | null {
  const near = (takes: Interval | null) =>
    takes !== null && frame.spans.some(([a, b]) => takes[1] > a - BESIDE && takes[0] < b + BESIDE);
  const beside = standing.find((s) => s.clauses.some((c) => near(c.takes)));
  return beside === undefined ? null : { code: 'fingers', panel: beside.lump.panel };
}

/** A folded hem has to go under the lifted jaw. */
function tooHigh({ brake, child, thickness, operation, leaf }: LeafLineSetup): Obstacle | null {
  const depth = legOf(child) - child.bend.setback;
  const height = depth * Math.sin(radians(leaf.free)) + thickness;
  const panel = operation.panels[0] as number;
  return height > brake.opening ? { code: 'opening', panel, value: height, limit: brake.opening } : null;
}

/** The leaf needs a flange to turn, the fingers a strip to hold. */
function tooShort(setup: LeafLineSetup, standing: readonly StandingLump<LeafTool>[]): Obstacle | null {
  const { frame, least, operation } = setup;
  const flat = standing.filter((s) => s.flat && s.lump.kind === 'panel');
  const free = Math.max(0, ...flat.filter((s) => s.moves).map((s) => s.x[1]));
  const held = Math.max(0, ...flat.filter((s) => !s.moves).map((s) => -s.x[0]));
  const [parent, child] = [frame.parents[0] as number, operation.panels[0] as number];
  const [freePanel, heldPanel] = frame.held === 'parent' ? [child, parent] : [parent, child];
  if (free < least.flange - 1e-9)
    return { code: 'flange-short', panel: freePanel, value: free, limit: least.flange };
  return held < least.hold - 1e-9
    ? { code: 'hold-short', panel: heldPanel, value: held, limit: least.hold }
    : null;
}

/** A panel in one piece. */
const whole = ({ solids, y }: StandingLump): LineSection => ({
  y,
  section:
    solids.length === 1 && solids[0] ? solids[0].section : convexHull(solids.flatMap((s) => s.section)),
});

const TINY = 0.01; // mm

/** True for the round of a fold, which lies over its panels; other bent material lies inside of the corner between them. */
function standsOut({ lump, top, bottom }: StandingLump, standing: readonly StandingLump[]): boolean {
  const panel = standing.find((s) => s.lump.kind === 'panel' && s.lump.panel === lump.panel);
  return panel === undefined || top > panel.top + TINY || bottom < panel.bottom - TINY;
}

/** How the part is put in before the stroke and taken off after it. A hem goes under the jaw with its flat edge. */
function waysOf(
  { operation, leaf, access }: LeafLineSetup,
  standing: readonly StandingLump<LeafTool>[],
  stretches: readonly Stretch[],
): Pick<Mounting, 'putIn' | 'takeOff'> | Obstacle {
  const fingers = stretches.map((s): Interval => [s.from, s.to]);
  const closing = operation.action === 'close';
  const panels = standing
    .filter((s) => s.lump.kind === 'panel' || standsOut(s, standing))
    .map((s) => ({ ...whole(s), moves: s.moves }));
  const lying = (angle: number): readonly LineSection[] =>
    panels.map(({ section, y, moves }) => ({
      y,
      section: moves && angle > 0 ? turned(section, angle) : section,
    }));
  const putIn = access({ sections: lying(0), fingers });
  const takeOff = closing ? putIn : access({ sections: lying(radians(leaf.set)), fingers });
  if (putIn !== null && takeOff !== null) return { putIn, takeOff };
  // what stands furthest back holds it
  const rear = standing
    .filter((s) => !s.flat && s.lump.kind === 'panel' && !s.moves)
    .reduce<StandingLump | null>((a, b) => (a === null || b.top > a.top ? b : a), null);
  return { code: putIn === null ? 'put-in' : 'take-off', panel: rear?.lump.panel ?? -1 };
}
