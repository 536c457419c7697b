import type { FlatBend, FlatPattern } from '@tinwright/core';
import { overlapDepth, plainNumber, radians } from '@tinwright/core/internal';
import { brakeNamed, brakesOf } from '../machines/brakes.js';
import type { Shop } from '../machines/shop.js';
import type { BendStep } from '../sequence/answer/plan.js';
import { folded, movingPanels } from './folding.js';
import { leafBrake } from './leaf-brake.js';
import { pressBrake } from './press-brake.js';
import { after, STILL } from './rigid.js';
import type { ReplayMachine, ReplayTool } from './setup.js';
import { prismsOf, type ReplaySolid } from './solids.js';
import { type ToolRack, toolFlaws } from './tool-flaws.js';

/** Something wrong with a plan when it is replayed. */
export interface SequenceFlaw {
  /** Counted from 1. */
  readonly step: number;
  readonly message: string;
}

const ALLOWED = 0.75; // mm two things may share: the planner lets edges touch
const MOMENTS = 24; // of a stroke looked at

/**
 * Replay a plan step by step from the flat pattern, with a fold routine and tools of its own: every bend once, hems
 * folded before they are closed, tools that are in the rack and cover the line, and at every moment of every stroke on
 * a machine no panel in its tools where they are said to stand, or in the part itself. Empty when all holds.
 */
export function verifySequence(
  flat: FlatPattern,
  steps: readonly BendStep[],
  shop: Shop,
): readonly SequenceFlaw[] {
  const done = new Map<string, Stage>();
  for (const [i, step] of steps.entries()) {
    const wrong = outOfTurn(flat, step, done);
    const flaws = wrong.length > 0 ? wrong : inStep(flat, step, done, shop);
    if (flaws.length > 0) return flaws.map((message) => ({ step: i + 1, message }));
    for (const id of step.bends)
      done.set(
        id,
        step.action === 'fold' ? { name: 'folded', angle: step.angle } : { name: 'done', angle: 0 },
      );
  }
  const left = flat.bends.filter((b) => done.get(b.id)?.name !== 'done').map((b) => b.id);
  return left.length === 0 ? [] : [{ step: steps.length, message: `${left.join(', ')} never bent` }];
}

interface Stage {
  readonly name: 'folded' | 'done';
  readonly angle: number;
}

type Stages = ReadonlyMap<string, Stage>;

function outOfTurn(flat: FlatPattern, { bends, action }: BendStep, done: Stages): readonly string[] {
  const wanted = action === 'close' ? 'folded' : undefined;
  return bends.flatMap((id) => {
    if (!flat.bends.some((b) => b.id === id)) return [`there is no bend ${id}`];
    const stage = done.get(id)?.name;
    return stage === wanted ? [] : [`${id} is ${stage ?? 'flat'} already`];
  });
}

/** The machine of a step with its rack; null for work by hand. */
function machineOf(
  { machine, machineName, press }: BendStep,
  shop: Shop,
): { readonly run: ReplayMachine; readonly rack: ToolRack } | null {
  const brake = machine === 'brake' ? brakeNamed(shop, machineName) : null;
  if (brake !== null) {
    const { fingers, gaps, length } = brake;
    return { run: leafBrake(brake), rack: { pieces: fingers, gaps, length } };
  }
  if (machine !== 'press' || shop.press === null) return null;
  const punch = shop.press.punches.find((p) => p.name === press?.punch);
  const pieces = [...(punch?.lengths ?? []), ...(press?.horns?.widths ?? [])];
  const rack = { pieces, gaps: shop.press.gaps, length: shop.press.length };
  return { run: pressBrake(shop.press), rack };
}

function inStep(flat: FlatPattern, step: BendStep, done: Stages, shop: Shop): readonly string[] {
  const has =
    step.machine === 'brake' ? brakesOf(shop).length > 0 : step.machine === 'hand' || shop[step.machine];
  if (!has) return [`there is no ${step.machine} in the shop`];
  const machine = machineOf(step, shop);
  if (machine === null || step.action === 'roll') return [];
  const bends = step.bends.map((id) => flat.bends.find((b) => b.id === id) as FlatBend);
  const tools = toolFlaws(step, bends, machine.rack);
  if (tools.length > 0) return tools;
  const angleAt = (share: number) => (bend: FlatBend) => {
    if (bends.includes(bend) && step.action !== 'close') return radians(step.angle) * share;
    const stage = done.get(bend.id);
    if (stage?.name === 'folded') return radians(Math.min(stage.angle, bend.angle));
    return stage === undefined ? 0 : radians(bend.angle);
  };
  const moving = movingPanels(flat, step.held, step.bends);
  const count = step.action === 'close' ? 0 : MOMENTS;
  for (let i = 0; i <= count; i++) {
    const share = count === 0 ? 0 : i / count;
    const { place, tools: solids } = machine.run(flat, step, bends, share);
    const poses = folded(flat, step.held, angleAt(share));
    const panels = flat.panels
      .filter((p) => step.action !== 'close' || !step.bends.includes(p.id))
      .map((p): ReplaySolid => {
        const pose = after(place, poses.get(p.id) ?? STILL);
        return { id: p.id, prisms: prismsOf(p.shape, flat.thickness, pose) };
      });
    const wrong = intoTools(step, panels, solids, moving, share) ?? intoItself(panels, moving);
    if (wrong !== null) return [`${wrong} at ${plainNumber(step.angle * share, 0)} degrees`];
  }
  return [];
}

function intoTools(
  step: BendStep,
  panels: readonly ReplaySolid[],
  tools: readonly ReplayTool[],
  moving: ReadonlySet<string>,
  share: number,
): string | null {
  const beside = (id: string) => id === step.held || step.bends.includes(id);
  for (const panel of panels)
    for (const tool of tools) {
      if (tool.clamps && beside(panel.id)) continue;
      if (tool.turns && moving.has(panel.id) && share > 0) continue;
      const deep = shared(panel, tool);
      if (deep > ALLOWED) return `${panel.id} runs ${plainNumber(deep, 1)} mm into the ${tool.id}`;
    }
  return null;
}

function intoItself(panels: readonly ReplaySolid[], moving: ReadonlySet<string>): string | null {
  for (const a of panels.filter((s) => moving.has(s.id)))
    for (const b of panels.filter((s) => !moving.has(s.id))) {
      const deep = shared(a, b);
      if (deep > ALLOWED) return `${a.id} runs ${plainNumber(deep, 1)} mm into ${b.id}`;
    }
  return null;
}

const shared = (a: ReplaySolid, b: ReplaySolid): number =>
  Math.max(0, ...a.prisms.flatMap((p) => b.prisms.map((q) => overlapDepth(p, q))));
