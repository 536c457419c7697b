import type { Finding, JobPlan, PartPlan } from '@tinwright/core';
import type { ShearPlan, SheetPlan } from '@tinwright/cutting';
import { torchMinutes } from '@tinwright/cutting/internal';
import type { Rates } from '@tinwright/shop';
import { type FastenerRow, fastenerRows } from './fastener-rows.js';

/** What a cut list says of a part beside its blank. */
export interface ListedPart {
  readonly part: string;
  /** mm² of the pattern, holes and notches taken off. */
  readonly area: number;
  /** kg of one */
  readonly mass: number;
  /** mm of cut round one piece and its holes, and how often a table pierces for it. */
  readonly cutLength: number;
  readonly pierces: number;
}

/** A part under the name it has among the blanks. */
export function listedPart({ flat, mass }: PartPlan, name: string): ListedPart {
  const { area, cutLength, holes } = flat;
  return { part: name, area, mass, cutLength, pierces: 1 + holes.length };
}

/** What is cut and joined, and how long its parts of the work take. */
export interface CutWork {
  readonly plans: readonly ShearPlan[];
  readonly parts: readonly ListedPart[];
  readonly fasteners: readonly FastenerRow[];
  readonly rates: Rates;
}

/** How a job is cut from the stock that is known, and what cannot be. */
export interface KnownCut {
  readonly work: CutWork;
  readonly findings: readonly Finding[];
}

/** The work of jobs whose blanks are cut by plans. @param sets of each job */
export function cutWork(
  jobs: readonly JobPlan[],
  { plans, parts }: Pick<CutWork, 'plans' | 'parts'>,
  rates: Rates,
  sets = 1,
): CutWork {
  return { plans, parts, fasteners: fastenerRows(jobs, sets), rates };
}

/** Sums over everything that is cut. Shares of the sheets' area, kg, mm, the shop's money, minutes. */
export interface CutTotals {
  readonly sheets: number;
  readonly blanks: number;
  /** Shares of the sheets: parts by their true area, offcuts that are kept, and what is lost. */
  readonly used: number;
  readonly kept: number;
  readonly waste: number;
  readonly mass: number;
  /** Of the sheets taken; null where one of them has no price. Offcuts without one were paid for before. */
  readonly price: number | null;
  readonly cutLength: number;
  readonly pierces: number;
  readonly fasteners: number;
  /** Estimates by the rates of the shop: at a shear, or on a table instead, and the fasteners. */
  readonly minutes: { readonly shear: number; readonly table: number; readonly joining: number };
}

/** What a cut list adds up to: sheets and price, mass in kg, minutes by the rates of the shop. */
export function cutTotals({ plans, parts, fasteners, rates }: CutWork): CutTotals {
  const sheets = plans.flatMap((p) => p.sheets);
  const known = new Map(parts.map((p) => [p.part, p]));
  const blanks = sheets.flatMap((s) => s.parts.flatMap((b) => known.get(b.part) ?? []));
  const sum = <T>(list: readonly T[], of: (t: T) => number) => list.reduce((t, v) => t + of(v), 0);
  const whole = sum(sheets, sheetArea);
  const share = (area: number) => (whole === 0 ? 0 : area / whole);
  const used = share(sum(blanks, (b) => b.area));
  const kept = share(sum(sheets, (s) => sum(s.offcuts, ({ w, h }) => w * h)));
  const cutLength = sum(blanks, (b) => b.cutLength);
  const pierces = sum(blanks, (b) => b.pierces);
  const joined = sum(fasteners, (f) => (f.stack === null ? 0 : f.count)); // bought parts are fitted by those
  const strokes = sum(plans, (p) => p.steps.length);
  const settings = sum(plans, (p) => p.settings);
  return {
    sheets: sheets.length,
    blanks: blanks.length,
    used,
    kept,
    waste: whole === 0 ? 0 : 1 - used - kept,
    mass: sum(blanks, (b) => b.mass),
    price: sheets.some(({ stock }) => stock.price === null && stock.origin === 'sheet')
      ? null
      : sum(sheets, (s) => s.stock.price ?? 0),
    cutLength,
    pierces,
    fasteners: joined,
    minutes: {
      shear: (strokes * rates.stroke + settings * rates.setting) / 60,
      table: torchMinutes(cutLength, pierces, rates),
      joining: (joined * rates.fastener) / 60,
    },
  };
}

export const sheetArea = ({ stock: { x, y } }: SheetPlan): number => x * y;
