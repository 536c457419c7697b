import type { Point } from '@tinwright/core';
import { grown, simplified } from '../no-fit/grow.js';
import { type NoFitRing, type Region, ringArea } from '../no-fit/ring.js';
import { polygonAround, reversed } from '../outline/around.js';
import { pocketsOf } from '../outline/pockets.js';
import { sameMetal } from '../stock/blank.js';
import type { StockSheet } from '../stock/sheet.js';
import type { NestAsk, NestPart } from './ask.js';
import type { BedKind, NestProblem } from './problem.js';

/** How far polygons may stray outside arcs, and corners be cut off outwards, mm. */
const STRAY = 0.05;

/** More than the kernel takes for touching, and rounding, mm. */
const SAFETY = 0.003;

/** A problem of one metal, and what its items and kinds stand for. */
export interface MetalNest {
  readonly problem: NestProblem;
  readonly parts: readonly NestPart[];
  readonly sheets: readonly StockSheet[];
  /** Where the kernel's origin lies on each sheet. */
  readonly origins: readonly Point[];
}

/** One problem for each metal among the parts, in the order they come. */
export function metalsOf(ask: NestAsk): readonly MetalNest[] {
  const parts = ask.parts.filter((p) => p.quantity > 0);
  const firsts = parts.filter((p, i) => parts.findIndex((q) => sameMetal(p, q)) === i);
  return firsts.map((first) =>
    metalNest(
      ask,
      parts.filter((p) => sameMetal(p, first)),
    ),
  );
}

function metalNest(ask: NestAsk, parts: readonly NestPart[]): MetalNest {
  const sheets = ask.rack.sheets.filter((s) => sameMetal(s, parts[0] as NestPart) && s.count > 0);
  const grow = ask.spacing / 2 + SAFETY;
  const items = parts.map((p) => ({ region: grownPart(p, grow), turns: ask.turns }));
  const origins = sheets.map((s): Point => [s.trim.west + ask.edge - grow, s.trim.south + ask.edge - grow]);
  const kinds = sheets.map((s, k) => kindOf(ask, s, parts, origins[k] as Point, grow));
  return { problem: { items, quantities: parts.map((p) => p.quantity), kinds }, parts, sheets, origins };
}

function grownPart({ outline, holes }: NestPart, by: number): Region {
  const { outer, holes: inside } = grown(
    {
      outer: polygonAround(outline, STRAY),
      holes: holes.map((h) => polygonAround(reversed(h), STRAY)),
    },
    by,
  );
  return { outer: simplified(outer, STRAY), holes: inside.map((h) => simplified(h, STRAY)) };
}

function kindOf(
  ask: NestAsk,
  sheet: StockSheet,
  parts: readonly NestPart[],
  origin: Point,
  grow: number,
): BedKind {
  const { trim } = sheet;
  const x = sheet.x - trim.east - ask.edge + grow - origin[0];
  const y = sheet.y - trim.north - ask.edge + grow - origin[1];
  const away = (ring: NoFitRing): NoFitRing =>
    ring.map(([px, py]): Point => [px - origin[0], py - origin[1]]);
  const pockets = sheet.outline === null ? [] : pocketsOf(sheet.outline);
  const further = ask.edge - grow;
  const lacks = pockets
    .map((ring): Region => ({ outer: away(ring), holes: [] }))
    .map((region) => (further > 0 ? grown(region, further) : region));
  return {
    x,
    y,
    lacks,
    area: x * y - pockets.reduce((sum, p) => sum + ringArea(p), 0),
    count: sheet.count,
    origin: ask.rack.offcuts === 'at-cost' ? 'sheet' : sheet.origin,
    cost: sheet.price ?? sheet.x * sheet.y,
    turns: parts.map((p) => turnsOn(ask.turns, p, sheet)),
  };
}

/** Where both grains are known, only turns that lay one along the other. */
function turnsOn(turns: readonly number[], part: NestPart, sheet: StockSheet): readonly number[] {
  if (part.grain === null || sheet.grain === null) return turns;
  const crossed = part.grain === sheet.grain ? 0 : 90;
  return turns.filter((t) => (t - crossed) % 180 === 0);
}
