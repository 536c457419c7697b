import type { FlatBend, PartPlan } from '@tinwright/core';
import {
  type BendStep,
  brakeNamed,
  type Sequence,
  type Shop,
  type StepState,
  stateAt,
} from '@tinwright/shop';
import { bentTo } from '@tinwright/shop/internal';
import { cutOff } from './cut-off.js';
import { type Cut, sectionAt } from './section.js';
import { benchMachine } from './tools/bench-machine.js';
import { formerMachine } from './tools/former-machine.js';
import { leafMachine } from './tools/leaf-machine.js';
import { pressMachine } from './tools/press-machine.js';
import { seamerMachine } from './tools/seamer-machine.js';
import type { Machine } from './tools/tool.js';
import { viseMachine } from './tools/vise-machine.js';

/** An operation as its pictures need it. mm, in the frame of `StepState`. */
export interface Scene {
  readonly part: PartPlan;
  readonly shop: Shop;
  readonly step: BendStep;
  /** The same as it is drawn: pliers turn with what they hold, and the rest lies still. */
  readonly drawn: BendStep;
  /** Counted from 0, of how many, and the operation before. */
  readonly index: number;
  readonly of: number;
  readonly previous: BendStep | null;
  readonly state: StepState;
  /** Null for work by hand. */
  readonly machine: Machine | null;
  /** Where the cross-section is cut, and what is cut. */
  readonly y: number;
  readonly cuts: Readonly<Record<'before' | 'after', readonly Cut[]>>;
}

/** An operation of an order, with the part in its machine. */
export function sceneAt(part: PartPlan, { steps }: Sequence, index: number, shop: Shop): Scene {
  const step = steps[index] as BendStep;
  const drawn = stillFor(step);
  const state = stateAt(part, steps.with(index, drawn), index);
  const y = cutThrough(state);
  const cuts = { before: sectionAt(state.before, y), after: sectionAt(state.after, y) };
  return {
    part,
    shop,
    step,
    drawn,
    index,
    of: steps.length,
    previous: steps[index - 1] ?? null,
    state,
    machine: machineOf(part, step, shop, cuts),
    y,
    cuts,
  };
}

/** Held in pliers, the smaller side turns: what is drawn as held is the other one. */
function stillFor(step: BendStep): BendStep {
  const { clamp, heldSide, gripped, beside } = step;
  if (clamp !== 'seamer' || step.action === 'close') return step;
  return {
    ...step,
    held: beside[0] as string,
    heldSide: heldSide === 'parent' ? 'child' : 'parent',
    gripped: beside,
    beside: gripped,
  };
}

/** True for metal that turns against the held panel. */
export function moves(
  { state, step }: Pick<Scene, 'state' | 'step'>,
  kind: Cut['kind'],
  id: string,
): boolean {
  return (kind === 'bend' && step.bends.includes(id)) || state.moving.has(id);
}

/** In the middle of the longest stretch of bent material that has a tool over it. */
function cutThrough({ lines, tools }: StepState): number {
  const found = lines.flatMap(([a, b]) =>
    (tools ?? [[-Infinity, Infinity] as const]).map(([c, d]) => [Math.max(a, c), Math.min(b, d)] as const),
  );
  const [[from, to]] = [...found, ...lines].toSorted((a, b) => b[1] - b[0] - (a[1] - a[0])) as [
    readonly [number, number],
  ];
  return (from + to) / 2;
}

function machineOf({ flat }: PartPlan, step: BendStep, shop: Shop, cuts: Scene['cuts']): Machine | null {
  const bend = flat.bends.find((b) => b.id === step.bends[0]) as FlatBend;
  const { thickness } = flat;
  const { insideRadius } = bend;
  const closed = 2 * (thickness + insideRadius);
  const highest = (axis: 0 | 1) =>
    Math.max(...cuts.before.flatMap((c) => c.outline.map((p) => (axis === 1 ? p[1] : -p[0]))));
  const brake = step.machine === 'brake' ? brakeNamed(shop, step.machineName) : null;
  if (brake !== null)
    return leafMachine(brake, step, {
      thickness,
      hem: closed,
      rear: (height) => reachOf(cuts.before, -1, 0, height),
    });
  if (step.machine === 'press' && shop.press !== null) {
    const { finger } = shop.press.backGauge;
    return pressMachine(shop.press, step, {
      thickness,
      insideRadius,
      hem: [Math.max(0, highest(1)), closed - thickness],
      rear: reachOf(cuts.before, -1, -thickness - finger.under, finger.over - thickness),
    });
  }
  if (step.clamp === 'seamer' && shop.handSeamer !== null)
    return step.action === 'close' ? null : seamerMachine(shop.handSeamer, step, thickness);
  const half = (Math.PI * (step.action === 'close' ? 90 : bentTo(step))) / 360;
  const top = (insideRadius + thickness) * Math.tan(half);
  if (step.clamp === 'former' && shop.formerBlock !== null)
    return formerMachine(shop.formerBlock, Math.max(thickness, top), thickness);
  const { vise } = shop;
  if (vise === null) return null;
  if (step.clamp === 'bench')
    return benchMachine(vise, step, {
      thickness,
      tangent: top,
      hem: [Math.max(closed, highest(1)), closed],
    });
  if (step.machine !== 'vise') return null;
  const gripped = (way: 1 | -1) => reachOf(cuts.before, way, -top - vise.grip, -top);
  return viseMachine(vise, step, {
    top,
    faces: [Math.max(thickness, gripped(-1)), gripped(1)],
    hem: [Math.max(closed, highest(0)), closed],
  });
}

/** How far metal reaches between two heights, back (-1) or to the front (1). */
function reachOf(cuts: readonly Cut[], way: 1 | -1, low: number, high: number): number {
  const between = cuts.flatMap((c) => {
    const over = cutOff(c.outline, [0, 1], low);
    return cutOff(over, [0, -1], -high);
  });
  return Math.max(0, ...between.map((p) => way * p[0]));
}
