import { type Material, radians } from '@tinwright/core';
import { thicknessLimit } from '../../machines/capacity.js';
import type { Brake } from '../../machines/shop.js';
import type { SheetSpringback } from '../../metal/springback.js';
import { type LeafTools, leafTools, setBackFor } from '../../tools/leaf-tools.js';
import { setRadius, subtree, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import { lazy } from '../part/lazy.js';
import { type Held, type LineFrame, lineFrame } from '../part/line.js';
import { type Mask, union } from '../part/mask.js';
import type { Operation, Work } from '../part/operations.js';
import { benchOf, type Standing } from './bench.js';
import { closeClause, type LeafTool, leafClause } from './leaf-clause.js';
import { mountBook } from './mount-book.js';
import { prospectBook } from './prospect.js';
import type { Mounting, Obstacle, Prospect, Station } from './station.js';
import { type Interval, stretchesFor } from './stretches.js';

/** The metal of a part as a machine sees it. */
export interface Blank {
  readonly material: Material;
  /** Largest size of the blank, mm. */
  readonly longest: number;
  /** What the metal opens again. */
  readonly springback: SheetSpringback;
}

/** Kept off every tool, mm: half a millimetre and two thousandths of the part. Judgement. */
export const marginFor = ({ longest }: Pick<Blank, 'longest'>): number => 0.5 + 0.002 * longest;

const LEAST_HOLD = 6; // mm of sheet under the fingers behind their tips; judgement
const RATED_FLANGE = 25.4; // mm; capacities are rated with a flange of an inch. Source: a 4 ft brake's printed manual
const BESIDE = 5; // mm from the end of a hem that count as its end; judgement
const HOOK = Math.SQRT2 - 1; // worst at 45° of tilt; derived

/** A leaf brake at work on a part: what every mounting of every operation runs into, kept once computed. */
export function brakeStation(work: Work, brake: Brake, blank: Blank): Station {
  const lines = work.operations.flatMap((operation) =>
    (['parent', 'child'] as const).map((held) => leafLine(work, brake, blank, operation, held)),
  );
  const lineOf = ({ index }: Operation, held: Held) =>
    lines[2 * index + (held === 'parent' ? 0 : 1)] as LeafLine;
  return {
    name: 'brake',
    id: 'brake',
    rack: brake.fingers,
    gaps: brake.gaps,
    limits: (operation, held) => lineOf(operation, held).limits,
    mount: (operation, held, done) => lineOf(operation, held).mount(done),
    prospect: (operation, held, done) => lineOf(operation, held).prospect(done),
  };
}

/** One line on the leaf brake, one side held. */
interface LeafLine {
  readonly limits: Obstacle | null;
  readonly mount: (done: Mask) => Mounting;
  readonly prospect: (done: Mask) => Prospect | null;
}

/** Everything about a line that no state changes. */
interface Setup {
  readonly brake: Brake;
  readonly operation: Operation;
  readonly frame: LineFrame;
  readonly child: TreePanel & { readonly bend: TreeBend };
  readonly thickness: number;
  readonly tools: LeafTools;
  /** Flange the leaf needs, sheet the fingers need. mm */
  readonly least: { readonly flange: number; readonly hold: number };
}

function leafLine(work: Work, brake: Brake, blank: Blank, operation: Operation, held: Held): LeafLine {
  const { tree } = work;
  const frame = lineFrame(work, operation, held);
  const child = tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const insideRadius = setRadius(tree, child.bend);
  const { thickness } = tree;
  const margin = marginFor(blank);
  const tools = leafTools(brake, thickness, insideRadius, margin);
  const closing = operation.action === 'close';
  const shift = closing ? closingShift(legOf(child), tools.setBack, held) : 0;
  const turns = turnsOf(operation, tree.foldAngle, tools, brake, blank, insideRadius);
  const setup: Setup = {
    brake,
    operation,
    frame,
    child,
    thickness,
    tools,
    least: {
      flange: leastFlange(brake, blank, thickness, insideRadius, lengthOf(frame)),
      hold: tools.setBack + LEAST_HOLD,
    },
  };
  const bench = lazy(() =>
    benchOf<LeafTool>(
      work,
      frame,
      // the hem that is closed is meant to be under the jaw
      closing ? operation.panels.flatMap((p) => subtree(tree, p)) : [],
      (corners, moves, flat) =>
        closing
          ? closeClause(
              corners.map(([x, y, z]) => [x + shift, y, z]),
              flat,
              tools,
              margin,
            )
          : leafClause(corners, moves, flat, tools, turns, margin),
      (s) => (s.flat ? s.lump.kind === 'panel' : !s.moves && s.top > brake.opening),
    ),
  );
  const limits = limitsOf(setup, blank);
  if (limits !== null) {
    const mounting = {
      operation,
      held,
      obstacle: limits,
      stretches: [],
      hooked: false,
      swings: frame.swings,
    };
    return { limits, mount: () => mounting, prospect: () => null };
  }
  const seen = lazy(() => union(bench().seen, operation.mask));
  return {
    limits,
    mount: mountBook(seen, (done) => judge(setup, bench().at(done), tree.foldAngle)),
    prospect: prospectBook(bench, frame.spans, brake.gaps, brake.length),
  };
}

/** How far the leaf turns, springback and overbend included. */
function turnsOf(
  { action, angle }: Operation,
  foldAngle: number,
  tools: LeafTools,
  brake: Brake,
  { springback }: Blank,
  insideRadius: number,
): { readonly set: number; readonly free: number } {
  if (action === 'fold') {
    const through = radians(Math.min(tools.most, foldAngle));
    return { set: through, free: through };
  }
  const { factor } = springback(insideRadius);
  const set = Math.abs(angle) / factor;
  return { set: radians(set), free: radians(Math.max(set, Math.abs(angle) + brake.overbend)) };
}

/** Length of a line from end to end, mm. */
const lengthOf = ({ spans }: LineFrame) =>
  Math.max(...spans.map((s) => s[1])) - Math.min(...spans.map((s) => s[0]));

/** What no order changes: angle, length, thickness. */
function limitsOf(
  { brake, operation, frame, tools, thickness }: Setup,
  { material }: Blank,
): Obstacle | null {
  const { action, angle, panels } = operation;
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  if (action === 'bend' && Math.abs(angle) > tools.most + 1e-9)
    return { code: 'angle', panel: -1, value: Math.abs(angle), limit: tools.most };
  const length = lengthOf(frame);
  if (length > brake.length) return { code: 'length', panel: -1, value: length, limit: brake.length };
  const limit = thicknessLimit(brake.capacity, material).thickness;
  return thickness > limit * 1.001 ? { code: 'capacity', panel: -1, value: thickness, limit } : null;
}

/** Shortest flange the leaf turns without giving way, mm: past the hinge, by the machine, and by its load. */
export function leastFlange(
  brake: Brake,
  { material }: Pick<Blank, 'material'>,
  thickness: number,
  insideRadius: number,
  length: number,
): number {
  const { thickness: most } = thicknessLimit(brake.capacity, material);
  const load = RATED_FLANGE * (thickness / most) ** 2 * Math.min(1, length / brake.length);
  const past = setBackFor(brake, thickness, insideRadius) + insideRadius + thickness;
  return Math.max(past, brake.lowestFlange, load);
}

/** A state under a line judged: what stops it first, or where fingers have to stand. */
function judge(setup: Setup, standing: readonly Standing<LeafTool>[], foldAngle: number): Mounting {
  const { brake, operation, frame } = setup;
  const answer = (obstacle: Obstacle | null, more: Partial<Mounting> = {}): Mounting => ({
    operation,
    held: frame.held,
    obstacle,
    stretches: [],
    hooked: false,
    swings: operation.action !== 'close' && frame.swings,
    ...more,
  });
  const closing = operation.action === 'close';
  const stopped =
    stoppedBy(standing) ??
    (closing ? tooHigh(setup, foldAngle) : tooShort(setup, standing)) ??
    (operation.action === 'bend' ? null : besideHem(setup, standing));
  if (stopped !== null) return answer(stopped);
  const hooked = closing && frame.held === 'child' ? false : hooking(setup, standing);
  if (typeof hooked === 'object') return answer(hooked);
  const taken = standing.flatMap((s) => s.clauses.flatMap((c) => (c.takes === null ? [] : [c.takes])));
  const free = stretchesFor(frame.spans, taken, brake.gaps, brake.length);
  if ('stretches' in free) return answer(null, { stretches: free.stretches, hooked });
  const [from, to] = free.bare;
  const owner = standing.find((s) =>
    s.clauses.some((c) => c.takes !== null && c.takes[0] <= to && c.takes[1] >= from),
  );
  return answer({ code: 'fingers', panel: owner?.lump.panel ?? -1, value: to - from, limit: brake.gaps.end });
}

function stoppedBy(standing: readonly Standing<LeafTool>[]): Obstacle | null {
  for (const { lump, clauses } of standing)
    for (const { stops } of clauses) if (stops !== null) return { code: stops, panel: lump.panel };
  return null;
}

/** A hem is folded and closed on its whole length: nothing may stand at its ends. Common practice, no source. */
function besideHem({ frame }: Setup, standing: readonly Standing<LeafTool>[]): Obstacle | null {
  const near = (takes: Interval | null) =>
    takes !== null && frame.spans.some(([a, b]) => takes[1] > a - BESIDE && takes[0] < b + BESIDE);
  const beside = standing.find((s) => s.clauses.some((c) => near(c.takes)));
  return beside === undefined ? null : { code: 'fingers', panel: beside.lump.panel };
}

/**
 * Where the line lies while a hem is closed: the folded hem under the jaw with its whole width, the sheet running out
 * behind (held by the parent's side) or towards the operator.
 */
function closingShift(outerLeg: number, setBack: number, held: Held): number {
  return held === 'parent' ? -setBack : -setBack - outerLeg;
}

/** Outside leg of a flange, from its fold to its edge. mm */
function legOf({ panel }: TreePanel): number {
  return Math.max(...panel.outline.map((e) => e.from[1]));
}

/** A folded hem has to go under the lifted jaw. */
function tooHigh({ brake, child, thickness, operation }: Setup, foldAngle: number): Obstacle | null {
  const depth = legOf(child) - child.bend.setback;
  const height = depth * Math.sin(radians(foldAngle)) + thickness;
  const panel = operation.panels[0] as number;
  return height > brake.opening ? { code: 'opening', panel, value: height, limit: brake.opening } : null;
}

/** The leaf needs a flange to turn, the fingers a strip to hold. */
function tooShort(setup: Setup, standing: readonly Standing<LeafTool>[]): Obstacle | null {
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

/**
 * A wall that stands up behind the fingers between walls at both ends has to be hooked under the lifted jaw: it goes
 * when the foot is no longer than 2·(g − 0.41·T). Source: derived, worst at 45° of tilt.
 */
function hooking(
  { brake, frame, thickness }: Setup,
  standing: readonly Standing<LeafTool>[],
): boolean | Obstacle {
  const line = [
    Math.min(...frame.spans.map((s) => s[0])),
    Math.max(...frame.spans.map((s) => s[1])),
  ] as const;
  const walls = standing.filter(
    (s) => s.lump.kind === 'panel' && !s.moves && !s.flat && s.top > brake.opening,
  );
  const low = walls.some((s) => s.y[1] <= line[0] + 1);
  const high = walls.some((s) => s.y[0] >= line[1] - 1);
  const rear = walls.find((s) => s.y[1] > line[0] + 1 && s.y[0] < line[1] - 1);
  if (rear === undefined || !low || !high) return false;
  const most = 2 * (brake.opening - HOOK * thickness);
  if (brake.finger.foot <= most) return true;
  return { code: 'hook', panel: rear.lump.panel, value: brake.finger.foot, limit: most };
}
