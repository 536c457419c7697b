import { RIVET_RULES, RIVET_SIZES, rivetSize } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { gripsOf, ISO_15981_GRIPS } from '../../src/joining/rivet-grips.js';
import { cutHole, holds } from '../../src/joining/rivet-tables.js';

const INCH = 25.4;

// TM 10-5410-221-14 table 4-3, read in tentsshelters.tpub.com 10138: nominal, hole from and to, drill, and the grips
// listed, all inches. The 5/32 list went on in the copy; drill diameters of #20 and F from memory. Last, the hole by
// IFI-114, from memory.
const TM = [
  [
    '3/32 in',
    3 / 32,
    0.096,
    0.1,
    '#41',
    [
      [0.02, 0.125],
      [0.126, 0.25],
    ],
    [0.097, 0.1],
  ],
  [
    '1/8 in',
    1 / 8,
    0.128,
    0.132,
    '#30',
    [
      [0.02, 0.062],
      [0.063, 0.125],
      [0.126, 0.187],
      [0.188, 0.25],
      [0.251, 0.312],
      [0.313, 0.375],
      [0.376, 0.5],
    ],
    [0.129, 0.133],
  ],
  [
    '5/32 in',
    5 / 32,
    0.16,
    0.164,
    '#20',
    [
      [0.02, 0.125],
      [0.126, 0.187],
      [0.188, 0.25],
      [0.251, 0.375],
    ],
    [0.16, 0.164],
  ],
  [
    '1/4 in',
    1 / 4,
    0.257,
    0.261,
    'F',
    [
      [0.125, 0.25],
      [0.251, 0.375],
      [0.376, 0.5],
      [0.626, 0.75],
    ],
    [0.257, 0.261],
  ],
] as const;

// Holes: family of ISO 15977, dh1 from memory; "drill = diameter + 0.1 to 0.2 mm" read in engineeringhardware.com.
// Heads: DIN 7337, read in nutbolt.org.
const METRIC = [
  [2.4, 2.5, 2.6, 5],
  [3.2, 3.3, 3.4, 6.5],
  [4, 4.1, 4.2, 8],
  [4.8, 4.9, 5, 9.5],
  [6.4, 6.5, 6.6, 13],
] as const;

// ISO 15981, stacks from and to by length (first column) and diameter 2.4, 3.2, 4, 4.8, 6.4; lengths 6 to 12 read in a
// copy, columns inferred, the others from memory
const LENGTHS = [
  [5, null, [0.5, 1.5], null, null, null],
  [6, [0.5, 3], [1.5, 3.5], [1, 3], [1.5, 2.5], null],
  [8, null, [3.5, 5], [3, 5], [2.5, 4], null],
  [10, null, [5, 7], [5, 6.5], [4, 6], null],
  [12, [6, 9], [7, 9], [6.5, 8.5], [6, 8], [3, 6]],
  [14, null, [9, 11], [8.5, 10.5], [8, 10], null],
  [16, null, [11, 13], [10.5, 12.5], [10, 12], [6, 10]],
  [18, null, null, [12.5, 14.5], [12, 14], null],
  [20, null, null, [14.5, 16.5], [14, 16], [10, 14]],
  [25, null, null, [16.5, 21.5], [16, 21], [14, 19]],
  [30, null, null, null, [21, 26], [19, 24]],
] as const;

describe('ISO 15981', () => {
  test.each(LENGTHS)('length %d mm: every diameter', (length, ...columns) => {
    const row = ISO_15981_GRIPS.find((r) => r.length === length);
    const typed = ['2.4', '3.2', '4', '4.8', '6.4'].map((d) => row?.spans[d as '4'] ?? null);
    expect(typed).toEqual(columns);
    expect(row?.read).toBe(length >= 6 && length <= 12);
    expect(ISO_15981_GRIPS).toHaveLength(LENGTHS.length);
  });

  test.each([
    ['3.2', [[0.5, 13]]],
    [
      '2.4',
      [
        [0.5, 3],
        [6, 9],
      ],
    ],
    ['4', [[1, 21.5]]],
  ] as const)('%s mm: what its lengths hold together', (column, spans) => {
    expect(gripsOf(column)).toEqual(spans);
  });

  test('two sheets of 0.7 mm take a rivet of 3.2 mm', () => {
    expect(holds(rivetSize(3.2) as NonNullable<ReturnType<typeof rivetSize>>, 1.4)).toBe(true);
  });
});

/** Ranges that follow on each other as one: in the manual the next starts a thousandth further. */
function joined(grips: readonly (readonly [number, number])[]): readonly (readonly number[])[] {
  const follows = grips.map(([from], i) => i > 0 && from <= (grips[i - 1]?.[1] ?? 0) + 0.0011);
  const starts = grips.filter((_, i) => !follows[i]);
  const ends = grips.filter((_, i) => !follows[i + 1]);
  return starts.map(([from], i) => [from, ends[i]?.[1] ?? 0]);
}

describe('inch sizes', () => {
  test.each(TM)(
    '%s: hole by IFI-114, drill and grips by TM 10-5410-221-14',
    (name, d, low, high, drill, grips, ifi) => {
      const size = rivetSize(d * INCH);
      expect(size?.name).toBe(name);
      expect(size?.hole.map((mm) => mm / INCH)).toEqual(ifi.map((inch) => expect.closeTo(inch, 12)));
      // the middle of the one band lies in the other
      const cut = cutHole(size as NonNullable<typeof size>) / INCH;
      expect(cut).toBeCloseTo((ifi[0] + ifi[1]) / 2, 12);
      expect(cut).toBeGreaterThan(low);
      expect(cut).toBeLessThan(high);
      expect(size?.drill).toBe(drill);
      expect(size?.grips.map((span) => span.map((mm) => mm / INCH))).toEqual(
        joined(grips).map((span) => span.map((inch) => expect.closeTo(inch, 12))),
      );
      const remembered = ['#20', 'F'].includes(drill) ? '; drill diameter from memory' : '';
      expect(size?.source).toBe(`TM 10-5410-221-14 table 4-3${remembered}; holes by IFI-114, from memory`);
    },
  );

  test.each([
    // drills of the table in millimetres: #41 0.0960, #30 0.1285 read; #20 0.1610, F 0.257, #11 0.1910 from memory
    [3 / 32, 2.438],
    [1 / 8, 3.264],
    [5 / 32, 4.089],
    [3 / 16, 4.851],
    [1 / 4, 6.528],
  ])('drill of %d in: %d mm, nowhere more than a fortieth of a millimetre under the band', (d, drill) => {
    const size = rivetSize(d * INCH);
    const [low, high] = size?.hole ?? [0, 0];
    expect(drill).toBeGreaterThan(low - 0.026); // #11 is nominally 0.001 in under its band
    expect(drill).toBeLessThanOrEqual(high + 5e-4);
  });

  test('3/16 in: the row was cut off in the copy, so the source says from memory', () => {
    const size = rivetSize((3 / 16) * INCH);
    // 0.192 to 0.196 in and #11, from memory
    expect(size?.hole.map((mm) => mm / INCH)).toEqual([expect.closeTo(0.192, 12), expect.closeTo(0.196, 12)]);
    expect(size?.drill).toBe('#11');
    expect(size?.source).toContain('holes by IFI-114, from memory, and the drill too');
    // those of 4.8 mm, the same rivet to 0.04 mm
    expect(size?.grips[0]?.[0]).toBeCloseTo(rivetSize(4.8)?.grips[0]?.[0] ?? 0, 9);
    expect(size?.grips[0]?.[1]).toBeCloseTo(rivetSize(4.8)?.grips[0]?.[1] ?? 0, 9);
  });
});

describe('metric sizes', () => {
  test.each(METRIC)('%d mm: hole %d to %d, head %d mm', (d, low, high, head) => {
    const size = rivetSize(d);
    expect(size).toMatchObject({ diameter: d, hole: [low, high], head });
    expect(size?.source).toContain('from memory');
    expect(size?.source).toContain('ISO 15981');
  });

  test.each([
    // head: DIN 7337, read in nutbolt.org; hole dh1 from memory; their grips were not in the copy of ISO 15981
    [3, 3.1, 3.2, 6.5],
    [5, 5.1, 5.2, 9.5],
    [6, 6.1, 6.2, 12],
  ])('%d mm: hole %d to %d, head %d mm; the grips are said to be from memory', (d, low, high, head) => {
    expect(rivetSize(d)).toMatchObject({ diameter: d, hole: [low, high], head });
    expect(rivetSize(d)?.source).toContain('grips from memory');
  });

  test.each(METRIC)('%d mm: the hole is a tenth to two tenths over the rivet', (d) => {
    const [low, high] = rivetSize(d)?.hole ?? [0, 0];
    expect(low - d).toBeCloseTo(0.1, 9);
    expect(high - d).toBeCloseTo(0.2, 9);
  });
});

describe('the size a job means', () => {
  test('3.2 mm and 1/8 in are two sizes, told apart though 0.025 mm lie between them', () => {
    expect(rivetSize(3.2)?.name).toBe('3.2 mm');
    expect(rivetSize(3.175)?.name).toBe('1/8 in');
    expect(rivetSize(0.125 * INCH)?.name).toBe('1/8 in');
  });

  test.each([2, 2.9, 3.3, 3.6, 5.5, 12])('%d mm is no size there is', (d) => {
    expect(rivetSize(d)).toBeNull();
  });

  test('every size is found by its own diameter, thinnest first', () => {
    expect(RIVET_SIZES.length).toBeGreaterThan(8);
    for (const size of RIVET_SIZES) expect(rivetSize(size.diameter)).toBe(size);
    const order = RIVET_SIZES.map((s) => s.diameter);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  test('every hole takes its rivet and is smaller than its head', () => {
    for (const { diameter, hole, head } of RIVET_SIZES) {
      expect(hole[0]).toBeGreaterThan(diameter);
      expect(hole[1]).toBeGreaterThan(hole[0]);
      expect(head).toBeGreaterThan(hole[1]);
    }
  });
});

test('rules of layout, in diameters: where two sources disagree both are kept', () => {
  // 2 D: TM 10-5410-229-13&P 5-6; 2.5 D in any case: NAVEDTRA 14251; pitch 3 D, usually 4 D to 8 D: NAVEDTRA 14018;
  // rows 2.5 D: TM 10-5410-229. All read.
  expect(RIVET_RULES.edge.map((r) => r.factor)).toEqual([2, 2.5]);
  expect(RIVET_RULES.edge.map((r) => r.source)).toEqual(['TM 10-5410-229-13&P §5-6', 'NAVEDTRA 14251']);
  expect(RIVET_RULES.pitch).toEqual({ factor: 3, source: 'NAVEDTRA 14018' });
  expect(RIVET_RULES.usualPitch.factor).toBeGreaterThanOrEqual(4);
  expect(RIVET_RULES.usualPitch.factor).toBeLessThanOrEqual(8);
  expect(RIVET_RULES.row).toEqual({ factor: 2.5, source: 'TM 10-5410-229' });
});
