import { brakeAt } from '../../machines/brakes.js';
import { subtree } from '../part/fold-tree.js';
import { has, type Mask, sameMask, union, without } from '../part/mask.js';
import { type LineStroke, openOperations, type Work } from '../part/operations.js';
import type { BendProblem } from '../search/states.js';
import { furthest } from '../search/sweeps.js';
import type { Mounting, Station } from '../stations/station.js';
import { intoTool, type ReasonInput } from './into-tool.js';
import type { Reason } from './plan.js';
import { othersDone, stepsWith } from './smallest-core.js';

/**
 * Why some bends cannot all be made: for each as the last of them, what it runs into on every machine of the shop with either side
 * held; where it could come before one that hangs on it, also what that one runs into after it. What hangs on the machine
 * alone is one reason for all bends it holds for.
 */
export function reasonsOf(input: ReasonInput, cores: readonly (readonly number[])[]): readonly Reason[] {
  const { problem } = input;
  const { tree } = problem.work;
  return grouped(
    cores.flatMap((core) => {
      const later = core.flatMap((panel) =>
        subtree(tree, panel).filter((p) => p !== panel && goesBefore(problem, core, panel, p)),
      );
      return [...new Set([...core, ...later])].flatMap((panel) => lastOf(input, core, panel));
    }),
  );
}

/** Strokes that bend a panel, alone or with others of its line. */
const strokesOf = ({ operations }: Work, panel: number): readonly LineStroke[] =>
  operations.filter((o) => o.action !== 'close' && o.panels.includes(panel));

/** True when a bend can be made on some machine before those of a panel that hangs on it, the others done. */
function goesBefore(problem: BendProblem, core: readonly number[], panel: number, hanging: number): boolean {
  const { work, stations, positions } = problem;
  const goes = (mounting: Mounting, station: Station) =>
    mounting.obstacle === null && positions.place(null, { mounting, station, gauged: null }) !== null;
  return strokesOf(work, panel).some((o) => {
    const done = without(othersDone(problem, core, o), stepsWith(work, [hanging]));
    return stations.some((s) => SIDES.some((held) => goes(s.mount(o, held, done), s)));
  });
}

function lastOf(input: ReasonInput, core: readonly number[], panel: number): readonly Reason[] {
  const { problem } = input;
  const { tree, operations } = problem.work;
  const strokes = strokesOf(problem.work, panel);
  const [first] = strokes;
  if (first === undefined) return [];
  const line = new Set(strokes.flatMap((o) => o.panels.map((p) => tree.panels[p]?.id)));
  return onMachines(problem, first, (asked) => {
    const ways = strokes.map((stroke) => {
      const done = othersDone(problem, core, stroke);
      const closing = operations.filter((o) => o.action === 'close' && sameMask(o.after, stroke.mask));
      const told = [stroke, ...closing].map((o) => {
        const before = o.action === 'close' ? union(done, o.after) : done;
        return nearest(asked.map((s) => sidesOf(input, o, s, before)));
      });
      return told.find((r) => r.length > 0) ?? [];
    });
    // what can be bent in the same stroke is in nobody's way
    const whole = ways.filter((way) => !way.some((r) => r.panel !== null && line.has(r.panel)));
    return nearest(whole.length > 0 ? whole : ways);
  });
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
  // where no number tells how far it is in the way, another tool that nearly goes is nearer
  const over = (way: readonly Reason[]) =>
    way.reduce((s, r) => s + (r.by ?? (r.code === 'tools' ? 0 : Infinity)), 0);
  const all = meant.length > 0 ? meant : ways;
  return all.reduce<readonly Reason[]>(
    (a, b) => (a.length === 0 || (b.length > 0 && over(b) < over(a)) ? b : a),
    [],
  );
}

const SIDES = ['parent', 'child'] as const;

/** True for a panel whose own bend is not made yet. */
const stillFlat = ({ steps }: Work, panel: number, done: Mask): boolean =>
  steps.some((s) => s.panel === panel && !has(done, s.index));

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
  const none = { held: null, panel: null, flat: false, value: null, limit: null, by: null } as const;
  const own = problem.contact(operation, done);
  if (own !== null) return [{ ...base, ...none, code: 'part', panel: id(own.held), held: id(own.moving) }];
  return SIDES.flatMap((held): readonly Reason[] => {
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
        flat: obstacle.panel !== panel && stillFlat(problem.work, obstacle.panel, done),
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
