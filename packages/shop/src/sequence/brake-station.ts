import { type Material, place3, radians } from '@tinwright/core';
import { thicknessLimit } from '../machines/capacity.js';
import type { Brake } from '../machines/shop.js';
import { springbackFactor } from '../metal/springback.js';
import { leafTools, setBackFor } from '../tools/leaf-tools.js';
import type { FoldTree, Stage, TreeBend, TreePanel } from './fold-tree.js';
import { closeClause, type LeafClause, leafClause } from './leaf-clause.js';
import { bendsTo, type Held, type LineFrame, lineFrame, poseInMachine } from './line.js';
import { type Lump, lumpsOf, solidsOf } from './lumps.js';
import { both, has, keyOf, type Mask, maskOf, NONE, union } from './mask.js';
import type { Operation, Work } from './operations.js';
import type { Mounting, Obstacle, Station } from './station.js';
import { type Interval, stretchesFor } from './stretches.js';

/** The metal of a part as a machine sees it. */
export interface Blank {
  readonly material: Material;
  /** Largest size of the blank, mm. */
  readonly longest: number;
}

/** Kept off every tool, mm: half a millimetre and two thousandths of the part. Judgement. */
export const marginFor = ({ longest }: Blank): number => 0.5 + 0.002 * longest;

const LEAST_HOLD = 8; // mm of sheet under the fingers behind their tips; judgement
const RATED_FLANGE = 25.4; // mm; capacities are rated with a flange of an inch. Source: a 4 ft brake's printed manual
const HOOK = Math.SQRT2 - 1; // worst at 45° of tilt; derived

/** A leaf brake at work on a part: clauses by lump and by the bends that move it, kept once computed. */
export function brakeStation(work: Work, brake: Brake, blank: Blank): Station {
  const { tree } = work;
  const margin = marginFor(blank);
  const benches = work.operations.flatMap((operation) =>
    (['parent', 'child'] as const).map((held) => bench(work, brake, blank, operation, held, margin)),
  );
  return {
    name: 'brake',
    rack: brake.fingers,
    gaps: brake.gaps,
    mount: (operation, held, done) => {
      const at = benches[2 * operation.index + (held === 'parent' ? 0 : 1)] as Bench;
      const fixed = limits(tree, brake, blank, operation, at.frame);
      if (fixed !== null) return { operation, held, obstacle: fixed, stretches: [], hooked: false };
      return at.mount(done);
    },
  };
}

interface Bench {
  readonly frame: LineFrame;
  readonly mount: (done: Mask) => Mounting;
}

/** What no order changes: angle, length, thickness. */
function limits(
  tree: FoldTree,
  brake: Brake,
  { material }: Blank,
  { action, panels, angle }: Operation,
  { spans }: LineFrame,
): Obstacle | null {
  const { bend } = tree.panels[panels[0] as number] as TreePanel & { bend: TreeBend };
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  const most = leafTools(brake, tree.thickness, bend.insideRadius).most;
  if (action === 'bend' && Math.abs(angle) > most + 1e-9)
    return { code: 'angle', panel: -1, value: Math.abs(angle), limit: most };
  const length = Math.max(...spans.map((s) => s[1])) - Math.min(...spans.map((s) => s[0]));
  if (length > brake.length) return { code: 'length', panel: -1, value: length, limit: brake.length };
  const { thickness } = thicknessLimit(brake.capacity, material);
  return tree.thickness > thickness * 1.001
    ? { code: 'capacity', panel: -1, value: tree.thickness, limit: thickness }
    : null;
}

/** Shortest flange the leaf turns without giving way, mm: past the hinge, by the machine, and by its load. */
export function leastFlange(
  brake: Brake,
  { material }: Blank,
  thickness: number,
  insideRadius: number,
  length: number,
): number {
  const { thickness: most } = thicknessLimit(brake.capacity, material);
  const load = RATED_FLANGE * (thickness / most) ** 2 * Math.min(1, length / brake.length);
  return Math.max(
    setBackFor(brake, thickness, insideRadius) + insideRadius + thickness,
    brake.lowestFlange,
    load,
  );
}

function bench(
  work: Work,
  brake: Brake,
  blank: Blank,
  operation: Operation,
  held: Held,
  margin: number,
): Bench {
  const { tree } = work;
  const frame = lineFrame(work, operation, held);
  const { bend } = tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const tools = leafTools(brake, tree.thickness, bend.insideRadius, margin);
  const closing = operation.action === 'close';
  const through =
    operation.action === 'fold' ? Math.min(tools.most, tree.foldAngle) : Math.abs(operation.angle);
  const { factor } = springbackFactor(blank.material.name, bend.insideRadius / tree.thickness);
  const turns = {
    set: radians(operation.action === 'fold' ? through : through / factor),
    free: radians(through + (operation.action === 'fold' ? 0 : brake.overbend)),
  };
  const shift = closing ? closingShift(bend, tools.setBack, held, tree) : 0;
  const clauseOf = (lump: Lump, stage: (p: number) => Stage): readonly LeafClause[] => {
    const moves = frame.moves[lump.panel] === true;
    const pose = poseInMachine(work, frame, lump, stage);
    const flat = isFlat(lump, frame, work, stage);
    return solidsOf(tree, lump, stage(lump.panel)).map((solid) => {
      const corners = solid.map((p) => place3(pose, p)).map(([x, y, z]) => [x + shift, y, z] as const);
      return closing
        ? closeClause(corners, flat, tools, margin)
        : leafClause(corners, moves, flat, tools, turns, margin);
    });
  };
  const lumps = lumpsOf(tree).map((lump) => watched(work, frame, lump, clauseOf));
  const seen = lumps.reduce((m, l) => union(m, l.steps), operation.mask);
  const cache = new Map<number | string, Mounting>();
  const judge = (done: Mask): Mounting => {
    const found = lumps.map((l) => ({ lump: l.lump, clauses: l.at(done) }));
    const stop = found.find((f) => f.clauses.some((c) => c.stops !== null));
    const answer = (obstacle: Obstacle | null, more: Partial<Mounting> = {}): Mounting => ({
      operation,
      held,
      obstacle,
      stretches: [],
      hooked: false,
      ...more,
    });
    if (stop !== undefined) {
      const code = stop.clauses.find((c) => c.stops !== null)?.stops ?? 'leaf';
      return answer({ code, panel: stop.lump.panel });
    }
    const stage = stageOf(work, done);
    const short = closing
      ? closingFits(bend, tree, brake, operation)
      : flapFits(work, frame, brake, blank, stage, operation);
    if (short !== null) return answer(short);
    const hook = hooking(work, frame, brake, stage);
    if (typeof hook === 'object') return answer(hook);
    const taken = found.flatMap((f) =>
      f.clauses.flatMap((c): readonly Interval[] => (c.takes === null ? [] : [c.takes])),
    );
    const free = stretchesFor(frame.spans, taken, brake.gaps);
    if ('bare' in free) {
      const owner = found.find((f) =>
        f.clauses.some((c) => c.takes !== null && c.takes[0] <= free.bare[1] && c.takes[1] >= free.bare[0]),
      );
      const ends = free.bare[1] - free.bare[0];
      return answer({ code: 'fingers', panel: owner?.lump.panel ?? -1, value: ends, limit: brake.gaps.end });
    }
    return answer(null, { stretches: free.stretches, hooked: hook });
  };
  return {
    frame,
    mount: (done) => {
      const key = keyOf(both(done, seen));
      const known = cache.get(key);
      if (known !== undefined) return known;
      const made = judge(done);
      cache.set(key, made);
      return made;
    },
  };
}

/** The stage of every bend in a state. */
export function stageOf({ last, first }: Work, done: Mask): (panel: number) => Stage {
  return (panel) => {
    const end = last[panel] ?? -1;
    if (end < 0) return 'flat';
    if (has(done, end)) return 'done';
    return first[panel] !== end && has(done, first[panel] as number) ? 'folded' : 'flat';
  };
}

interface Watched {
  readonly lump: Lump;
  /** Steps that decide where it stands; empty where it never matters. */
  readonly steps: Mask;
  readonly at: (done: Mask) => readonly LeafClause[];
}

const MOST_TRIED = 8; // bends on the way to a lump whose every state is tried beforehand

/** A lump whose clauses are kept by the stages of the bends that move it; one that never matters watches nothing. */
function watched(
  work: Work,
  frame: LineFrame,
  lump: Lump,
  clauseOf: (lump: Lump, stage: (p: number) => Stage) => readonly LeafClause[],
): Watched {
  const bends = bendsTo(work, frame, lump);
  const steps = maskOf(bends.flatMap((p) => work.steps.filter((s) => s.panel === p).map((s) => s.index)));
  const cache = new Map<number | string, readonly LeafClause[]>();
  const at = (done: Mask) => {
    const own = both(done, steps);
    const key = keyOf(own);
    const known = cache.get(key);
    if (known !== undefined) return known;
    const made = clauseOf(lump, stageOf(work, own));
    cache.set(key, made);
    return made;
  };
  if (bends.length > MOST_TRIED) return { lump, steps, at };
  const matters = states(work, bends).some((m) => at(m).some((c) => c.stops !== null || c.takes !== null));
  return matters ? { lump, steps, at } : { lump, steps: NONE, at: () => [] };
}

/** Every state of some bends. */
function states(work: Work, bends: readonly number[]): readonly Mask[] {
  return bends.reduce<readonly Mask[]>(
    (list, p) => {
      const [first, last] = [work.first[p] as number, work.last[p] as number];
      const own = first === last ? [NONE, maskOf([last])] : [NONE, maskOf([first]), maskOf([first, last])];
      return list.flatMap((m) => own.map((o) => union(m, o)));
    },
    [NONE],
  );
}

/** True while a lump lies in the plane of the sheet at the line. */
function isFlat(lump: Lump, frame: LineFrame, work: Work, stage: (p: number) => Stage): boolean {
  return bendsTo(work, frame, lump).every((p) => stage(p) === 'flat');
}

/** A folded hem goes under the jaw with its whole width: from the front with the sheet outside, or from behind. */
function closingShift({ hinge, setback }: TreeBend, setBack: number, held: Held, tree: FoldTree): number {
  void hinge;
  void setback;
  void tree;
  return held === 'parent' ? -setBack : -setBack;
}

function closingFits(bend: TreeBend, tree: FoldTree, brake: Brake, { panels }: Operation): Obstacle | null {
  const panel = tree.panels[panels[0] as number] as TreePanel;
  const depth = Math.max(...panel.panel.shape.map((e) => e.from[1])) - bend.setback;
  const height = depth * Math.sin(radians(Math.min(tree.foldAngle, 180))) + tree.thickness;
  return height > brake.opening
    ? { code: 'opening', panel: panels[0] as number, value: height, limit: brake.opening }
    : null;
}

/** The leaf needs a flange to turn, the fingers a strip to hold. */
function flapFits(
  work: Work,
  frame: LineFrame,
  brake: Brake,
  blank: Blank,
  stage: (p: number) => Stage,
  operation: Operation,
): Obstacle | null {
  const { tree } = work;
  const { bend } = tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const flat = lumpsOf(tree).filter((l) => l.kind === 'panel' && isFlat(l, frame, work, stage));
  const xs = (moves: boolean) =>
    flat
      .filter((l) => frame.moves[l.panel] === moves)
      .flatMap((l) => {
        const pose = poseInMachine(work, frame, l, stage);
        return (tree.panels[l.panel]?.panel.shape ?? []).map((e) => place3(pose, [...e.from, 0])[0]);
      });
  const [free, held] = [Math.max(...xs(true)), -Math.min(...xs(false))];
  const length = Math.max(...frame.spans.map((s) => s[1])) - Math.min(...frame.spans.map((s) => s[0]));
  const least = leastFlange(brake, blank, tree.thickness, bend.insideRadius, length);
  const free_panel = frame.held === 'parent' ? operation.panels[0] : frame.parents[0];
  if (free < least - 1e-9)
    return { code: 'flange-short', panel: free_panel as number, value: free, limit: least };
  const hold = setBackFor(brake, tree.thickness, bend.insideRadius) + LEAST_HOLD;
  const held_panel = frame.held === 'parent' ? frame.parents[0] : operation.panels[0];
  return held < hold - 1e-9
    ? { code: 'hold-short', panel: held_panel as number, value: held, limit: hold }
    : null;
}

/**
 * A wall that stands up behind the fingers between walls at both ends has to be hooked under the lifted jaw: it goes
 * when the foot is no longer than 2·(g − 0.41·T). Source: derived, worst at 45° of tilt.
 */
function hooking(
  work: Work,
  frame: LineFrame,
  brake: Brake,
  stage: (p: number) => Stage,
): boolean | Obstacle {
  const { tree } = work;
  const line = [
    Math.min(...frame.spans.map((s) => s[0])),
    Math.max(...frame.spans.map((s) => s[1])),
  ] as const;
  let [rear, low, high] = [-1, false, false];
  for (const lump of lumpsOf(tree)) {
    if (lump.kind === 'bend' || frame.moves[lump.panel] === true || isFlat(lump, frame, work, stage))
      continue;
    const pose = poseInMachine(work, frame, lump, stage);
    const points = solidsOf(tree, lump, stage(lump.panel))
      .flat()
      .map((p) => place3(pose, p));
    if (Math.max(...points.map((p) => p[2])) <= brake.opening) continue;
    const [from, to] = [Math.min(...points.map((p) => p[1])), Math.max(...points.map((p) => p[1]))];
    if (to <= line[0] + 1) low = true;
    else if (from >= line[1] - 1) high = true;
    else rear = lump.panel;
  }
  if (rear < 0 || !low || !high) return false;
  const most = 2 * (brake.opening - HOOK * tree.thickness);
  return brake.finger.foot <= most
    ? true
    : { code: 'hook', panel: rear, value: brake.finger.foot, limit: most };
}
