import { exactSides, type SidesExact, same, sides } from './exact-sides.js';
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
  /** Settings in hundredths of a millimetre that make it; -1 where a line is marked. */
  readonly settings: readonly number[];
}

/** Cuts that can be made now, by the settings that make them; the latest first, so that a piece in hand is cut on. */
class Ready {
  count = 0;
  private readonly made = new Set<Cut>();
  private readonly bySetting = new Map<number, Cut[]>();
  /** How many cuts each setting makes now. */
  readonly now = new Map<number, number>();

  add(cut: Cut): void {
    this.count++;
    for (const value of cut.settings) {
      const own = this.bySetting.get(value) ?? [];
      own.push(cut);
      this.bySetting.set(value, own);
      this.now.set(value, (this.now.get(value) ?? 0) + 1);
    }
  }

  /** A cut that a setting makes, taken out; undefined when there is none. */
  take(setting: number): Cut | undefined {
    const own = this.bySetting.get(setting) ?? [];
    let cut = own.pop();
    while (cut !== undefined && this.made.has(cut)) cut = own.pop();
    if (cut === undefined) return undefined;
    this.count--;
    this.made.add(cut);
    for (const value of cut.settings) {
      const left = (this.now.get(value) ?? 1) - 1;
      if (left > 0) this.now.set(value, left);
      else this.now.delete(value);
    }
    return cut;
  }
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
  const exact = new Map<CutTree, SidesExact>();
  const cutOf = (sheet: number, tree: CutTree, area: Area, piece: PieceName): Cut => {
    const [low, high] = sides(tree, area, kerf);
    const settings = settingsOf({ tree, low, high }, exact.get(tree) as SidesExact, reach);
    return { sheet, tree, area, piece, low, high, settings };
  };
  const ready = new Ready();
  const waiting = new Map<number, number>();
  sheets.forEach((plan, sheet) => {
    const { stock, cuts } = plan;
    if (cuts === null) return;
    const whole = { x: 0, y: 0, w: stock.x, h: stock.y };
    exactSides(cuts, whole, plan, kerf, exact);
    countBelow(cuts, whole, { kerf, reach, exact }, waiting);
    ready.add(cutOf(sheet, cuts, whole, { kind: 'sheet', sheet }));
  });
  const steps: ShearStep[] = [];
  let [stop, settings] = [Number.NaN, 0];
  while (ready.count > 0) {
    const next = ready.take(stop);
    if (next === undefined) {
      stop = bestSetting(ready, waiting);
      settings++;
      continue;
    }
    for (const value of next.settings) waiting.set(value, (waiting.get(value) ?? 0) - 1);
    const low = named(next.low, next.tree.low, next.sheet);
    const high = named(next.high, next.tree.high, next.sheet);
    steps.push(stepOf(next, stop, [low, high]));
    if (next.tree.high !== null) ready.add(cutOf(next.sheet, next.tree.high, next.high, high));
    if (next.tree.low !== null) ready.add(cutOf(next.sheet, next.tree.low, next.low, low));
    if (stop < 0) stop = Number.NaN; // a marked line is a setting of its own
  }
  return { steps, settings };
}

/** A, B, …, Z, AA, AB, … */
function letter(n: number): string {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : `${letter(Math.floor(n / 26) - 1)}${last}`;
}

/**
 * Settings in hundredths of a millimetre that make a cut: one side against the stop, or the other; -1: marked. Where
 * only one side comes out at its final size, that side lies against the stop: the other takes up what the sheet's own
 * size is off.
 */
function settingsOf(
  { tree, low, high }: Pick<Cut, 'tree' | 'low' | 'high'>,
  exact: SidesExact,
  reach: number,
): readonly number[] {
  const size = (a: Area) => (tree.axis === 'x' ? a.w : a.h);
  const can = [low, high].map((a) => size(a) > SAME && size(a) <= reach + SAME);
  const wanted = [low, high].filter((_, i) => can[i] && exact[i] === true);
  const found = (wanted.length > 0 ? wanted : [low, high].filter((_, i) => can[i])).map(size);
  return found.length === 0 ? [-1] : [...new Set(found.map((s) => Math.round(s / SETTING)))];
}

interface Below {
  readonly kerf: number;
  readonly reach: number;
  readonly exact: ReadonlyMap<CutTree, SidesExact>;
}

function countBelow(tree: CutTree, area: Area, below: Below, counts: Map<number, number>): void {
  const [low, high] = sides(tree, area, below.kerf);
  for (const value of settingsOf({ tree, low, high }, below.exact.get(tree) as SidesExact, below.reach))
    counts.set(value, (counts.get(value) ?? 0) + 1);
  if (tree.low !== null) countBelow(tree.low, low, below, counts);
  if (tree.high !== null) countBelow(tree.high, high, below, counts);
}

/** The setting that leaves fewest equal cuts for later, of those the one that does most now, then the largest. */
function bestSetting({ now }: Ready, waiting: ReadonlyMap<number, number>): number {
  const later = (value: number, count: number) => (waiting.get(value) ?? 0) - count;
  let [best, most] = [Number.NaN, 0];
  for (const [value, count] of now) {
    const less = later(value, count) - later(best, most);
    if (most === 0 || less < 0 || (less === 0 && (count > most || (count === most && value > best))))
      [best, most] = [value, count];
  }
  return best;
}

function stepOf(cut: Cut, stop: number, [low, high]: readonly [PieceName, PieceName]): ShearStep {
  const { sheet, area, piece } = cut;
  const { axis, at } = cut.tree;
  const size = (a: Area) => (axis === 'x' ? a.w : a.h);
  const behind = Math.round(size(cut.low) / SETTING) === stop ? 'low' : 'high';
  const exact = size(behind === 'low' ? cut.low : cut.high);
  return { sheet, axis, at, piece, area, stop: stop < 0 ? null : exact, behind, low, high };
}
