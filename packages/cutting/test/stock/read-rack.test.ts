import { JobError } from '@tinwright/core';
import { NO_TRIM, readRack } from '@tinwright/cutting';
import { leftOutFinding, stockProblems } from '@tinwright/cutting/internal';
import { expect, test } from 'vitest';

const FULL = { name: 'full', material: 'galvanised-steel', thickness: 1, size: [2000, 1000] };
const rack = (more: object) => readRack({ units: 'mm', sheets: [FULL], ...more });

function codes(work: () => unknown): readonly string[] {
  try {
    work();
  } catch (error) {
    if (error instanceof JobError) return error.problems.map((p) => p.code);
    throw error;
  }
  return [];
}

test('a sheet without count, trim and price: as many as needed, nothing trimmed, no price', () => {
  expect(rack({})).toEqual({
    kerf: 0,
    leastOffcut: { x: 100, y: 100 },
    sheets: [
      {
        name: 'full',
        origin: 'sheet',
        material: 'galvanised-steel',
        thickness: 1,
        x: 2000,
        y: 1000,
        outline: null,
        count: Number.POSITIVE_INFINITY,
        price: null,
        grain: null,
        trim: NO_TRIM,
      },
    ],
  });
});

test('a gauge stands for its thickness, in the system of the metal or in one that is named', () => {
  const { thickness: _, ...row } = FULL;
  const thick = (gauge: unknown, material = 'galvanised-steel') =>
    readRack({ units: 'mm', sheets: [{ ...row, material, gauge }] }).sheets[0]?.thickness;
  // galvanised sheet gauge 20: 0.0396 in, coating included; Brown & Sharpe 20: 0.0320 in as printed
  expect(thick(20)).toBeCloseTo(0.0396 * 25.4, 9);
  expect(thick({ system: 'aluminium', number: 20 }, 'mild-steel')).toBeCloseTo(0.032 * 25.4, 9);
});

test('a thickness and a gauge, neither, or a gauge without a system are refused with their row', () => {
  const { thickness: _, ...row } = FULL;
  const said = (sheet: object) => {
    try {
      readRack({ units: 'mm', sheets: [sheet] });
    } catch (error) {
      if (error instanceof JobError) return error.problems.map((p) => `${p.path.join('.')}: ${p.message}`);
    }
    return [];
  };
  expect(said({ ...FULL, gauge: 20 })).toEqual(['sheets.0: thickness and gauge given: give one of the two']);
  expect(said(row)).toEqual(['sheets.0: no thickness: give thickness, or gauge']);
  expect(said({ ...row, gauge: 99 })[0]).toMatch(/^sheets\.0\.gauge: gauge 99 given/);
});

test('offcuts come first, whatever the trim of full sheets', () => {
  const { sheets } = rack({ trim: 5, offcuts: [{ ...FULL, name: 'rest', size: [700, 450] }] });
  expect(sheets.map((s) => [s.name, s.origin, s.count, s.trim.north])).toEqual([
    ['rest', 'offcut', 1, 0],
    ['full', 'sheet', Number.POSITIVE_INFINITY, 5],
  ]);
});

test('inches are read as inches, an outline starts at its lower left corner and runs anticlockwise', () => {
  const { sheets } = readRack({
    units: 'in',
    offcuts: [
      {
        name: 'corner',
        material: 'mild-steel',
        thickness: '1 mm',
        outline: [
          [1, 1],
          [1, 11],
          [21, 1],
        ],
      },
    ],
  });
  expect(sheets[0]?.x).toBeCloseTo(508, 9);
  expect(sheets[0]?.outline?.map((p) => p.map((v) => Math.round(v / 25.4)))).toEqual([
    [20, 0],
    [0, 10],
    [0, 0],
  ]);
});

test.each<[what: string, more: object, code: string]>([
  ['a negative trim', { trim: -1 }, 'value-range'],
  ['a trim that leaves nothing', { trim: { south: 600, north: 400 } }, 'trim-whole'],
  ['a negative count', { sheets: [{ ...FULL, count: -1 }] }, 'value-range'],
  ['an unknown key', { shets: [] }, 'key-unknown'],
  ['two of a name', { sheets: [FULL, FULL] }, 'name-twice'],
  ['an offcut without a shape', { offcuts: [{ ...FULL, name: 'rest', size: undefined }] }, 'offcut-shape'],
  [
    'an offcut that crosses itself',
    {
      offcuts: [
        {
          ...FULL,
          name: 'bow',
          size: undefined,
          outline: [
            [0, 0],
            [400, 300],
            [400, 0],
            [0, 300],
          ],
        },
      ],
    },
    'offcut-crosses',
  ],
])('%s is refused', (_, more, code) => {
  expect(codes(() => rack(more))).toEqual([code]);
});

const blank = (x: number, y: number, grain: 'x' | 'y' | null = null) => ({
  part: 'tray',
  material: 'galvanised-steel',
  thickness: 1,
  x,
  y,
  quantity: 1,
  grain,
});

test.each<[what: string, asked: ReturnType<typeof blank>, longest: number, code: string, said: string]>([
  [
    'a blank larger than every sheet',
    blank(2100, 500),
    Number.POSITIVE_INFINITY,
    'blank-large',
    'nearest: full',
  ],
  [
    'a metal that is not there',
    { ...blank(100, 100), thickness: 2 },
    3000,
    'stock-missing',
    'the rack has none',
  ],
  ['a blank longer than the shear cuts', blank(1500, 500), 1050, 'blank-long', '1050 mm'],
  [
    'a sheet that no cut goes across',
    blank(300, 200),
    900,
    'sheet-long',
    "longer both ways than the shear's 900 mm",
  ],
  ['a blank and a sheet too long for the shear', blank(1500, 500), 900, 'sheet-long', 'the sheet full'],
  [
    'a blank that fits against its grain only',
    blank(1500, 500, 'y'),
    3000,
    'grain-impossible',
    'grain along y',
  ],
])('%s is named', (_, asked, longest, code, said) => {
  const stock = rack({ sheets: [{ ...FULL, grain: 'x' }] });
  const [problem, ...others] = stockProblems([asked], stock, { length: longest, thickest: () => 1.5 }, 'mm');
  expect(others).toEqual([]);
  expect(problem?.code).toBe(code);
  expect(problem?.message).toContain(said);
});

test.each([
  [
    'a corner that lies on another edge',
    [
      [0, 0],
      [500, 0],
      [500, 300],
      [250, 0],
      [0, 300],
    ],
    'offcut-crosses',
  ],
  [
    'an edge that runs back along another',
    [
      [0, 0],
      [500, 0],
      [500, 300],
      [500, 100],
    ],
    'offcut-crosses',
  ],
  [
    'an outline as thin as a line',
    [
      [0, 0],
      [50, 0],
      [50, 0.01],
    ],
    'offcut-flat',
  ],
])('an offcut with %s is refused', (_, outline, code) => {
  expect(
    codes(() => rack({ offcuts: [{ name: 'rest', material: 'mild-steel', thickness: 1, outline }] })),
  ).toEqual([code]);
});

test('what is larger than every sheet, or has none left, is told by the sheet that lacks least, either way round', () => {
  const sheets = [
    { ...FULL, name: 'long', size: [3000, 400] },
    { ...FULL, name: 'wide', size: [900, 2000] },
  ];
  const stock = rack({ sheets });
  const reach = { length: 3000, thickest: () => 2 };
  const [problem] = stockProblems([blank(2100, 850)], stock, reach, 'mm');
  expect(problem?.message).toContain('wide');
  const piece = {
    part: 'lid',
    material: 'galvanised-steel',
    thickness: 1,
    count: 2,
    why: 'too-large' as const,
  };
  const left = leftOutFinding({ ...piece, x: 2100, y: 850, area: 2100 * 850, mass: 1 }, stock.sheets);
  expect(left.values).toMatchObject({ of: { name: 'wide' } });
});

test('a blank that fits is no problem', () => {
  expect(stockProblems([blank(1900, 900)], rack({}), { length: 3000, thickest: () => 1 }, 'mm')).toEqual([]);
});

test('a metal too thick for the shear is named with what the shear takes', () => {
  const [problem] = stockProblems([blank(100, 100)], rack({}), { length: 3000, thickest: () => 0.8 }, 'mm');
  expect(problem?.code).toBe('sheet-thick');
  expect(problem?.message).toContain('1 mm thick; the shear takes 0.8 mm');
});

// 2 × 1 m of 1 mm galvanised steel, 7.85 g/cm³: 15.7 kg, 2 m², 21.5278 ft²
test.each([
  [30, 30],
  [{ per: 'sheet', amount: 30 }, 30],
  [{ per: 'kg', amount: 2 }, 31.4],
  [{ per: 'pound', amount: 1 }, 34.6126],
  [{ per: 'squareMetre', amount: 12 }, 24],
  [{ per: 'squareFoot', amount: 1 }, 21.5278],
])('a price of %j: a sheet costs %d', (price, each) => {
  const [sheet] = rack({ sheets: [{ ...FULL, price }] }).sheets;
  expect(sheet?.price).toBeCloseTo(each, 3);
});
