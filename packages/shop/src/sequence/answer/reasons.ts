import { convexHull, type Point, place3, radians, type Say, type Wording } from '@tinwright/core';
import type { Brake, Shop } from '../../machines/shop.js';
import { type Convex, overlap, turned } from '../../sweep/polygon.js';
import { leafTools } from '../../tools/leaf-tools.js';
import { setRadius, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import { lineFrame, poseInMachine } from '../part/line.js';
import { lumpsOf, solidsOf } from '../part/lumps.js';
import { stageOf } from '../part/stage.js';
import type { Move, Problem } from '../search/states.js';
import { marginFor } from '../stations/brake-station.js';
import type { Obstacle, Station } from '../stations/station.js';
import { obstacleWords } from './obstacle-words.js';
import type { Reason } from './plan.js';

/** Reasons of the moves of a forced plan that were taken in spite of something. */
export function reasonsOf(
  problem: Problem,
  moves: readonly Move[],
  shop: Shop,
  longest: number,
): readonly Reason[] {
  const id = (panel: number) => problem.work.tree.panels[panel]?.id ?? '';
  const all = moves.flatMap((move): readonly Sayable[] => {
    const { mounting, position } = move;
    const bends = mounting.operation.panels.map(id);
    if (mounting.obstacle === null) {
      const own = problem.contact(mounting.operation, move.done);
      if (own === null) return [];
      const message = `${bends.join(', ')}: ${id(own.moving)} runs into ${id(own.held)} of the part itself`;
      return [{ bends, code: 'part', panel: id(own.held), machine: position.station, by: null, message }];
    }
    const found = ways(problem, move, shop, longest);
    if (found.length === 0) return [uncovered(problem, move, bends)];
    return found.map(({ held, machine, obstacle, by }): Sayable => {
      // what hangs on the machine alone is the same whichever side is held
      const how = obstacle.panel < 0 ? '' : `, ${id(held)} held`;
      const said = (names: string) => (say: Say) =>
        `${names}${how}: ${obstacleWords(obstacle, machine, id(obstacle.panel), by, say)}`;
      return {
        bends,
        code: obstacle.code,
        panel: id(obstacle.panel),
        machine,
        by,
        message: said(bends.join(', ')),
        said,
      };
    });
  });
  return grouped(all);
}

/** A reason that can be said for more bends than its own. */
interface Sayable extends Reason {
  readonly said?: (names: string) => Wording;
}

const MOST_NAMES = 3;

/** Reasons that hang on the machine alone are told once, for all bends they hold for. */
function grouped(reasons: readonly Sayable[]): readonly Reason[] {
  const groups = new Map<string, Sayable[]>();
  for (const [i, r] of reasons.entries()) {
    const alone = r.panel === '' && r.said !== undefined;
    const key = alone ? `${r.machine} ${r.code} ${r.by?.toFixed(3)}` : `${i}`;
    groups.set(key, [...(groups.get(key) ?? []), r]);
  }
  return [...groups.values()].map((group): Reason => {
    const [{ said, ...first }] = group as [Sayable];
    const bends = [...new Set(group.flatMap((r) => r.bends))];
    if (said === undefined || group.length === 1) return first;
    const more = bends.length - MOST_NAMES;
    const names = `${bends.slice(0, MOST_NAMES).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
    return { ...first, bends, message: said(names) };
  });
}

interface Way {
  readonly held: number;
  readonly machine: Station['name'];
  readonly obstacle: Obstacle;
  readonly by: number | null;
}

/**
 * What stops an operation on its machine with either side of the line held: the usual way, by what the bend hangs on,
 * first. Where it could only be forced by hand, the first machine is asked.
 */
function ways(problem: Problem, move: Move, shop: Shop, longest: number): readonly Way[] {
  const station = stationAsked(problem, move);
  const found = (['parent', 'child'] as const).flatMap((held): readonly Way[] => {
    const mounting = station.mount(move.mounting.operation, held, move.done);
    if (mounting.obstacle === null) return [];
    const by = excess(problem, { ...move, mounting }, mounting.obstacle, shop, longest);
    const [panel] = move.mounting.operation.panels as [number];
    const other = problem.work.tree.panels[panel]?.parent ?? -1;
    return [
      { held: held === 'parent' ? other : panel, machine: station.name, obstacle: mounting.obstacle, by },
    ];
  });
  return found;
}

/** Nothing is in the way, but no pieces of the rack make the width. */
function uncovered(problem: Problem, move: Move, bends: readonly string[]): Sayable {
  const machine = stationAsked(problem, move).name;
  const said = (names: string) => `${names}: no tools of the rack make the width on the ${machine}`;
  return { bends, code: 'tools', panel: '', machine, by: null, message: said(bends.join(', ')), said };
}

function stationAsked({ stations }: Problem, { mounting: { operation }, position }: Move): Station {
  const own = stations.find((s) => s.id === position.tooling) as Station;
  if (own.name !== 'hand' || operation.action === 'roll') return own;
  return stations.find((s) => s.name !== 'hand') ?? own;
}

/** How far something is over its limit, or into a tool; null where no number tells it. */
function excess(
  problem: Problem,
  move: Move,
  obstacle: Obstacle,
  shop: Shop,
  longest: number,
): number | null {
  if (obstacle.value !== undefined && obstacle.limit !== undefined)
    return Math.abs(obstacle.value - obstacle.limit);
  const tool = obstacle.code;
  if (shop.brake === null || (tool !== 'leaf' && tool !== 'bed' && tool !== 'beam')) return null;
  return intoTool(problem, move, obstacle.panel, tool, shop.brake, longest);
}

const STEP = radians(1); // for words only; whether it goes is decided without steps

/** Deepest overlap of a panel with a part of the leaf brake during a stroke, margin included, mm. */
function intoTool(
  { work }: Problem,
  { mounting, done }: Move,
  panel: number,
  tool: 'leaf' | 'bed' | 'beam',
  brake: Brake,
  longest: number,
): number | null {
  const { operation, held } = mounting;
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  const { bend } = work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const tools = leafTools(brake, work.tree.thickness, setRadius(work.tree, bend), marginFor({ longest }));
  const shape = tools[tool];
  const solids = lumpsOf(work.tree)
    .filter((l) => l.panel === panel)
    .flatMap((l) => {
      const pose = poseInMachine(work, frame, l, stage);
      return solidsOf(work.tree, l, stage(l.panel)).map((s) =>
        convexHull(s.map((p) => place3(pose, p)).map(([x, , z]): Point => [x, z])),
      );
    });
  const moves = frame.moves[panel] === true;
  const through = radians(Math.abs(operation.angle) + brake.overbend);
  const steps = Math.ceil(through / STEP);
  const depth = (solid: Convex, turn: number) => {
    if (tool === 'leaf') return moves ? overlap(solid, shape) : overlap(solid, turned(tools.leafFace, turn));
    return overlap(moves ? turned(solid, turn) : solid, shape);
  };
  const depths = solids.flatMap((s) =>
    Array.from({ length: steps + 1 }, (_, i) => depth(s, (through * i) / steps)),
  );
  const deepest = Math.max(0, ...depths);
  return deepest > 0 ? deepest : null;
}
