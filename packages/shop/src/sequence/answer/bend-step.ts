import type { FlatBend, PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import { bendForce, FORCE_CONSTANTS, forceTensile } from '../../metal/press-force.js';
import type { TreeBend, TreePanel } from '../part/fold-tree.js';
import { lineFrame, lineLength } from '../part/line.js';
import type { Move, Problem } from '../search/states.js';
import type { BendStep, PressSetting } from './plan.js';
import { sightLine, sightOffset } from './sight-line.js';
import { rearEdge } from './stop-edge.js';
import { toolGroups } from './tool-groups.js';

const CLAMPS = ['bench', 'seamer'] as const;

/** A move in the words of the shop: what is held, what is set, which line goes where. */
export function bendStep(problem: Problem, move: Move, plan: PartPlan, shop: Shop): BendStep {
  const { work } = problem;
  const { mounting, position, cost } = move;
  const { operation, held } = mounting;
  const { action } = operation;
  const frame = lineFrame(work, operation, held);
  const ids = operation.panels.map((p) => work.tree.panels[p]?.id ?? '');
  const bends = ids.map((id) => plan.flat.bends.find((b) => b.id === id) as FlatBend);
  const station = problem.stations.find((s) => s.id === position.tooling);
  const { station: machine } = position;
  const tooled = machine === 'brake' || machine === 'press';
  const heldPanel = held === 'parent' ? frame.parents[0] : operation.panels[0];
  const rear =
    tooled && action !== 'close' ? rearEdge(problem, move, reachOf(machine, bends[0], shop)) : null;
  return {
    action,
    bends: ids,
    machine,
    clamp: CLAMPS.find((c) => c === position.tooling) ?? null,
    held: work.tree.panels[heldPanel as number]?.id ?? '',
    heldSide: held,
    faceUp: position.faceUp,
    heading: position.heading,
    angle: action === 'fold' ? work.tree.foldAngle : Math.abs(operation.angle),
    setAngle: machine === 'brake' && action !== 'close' ? position.stop : null,
    insideRadius: bends[0]?.insideRadius ?? 0,
    setBack: machine === 'brake' ? position.setBack : null,
    tools: tooled
      ? toolGroups(
          position.tools,
          mounting.stretches,
          frame.spans,
          station?.rack ?? [],
          station?.gaps.inner ?? 0,
        )
      : null,
    ...sightSetting(problem, move, bends, rear?.distance ?? null),
    touches: rear?.touches ?? null,
    putIn: mounting.putIn,
    takeOff: mounting.takeOff,
    hooked: mounting.putIn === 'tilted' || mounting.takeOff === 'tilted',
    press: pressSetting(
      problem,
      move,
      plan,
      shop,
      rear === null ? null : rear.distance + (bends[0]?.zone ?? 0) / 2,
    ),
    seconds: cost,
  };
}

/** How far behind the tangent line a stop touches: a back gauge between its nearest and furthest place. mm */
function reachOf(
  machine: BendStep['machine'],
  bend: FlatBend | undefined,
  { press }: Shop,
): readonly [number, number] {
  if (machine !== 'press' || press === null) return [0, Infinity];
  const half = (bend?.zone ?? 0) / 2;
  return [press.backGauge.least - half, press.backGauge.most - half];
}

/** Where the nose stands in front of the tangent line, and the stop behind it; a hem is folded with the edge on the line. */
function sightSetting(
  { work }: Problem,
  { mounting: { operation, held }, position: { station, setBack } }: Move,
  bends: readonly FlatBend[],
  rear: number | null,
): Pick<BendStep, 'sight' | 'sightOffset' | 'stopDistance'> {
  if (station !== 'brake' || operation.action === 'close' || setBack === null)
    return { sight: null, sightOffset: null, stopDistance: null };
  const { bend } = work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const offset = operation.action === 'fold' ? 0 : sightOffset(bend.setback, setBack);
  return {
    sight: bends.map((b) => sightLine(b, held, offset)),
    sightOffset: offset,
    stopDistance: rear === null ? null : rear + offset,
  };
}

function pressSetting(
  { work }: Problem,
  { mounting: { operation, held }, position: { station, tooling } }: Move,
  { material, sheet }: PartPlan,
  { press, profile }: Shop,
  gauge: number | null,
): PressSetting | null {
  if (station !== 'press' || press === null) return null;
  const length = lineLength(lineFrame(work, operation, held));
  const die = press.dies.find((d) => tooling.endsWith(`/ ${d.name}`));
  const punch = press.punches.find((p) => tooling.startsWith(`press ${p.name} /`));
  if (die === undefined || punch === undefined) return null;
  const constant = FORCE_CONSTANTS[profile];
  const tensile = forceTensile(material);
  return {
    punch: punch.name,
    die: die.name,
    opening: die.opening,
    force: bendForce(constant.value, tensile, length, sheet.thickness, die.opening),
    forceFormula: `F = ${constant.value} x Rm x L x T^2 / V with Rm ${tensile} N/mm2 (${constant.source})`,
    gauge,
  };
}
