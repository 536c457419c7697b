import type { Point } from '@tinwright/core';
import { loopArea } from '@tinwright/core/internal';
import type { LeftWhy } from '../findings/cutting-findings.js';
import { turned } from '../no-fit/ring.js';
import { pieceId } from '../stock/blank.js';
import type { StockSheet } from '../stock/sheet.js';
import type { NestAsk, NestPart } from './ask.js';
import { boxOfRing, type Kit, type NestItem, type NestShape } from './kit.js';
import type { MetalNest } from './prepare.js';
import type { BedKind, FilledBed, NestLayout } from './problem.js';
import { usedTo } from './rank.js';
import { benchOf } from './search-nest.js';

/** A piece on a sheet; x' = a·x + c·y + e, y' = b·x + d·y + f brings the flat's coordinates onto the sheet. */
export interface NestPiece {
  readonly id: string;
  readonly part: string;
  readonly matrix: readonly [a: number, b: number, c: number, d: number, e: number, f: number];
}

/** A sheet with what is cut from it. mm, origin at the lower left corner. */
export interface NestedSheet {
  /** Of its own; sheets of one kind are counted. */
  readonly name: string;
  readonly stock: StockSheet;
  readonly pieces: readonly NestPiece[];
  /** Area of the parts over that of the sheet, 0 to 1. */
  readonly density: number;
  /** How far east the parts reach, mm. */
  readonly usedTo: number;
}

/** Pieces that found no room. */
export interface NestMissing {
  readonly part: string;
  readonly count: number;
  readonly why: LeftWhy;
}

/** A finished nest. */
export interface Nest {
  readonly sheets: readonly NestedSheet[];
  readonly spacing: number;
  readonly edge: number;
  readonly kerf: number;
  /** Shortest stretch that two pieces may lie a kerf apart along, whatever the spacing, to be cut at once, mm. */
  readonly commonCuts?: number;
  readonly missing: readonly NestMissing[];
}

/** The layouts found for `metals`, one each and in their order, as a nest. */
export function nestFrom(ask: NestAsk, metals: readonly MetalNest[], layouts: readonly NestLayout[]): Nest {
  const counts = new Map<string, number>();
  const next = (key: string) => {
    const n = counts.get(key) ?? 0;
    counts.set(key, n + 1);
    return n;
  };
  const sheets = metals.flatMap((metal, m) => {
    const { kit } = benchOf(metal.problem);
    return (layouts[m] as NestLayout).beds.map((bed) => sheetOf(metal, kit, bed, ask.spacing / 2, next));
  });
  const missing = metals.flatMap((metal, m) =>
    (layouts[m] as NestLayout).left.flatMap((count, item) =>
      count === 0 ? [] : [{ part: (metal.parts[item] as NestPart).part, count, why: whyLeft(metal, item) }],
    ),
  );
  return { sheets, spacing: ask.spacing, edge: ask.edge, kerf: ask.rack.kerf, missing };
}

function sheetOf(
  metal: MetalNest,
  kit: Kit,
  bed: FilledBed,
  grow: number,
  next: (key: string) => number,
): NestedSheet {
  const stock = metal.sheets[bed.kind] as StockSheet;
  const [ox, oy] = metal.origins[bed.kind] as Point;
  const nth = next(` ${stock.name}`);
  const pieces = bed.laid.map(({ item, shape, x, y }): NestPiece => {
    const { part } = metal.parts[item] as NestPart;
    const { cos, sin } = kit.shapes[shape] as NestShape;
    const [sx, sy] = kit.shifts[shape] as Point;
    return {
      id: pieceId(part, next(part)),
      part,
      matrix: [cos, sin, -sin + 0, cos, x + sx + ox, y + sy + oy],
    };
  });
  const area = bed.laid.reduce((sum, l) => sum + netArea(metal.parts[l.item] as NestPart), 0);
  return {
    name: stock.count === 1 ? stock.name : `${stock.name}-${nth + 1}`,
    stock,
    pieces,
    density: area / sheetArea(stock),
    usedTo: usedTo(kit, bed) + ox - grow,
  };
}

const netArea = ({ outline, holes }: NestPart) =>
  loopArea(outline) - holes.reduce((s, h) => s + Math.abs(loopArea(h)), 0);

const sheetArea = ({ x, y, outline }: StockSheet) =>
  outline === null ? x * y : loopArea(outline.map((at) => ({ at, bulge: 0 })));

function whyLeft({ problem, sheets }: MetalNest, item: number): NestMissing['why'] {
  if (sheets.length === 0) return 'no-metal';
  const { region, turns } = problem.items[item] as NestItem;
  const fits = (k: BedKind, ways: readonly number[]) =>
    ways.some((turn) => {
      const [x0, y0, x1, y1] = boxOfRing(turned(region.outer, turn));
      return x1 - x0 <= k.x && y1 - y0 <= k.y;
    });
  if (!problem.kinds.some((k) => fits(k, turns))) return 'too-large';
  return problem.kinds.some((k) => fits(k, k.turns[item] as readonly number[])) ? 'stock-short' : 'grain';
}
