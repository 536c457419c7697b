import { type Assembly, type PartPlan, type Point, segments } from '@tinwright/core';
import { type CutoutParams, roundOf } from '@tinwright/core/internal';
import type { BendStep, BendStroke, Sequence } from '../sequence/answer/plan.js';
import type { BendWork, HoleWork, Operation, ReasonName, ToolName } from './operation.js';
import { usualOrder } from './usual-order.js';

/** What is done to a part by itself, in order: blank, marking out, cutting, drilling, bending, checking. */
export function partOperations(
  plan: PartPlan,
  assembly: Assembly | null,
  sequence: Sequence | null,
): readonly Operation[] {
  const { name: part, flat, quantity } = plan;
  const size: Point = [flat.blank.max[0], flat.blank.max[1]];
  const bent = flat.bends.length > 0;
  const down = flat.bends.some((b) => b.direction === 'down');
  const holes = holesOf(plan, assembly);
  const openings = flat.holes.filter((loop) => roundOf(loop) === null).length;
  const drill: readonly Operation[] =
    holes.length === 0
      ? []
      : [
          {
            kind: 'drill',
            part,
            holes,
            tools: ['centre-punch', 'hammer', 'drill', 'file', 'eyes'],
            reasons: [
              ...(bent ? (['walls-block-drill'] as const) : []),
              ...(holes.some((h) => h.firstOnly) ? (['match-drill'] as const) : []),
            ],
          },
        ];
  return [
    {
      kind: 'shear',
      part,
      quantity,
      size,
      tools: ['shear', 'rule', 'square', 'gloves'],
      reasons: ['all-from-edges'],
    },
    { kind: 'deburr', part, tools: ['file', 'gloves'], reasons: ['burrs-lift'] },
    {
      kind: 'mark',
      part,
      tools: ['rule', 'square', 'scriber', ...(down ? (['pencil'] as const) : []), 'centre-punch', 'hammer'],
      reasons: ['each-from-datum', ...(down ? (['scratch-cracks'] as const) : [])],
    },
    ...(isRectangle(plan) && openings === 0
      ? []
      : [
          {
            kind: 'cut-out',
            part,
            openings,
            tools: ['snips', 'file', 'gloves'],
            reasons: bent ? ['flat-while-it-can'] : [],
          } satisfies Operation,
        ]),
    ...drill,
    ...bends(plan, sequence),
    ...flaps(plan),
    ...(bent || plan.quantity > 1
      ? [
          {
            kind: 'check',
            part,
            tools: ['rule', 'square', 'caliper'],
            reasons: ['correct-while-open'],
          } satisfies Operation,
        ]
      : []),
  ];
}

/** Louvres of one size are formed together, once the part is bent: on the flat their flaps would be in the brake's way. */
function flaps({ name: part, params }: PartPlan): readonly Operation[] {
  const { cutouts = [] } = params as { readonly cutouts?: readonly CutoutParams[] };
  const louvres = cutouts.flatMap((c) => (c.type === 'louvre' ? [c] : []));
  return louvres.map(
    ({ rows, columns, side, height, width }): Operation => ({
      kind: 'form',
      part,
      flaps: (rows?.count ?? 1) * (columns?.count ?? 1),
      side,
      height,
      angle: (Math.asin(height / width) * 180) / Math.PI,
      tools: ['pliers', 'gloves'],
      reasons: [],
    }),
  );
}

const strokeOnly = ({ action, bends, direction, insideRadius, hem }: BendStep): BendStroke => ({
  action,
  bends,
  direction,
  insideRadius,
  hem,
});

const isRectangle = ({ flat }: PartPlan): boolean => {
  const { max } = flat.blank;
  const sides = segments(flat.outline);
  return (
    sides.every((s) => s.bulge === 0) &&
    flat.outline.length === 4 &&
    flat.outline.every(({ at }) => at.every((v, k) => v < NEAR || v > (max[k] as number) - NEAR))
  );
};

const NEAR = 1e-6; // mm

/** Holes to drill while the part is flat; in the part a joint goes to only the middle one of each row. */
function holesOf({ name, flat }: PartPlan, assembly: Assembly | null): readonly HoleWork[] {
  const marks = flat.marks.filter((m) => m.hole !== null);
  const kinds = new Map<string, HoleWork>();
  const add = (work: HoleWork) => {
    const key = [work.diameter.toFixed(4), work.purpose, work.firstOnly].join();
    const known = kinds.get(key);
    kinds.set(key, { ...work, count: work.count + (known?.count ?? 0) });
  };
  const own = flat.holes.length - marks.length;
  if (own > 0)
    for (const loop of flat.holes) {
      const round = roundOf(loop);
      if (round === null) continue;
      const { centre: at, radius } = round;
      if (marks.some((m) => Math.hypot(m.at[0] - at[0], m.at[1] - at[1]) < NEAR)) continue;
      add({ diameter: 2 * radius, count: 1, purpose: null, firstOnly: false });
    }
  for (const { hole, kind, joint, panel } of marks) {
    const seated = assembly?.seated.find((s) => s.joint.name === joint);
    // of a part joined to itself what is cut flat on both sides meets once it is bent
    const own = seated?.from.piece === seated?.to.piece;
    const row = marks.filter((m) => m.joint === joint && m.panel === panel);
    const firstOnly = row.length > 1 && seated !== undefined && !own && seated.from.part.name !== name;
    add({ diameter: hole as number, count: 1, purpose: kind, firstOnly });
  }
  return [...kinds.values()];
}

function bends(plan: PartPlan, sequence: Sequence | null): readonly Operation[] {
  const found = sequence !== null && sequence.status !== 'infeasible';
  const order: readonly BendWork[] = found
    ? sequence.steps.map((step, index) => ({ ...strokeOnly(step), angle: step.angle, step, index }))
    : usualOrder(plan);
  return order.map((bend): Operation => {
    const tools = toolsFor(bend);
    return { kind: 'bend', part: plan.name, bend, tools, reasons: reasonsFor(bend, order, found) };
  });
}

function toolsFor({ action, step }: BendWork): readonly ToolName[] {
  const machine = step?.machine ?? 'brake';
  if (machine === 'hand') return ['mallet'];
  if (machine === 'vise') return ['vise', 'mallet', step?.angle === 90 ? 'square' : 'protractor'];
  if (action === 'roll') return [machine, 'mallet'];
  return action === 'bend' ? [machine, 'protractor'] : [machine];
}

function reasonsFor(bend: BendWork, order: readonly BendWork[], found: boolean): readonly ReasonName[] {
  const hem = (b: BendWork) => b.action !== 'bend';
  if (bend.index === 0 && hem(bend) && order.some((b) => !hem(b))) return ['hems-before-walls'];
  const first = order.find((b) => !hem(b));
  if (bend !== first || order.filter((b) => !hem(b)).length < 2) return [];
  return found ? ['found-order'] : ['inner-before-outer', 'short-before-long'];
}
