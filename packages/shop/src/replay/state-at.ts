import { type FlatBend, type FlatPattern, outsideSetback, type PartPlan, type Pose } from '@tinwright/core';
import { compose3, form, radians, type Standing, stand } from '@tinwright/core/internal';
import type { BendStep } from '../sequence/answer/plan.js';
import { inverse } from '../sequence/part/fold-tree.js';
import { movingPanels } from './folding.js';
import { bentTo, type ReplayTurn, turned, turns } from './part-bent.js';
import { placed } from './setup.js';
import { type Along, stands } from './tool-solids.js';

/**
 * A part in the machine before and after an operation. mm. Machine frame: x towards the operator, y to his right, z up.
 * On a leaf brake the hinge lies at the origin and the sheet on z = 0. On a press brake the sheet's upper face lies at
 * z = 0 before the stroke, and the inner faces of both sides meet at the origin after it. In a vise the held side hangs
 * down, the outer faces meet at the origin. By hand the sheet lies as on a leaf brake.
 */
export interface StepState {
  readonly before: Standing;
  readonly after: Standing;
  /** Panels that turn against the one that is held. */
  readonly moving: ReadonlySet<string>;
  /** Ends of the bent material along y, in the order of the operation's bends. */
  readonly lines: readonly Along[];
  /** Where groups of tools stand along y, in the order of the operation's; null where they stand everywhere. */
  readonly tools: readonly Along[] | null;
}

/**
 * How a part stands at the operation with this index (from 0) of an order: operations before it are done, those after
 * it are not. Bends have their radii; material that is not yet bent lies flat between its tangent lines.
 * @throws RangeError for an index out of the order
 */
export function stateAt(
  { part, flat }: Pick<PartPlan, 'part' | 'flat'>,
  steps: readonly BendStep[],
  index: number,
): StepState {
  const step = steps[index];
  if (step === undefined) throw new RangeError(`operation ${index} given, 0 to ${steps.length - 1} allowed`);
  const bends = step.bends.map((id) => flat.bends.find((b) => b.id === id) as FlatBend);
  const [first] = bends as [FlatBend];
  const done = steps.slice(0, index);
  const [old, next] = [turns(part, done), turns(part, [...done, { ...step, angle: bentTo(step) }])];
  const [before, after] = (['before', 'after'] as const).map((when) => {
    const now = form(turned(part, when === 'before' ? old : next));
    return stand(now, machinePose(flat, step, first, next.get(first.id) as ReplayTurn, when, now));
  }) as [Standing, Standing];
  const place = placed(step, first, flat.thickness, 0);
  const across = ([x, y]: readonly [number, number]) => place.m[1][0] * x + place.m[1][1] * y + place.t[1];
  return {
    before,
    after,
    moving: movingPanels(flat, step.held, step.bends),
    lines: bends.map(({ line }): Along => {
      const [a, b] = [across(line[0]), across(line[1])];
      return a < b ? [a, b] : [b, a];
    }),
    tools: step.tools === null ? null : stands(step, bends, place),
  };
}

/** From the frame of the part's first panel to the machine. */
function machinePose(
  flat: FlatPattern,
  step: BendStep,
  bend: FlatBend,
  made: ReplayTurn,
  when: 'before' | 'after',
  { panels }: Standing,
): Pose {
  const { m, t } = placed(step, bend, flat.thickness, forward(flat, step, bend, made, when));
  const onMachine: Pose = {
    origin: t,
    x: [m[0][0], m[1][0], m[2][0]],
    y: [m[0][1], m[1][1], m[2][1]],
    z: [m[0][2], m[1][2], m[2][2]],
  };
  const { origin, x, y } = (flat.panels.find((p) => p.id === step.held) as FlatPattern['panels'][number])
    .frame;
  const onFlat: Pose = {
    origin: [origin[0], origin[1], 0],
    x: [x[0], x[1], 0],
    y: [y[0], y[1], 0],
    z: [0, 0, 1],
  };
  const held = (panels.find((p) => p.id === step.held) as Standing['panels'][number]).pose;
  const half = when === 'after' && step.action !== 'close' ? radians(made.angle) / 2 : 0;
  return [inverse(held), onFlat, onMachine, ...tilted(step, flat.thickness, half)].reduce((inner, outer) =>
    compose3(outer, inner),
  );
}

/** How far the machine's origin lies forward of the held tangent line. */
function forward(
  flat: FlatPattern,
  { action, machine, heldSide, setBack }: BendStep,
  bend: FlatBend,
  { angle, insideRadius }: ReplayTurn,
  when: 'before' | 'after',
): number {
  const half = radians(angle) / 2;
  if (action === 'close') {
    // the fold lies at the nose, or as far behind it as the hem is wide
    if (machine === 'brake') return (setBack ?? 0) + (heldSide === 'child' ? legOf(flat, bend) : 0);
    return 0;
  }
  if (machine === 'press') return when === 'before' ? bend.zone / 2 : insideRadius * Math.tan(half);
  const out = insideRadius + flat.thickness;
  // past what a leaf reaches the outer faces meet far away or nowhere
  return angle > MOST ? out : out * Math.tan(half);
}

const MOST = 140; // degrees

/** Width of a hem with its bend. */
function legOf(flat: FlatPattern, bend: FlatBend): number {
  const shape = flat.panels.find((p) => p.id === bend.id)?.shape ?? [];
  const [a, b] = bend.tangents[1];
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const far = shape.map((p) => Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / l);
  return Math.max(...far) + outsideSetback({ ...bend, thickness: flat.thickness });
}

/** What a machine does to a sheet that lies on it: under a punch both sides rise, in a vise the held side hangs. */
function tilted({ machine }: BendStep, thickness: number, half: number): readonly Pose[] {
  const [c, s] = [Math.cos(half), Math.sin(half)];
  if (machine === 'press')
    return [
      { origin: [0, 0, -thickness], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] },
      { origin: [0, 0, 0], x: [c, 0, -s], y: [0, 1, 0], z: [s, 0, c] },
    ];
  if (machine === 'vise') return [{ origin: [0, 0, 0], x: [0, 0, 1], y: [0, 1, 0], z: [-1, 0, 0] }];
  return [];
}
