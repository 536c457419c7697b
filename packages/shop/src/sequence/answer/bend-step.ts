import type { FlatBend, PartPlan } from '@tinwright/core';
import { brakeAt } from '../../machines/brakes.js';
import type { Punch, Shop } from '../../machines/shop.js';
import { airRadius, bendForce, FORCE_CONSTANTS, forceTensile } from '../../metal/press-force.js';
import { OVER_BARS } from '../../tools/jaw-tools.js';
import { leafRadius } from '../../tools/leaf-setting.js';
import { lineFrame, lineLength, sightOffset } from '../part/line.js';
import { tipsBack } from '../part/tips-back.js';
import type { BendProblem, Move } from '../search/states.js';
import { hornsBeside, withHorns } from '../stations/horn-room.js';
import type { Station } from '../stations/station.js';
import type { Interval } from '../stations/stretches.js';
import { offMiddle } from './off-middle.js';
import type { BendStep, PressSetting } from './plan.js';
import { sightLine } from './sight-line.js';
import { handlingOf, strokeOf, towardsOf } from './stroke.js';
import { isOpen, toolGroups } from './tool-groups.js';

const CLAMPS = ['bench', 'seamer', 'former'] as const;

/** A move as the shop makes it: what is held, what is set, which line goes where; `before` is how it lay for the one before. */
export function bendStep(
  problem: BendProblem,
  move: Move,
  plan: PartPlan,
  shop: Shop,
  before: Move['position'] | null,
): BendStep {
  const { work } = problem;
  const { mounting, position, cost } = move;
  const { operation, held } = mounting;
  const { action } = operation;
  const frame = lineFrame(work, operation, held);
  const nameOf = (panel: number) => work.tree.panels[panel]?.id ?? '';
  const ids = operation.panels.map(nameOf);
  const bends = ids.map((id) => plan.flat.bends.find((b) => b.id === id) as FlatBend);
  const station = problem.stations.find((s) => s.id === position.tooling);
  const { station: machine, faceUp, heading } = position;
  const tooled = machine === 'brake' || machine === 'press';
  const parents = [...new Set(frame.parents.map(nameOf))];
  const [gripped, beside] = held === 'parent' ? [parents, ids] : [ids, parents];
  const gauged = station === undefined ? null : problem.gauges.at({ operation, held, station }, move.done);
  const rear = gauged === 'line' ? null : gauged;
  const tools = tooled && station !== undefined ? toolsOf(station, move, frame.spans) : null;
  const press = pressSetting(problem, move, plan, shop, { gauge: rear?.setting ?? null, tools });
  const length = lineLength(frame);
  return {
    ...strokeOf(action, bends),
    machine,
    machineName: nameIn(shop, machine, position.tooling),
    clamp: CLAMPS.find((c) => c === position.tooling) ?? null,
    held: gripped[0] as string,
    heldSide: held,
    gripped,
    beside,
    faceUp,
    heading,
    towards: towardsOf(heading),
    handling: handlingOf(before, position),
    angle: action === 'fold' ? work.tree.fold.angle : Math.abs(operation.angle),
    setAngle: setOf(machine, action, position.stop),
    setBack: machine === 'brake' ? position.setBack : null,
    madeRadius: action === 'bend' ? madeRadius(position, plan.sheet.thickness, operation, press) : null,
    tools,
    ...sightSetting(problem, move, bends, rear?.setting ?? null),
    length,
    touches: station === undefined ? null : problem.gauges.touches({ operation, held, station }, move.done),
    putIn: mounting.putIn,
    takeOff: mounting.takeOff,
    press: press && { ...press, offMiddle: offMiddle(tools, length, shop.press?.length ?? 0) },
    seconds: cost,
  };
}

/** Inside radius of a bend as the machine is set for it, mm; null by hand. */
function madeRadius(
  { station, setBack }: Move['position'],
  thickness: number,
  { angle }: Move['mounting']['operation'],
  press: { readonly opening: number } | null,
): number | null {
  if (press !== null) return airRadius(press.opening);
  return station === 'brake' && setBack !== null ? leafRadius(setBack, thickness, Math.abs(angle)) : null;
}

/** Where tools stand, horns at their ends. */
function toolsOf(
  { tooling, rack, gaps: { inner } }: Station,
  { mounting: { stretches }, position: { tools } }: Move,
  spans: readonly Interval[],
): BendStep['tools'] {
  const horns = tooling?.horns ?? null;
  // where nothing is in the way any tools do, without horns too
  if (horns === null || (tools === null && isOpen(stretches)))
    return toolGroups(tools, stretches, spans, rack, inner);
  return toolGroups(hornsBeside(tools ?? [rack], horns), withHorns(stretches, horns), spans, rack, inner);
}

/** What the shop calls what does a bend; null for bare hands. */
function nameIn(shop: Shop, machine: BendStep['machine'], tooling: string): string | null {
  if (machine === 'hand') {
    const tool = tooling === 'seamer' ? shop.handSeamer : tooling === 'former' ? shop.formerBlock : null;
    return tool?.name ?? null;
  }
  return (brakeAt(shop, tooling) ?? shop[machine])?.name ?? null;
}

function setOf(machine: BendStep['machine'], action: BendStep['action'], stop: number | null): number | null {
  if (machine === 'brake') return action === 'close' ? null : stop;
  return action === 'fold' && machine !== 'press' ? OVER_BARS : null;
}

/** Where the nose stands in front of the tangent line, and the stop behind it; a hem is folded with the edge on the line. */
function sightSetting(
  { work }: BendProblem,
  { mounting: { operation, held }, position: { station, setBack } }: Move,
  bends: readonly FlatBend[],
  rear: number | null,
): Pick<BendStep, 'sight' | 'sightOffset' | 'noseOffset' | 'stopDistance'> {
  if (station !== 'brake' || operation.action === 'close' || setBack === null)
    return { sight: null, sightOffset: null, noseOffset: null, stopDistance: null };
  const offset = sightOffset(lineFrame(work, operation, held), setBack);
  return {
    sight: bends.map((b) => sightLine(b, held, offset)),
    sightOffset: offset,
    noseOffset: (bends[0]?.zone ?? 0) / 2 - offset,
    stopDistance: rear,
  };
}

function pressSetting(
  { work, stations }: BendProblem,
  { mounting: { operation, held }, position }: Move,
  { material, sheet }: PartPlan,
  { profile }: Shop,
  { gauge, tools }: Pick<PressSetting, 'gauge'> & Pick<BendStep, 'tools'>,
): Omit<PressSetting, 'offMiddle'> | null {
  const { tooling = null } = stations.find((s) => s.id === position.tooling) ?? {};
  if (tooling === null) return null;
  const frame = lineFrame(work, operation, held);
  const length = lineLength(frame);
  const { punch, die, horns } = tooling;
  const constant = FORCE_CONSTANTS[profile];
  const tensile = forceTensile(material);
  return {
    punch: punch.name,
    hollow: hollowOf(punch),
    horns: tools === null ? null : horns,
    die: die.name,
    opening: die.opening,
    force: bendForce(constant.value, tensile, length, sheet.thickness, die.opening),
    forceFormula: `F = ${constant.value} x Rm x L x T^2 / V with Rm ${tensile} N/mm2 (${constant.source})`,
    gauge,
    tipsBack: tipsBack(work, frame),
  };
}

const NECK = 0.9; // of a punch's height: what is over it is in the holder

/** The side to which a punch leaves more room. */
function hollowOf({ section }: Punch): PressSetting['hollow'] {
  const top = Math.max(...section.map((p) => p[1]));
  const sides = section.filter((p) => p[1] < NECK * top).map((p) => p[0]);
  const [front, back] = [Math.max(...sides), -Math.min(...sides)];
  if (Math.abs(front - back) < 0.5) return null;
  return front < back ? 'front' : 'back';
}
