import type { Material } from '@tinwright/core';
import { lazy, radians } from '@tinwright/core/internal';
import { type Capacity, thicknessLimit } from '../../machines/capacity.js';
import type { FormerBlock, HandSeamer, Vise } from '../../machines/shop.js';
import type { Convex } from '../../sweep/polygon.js';
import { benchTools, formerTools, type JawTools, seamerTools, viseTools } from '../../tools/jaw-tools.js';
import { bySide } from '../part/by-side.js';
import { type LineFrame, lineLength, spanOf } from '../part/line.js';
import type { LineBook, LineSolid, PartAtLine } from '../part/line-stands.js';
import { sameMask } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { benchOf, type StandingLump } from './bench.js';
import { handMounting } from './hand-mounting.js';
import type { JawLine } from './jaw-line.js';
import { hitsBench, jawClause, judge, LOW } from './jaw-room.js';
import { laidOver, malletLine } from './mallet-line.js';
import { mountBook } from './mount-book.js';
import { unlessStopped } from './prospect.js';
import { backOf, slideOf } from './slide-out.js';
import type { Obstacle, Station } from './station.js';
import type { Interval } from './stretches.js';

/** Something with two jaws that holds one side of a line while the other is bent by hand. */
interface Gripper {
  readonly name: 'vise' | 'hand';
  readonly id: string;
  readonly tools: JawTools;
  readonly capacity: readonly Capacity[];
  /** What the bench takes while a fold is laid over on it with a mallet; null where the pliers do that. */
  readonly mallet: readonly Convex[] | null;
  /** True for what folds hems too. */
  readonly folds: boolean;
}

/** Bends made by hand over the bars of a vise, a mallet bending the free side or the free side swinging. */
export const viseStation = (work: Work, lineAt: LineBook, vise: Vise, material: Material): Station =>
  jawStation(
    work,
    lineAt,
    {
      name: 'vise',
      id: 'vise',
      tools: viseTools(vise, work.tree.thickness),
      capacity: vise.capacity,
      mallet: benchTools(vise, work.tree.thickness).benches,
      folds: true,
    },
    material,
  );

/** Bends made by hand at the edge of the bench, under a bar of the vise. */
export const benchStation = (work: Work, lineAt: LineBook, vise: Vise, material: Material): Station => {
  const tools = benchTools(vise, work.tree.thickness);
  const { capacity } = vise;
  return jawStation(
    work,
    lineAt,
    { name: 'hand', id: 'bench', tools, capacity, mallet: tools.benches, folds: true },
    material,
  );
};

/** Short flanges bent with a hand seamer, which grips them whole. */
export const seamerStation = (
  work: Work,
  lineAt: LineBook,
  seamer: HandSeamer,
  material: Material,
): Station =>
  jawStation(
    work,
    lineAt,
    {
      name: 'hand',
      id: 'seamer',
      tools: seamerTools(seamer, work.tree.thickness),
      capacity: seamer.capacity,
      mallet: null,
      folds: true,
    },
    material,
  );

/** A wall closed over a block at the edge of the bench, where walls at its ends leave bars no room. */
export const formerStation = (
  work: Work,
  lineAt: LineBook,
  block: FormerBlock,
  material: Material,
): Station => {
  const tools = formerTools(block, work.tree.thickness);
  const { capacity } = block;
  return jawStation(
    work,
    lineAt,
    { name: 'hand', id: 'former', tools, capacity, mallet: tools.benches, folds: false },
    material,
  );
};

/** Every side of every line in a pair of jaws: what stands beside the held sheet, and what the free side swings into. */
function jawStation(work: Work, lineAt: LineBook, gripper: Gripper, material: Material): Station {
  const lineOf = bySide(work.operations, (operation, held) =>
    jawLine(work, gripper, material, operation, lineAt(operation, held), lineAt),
  );
  return {
    name: gripper.name,
    id: gripper.id,
    rack: [],
    wholeAtFirst: true,
    balance: null,
    tooling: null,
    gaps: { end: 0, inner: 0 },
    limits: (operation, held) => lineOf(operation, held).limits,
    swings: (operation, held) => turning(gripper, operation, lineAt(operation, held).frame).swings,
    prospect: (operation, held, done) => lineOf(operation, held).prospect(done),
    mount: (operation, held, done) => lineOf(operation, held).mount(done),
  };
}

/** Pliers are turned with what they hold; to close a fold nothing turns. */
const turning = (
  { mallet }: Gripper,
  { action }: LineStroke,
  { held, swings }: LineFrame,
): Pick<LineFrame, 'held' | 'swings'> => ({ held, swings: swings && mallet !== null && action !== 'close' });

const MOST = 95; // degrees: past square the sheet lies on the bar; judgement

function jawLine(
  work: Work,
  gripper: Gripper,
  material: Material,
  operation: LineStroke,
  at: PartAtLine,
  lineAt: LineBook,
): JawLine {
  const { frame } = at;
  const turned = turning(gripper, operation, frame);
  const mounting = (obstacle: Obstacle | null) => handMounting(operation, turned, obstacle);
  const limits = limitsOf(work, gripper, material, operation, frame);
  if (limits === null && operation.action === 'close')
    return malletLine(work, at, operation, gripper.tools.benches);
  if (limits !== null) return { limits, mount: () => mounting(limits), prospect: () => null };
  const turn = radians(Math.min(MOST, Math.abs(operation.angle)));
  const line = spanOf(frame.spans);
  const slide = operation.action === 'bend' ? slideOf(work, operation, turn) : () => 0;
  const back = backOf(slide, turn);
  /** A solid that by itself leaves the bars no room on the line. */
  const bars = (
    { corners }: LineSolid,
    [a, b]: Interval,
    { moves, flat }: Pick<StandingLump, 'moves' | 'flat'>,
  ) => {
    const room = flat ? 0 : gripper.tools.clamps;
    if (b <= line[0] - room + 1e-6 || a >= line[1] + room - 1e-6) return false;
    return flat || moves || corners.some((p) => p[2] > LOW || p[2] < -LOW);
  };
  /** A solid that runs into the bench whichever way the jaws are turned. */
  const { benches, fixed } = gripper.tools;
  const reaches = ({ section }: LineSolid, moves: boolean) =>
    fixed.some((b) => hitsBench(section, moves, b, { turn, slide })) ||
    (benches.length > 0 && benches.every((b) => hitsBench(section, moves, b, { turn, slide })));
  const bench = lazy(() =>
    benchOf<'jaws'>(
      work,
      at,
      [],
      (solid, moves, flat) => {
        const { takes } = jawClause(solid, moves, flat, { ...gripper.tools, back, slide }, turn);
        const alone = takes !== null && bars(solid, takes, { moves, flat });
        return { takes, stops: alone || reaches(solid, moves) ? 'jaws' : null };
      },
      (s) => !s.flat,
    ),
  );
  const own: JawLine = {
    limits,
    mount: mountBook(
      () => bench().seen(),
      (done) => mounting(judge(gripper.tools, frame, bench().at(done), { turn, slide })),
    ),
    prospect: unlessStopped(bench),
  };
  const closing = work.operations.find((o) => o.action === 'close' && sameMask(o.after, operation.mask));
  if (operation.action !== 'fold' || closing === undefined || gripper.mallet === null) return own;
  return laidOver(own, malletLine(work, lineAt(closing, 'parent'), closing, gripper.mallet));
}

function limitsOf(
  { tree }: Work,
  { id, tools, capacity, folds }: Gripper,
  material: Material,
  { action, panels, angle }: LineStroke,
  frame: LineFrame,
): Obstacle | null {
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  const through = Math.abs(angle);
  if (action === 'bend' && through > MOST) return { code: 'angle', panel: -1, value: through, limit: MOST };
  if (action === 'fold' && !folds) return { code: 'jaws', panel: panels[0] as number };
  // a fold is closed on the bench: the jaws take its wall no further than their depth
  if (action === 'close' && id !== 'bench') return { code: 'jaws', panel: panels[0] as number };
  const length = lineLength(frame);
  if (action !== 'close' && length > tools.width)
    return { code: 'jaws', panel: -1, value: length, limit: tools.width };
  const { thickness } = thicknessLimit(capacity, material);
  const own = tree.thickness;
  return own > thickness * 1.001 ? { code: 'capacity', panel: -1, value: own, limit: thickness } : null;
}
