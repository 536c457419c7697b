import { radians } from '@tinwright/core/internal';
import { brakeAt } from '../../machines/brakes.js';
import type { Brake, Shop } from '../../machines/shop.js';
import { springbackOf } from '../../metal/springback.js';
import { overlap, turned } from '../../sweep/polygon.js';
import { leafTools } from '../../tools/leaf-tools.js';
import { marginFor } from '../../tools/margin.js';
import { lineFrame, poseInMachine } from '../part/line.js';
import { lumpsOf, solidsOf } from '../part/lumps.js';
import { has, type Mask, union } from '../part/mask.js';
import { type LineStroke, openOperations } from '../part/operations.js';
import { stageOf } from '../part/stage.js';
import type { BendProblem } from '../search/states.js';
import { furthest } from '../search/sweeps.js';
import { sectionOf } from '../stations/bench.js';
import { leafWork } from '../stations/leaf-work.js';
import type { Mounting, Obstacle, Station } from '../stations/station.js';
import type { Reason } from './plan.js';
import { othersDone } from './smallest-core.js';

/** What the reasons of a part are found with. */
export interface ReasonInput {
  readonly problem: BendProblem;
  readonly shop: Shop;
  readonly material: string;
  /** Of the blank, mm. */
  readonly longest: number;
}

/**
 * Why some bends cannot all be made: for each as the last of them, what it runs into on every machine of the shop with either side
 * held. What hangs on the machine alone is one reason for all bends it holds for.
 */
export function reasonsOf(input: ReasonInput, cores: readonly (readonly number[])[]): readonly Reason[] {
  return grouped(cores.flatMap((core) => core.flatMap((panel) => lastOf(input, core, panel))));
}

function lastOf(input: ReasonInput, core: readonly number[], panel: number): readonly Reason[] {
  const { problem } = input;
  const { work } = problem;
  const done = othersDone(problem, core, panel);
  const operation = work.operations.find(
    (o) => o.panels[0] === panel && o.panels.length === 1 && o.action !== 'close',
  );
  if (operation === undefined) return [];
  const closing = work.operations.find(
    (o) => o.panels[0] === panel && o.panels.length === 1 && o.action === 'close',
  );
  return onMachines(problem, operation, (asked) =>
    [operation, ...(closing === undefined ? [] : [closing])]
      .map((o) => {
        const before = o.action === 'close' ? union(done, o.after) : done;
        return nearest(asked.map((s) => sidesOf(input, o, s, before)));
      })
      .filter((r) => r.length > 0)
      .slice(0, 1)
      .flat(),
  );
}

/** Reasons on every machine that an operation may be asked of, machines of a kind together. */
function onMachines(
  { stations }: BendProblem,
  { action }: LineStroke,
  ask: (asked: readonly Station[]) => readonly Reason[],
): readonly Reason[] {
  const usual = stations.filter((s) => s.name !== 'hand' || action === 'roll');
  // a shop may have nothing but a pair of pliers, or bare hands
  const pliers = stations.filter((s) => s.id !== 'hand');
  const machines = [usual, pliers, stations].find((list) => list.length > 0) ?? [];
  return [...new Set(machines.map((s) => s.name))].flatMap((name) =>
    ask(machines.filter((s) => s.name === name)),
  );
}

/**
 * Where no smallest set of bends was found within the effort: what every bend runs into that is left once a setter has gone
 * on as far as he can. Never empty for a part without a plan.
 */
export function stuckReasons(input: ReasonInput): readonly Reason[] {
  const { problem } = input;
  const { done } = furthest(problem);
  const open = openOperations(problem.work, done).filter((o) => o.panels.length === 1);
  return grouped(
    open.flatMap((o) =>
      onMachines(problem, o, (asked) => nearest(asked.map((s) => sidesOf(input, o, s, done)))),
    ),
  );
}

/** Of the tools of one machine those that come nearest; tools that are not meant for the bend only if there are no others. */
function nearest(ways: readonly (readonly Reason[])[]): readonly Reason[] {
  const meant = ways.filter((w) => !w.some((r) => r.code === 'die' && r.panel === null));
  const over = (way: readonly Reason[]) => way.reduce((s, r) => s + (r.by ?? 0), 0);
  const all = meant.length > 0 ? meant : ways;
  return all.reduce<readonly Reason[]>(
    (a, b) => (a.length === 0 || (b.length > 0 && over(b) < over(a)) ? b : a),
    [],
  );
}

/** What stops an operation on a machine, with the side held that the bend hangs on first. */
function sidesOf(input: ReasonInput, operation: LineStroke, station: Station, done: Mask): readonly Reason[] {
  const { problem } = input;
  const id = (panel: number) => problem.work.tree.panels[panel]?.id ?? null;
  const [panel] = operation.panels as [number];
  const base = {
    bends: operation.panels.map((p) => id(p) as string),
    after: problem.work.steps
      .filter((s) => has(done, s.index) && s.panel !== panel)
      .map((s) => id(s.panel) as string),
    machine: station.name,
  };
  const none = { held: null, panel: null, value: null, limit: null, by: null } as const;
  const own = problem.contact(operation, done);
  if (own !== null) return [{ ...base, ...none, code: 'part', panel: id(own.held), held: id(own.moving) }];
  return (['parent', 'child'] as const).flatMap((held): readonly Reason[] => {
    const mounting = station.mount(operation, held, done);
    const { obstacle } = mounting;
    if (obstacle === null) {
      if (problem.positions.place(null, { mounting, station, gauged: null }) !== null) return [];
      return held === 'parent' ? [{ ...base, ...none, code: 'tools' }] : [];
    }
    const parent = problem.work.tree.panels[panel]?.parent ?? -1;
    const { value = null, limit = null } = obstacle;
    return [
      {
        ...base,
        code: obstacle.code,
        // what hangs on the machine alone is the same whichever side is held
        held: obstacle.panel < 0 ? null : id(held === 'parent' ? parent : panel),
        panel: id(obstacle.panel),
        value,
        limit,
        by:
          value !== null && limit !== null
            ? Math.abs(value - limit)
            : intoTool(input, mounting, obstacle, { done, brake: brakeAt(input.shop, station.id) }),
      },
    ];
  });
}

/** Reasons that hang on the machine alone are one for all bends they hold for. */
function grouped(reasons: readonly Reason[]): readonly Reason[] {
  const groups = new Map<string, Reason[]>();
  for (const r of reasons) {
    const { code, machine, held, panel, value, limit, after } = r;
    const alone = panel === null;
    const key = alone
      ? `${machine} ${code} ${limit}`
      : JSON.stringify([r.bends, code, machine, held, panel, value, after]);
    groups.set(key, [...(groups.get(key) ?? []), r]);
  }
  return [...groups.values()].map((group): Reason => {
    const worst = group.reduce((a, b) => ((b.by ?? 0) > (a.by ?? 0) ? b : a));
    return { ...worst, bends: [...new Set(group.flatMap((r) => r.bends))] };
  });
}

const STEP = radians(1); // for the reader only; whether it goes is decided without steps

/** Deepest overlap of a panel with leaf, bed or beam during a stroke, margin included, mm; null for other tools. */
function intoTool(
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
