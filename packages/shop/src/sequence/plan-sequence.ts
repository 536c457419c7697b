import type { FlatBend, PartPlan } from '@tinwright/core';
import { place3 } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import { stageOf } from './bench.js';
import { bendsTo, lineFrame, poseInMachine } from './line.js';
import { lumpsOf } from './lumps.js';
import { mendsFor } from './mends.js';
import type { BendStep, Sequence } from './plan.js';
import { findPlan, type PartToBend, problemOf } from './plan-part.js';
import { reasonsOf } from './reasons.js';
import { beam, type Move, type Problem } from './search.js';
import { sightLine } from './sight-line.js';
import { toolGroups } from './tool-groups.js';

const FORCED_WIDTH = 30; // states kept while looking for the least impossible plan

/** A planned part as the planner of bends wants it. */
export function partToBend({ name, part, material, mass, flat }: PartPlan): PartToBend {
  return { name, part, material, mass, blank: flat.blank.max };
}

/**
 * The order in which a part is bent in a shop: the cheapest by the shop's costs, or why there is none and what would
 * change that. Same part, same shop, same plan.
 */
export function planSequence(plan: PartPlan, shop: Shop): Sequence {
  const given = partToBend(plan);
  const problem = problemOf(given, shop);
  const found = findPlan(problem);
  const base = { part: plan.name, shop: shop.name, bound: found.bound, expanded: found.expanded };
  if (found.moves !== null) {
    const gap = found.cost === 0 ? 0 : Math.max(0, (found.cost - found.bound) / found.cost);
    const steps = found.moves.map((m) => bendStep(problem, m, plan));
    const status = gap < 1e-9 ? 'optimal' : 'feasible';
    return { ...base, status, steps, seconds: found.cost, gap, reasons: [], mends: [] };
  }
  const forced = beam(problem, FORCED_WIDTH, 'force').moves ?? [];
  const reasons = reasonsOf(problem, forced, shop, Math.max(...given.blank));
  return {
    ...base,
    status: 'infeasible',
    steps: [],
    seconds: 0,
    gap: 0,
    reasons,
    mends: mendsFor(plan, shop, reasons),
  };
}

/** A move in the words of the shop. */
function bendStep(problem: Problem, move: Move, plan: PartPlan): BendStep {
  const { work } = problem;
  const { mounting, position, cost } = move;
  const { operation, held } = mounting;
  const frame = lineFrame(work, operation, held);
  const ids = operation.panels.map((p) => work.tree.panels[p]?.id ?? '');
  const bends = ids.map((id) => plan.flat.bends.find((b) => b.id === id) as FlatBend);
  const station = problem.stations.find((s) => s.name === position.station);
  const onBrake = position.station === 'brake';
  const heldPanel = held === 'parent' ? frame.parents[0] : operation.panels[0];
  return {
    action: operation.action,
    bends: ids,
    machine: position.station,
    held: work.tree.panels[heldPanel as number]?.id ?? '',
    heldSide: held,
    faceUp: position.faceUp,
    heading: position.heading,
    angle: operation.action === 'fold' ? work.tree.foldAngle : Math.abs(operation.angle),
    setAngle: onBrake && operation.action !== 'close' ? position.stop : null,
    insideRadius: bends[0]?.insideRadius ?? 0,
    setBack: onBrake ? position.setBack : null,
    tools: onBrake
      ? toolGroups(
          position.tools,
          mounting.stretches,
          frame.spans,
          station?.rack ?? [],
          station?.gaps.inner ?? 0,
        )
      : null,
    sight: onBrake && operation.action !== 'close' ? bends.map((b) => sightLine(b, held)) : null,
    stopDistance: onBrake && operation.action !== 'close' ? stopDistance(problem, move) : null,
    hooked: mounting.hooked,
    press: null,
    seconds: cost,
  };
}

/** From the edge of the nose back to the furthest flat edge of the held sheet that runs along the line. mm */
function stopDistance({ work }: Problem, { mounting, done }: Move): number | null {
  const { operation, held } = mounting;
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  const { bend } = work.tree.panels[operation.panels[0] as number] ?? {};
  const edges = lumpsOf(work.tree).flatMap((lump) => {
    if (lump.kind === 'bend' || frame.moves[lump.panel] === true) return [];
    if (!bendsTo(work, frame, lump).every((p) => stage(p) === 'flat')) return [];
    const pose = poseInMachine(work, frame, lump, stage);
    const shape = (work.tree.panels[lump.panel]?.panel.shape ?? []).map((e) => place3(pose, [...e.from, 0]));
    return shape.flatMap((p, i) => {
      const q = shape[(i + 1) % shape.length] ?? p;
      return Math.abs(p[0] - q[0]) < 1e-6 && Math.abs(p[1] - q[1]) > LEAST_STOP ? [p[0]] : [];
    });
  });
  if (edges.length === 0 || bend === null || bend === undefined) return null;
  // the nose stands one inside radius from the held tangent line, which lies a setback from the mould line
  const nose = -bend.setback + bend.insideRadius;
  const rear = Math.min(...edges);
  return rear < nose ? nose - rear : null;
}

const LEAST_STOP = 10; // mm of straight edge a stop needs; judgement
