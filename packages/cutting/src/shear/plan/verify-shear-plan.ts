import type { Blank } from '../../stock/blank.js';
import type { StockSheet } from '../../stock/sheet.js';
import type { ShearLimits } from './limits.js';
import type { Area, CutTree, ShearPlan, SheetPlan } from './shear-plan.js';

/** What is wrong with a shear plan. */
export interface ShearFlaw {
  readonly code:
    | 'cut-outside-piece'
    | 'cut-through-part'
    | 'cut-too-long'
    | 'part-not-cut-out'
    | 'part-size'
    | 'part-count'
    | 'part-on-trim'
    | 'part-against-grain'
    | 'sheet-count'
    | 'offcut-not-there'
    | 'steps-differ';
  /** Index of the sheet; -1 for the plan as a whole. */
  readonly sheet: number;
  /** Part, offcut or cut it is about. */
  readonly what: string;
}

/** Agreement asked of lengths, mm. */
const CLOSE = 1e-5;

/**
 * Replay a shear plan cut by cut and hold it against what was asked: every blank cut out exactly once, at its size,
 * in its grain, off the trim; no cut through a part or longer than the shear; offcuts as stated. Shares no code with
 * the search.
 */
export function verifyShearPlan(
  plan: ShearPlan,
  blanks: readonly Blank[],
  limits: ShearLimits,
): readonly ShearFlaw[] {
  return [
    ...plan.sheets.flatMap((sheet, i) => [
      ...replayed(sheet, i, plan.kerf, limits.length),
      ...placed(sheet, i, blanks),
    ]),
    ...counted(plan, blanks),
    ...stocked(plan),
    ...stroked(plan),
  ];
}

function replayed(plan: SheetPlan, sheet: number, kerf: number, longest: number): readonly ShearFlaw[] {
  const flaws: ShearFlaw[] = [];
  const pieces: Area[] = [];
  const walk = (tree: CutTree | null, piece: Area): void => {
    if (tree === null) {
      pieces.push(piece);
      return;
    }
    flaws.push(...cutFlaws(tree, piece, plan, kerf, longest).map((f) => ({ ...f, sheet })));
    const [low, high] = parted(piece, tree, kerf);
    walk(tree.low, low);
    walk(tree.high, high);
  };
  walk(plan.cuts, { x: 0, y: 0, w: plan.stock.x, h: plan.stock.y });
  for (const part of plan.parts)
    if (!pieces.some((piece) => equal(piece, part)))
      flaws.push({ code: 'part-not-cut-out', sheet, what: part.id });
  plan.offcuts.forEach((offcut, i) => {
    const found = pieces.some((piece) => equal(piece, offcut));
    if (!found || plan.parts.some((p) => overlaps(p, offcut)))
      flaws.push({ code: 'offcut-not-there', sheet, what: String(i + 1) });
  });
  return flaws;
}

function cutFlaws(
  { axis, at }: CutTree,
  piece: Area,
  { parts }: SheetPlan,
  kerf: number,
  longest: number,
): readonly Omit<ShearFlaw, 'sheet'>[] {
  const flaws: Omit<ShearFlaw, 'sheet'>[] = [];
  const what = `${axis} = ${at}`;
  const span = (a: Area) => (axis === 'x' ? [a.x, a.x + a.w] : [a.y, a.y + a.h]) as [number, number];
  const [from, to] = span(piece);
  if (at + kerf < from + CLOSE || at > to - CLOSE) flaws.push({ code: 'cut-outside-piece', what });
  if ((axis === 'x' ? piece.h : piece.w) > longest + CLOSE) flaws.push({ code: 'cut-too-long', what });
  for (const part of parts) {
    const [low, high] = span(part);
    const clear = high <= at + CLOSE || low >= at + kerf - CLOSE;
    if (!clear && overlaps(part, piece))
      flaws.push({ code: 'cut-through-part', what: `${part.id}, ${what}` });
  }
  return flaws;
}

function parted({ x, y, w, h }: Area, { axis, at }: CutTree, kerf: number): readonly [Area, Area] {
  if (axis === 'x') {
    const from = Math.min(at + kerf, x + w);
    return [
      { x, y, w: at - x, h },
      { x: from, y, w: x + w - from, h },
    ];
  }
  const from = Math.min(at + kerf, y + h);
  return [
    { x, y, w, h: at - y },
    { x, y: from, w, h: y + h - from },
  ];
}

function equal(a: Area, b: Area): boolean {
  return [a.x - b.x, a.y - b.y, a.w - b.w, a.h - b.h].every((d) => Math.abs(d) <= CLOSE);
}

function overlaps(a: Area, b: Area): boolean {
  const along = Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x);
  const up = Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y);
  return along > CLOSE && up > CLOSE;
}

function placed({ parts, stock }: SheetPlan, sheet: number, blanks: readonly Blank[]): readonly ShearFlaw[] {
  return parts.flatMap((part) => {
    const blank = blanks.find((b) => b.part === part.part);
    const flaws: ShearFlaw[] = [];
    const [w, h] = part.turned ? [part.h, part.w] : [part.w, part.h];
    if (blank === undefined || Math.abs(w - blank.x) > CLOSE || Math.abs(h - blank.y) > CLOSE)
      flaws.push({ code: 'part-size', sheet, what: part.id });
    if (blank !== undefined && againstGrain(blank, stock, part.turned))
      flaws.push({ code: 'part-against-grain', sheet, what: part.id });
    const { west, east, south, north } = stock.trim;
    const off =
      part.x < west - CLOSE ||
      part.y < south - CLOSE ||
      part.x + part.w > stock.x - east + CLOSE ||
      part.y + part.h > stock.y - north + CLOSE;
    if (off) flaws.push({ code: 'part-on-trim', sheet, what: part.id });
    return flaws;
  });
}

function againstGrain(blank: Blank, { grain }: StockSheet, turned: boolean): boolean {
  if (blank.grain === null || grain === null) return false;
  return (blank.grain === grain) === turned;
}

function counted(plan: ShearPlan, blanks: readonly Blank[]): readonly ShearFlaw[] {
  const ids = plan.sheets.flatMap((s) => s.parts.map((p) => p.id));
  const twice = ids.toSorted().filter((id, i, sorted) => id === sorted[i - 1]);
  const wrong = blanks.filter(({ part, quantity }) => {
    const cut = plan.sheets.reduce((sum, s) => sum + s.parts.filter((p) => p.part === part).length, 0);
    const short = plan.missing.find((m) => m.part === part)?.count ?? 0;
    return cut + short !== quantity;
  });
  return [...twice, ...wrong.map((b) => b.part)].map((what) => ({ code: 'part-count', sheet: -1, what }));
}

function stocked(plan: ShearPlan): readonly ShearFlaw[] {
  const kinds = new Set(plan.sheets.map((s) => s.stock));
  return [...kinds]
    .filter((stock) => plan.sheets.filter((s) => s.stock === stock).length > stock.count)
    .map((stock) => ({ code: 'sheet-count', sheet: -1, what: stock.name }));
}

/** Every cut of the trees is made once, each piece before it is cut itself. */
function stroked(plan: ShearPlan): readonly ShearFlaw[] {
  const waiting = plan.sheets.map(({ stock, cuts }) =>
    cuts === null ? [] : [{ tree: cuts, area: { x: 0, y: 0, w: stock.x, h: stock.y } }],
  );
  const flaws: ShearFlaw[] = [];
  for (const step of plan.steps) {
    const open = waiting[step.sheet] ?? [];
    const i = open.findIndex(
      ({ area, tree }) => equal(area, step.area) && tree.at === step.at && tree.axis === step.axis,
    );
    const next = open[i];
    if (next === undefined) {
      flaws.push({ code: 'steps-differ', sheet: step.sheet, what: `${step.axis} = ${step.at}` });
      continue;
    }
    open.splice(i, 1);
    const [low, high] = parted(next.area, next.tree, plan.kerf);
    if (next.tree.low !== null) open.push({ tree: next.tree.low, area: low });
    if (next.tree.high !== null) open.push({ tree: next.tree.high, area: high });
  }
  const left = waiting.flatMap((open, sheet) => open.map(({ tree }) => ({ sheet, tree })));
  return [
    ...flaws,
    ...left.map(({ sheet, tree }) => ({
      code: 'steps-differ' as const,
      sheet,
      what: `${tree.axis} = ${tree.at}`,
    })),
  ];
}
