import { frozen } from '@tinwright/core/internal';
import { type Blank, pieceId, sameMetal } from '../../stock/blank.js';
import { checkBlanks } from '../../stock/check-blanks.js';
import type { Rack, StockSheet } from '../../stock/sheet.js';
import { lowerBound } from '../bound/lower-bound.js';
import type { CoverSolver } from '../lp/cover.js';
import { byPatterns } from '../search/by-patterns.js';
import { worthKeeping } from '../search/offcut.js';
import { type Filled, type PackGoal, type Progress, pack } from '../search/pack.js';
import { type CutUp, cutUp } from './cut-up.js';
import type { ShearLimits } from './limits.js';
import { type Named, problemOf } from './problem-of.js';
import type { Missing, PlacedBlank, ShearPlan, SheetPlan } from './shear-plan.js';
import { stopOrder } from './stop-order.js';
import { tooLong } from './too-long.js';

/** How hard to look for a plan. */
export interface ShearEffort {
  readonly seed: number;
  /** Steps at most for fewer sheets, for a larger offcut, for less setting and cutting. */
  readonly steps: Readonly<Record<PackGoal, number>>;
  /** Asked every few steps where the search stands; true goes on to the next stage, what it throws ends the work. */
  readonly enough: (at: Progress) => boolean;
  /** Plans orders of many pieces by a linear programme too, with a library of the caller's choice. */
  readonly cover?: CoverSolver;
}

/** Steps that take about a second for a hundred blanks. */
export const SHEAR_EFFORT: ShearEffort = frozen({
  seed: 1,
  steps: { sheets: 150_000, offcut: 40_000, neat: 2_000 },
  enough: () => false,
});

/** Pieces looked at while less setting and cutting is sought. */
const LOOKS = 60_000;

/** A setting of the stop weighs as much as this many cuts. */
const SETTING = 1000;

/**
 * Shear plans for blanks from the sheets of a rack, one a metal and thickness, in the order of the blanks. Goals in
 * order: cheapest sheets, offcuts before sheets; the largest single offcut; fewest settings of the rear stop; fewest
 * cuts. The same seed and steps give the same plan.
 * @throws RangeError for a blank without a size, for a number of pieces that is none, for over 100,000 pieces
 */
export function planShear(
  blanks: readonly Blank[],
  rack: Rack,
  limits: ShearLimits,
  effort: ShearEffort = SHEAR_EFFORT,
): readonly ShearPlan[] {
  checkBlanks(blanks);
  const metals = blanks.filter((b, i) => blanks.findIndex((a) => sameMetal(a, b)) === i);
  return metals.map((metal) => {
    const sheets = rack.sheets.filter((s) => sameMetal(s, metal));
    const own = blanks.filter((b) => sameMetal(b, metal));
    return planMetal(own, { ...rack, sheets }, limits, effort);
  });
}

function planMetal(
  blanks: readonly Blank[],
  rack: Rack,
  limits: ShearLimits,
  effort: ShearEffort,
): ShearPlan {
  const found =
    rack.offcuts === 'first'
      ? offcutsFirst(blanks, rack, limits, effort)
      : laidOut(blanks, rack, limits, effort);
  const sheets = numbered(found.sheets);
  const [first] = blanks;
  return {
    material: first?.material ?? '',
    thickness: first?.thickness ?? 0,
    kerf: rack.kerf,
    ...found,
    sheets,
    ...stopOrder(sheets, rack.kerf, limits.stop),
  };
}

type LaidOut = Pick<ShearPlan, 'sheets' | 'missing' | 'cost' | 'bound' | 'searched'>;

/** As many blanks as go on the offcuts, the rest on sheets. The bound is that of the rest. */
function offcutsFirst(
  blanks: readonly Blank[],
  rack: Rack,
  limits: ShearLimits,
  effort: ShearEffort,
): LaidOut {
  const of = (origin: StockSheet['origin']) => ({
    ...rack,
    sheets: rack.sheets.filter((s) => s.origin === origin),
  });
  const old = laidOut(blanks, of('offcut'), limits, effort);
  const left = (part: string) => old.missing.find((m) => m.part === part)?.count ?? 0;
  const rest = blanks.map((b) => ({ ...b, quantity: left(b.part) })).filter((b) => b.quantity > 0);
  const fresh = laidOut(rest, of('sheet'), limits, effort);
  return {
    sheets: [...old.sheets, ...fresh.sheets],
    missing: fresh.missing,
    cost: old.cost + fresh.cost,
    bound: old.cost + fresh.bound,
    searched: old.searched + fresh.searched,
  };
}

function laidOut(blanks: readonly Blank[], rack: Rack, limits: ShearLimits, effort: ShearEffort): LaidOut {
  const named = problemOf(blanks, rack, limits);
  const bound = lowerBound(named.problem);
  const onSheets = (sheets: readonly Filled[]) =>
    ordered(sheets, named).map((filled) => sheetPlan(filled, named, rack, limits));
  const work = (sheets: readonly Filled[]) => {
    const { steps, settings } = stopOrder(onSheets(sheets), rack.kerf, limits.stop);
    return settings * SETTING + steps.length;
  };
  // each look at the work draws up the whole plan: on large orders it is had less often
  const looks = Math.floor(LOOKS / Math.max(1, named.pieces.length));
  const steps = { ...effort.steps, neat: Math.min(effort.steps.neat, looks) };
  const asked = { ...effort, steps, bound, least: rack.leastOffcut, work };
  const plain = pack(named.problem, asked);
  const found = byPatterns(named.problem, asked, plain, (sheets) =>
    tooLong(onSheets(sheets), rack.kerf, limits),
  );
  return {
    sheets: onSheets(found.sheets),
    missing: missing(found.left, named),
    cost: found.cost,
    bound,
    searched: found.steps,
  };
}

/** Pieces of a part counted as they lie, sheet after sheet: they are all alike. */
function numbered(sheets: readonly SheetPlan[]): readonly SheetPlan[] {
  const counts = new Map<string, number>();
  return sheets.map((sheet) => ({
    ...sheet,
    parts: sheet.parts.map((placed) => {
      const index = counts.get(placed.part) ?? 0;
      counts.set(placed.part, index + 1);
      return { ...placed, id: pieceId(placed.part, index) };
    }),
  }));
}

/** Sheets in the order of the rack, the fullest of a kind first. */
function ordered(sheets: readonly Filled[], { problem }: Named): readonly Filled[] {
  const used = ({ layout }: Filled): number =>
    'item' in layout
      ? areaOf(layout.item)
      : layout.children.reduce((sum, c) => sum + used({ bin: 0, layout: c }), 0);
  const areaOf = (i: number) => (problem.items[i]?.w ?? 0) * (problem.items[i]?.h ?? 0);
  return sheets.toSorted((a, b) => a.bin - b.bin || used(b) - used(a));
}

function sheetPlan(
  { bin, layout }: Filled,
  { pieces, stock }: Named,
  rack: Rack,
  limits: ShearLimits,
): SheetPlan {
  const sheet = stock[bin];
  if (sheet === undefined) throw new Error(`no sheet of kind ${bin}`);
  const whole = { x: 0, y: 0, w: sheet.x, h: sheet.y };
  const corner = [sheet.trim.west, sheet.trim.south] as const;
  const { cuts, items, left }: CutUp = cutUp(whole, corner, layout, {
    kerf: rack.kerf,
    longest: limits.length,
  });
  const parts = items.map(({ item, ...area }): PlacedBlank => {
    const piece = pieces[item];
    if (piece === undefined) throw new Error(`no piece ${item}`);
    const turned = Math.abs(piece.blank.x - area.w) + Math.abs(piece.blank.y - area.h) > 1e-3;
    return { id: piece.id, part: piece.blank.part, ...area, turned };
  });
  const offcuts = left
    .filter(({ w, h }) => worthKeeping(w, h, rack.leastOffcut))
    .toSorted((a, b) => b.w * b.h - a.w * a.h || a.x - b.x || a.y - b.y);
  return { stock: sheet, parts, cuts, offcuts };
}

function missing(left: readonly number[], { pieces }: Named): readonly Missing[] {
  const counts = new Map<string, number>();
  for (const i of left) {
    const part = pieces[i]?.blank.part ?? '';
    counts.set(part, (counts.get(part) ?? 0) + 1);
  }
  return [...counts].map(([part, count]) => ({ part, count }));
}
