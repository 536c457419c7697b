import { convexHull, type Point, place3, plainNumber, radians, type Say } from '@tinwright/core';
import type { Brake, Shop } from '../machines/shop.js';
import { type Convex, overlap, turned } from '../sweep/polygon.js';
import { leafTools } from '../tools/leaf-tools.js';
import { stageOf } from './bench.js';
import { marginFor } from './brake-station.js';
import { setRadius, type TreeBend, type TreePanel } from './fold-tree.js';
import { lineFrame, poseInMachine } from './line.js';
import { lumpsOf, solidsOf } from './lumps.js';
import type { Reason } from './plan.js';
import type { Move, Problem } from './states.js';
import type { Obstacle } from './station.js';

/** Reasons of the moves of a forced plan that were taken in spite of something. */
export function reasonsOf(
  problem: Problem,
  moves: readonly Move[],
  shop: Shop,
  longest: number,
): readonly Reason[] {
  const id = (panel: number) => problem.work.tree.panels[panel]?.id ?? '';
  return moves.flatMap((move): readonly Reason[] => {
    const { mounting, position } = move;
    const bends = mounting.operation.panels.map(id);
    if (mounting.obstacle === null) {
      const own = problem.contact(mounting.operation, move.done);
      if (own === null) return [];
      const message = `${bends.join(', ')}: ${id(own.moving)} runs into ${id(own.held)} of the part itself`;
      return [{ bends, code: 'part', panel: id(own.held), machine: position.station, by: null, message }];
    }
    return ways(problem, move, shop, longest).map(({ held, obstacle, by }): Reason => {
      const how = `${bends.join(', ')}, ${id(held)} held`;
      const message = (say: Say) => `${how}: ${wordsOf(obstacle, id(obstacle.panel), by, say)}`;
      return {
        bends,
        code: obstacle.code,
        panel: id(obstacle.panel),
        machine: position.station,
        by,
        message,
      };
    });
  });
}

interface Way {
  readonly held: number;
  readonly obstacle: Obstacle;
  readonly by: number | null;
}

/** What stops an operation on its machine with either side of the line held, the one that fails by less first. */
function ways(problem: Problem, move: Move, shop: Shop, longest: number): readonly Way[] {
  const station = problem.stations.find((s) => s.id === move.position.tooling);
  const found = (['parent', 'child'] as const).flatMap((held): readonly Way[] => {
    const mounting = station?.mount(move.mounting.operation, held, move.done);
    if (mounting === undefined || mounting.obstacle === null) return [];
    const by = excess(problem, { ...move, mounting }, mounting.obstacle, shop, longest);
    const [panel] = move.mounting.operation.panels as [number];
    const other = problem.work.tree.panels[panel]?.parent ?? -1;
    return [{ held: held === 'parent' ? other : panel, obstacle: mounting.obstacle, by }];
  });
  const far = ({ by }: Way) => by ?? Infinity;
  return found.toSorted((a, b) => far(a) - far(b) || a.held - b.held);
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

/** What stops an operation, in words. */
function wordsOf({ code, value, limit }: Obstacle, panel: string, by: number | null, say: Say): string {
  const deep = by === null ? '' : `, by ${tenths(by, say)}`;
  const found = value === undefined ? '' : tenths(value, say);
  const allowed = limit === undefined ? '' : tenths(limit, say);
  switch (code) {
    case 'leaf':
      return `${panel} is in the way of the leaf${deep}`;
    case 'bed':
      return `${panel} runs into the bed${deep}`;
    case 'beam':
      return `${panel} runs into the beam over the fingers${deep}`;
    case 'fingers':
      return value === undefined
        ? `${panel} stands where the fingers have to be`
        : `${panel} leaves ${found} of the line without fingers, ${allowed} at most`;
    case 'punch':
    case 'die':
      return value === undefined
        ? `${panel} runs into the ${code}`
        : `beside ${panel} the ${code} leaves ${found} of the line bare, ${allowed} at most`;
    case 'ram':
      return `${panel} runs into the ${code}${deep}`;
    case 'angle':
      return value === undefined
        ? 'it cannot be done on this machine'
        : `${plainNumber(value, 1)}° asked, the machine bends ${plainNumber(limit ?? 0, 1)}° at most`;
    case 'length':
      return `the line is ${found} long, the machine ${allowed}`;
    case 'capacity':
      return `the sheet is ${found} thick, the machine takes ${allowed}`;
    case 'flange-short':
      return `${panel} reaches ${found} over the line, the leaf needs ${allowed}`;
    case 'hold-short':
      return `${panel} gives the fingers ${found} to hold, they need ${allowed}`;
    case 'opening':
      return `the folded hem stands ${found} high, the jaw lifts ${allowed}`;
    case 'hook':
      return `behind ${panel} the part cannot be hooked under the jaw: the foot is ${found} long, ${allowed} at most`;
    case 'jaws':
      return value === undefined
        ? `${panel} is in the way of the vise`
        : `${found} between the jaws, the vise takes ${allowed}`;
    case 'force':
      return `it takes ${plainNumber(value ?? 0, 0)} kN, the machine has ${plainNumber(limit ?? 0, 0)} kN`;
    case 'part':
      return `${panel} of the part itself is in the way`;
  }
}

/** To a tenth of a millimetre, no finer: the sections of the machine are not known better. */
const tenths = (mm: number, say: Say) => say.size(Math.round(mm * 10) / 10);
