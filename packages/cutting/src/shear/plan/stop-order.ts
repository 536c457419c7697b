import type { Area, CutTree, PieceName, ShearStep, SheetPlan } from './shear-plan.js';

/** Stops nearer than this are one setting, mm. */
const SETTING = 0.01;
const SAME = 1e-6;

interface Cut {
  readonly sheet: number;
  readonly tree: CutTree;
  readonly area: Area;
  readonly piece: PieceName;
  readonly low: Area;
  readonly high: Area;
}

/** All strokes of a plan in an order with few settings of the rear stop: what can be cut at one setting is cut. */
export function stopOrder(
  sheets: readonly SheetPlan[],
  kerf: number,
  reach: number,
): { readonly steps: readonly ShearStep[]; readonly settings: number } {
  const letters = sheets.map(() => 0);
  const named = (area: Area, tree: CutTree | null, sheet: number): PieceName => {
    const plan = sheets[sheet] as SheetPlan;
    if (tree !== null) {
      letters[sheet] = (letters[sheet] ?? 0) + 1;
      return { kind: 'strip', sheet, letter: letter((letters[sheet] ?? 1) - 1) };
    }
    const part = plan.parts.find((p) => same(p, area));
    if (part !== undefined) return { kind: 'blank', id: part.id };
    const number = plan.offcuts.findIndex((o) => same(o, area));
    return number < 0 ? { kind: 'scrap' } : { kind: 'offcut', sheet, number: number + 1 };
  };
  const cutOf = (sheet: number, tree: CutTree, area: Area, piece: PieceName): Cut => {
    const [low, high] = sides(tree, area, kerf);
    return { sheet, tree, area, piece, low, high };
  };
  let ready: Cut[] = sheets.flatMap(({ stock, cuts }, sheet) =>
    cuts === null
      ? []
      : [cutOf(sheet, cuts, { x: 0, y: 0, w: stock.x, h: stock.y }, { kind: 'sheet', sheet })],
  );
  const waiting = new Map<number, number>();
  for (const cut of ready) countBelow(cut.tree, cut.area, kerf, reach, waiting, 1);
  const steps: ShearStep[] = [];
  let [stop, settings] = [Number.NaN, 0];
  while (ready.length > 0) {
    const next = ready.find((c) => settingsOf(c, reach).includes(stop));
    if (next === undefined) {
      stop = bestSetting(ready, reach, waiting);
      settings++;
      continue;
    }
    for (const value of settingsOf(next, reach)) waiting.set(value, (waiting.get(value) ?? 0) - 1);
    const names = [
      named(next.low, next.tree.low, next.sheet),
      named(next.high, next.tree.high, next.sheet),
    ] as const;
    steps.push(stepOf(next, stop, names));
    const made = [
      next.tree.low && cutOf(next.sheet, next.tree.low, next.low, names[0]),
      next.tree.high && cutOf(next.sheet, next.tree.high, next.high, names[1]),
    ].filter((c) => c !== null);
    ready = [...made, ...ready.filter((c) => c !== next)];
    if (stop < 0) stop = Number.NaN; // a marked line is a setting of its own
  }
  return { steps, settings };
}

function same(a: Area, b: Area): boolean {
  return [a.x - b.x, a.y - b.y, a.w - b.w, a.h - b.h].every((d) => Math.abs(d) < SAME * 10);
}

/** A, B, …, Z, AA, AB, … */
function letter(n: number): string {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : `${letter(Math.floor(n / 26) - 1)}${last}`;
}

function sides({ axis, at }: CutTree, area: Area, kerf: number): readonly [Area, Area] {
  if (axis === 'x') {
    const from = Math.min(at + kerf, area.x + area.w);
    return [
      { ...area, w: at - area.x },
      { ...area, x: from, w: area.x + area.w - from },
    ];
  }
  const from = Math.min(at + kerf, area.y + area.h);
  return [
    { ...area, h: at - area.y },
    { ...area, y: from, h: area.y + area.h - from },
  ];
}

/** Settings in hundredths of a millimetre that make a cut: the lower side against the stop, or the upper; -1: marked. */
function settingsOf(cut: Pick<Cut, 'tree' | 'low' | 'high'>, reach: number): readonly number[] {
  const size = (a: Area) => (cut.tree.axis === 'x' ? a.w : a.h);
  const found = [size(cut.low), size(cut.high)].filter((s) => s > SAME && s <= reach + SAME);
  return found.length === 0 ? [-1] : [...new Set(found.map((s) => Math.round(s / SETTING)))];
}

function countBelow(
  tree: CutTree,
  area: Area,
  kerf: number,
  reach: number,
  counts: Map<number, number>,
  by: number,
): void {
  const [low, high] = sides(tree, area, kerf);
  for (const value of settingsOf({ tree, low, high }, reach))
    counts.set(value, (counts.get(value) ?? 0) + by);
  if (tree.low !== null) countBelow(tree.low, low, kerf, reach, counts, by);
  if (tree.high !== null) countBelow(tree.high, high, kerf, reach, counts, by);
}

/** The setting that leaves fewest equal cuts for later, of those the one that does most now, then the largest. */
function bestSetting(ready: readonly Cut[], reach: number, waiting: ReadonlyMap<number, number>): number {
  const now = new Map<number, number>();
  for (const cut of ready)
    for (const value of settingsOf(cut, reach)) now.set(value, (now.get(value) ?? 0) + 1);
  const [best] = [...now].toSorted(
    ([a, m], [b, n]) => (waiting.get(a) ?? 0) - m - ((waiting.get(b) ?? 0) - n) || n - m || b - a,
  );
  return (best as [number, number])[0];
}

function stepOf(cut: Cut, stop: number, [low, high]: readonly [PieceName, PieceName]): ShearStep {
  const { sheet, area, piece } = cut;
  const { axis, at } = cut.tree;
  const size = (a: Area) => (axis === 'x' ? a.w : a.h);
  const behind = Math.round(size(cut.low) / SETTING) === stop ? 'low' : 'high';
  const exact = size(behind === 'low' ? cut.low : cut.high);
  return { sheet, axis, at, piece, area, stop: stop < 0 ? null : exact, behind, low, high };
}
