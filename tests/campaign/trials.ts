// A job with what stands round it: the workshop, the table its files are for, the rack it is cut from, rows of sizes.
import type { TableStyle } from '@tinwright/files';
import fc from 'fast-check';
import { jobs, leanJobs } from './jobs.js';
import { pushed } from './pushed.js';

/** What is tried. Shop, rack and rows as files would hold them; null for none. */
export interface Trial {
  readonly job: unknown;
  readonly style: Partial<TableStyle>;
  readonly shop: unknown;
  readonly rack: unknown;
  readonly rows: readonly object[] | null;
}

const METAL = [{ material: 'mild-steel', thickness: 1.5 }];

const shop = fc.record(
  {
    units: fc.constant('mm'),
    brake: fc.record(
      {
        length: fc.constantFrom(1000, 3000),
        capacity: fc.constant(METAL),
        fingers: fc.constantFrom([10], [25, 50, 100, 250], [1000]),
        leaf: fc.constantFrom({ stop: 60 }, { width: 30 }),
        clearHeight: fc.constantFrom(10, 100),
      },
      { requiredKeys: ['length', 'capacity', 'fingers'] },
    ),
    cutBy: fc.constant('hand'),
    table: fc.constantFrom(
      { name: 'table', process: 'plasma', length: 1250, width: 1250, kerf: 1.3, smallestHole: 6 },
      { name: 'table', process: 'laser', length: 300, width: 300, kerf: 0.1, smallestHole: 0.5 },
    ),
    strips: fc.constantFrom(
      [
        {
          name: 'one',
          material: 'mild-steel',
          thickness: 1,
          insideRadius: 1,
          k: 0.4,
          kError: 0.02,
          springback: 1.5,
          springbackError: 0.2,
          strips: 5,
        },
      ],
      [],
    ),
    materials: fc.constant([{ name: 'roofing', like: 'galvanised-steel', density: 7900 }]),
    sheets: fc.constantFrom([[2000, 1000]], []),
  },
  { requiredKeys: ['units'] },
);

const rack = fc.record(
  {
    units: fc.constant('mm'),
    sheets: fc.constant(
      ['mild-steel', 'galvanised-steel'].flatMap((material) =>
        [0.7, 1, 1.5].map((thickness) => ({
          name: `${material} ${thickness}`,
          material,
          thickness,
          size: [2000, 1000],
        })),
      ),
    ),
    offcuts: fc.constant([
      {
        name: 'left',
        material: 'mild-steel',
        thickness: 1,
        outline: [
          [0, 0],
          [900, 0],
          [900, 300],
          [400, 300],
          [400, 700],
          [0, 700],
        ],
      },
    ]),
    kerf: fc.constantFrom(0, 1.3, 10),
    trim: fc.constantFrom<unknown>(0, 5, { west: 10, north: 3 }),
    leastOffcut: fc.constantFrom([100, 100], [5, 5]),
  },
  { requiredKeys: ['units', 'sheets'] },
);

const style: fc.Arbitrary<Partial<TableStyle>> = fc.record(
  {
    form: fc.constantFrom<TableStyle['form']>('r2000', 'r12'),
    unit: fc.constantFrom<TableStyle['unit']>('mm', 'in'),
    curves: fc.constantFrom<TableStyle['curves']>('polyline', 'arcs'),
    marks: fc.constantFrom<TableStyle['marks']>('cross', 'dash', 'point', 'circle', 'none'),
    text: fc.constantFrom<TableStyle['text']>('on', 'off'),
    note: fc.constantFrom<TableStyle['note']>('name', 'full'),
    names: fc.constantFrom<TableStyle['names']>('part', 'full'),
    leastHole: fc.constantFrom(0, 0, 4, 30),
    leastEdge: fc.constantFrom(0, 0, 0.5, 10),
  },
  { requiredKeys: [] },
);

const COLUMNS = [
  'part.length',
  'part.width',
  'part.height',
  'stock.thickness',
  'bending.insideRadius',
  'part.quantity',
];
const VALUES = ['', '0', '-1', '1', '37.25', '1 1/2 in', '10000', '1e999', '=1+1'];

/** Rows of a table of sizes. */
const rows = fc.uniqueArray(fc.constantFrom(...COLUMNS), { minLength: 1, maxLength: 3 }).chain((columns) =>
  fc
    .array(fc.tuple(...columns.map(() => fc.constantFrom(...VALUES))), { minLength: 1, maxLength: 3 })
    .map((list) =>
      list.map((values, i) => ({
        name: `r${i}`,
        ...Object.fromEntries(columns.map((c, k) => [c, values[k]])),
      })),
    ),
);

/** A shop in eight has a value pushed. A few, since each with metals of its own costs a reader. */
const shops = fc.sample(fc.oneof({ arbitrary: shop, weight: 7 }, { arbitrary: pushed(shop), weight: 1 }), {
  seed: 1,
  numRuns: 64,
});

const around = (job: fc.Arbitrary<unknown>): fc.Arbitrary<Trial> =>
  fc.record({
    job,
    style,
    shop: fc.option<unknown>(fc.constantFrom(...shops), { freq: 1 }),
    rack: fc.option<unknown>(
      fc.oneof({ arbitrary: rack, weight: 7 }, { arbitrary: pushed(rack), weight: 1 }),
      { freq: 1 },
    ),
    rows: fc.option(rows, { freq: 1 }),
  });

/** Everything there is. */
export const trials: fc.Arbitrary<Trial> = around(jobs);

/** The same, mostly of one part: made in a few milliseconds each. */
export const leanTrials: fc.Arbitrary<Trial> = around(leanJobs);
