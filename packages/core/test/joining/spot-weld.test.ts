import type { SpotWeldAsk } from '@tinwright/core';
import { MATERIALS } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { said, saidNeeds } from './said.js';
import { kindNamed, stackOf } from './stack.js';

const INCH = 25.4;
const kind = kindNamed<SpotWeldAsk>('spot-weld');
const spotWeldNeeds = (stack: ReturnType<typeof stackOf>) =>
  saidNeeds(kind.needs(stack, { count: null, pitch: null, throat: null }, stack.length));

interface Place {
  readonly layers?: number;
  readonly throat?: number | null;
  readonly reach?: number;
}

function remarks(stack: ReturnType<typeof stackOf>, place: Place = {}): ReturnType<typeof said> {
  const { layers = stack.length, throat = null, reach = 0 } = place;
  return said(kind.remarks(stack, { count: null, pitch: null, throat }, { layers, reach: () => reach }));
}

const codes = (list: ReturnType<typeof said>) => list.map((r) => r.code);

// thickness of the thinner sheet, then what the two schedules and the aircraft order print for their next thicker
// rows (sources: spot-weld-tables.test.ts); pitch A in, pitch B mm, overlap A in, overlap B mm, edge in, body A in, B mm
const STRICTER = [
  [0.5, 3 / 8, 9.5, 7 / 16, 11, 1 / 4, 1 / 2, 9.5],
  [0.75, 1 / 2, 12.5, 7 / 16, 11, 1 / 4, 1 / 2, 9.5],
  [1.0, 3 / 4, 19.5, 1 / 2, 12.5, 9 / 32, 5 / 8, 13],
  [1.25, 7 / 8, 22.5, 9 / 16, 15, 5 / 16, 5 / 8, 13],
  [1.5, 1, 27, 5 / 8, 16, 3 / 8, 5 / 8, 13],
  [2.0, 5 / 4, 35, 3 / 4, 18, 13 / 32, 5 / 8, 16],
  [2.5, 21 / 16, 42, 13 / 16, 19, 7 / 16, 7 / 8, 16],
  [3.0, 3 / 2, 50, 7 / 8, 23, 9 / 16, 7 / 8, 22],
] as const;

describe('two sheets of mild steel: the stricter source is taken', () => {
  test.each(STRICTER)('%d mm', (t, pitchA, pitchB, overlapA, overlapB, edge, bodyA, bodyB) => {
    const needs = spotWeldNeeds(stackOf([t, t]));
    expect(needs.pitch).toBeCloseTo(Math.max(pitchA * INCH, pitchB), 9);
    expect(needs.edge).toBeCloseTo(Math.max((overlapA * INCH) / 2, overlapB / 2, edge * INCH), 9);
    // clearance beside a bend: half the electrode's body and 1 to 2 mm, the middle taken
    expect(needs.bend).toBeCloseTo(Math.max(bodyA * INCH, bodyB) / 2 + 1.5, 9);
    expect(needs.holes).toEqual([null, null]);
  });

  test('1 mm: 7.1 mm to an edge by the aircraft order, stricter than 6.35 mm of half the overlap', () => {
    const { edge, edgeSource } = spotWeldNeeds(stackOf([1, 1]));
    expect(edge).toBeCloseTo(7.14, 2);
    expect(edgeSource).toContain('6.35 mm');
    expect(edgeSource).toContain('7.14 mm');
  });

  test('0.5 mm: half the overlap and the order stand 0.8 mm apart, the order holds', () => {
    const { edge } = spotWeldNeeds(stackOf([0.5, 0.5]));
    expect(edge).toBeCloseTo(6.35, 9); // 1/4 in, the order's first row; half of 7/16 in is 5.56 mm
  });

  test('the sentence on the edge names both schedules and the order, that on the pitch both schedules', () => {
    const { edgeSource, pitchSource, bendSource } = spotWeldNeeds(stackOf([1, 1]));
    for (const name of ['table A', 'table B', 'T.O. 1-1A-9']) expect(edgeSource).toContain(name);
    for (const name of ['table A', 'table B', 'docslib.org', 'table 8.1'])
      expect(pitchSource).toContain(name);
    expect(bendSource).toContain('electrode');
  });

  test('the thinner of two sheets decides', () => {
    expect(spotWeldNeeds(stackOf([1, 2]))).toEqual(spotWeldNeeds(stackOf([1, 1])));
    expect(spotWeldNeeds(stackOf([2, 1]))).toEqual(spotWeldNeeds(stackOf([1, 1])));
  });
});

test('three sheets: pitch times 1.30, everything else as for two', () => {
  // pile-up notes of dbmimports.com, read there
  const [two, three] = [spotWeldNeeds(stackOf([1, 1])), spotWeldNeeds(stackOf([1, 1, 1]))];
  expect(three.pitch / two.pitch).toBeCloseTo(1.3, 12);
  expect([three.edge, three.bend]).toEqual([two.edge, two.bend]);
});

describe('what ISO 14373 covers', () => {
  // scope of ISO 14373: 0.4 to 3.0 mm, two or three sheets, ratio up to 3:1; read in the BSI scope text
  test.each([[[0.4, 0.4]], [[0.4, 1.2]], [[1, 1]], [[1, 3]], [[3, 3]]])(
    'sheets of %j mm: nothing to say',
    (sheets) => {
      expect(remarks(stackOf(sheets))).toEqual([]);
    },
  );

  test('0.8 and 2.5 mm: 3.13 to 1 where 3 to 1 is the most', () => {
    const found = remarks(stackOf([0.8, 2.5])).find((r) => r.code === 'weld-ratio');
    expect(found).toMatchObject({ severity: 'warning', limit: 3, source: 'ISO 14373' });
    expect(found?.value).toBeCloseTo(3.125, 9);
  });

  test.each([
    ['too thin', [0.35, 0.35], 0.35, 0.4],
    ['too thick', [3.2, 3.2], 3.2, 3],
  ])('a sheet %s', (_, sheets, value, limit) => {
    const found = remarks(stackOf(sheets)).filter((r) => r.code === 'weld-thickness');
    expect(found).toMatchObject([{ severity: 'warning', value, limit, source: 'ISO 14373' }]);
    expect(found[0]?.message).toContain(`${value} mm`);
  });

  test('three sheets of 1, 1 and 2.5 mm: 4.5 mm in the pile, four times the thinnest at most', () => {
    // pile-up notes of dbmimports.com, read there
    const found = remarks(stackOf([1, 1, 2.5])).filter((r) => r.code === 'weld-stack');
    expect(found).toMatchObject([{ value: 4.5, limit: 4 }]);
    expect(codes(remarks(stackOf([1, 1, 2])))).not.toContain('weld-stack');
  });
});

describe('metals', () => {
  test('galvanised steel: zinc fume is told with the rule on it, once for both sheets', () => {
    const found = remarks(stackOf([1, 1], 'galvanised-steel'));
    expect(codes(found)).toEqual(['weld-zinc']);
    expect(found[0]?.severity).toBe('warning');
    // 29 CFR 1910.252 on ventilation, read; 29 CFR 1910.1000 on zinc oxide fume, read second-hand
    expect(found[0]?.source).toMatch(/^29 CFR 1910\.252; 29 CFR 1910\.1000; /);
    expect(found[0]?.message).toContain('zinc fume');
  });

  test('one galvanised sheet under mild steel is enough for that', () => {
    const mixed = [...stackOf([1]), ...stackOf([1], 'galvanised-steel')];
    expect(codes(remarks(mixed))).toEqual(['weld-zinc']);
  });

  test.each(MATERIALS.filter((m) => m.name.startsWith('aluminium')).map((m) => m.name))(
    '%s on a steel schedule is an error: rivet it',
    (name) => {
      const found = remarks(stackOf([1.2, 1.2], name));
      expect(codes(found)).toEqual(['weld-schedule']);
      expect(found[0]).toMatchObject({ severity: 'error', fix: 'rivet it' });
      expect(found[0]?.message).toContain('low-carbon steel');
    },
  );

  test('stainless steel: a warning, the welder has a schedule of its own', () => {
    const found = remarks(stackOf([1, 1], 'stainless-304'));
    expect(found).toMatchObject([{ code: 'weld-schedule', severity: 'warning' }]);
    expect(found[0]?.fix).toContain('schedule');
  });
});

describe('sheets that lie on each other at a weld', () => {
  test('two: nothing to say; three: a warning', () => {
    expect(remarks(stackOf([1, 1]), { layers: 2 })).toEqual([]);
    expect(remarks(stackOf([1, 1]), { layers: 3 })).toMatchObject([
      { code: 'weld-layers', severity: 'warning', value: 3 },
    ]);
  });

  test('a closed hem under a plate makes four: an error that says to move the weld', () => {
    const [found] = remarks(stackOf([1, 1]), { layers: 4 });
    expect(found).toMatchObject({ code: 'weld-layers', severity: 'error', value: 4 });
    expect(found?.message).toContain('hem');
    expect(found?.fix).toContain('move the weld');
  });
});

test('three sheets that are meant: nothing is said of a hem', () => {
  expect(codes(remarks(stackOf([1, 1, 1]), { layers: 3 }))).toEqual([]);
});

describe("the welder's throat", () => {
  test('not given: never asked how far the arms have to reach', () => {
    const asked = { count: null, pitch: null, throat: null };
    const reach = () => {
      throw new Error('asked');
    };
    expect(kind.remarks(stackOf([1, 1]), asked, { layers: 2, reach })).toEqual([]);
  });

  test('given and long enough: nothing to say', () => {
    expect(remarks(stackOf([1, 1]), { throat: 200, reach: 200 })).toEqual([]);
  });

  test('too short: both lengths are told', () => {
    const [found] = remarks(stackOf([1, 1]), { throat: 200, reach: 201.5 });
    expect(found).toMatchObject({ code: 'weld-throat', severity: 'warning', value: 201.5, limit: 200 });
    expect(found?.message).toContain('200 mm');
    expect(found?.message).toContain('201.5 mm');
  });
});

test('no remark speaks of a load: the words strength, rated and newton never come up', () => {
  const stacks = [stackOf([0.3, 4]), stackOf([1, 1, 3], 'galvanised-steel'), stackOf([1, 1], 'copper')];
  const all = stacks.flatMap((s) => [
    ...remarks(s, { layers: 5, throat: 10, reach: 99 }).flatMap((r) => [r.message, r.fix, r.source]),
    ...Object.values(spotWeldNeeds(s)).filter((v) => typeof v === 'string'),
  ]);
  expect(all.length).toBeGreaterThan(20);
  for (const text of all) expect(text).not.toMatch(/strength|rated|rating|\bkN\b|newton|\blbf\b/i);
});
