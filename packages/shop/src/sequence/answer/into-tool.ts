import { radians } from '@tinwright/core/internal';
import type { Brake, Shop } from '../../machines/shop.js';
import { springbackOf } from '../../metal/springback.js';
import { overlap, turned } from '../../sweep/polygon.js';
import { leafTools } from '../../tools/leaf-tools.js';
import { marginFor } from '../../tools/margin.js';
import { lineFrame, poseInMachine } from '../part/line.js';
import { lumpsOf, solidsOf } from '../part/lumps.js';
import type { Mask } from '../part/mask.js';
import { stageOf } from '../part/stage.js';
import type { BendProblem } from '../search/states.js';
import { sectionOf } from '../stations/bench.js';
import { leafWork } from '../stations/leaf-work.js';
import type { Mounting, Obstacle } from '../stations/station.js';

/** What the reasons of a part are found with. */
export interface ReasonInput {
  readonly problem: BendProblem;
  readonly shop: Shop;
  readonly material: string;
  /** Of the blank, mm. */
  readonly longest: number;
}

const STEP = radians(1); // for the reader only; whether it goes is decided without steps

/** Deepest overlap of a panel with leaf, bed or beam during a stroke, margin included, mm; null for other tools. */
export function intoTool(
  { problem: { work }, shop, material, longest }: ReasonInput,
  { operation, held }: Mounting,
  { code, panel }: Obstacle,
  { done, brake }: { readonly done: Mask; readonly brake: Brake | null },
): number | null {
  if (brake === null || (code !== 'leaf' && code !== 'bed' && code !== 'beam')) return null;
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  const springback = springbackOf(shop.strips, material, work.tree.thickness);
  const { setBack, free } = leafWork(work.tree, operation, brake, springback);
  const tools = leafTools(brake, work.tree.thickness, setBack, marginFor(shop.margin, longest));
  const solids = lumpsOf(work.tree)
    .filter((l) => l.panel === panel)
    .flatMap((l) => {
      const pose = poseInMachine(work, frame, l, stage);
      return solidsOf(work.tree, l, stage(l.panel)).map((s) => sectionOf(s, pose));
    });
  const moves = frame.moves[panel] === true;
  const through = radians(free);
  const steps = Math.ceil(through / STEP);
  const depths = solids.flatMap((s) =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const turn = (through * i) / steps;
      if (code === 'leaf') return moves ? overlap(s, tools.leaf) : overlap(s, turned(tools.leafFace, turn));
      return overlap(moves ? turned(s, turn) : s, tools[code]);
    }),
  );
  const deepest = Math.max(0, ...depths);
  return deepest > 0 ? deepest : null;
}
