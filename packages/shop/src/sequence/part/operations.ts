import { place3 } from '@tinwright/core/internal';
import { bendsBetween, type FoldTree, poseFrom, type TreeBend, type TreePanel } from './fold-tree.js';
import { both, isEmpty, type Mask, MOST_STEPS, maskOf } from './mask.js';

/** What is done to a bend: bent, folded past (hem), closed (hem), rolled, round a wire or not. */
export type Action = 'bend' | 'fold' | 'close' | 'roll';

/** One bend one stage further. Steps are numbered; a state of the part is a set of them. */
export interface BendStage {
  readonly index: number;
  /** The panel that turns. */
  readonly panel: number;
  readonly action: Action;
}

/** One stroke: steps on one line that are done together. */
export interface LineStroke {
  readonly index: number;
  readonly action: Action;
  readonly steps: readonly number[];
  /** Panels that turn, in the order of the steps. */
  readonly panels: readonly number[];
  readonly mask: Mask;
  /** Steps that have to be done before. */
  readonly after: Mask;
  /** Steps that would part the line: none of them may be done yet. */
  readonly before: Mask;
  /** Bent through, degrees, signed. */
  readonly angle: number;
  /** Of the bent material, mm. */
  readonly length: number;
}

/** Steps and operations of a part, and which step shows the stage of which panel's bend. */
export interface Work {
  readonly tree: FoldTree;
  readonly steps: readonly BendStage[];
  readonly operations: readonly LineStroke[];
  /** Steps that are done in the end. */
  readonly all: Mask;
  /** True where few states are looked at: none is tried beforehand. */
  readonly quick: boolean;
  /** By panel: its last step, and its first where it has two; -1 for none. */
  readonly last: readonly number[];
  readonly first: readonly number[];
}

/** Everything that has to be done to a part. @throws RangeError for more than 60 steps */
export function workOf(tree: FoldTree): Work {
  const steps = tree.panels.flatMap((p, i) => actionsOf(p).map((action) => ({ panel: i, action })));
  if (steps.length > MOST_STEPS)
    throw new RangeError(`${steps.length} steps given, up to ${MOST_STEPS} allowed`);
  const numbered = steps.map((s, index): BendStage => ({ ...s, index }));
  const of = (panel: number) => numbered.filter((s) => s.panel === panel);
  const groups = linesOf(tree, numbered);
  const operations = groups.map((g, index) => operation(tree, numbered, g, index));
  return {
    tree,
    steps: numbered,
    operations,
    all: maskOf(numbered.map((s) => s.index)),
    quick: false,
    last: tree.panels.map((_, i) => of(i).at(-1)?.index ?? -1),
    first: tree.panels.map((_, i) => of(i)[0]?.index ?? -1),
  };
}

function actionsOf({ bend }: TreePanel): readonly Action[] {
  if (bend === null) return [];
  if (bend.hem === 'wired' || bend.hem === 'curl') return ['roll'];
  return bend.hem === null ? ['bend'] : ['fold', 'close'];
}

/** All that lie on one line on the flat together, then steps by themselves. */
function linesOf(tree: FoldTree, steps: readonly BendStage[]): readonly (readonly BendStage[])[] {
  const singles = steps.map((s) => [s]);
  const lines = new Map<string, BendStage[]>();
  for (const s of steps) {
    if (s.action === 'roll') continue;
    const key = lineKey(tree, s);
    lines.set(key, [...(lines.get(key) ?? []), s]);
  }
  return [...[...lines.values()].filter((l) => l.length > 1), ...singles];
}

/** The same for steps that one stroke can do: line on the flat, side, angle, radius, stage. */
function lineKey(tree: FoldTree, { panel, action }: BendStage): string {
  const { bend, parent } = tree.panels[panel] as TreePanel & { bend: TreeBend };
  const pose = poseFrom(tree, 0, parent, () => 'flat');
  const { origin, y } = bend.hinge.frame;
  const at = place3(pose, [origin[0], origin[1], 0]);
  const out = place3({ ...pose, origin: [0, 0, 0] }, [y[0], y[1], 0]);
  const distance = at[0] * out[0] + at[1] * out[1];
  const text = (v: number) => (Math.round(v * 1e4) / 1e4 + 0).toFixed(4);
  return [out[0], out[1], distance, bend.angle, bend.insideRadius, bend.setback, bend.allowance]
    .map(text)
    .concat(action)
    .join(' ');
}

function operation(
  tree: FoldTree,
  all: readonly BendStage[],
  group: readonly BendStage[],
  index: number,
): LineStroke {
  const [first] = group as [BendStage];
  const panels = group.map((s) => s.panel);
  const steps = group.map((s) => s.index);
  const parents = panels.map((p) => (tree.panels[p] as TreePanel).parent);
  const parting = parents.flatMap((p) => bendsBetween(tree, parents[0] as number, p));
  return {
    index,
    action: first.action,
    steps,
    panels,
    mask: maskOf(steps),
    after: maskOf(
      first.action === 'close'
        ? all.filter((s) => panels.includes(s.panel) && s.action === 'fold').map((s) => s.index)
        : [],
    ),
    before: maskOf(all.filter((s) => parting.includes(s.panel)).map((s) => s.index)),
    angle: (tree.panels[first.panel] as TreePanel & { bend: TreeBend }).bend.angle,
    length: panels.reduce((sum, p) => {
      const { ends } = (tree.panels[p] as TreePanel & { bend: TreeBend }).bend;
      return sum + ends[1] - ends[0];
    }, 0),
  };
}

/** Operations that can be next. A hem that is folded is closed before anything else is done: it would only be in the way. */
export function openOperations({ operations }: Work, done: Mask): readonly LineStroke[] {
  const open = operations.filter((o) => isOpen(o, done));
  const closing = open.filter((o) => o.action === 'close');
  return closing.length > 0 ? closing : open;
}

/** True for one of them. */
export const isNext = (work: Work, operation: LineStroke, done: Mask): boolean =>
  isOpen(operation, done) &&
  (operation.action === 'close' || !work.operations.some((o) => o.action === 'close' && isOpen(o, done)));

/** True when an operation can be next: not begun, what it waits for done, its line still in one. */
export function isOpen({ mask, after, before }: LineStroke, done: Mask): boolean {
  return (
    isEmpty(both(mask, done)) &&
    (after.low & ~done.low) === 0 &&
    (after.high & ~done.high) === 0 &&
    isEmpty(both(before, done))
  );
}
