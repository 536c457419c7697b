import {
  type Blank,
  type Grain,
  NO_LIMITS,
  NO_TRIM,
  type Rack,
  type ShearLimits,
  type StockSheet,
} from '@tinwright/cutting';
import fc from 'fast-check';

export const METAL = { material: 'galvanised-steel', thickness: 1 } as const;

/** A full sheet of 2 by 1 m, as many as needed. */
export const FULL: StockSheet = {
  ...METAL,
  name: 'full',
  origin: 'sheet',
  x: 2000,
  y: 1000,
  outline: null,
  count: Number.POSITIVE_INFINITY,
  price: null,
  grain: null,
  trim: NO_TRIM,
};

export const OFFCUT: StockSheet = {
  ...FULL,
  name: 'end of a sheet',
  origin: 'offcut',
  x: 700,
  y: 450,
  count: 1,
};

export const RACK: Rack = { sheets: [FULL], kerf: 0, leastOffcut: { x: 100, y: 100 } };

export const blank = (part: string, x: number, y: number, quantity: number, grain: Grain = null): Blank => ({
  ...METAL,
  part,
  x,
  y,
  quantity,
  grain,
});

export interface Order {
  readonly blanks: readonly Blank[];
  readonly rack: Rack;
  readonly limits: ShearLimits;
}

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const grain = fc.constantFrom<Grain>(null, 'x', 'y');
const trim = fc.oneof(
  fc.constant(NO_TRIM),
  fc.record({ west: tenths(0, 12), east: tenths(0, 12), south: tenths(0, 12), north: tenths(0, 12) }),
);

/** Blanks, sheets with trim, grain and number, kerf, limits of a shear. */
export const orders: fc.Arbitrary<Order> = fc.record({
  blanks: fc
    .array(
      fc.record({ x: tenths(30, 600), y: tenths(30, 420), quantity: fc.integer({ min: 1, max: 8 }), grain }),
      {
        minLength: 1,
        maxLength: 6,
      },
    )
    .map((list) => list.map(({ x, y, quantity, grain: g }, i) => blank(`bin-${i}`, x, y, quantity, g))),
  rack: fc.record({
    sheets: fc
      .record({ trim, grain, count: fc.constantFrom(1, 2, Number.POSITIVE_INFINITY) })
      .map((own) => [{ ...FULL, ...own }, OFFCUT]),
    kerf: fc.constantFrom(0, 0.2, 1.5),
    leastOffcut: fc.constant({ x: 100, y: 100 }),
  }),
  limits: fc.constantFrom(
    NO_LIMITS,
    { length: 1050, stop: 600 },
    { length: 1050, stop: Number.POSITIVE_INFINITY },
    { length: 800, stop: 600 },
  ),
});
