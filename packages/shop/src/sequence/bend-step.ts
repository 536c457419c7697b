import { type FlatBend, type PartPlan, place3 } from '@tinwright/core';
import type { Press, Shop } from '../machines/shop.js';
import { bendForce, FORCE_CONSTANTS, forceTensile } from '../metal/press-force.js';
import { stageOf } from './bench.js';
import type { TreeBend } from './fold-tree.js';
import { bendsTo, lineFrame, poseInMachine } from './line.js';
import { lumpsOf } from './lumps.js';
import type { BendStep, PressSetting } from './plan.js';
import { sightLine } from './sight-line.js';
import type { Move, Problem } from './states.js';
import { toolGroups } from './tool-groups.js';

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
  const onBrake = machine === 'brake';
  const tooled = onBrake || machine === 'press';
  const heldPanel = held === 'parent' ? frame.parents[0] : operation.panels[0];
  const edge = tooled && action !== 'close' ? edgeDistance(problem, move) : null;
  return {
    action,
    bends: ids,
    machine,
    held: work.tree.panels[heldPanel as number]?.id ?? '',
    heldSide: held,
    faceUp: position.faceUp,
    heading: position.heading,
    angle: action === 'fold' ? work.tree.foldAngle : Math.abs(operation.angle),
    setAngle: tooled && action !== 'close' ? position.stop : null,
    insideRadius: bends[0]?.insideRadius ?? 0,
    setBack: onBrake ? position.setBack : null,
    tools: tooled
      ? toolGroups(
          position.tools,
          mounting.stretches,
          frame.spans,
          station?.rack ?? [],
          station?.gaps.inner ?? 0,
        )
      : null,
    sight: onBrake && action !== 'close' ? bends.map((b) => sightLine(b, held)) : null,
    stopDistance: onBrake && edge !== null ? edge.toNose : null,
    hooked: mounting.hooked,
    press:
      machine === 'press' && shop.press !== null
        ? pressSetting(
            shop.press,
            shop,
            plan,
            position.tooling,
            lengthOf(frame.spans),
            edge?.toMiddle ?? null,
          )
        : null,
    seconds: cost,
  };
}

const lengthOf = (spans: readonly (readonly [number, number])[]) =>
  Math.max(...spans.map((s) => s[1])) - Math.min(...spans.map((s) => s[0]));

function pressSetting(
  press: Press,
  { profile }: Shop,
  { material, sheet }: PartPlan,
  tooling: string,
  length: number,
  gauge: number | null,
): PressSetting | null {
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

const LEAST_EDGE = 10; // mm of straight edge a stop needs; judgement

/**
 * From the furthest flat edge of the held sheet that runs along the line to the edge of the nose on a leaf brake, and
 * to the middle of the bend under a punch. mm; null without such an edge.
 */
function edgeDistance(
  { work }: Problem,
  { mounting, done }: Move,
): { readonly toNose: number; readonly toMiddle: number } | null {
  const { operation, held } = mounting;
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  const bend = work.tree.panels[operation.panels[0] as number]?.bend as TreeBend;
  const edges = lumpsOf(work.tree).flatMap((lump) => {
    if (lump.kind === 'bend' || frame.moves[lump.panel] === true) return [];
    if (!bendsTo(work, frame, lump).every((p) => stage(p) === 'flat')) return [];
    const pose = poseInMachine(work, frame, lump, stage);
    const shape = (work.tree.panels[lump.panel]?.panel.shape ?? []).map((e) => place3(pose, [...e.from, 0]));
    return shape.flatMap((p, i) => {
      const q = shape[(i + 1) % shape.length] ?? p;
      return Math.abs(p[0] - q[0]) < 1e-6 && Math.abs(p[1] - q[1]) > LEAST_EDGE ? [p[0]] : [];
    });
  });
  const tangent = -bend.setback; // of the held side, from the mould line
  const rear = Math.min(...edges);
  if (!(rear < tangent)) return null;
  return { toNose: tangent + bend.insideRadius - rear, toMiddle: tangent + bend.allowance / 2 - rear };
}
