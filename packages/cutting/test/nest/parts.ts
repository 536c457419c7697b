import type { Loop, Point } from '@tinwright/core';
import { circleLoop, corner } from '@tinwright/core/internal';
import { type NestPart, NO_TRIM, type Rack, type StockSheet } from '@tinwright/cutting';

export const loop = (...points: readonly Point[]): Loop => points.map(([x, y]) => corner(x, y));
export const rectangle = (x: number, y: number): Loop => loop([0, 0], [x, 0], [x, y], [0, y]);

export function part(name: string, outline: Loop, more: Partial<NestPart> = {}): NestPart {
  return {
    part: name,
    material: 'galvanised-steel',
    thickness: 1,
    outline,
    holes: [],
    quantity: 1,
    grain: null,
    ...more,
  };
}

export function sheet(name: string, x: number, y: number, more: Partial<StockSheet> = {}): StockSheet {
  return {
    name,
    origin: 'sheet',
    material: 'galvanised-steel',
    thickness: 1,
    x,
    y,
    outline: null,
    count: 1,
    price: null,
    grain: null,
    trim: NO_TRIM,
    ...more,
  };
}

export const rack = (...sheets: readonly StockSheet[]): Rack => ({
  sheets,
  kerf: 1.5,
  leastOffcut: { x: 100, y: 100 },
});

/** Parts of a garden bench: a bracket, a washer with a large hole, a gusset, a tag with round ends. */
export const PARTS: readonly NestPart[] = [
  part('bracket', loop([0, 0], [120, 0], [120, 30], [30, 30], [30, 90], [0, 90]), { quantity: 6 }),
  part('ring', circleLoop([60, 60], 60), { holes: [circleLoop([60, 60], 42)], quantity: 3 }),
  part('gusset', loop([0, 0], [80, 0], [0, 50]), { quantity: 8 }),
  part(
    'tag',
    [
      { at: [10, 0], bulge: 0 },
      { at: [50, 0], bulge: 1 },
      { at: [50, 20], bulge: 0 },
      { at: [10, 20], bulge: 1 },
    ],
    { quantity: 6 },
  ),
];
