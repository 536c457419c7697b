import { JobError, type PartPlan, planJob, readJob } from '@tinwright/core';
import type { BrakeMarks, Page, PlanOptions, Words } from '@tinwright/paper';
import { PAPERS, partPlan } from '@tinwright/paper';
import { describe, expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { box, handLayout, planned, strip } from './patterns.js';

const A4: PlanOptions = { paper: 'A4', dims: 'mm' };
const wordsOf = (pages: readonly Page[]): readonly Words[] =>
  pages.flatMap((p) => p.blocks.flatMap((b) => b.items.filter((i): i is Words => i.kind === 'words')));
const said = (part: PartPlan, options: PlanOptions = A4, brake: BrakeMarks = {}) =>
  wordsOf(partPlan('garden', part, options, brake).pages).map((w) => w.text);
const problem = (part: PartPlan, options: PlanOptions) => {
  try {
    partPlan('', part, options);
  } catch (error) {
    if (error instanceof JobError) return error.problems[0];
    throw error;
  }
  return undefined;
};

test('every sheet has frame, caution, part, stock, tolerance, bar and its number', () => {
  const { pages } = partPlan('garden', box({ corner: 'lap', hem: { type: 'closed', length: 10 } }), A4);
  expect(pages.length).toBeGreaterThan(1);
  pages.forEach((page, i) => {
    const texts = wordsOf([page]).map((w) => w.text);
    expect(texts.join('\n')).toMatch(/^Caution: cut edges and burrs are sharp/m);
    expect(texts.join(' ')).toContain('No load rating.');
    expect(texts).toContain('part');
    expect(texts).toContain('Job: garden');
    expect(texts).toContain(`Sheet ${i + 1} of ${pages.length}`);
    expect(texts.join(' ')).toContain('Stock: cold-rolled mild steel DC01, 1 mm; blank ');
    expect(texts).toContain('must measure 100 mm');
    expect(page.title).toBe('garden: plan of part');
  });
});

test('the bar to measure is 100 mm or 4 in long', () => {
  const bars = (part: PartPlan, dims: PlanOptions['dims']) => {
    const [page] = partPlan('', part, { paper: 'letter', dims }).pages;
    const items = page?.blocks.at(-1)?.items ?? [];
    const xs = items.flatMap((i) => (i.kind === 'fill' ? i.points.map((p) => p[0]) : []));
    // every second piece is filled, the first one is, the last one is not
    const step = 2 * ((xs[1] ?? 0) - (xs[0] ?? 0));
    return Math.max(...xs) - Math.min(...xs) + step / 2;
  };
  expect(bars(strip(), 'mm')).toBeCloseTo(100, 9);
  expect(bars(strip(), '1/16')).toBeCloseTo(101.6, 9);
});

test('ISO 2768-1 class m to 400 mm: 0.1, 0.2, 0.3, 0.5; class c: 0.2, 0.3, 0.5, 0.8, 1.2', () => {
  const sizes = (tolerance: 'm' | 'c') => said(box(), { ...A4, tolerance }).join(' ');
  expect(sizes('m')).toContain(
    'ISO 2768-1 m: ±0.1 up to 6, ±0.2 up to 30, ±0.3 up to 120, ±0.5 up to 400 mm.',
  );
  expect(sizes('c')).toContain(
    'ISO 2768-1 c: ±0.2 up to 3, ±0.3 up to 6, ±0.5 up to 30, ±0.8 up to 120, ±1.2 up to 400 mm.',
  );
});

test('a date only when given', () => {
  expect(said(box()).join(' ')).not.toMatch(/\d{4}-\d\d-\d\d/);
  expect(said(box(), { ...A4, date: '2026-04-01' })).toContain('2026-04-01');
});

test('quantity and mass, in pounds for inches', () => {
  const part = planned({ family: 'bent-strip', width: 40, legs: [50, 51.77], angles: [90], quantity: 3 });
  // 100 x 40 x 1 mm at 7850 kg/m³ = 0.0314 kg = 0.0692 lb
  expect(said(part)).toContain('make 3, 0.031 kg each');
  expect(said(part, { ...A4, dims: 'in' })).toContain('make 3, 0.07 lb each');
});

test('the hand layout by rule nominal warns that it makes no allowance', () => {
  const texts = said(handLayout(), { paper: 'letter', dims: '1/32' }).join(' ');
  expect(texts).toContain('This pattern makes no allowance for bends');
  expect(texts).toContain('Heated zinc gives off fume');
});

test('the hand layout by rule nominal prints each size as asked and as formed', () => {
  const part = handLayout();
  const texts = said(part, { paper: 'letter', dims: 'in' });
  expect(texts).toContain('as formed');
  const { part: tree, formed } = part;
  const width = tree.asked.find((a) => a.name === 'width');
  expect(width?.axis).toBe('y');
  const grown = formed.size[1] / 25.4;
  expect(grown).toBeGreaterThan((width?.value ?? 0) / 25.4 + 0.02);
  expect(texts).toContain(grown.toFixed(4).replace(/0+$/, ''));
});

test('lines that come to lie outside a bend are to be drawn with a pencil', () => {
  expect(said(strip()).join(' ')).toContain('pencil');
  expect(said(strip(), { ...A4, marking: 'all' })).toContain('marked, outside bend');
  expect(said(box()).join(' ')).not.toContain('pencil');
});

test('a fraction that is not exact stands in a table with what rounding does', () => {
  const texts = said(box(), { paper: 'letter', dims: '1/16' });
  expect(texts).toContain('Rounded sizes, inches');
  // 200 mm = 7.8740 in, printed 7 7/8, off by 0.0010
  const at = texts.indexOf('7.874');
  expect(texts.slice(at - 1, at + 2)).toEqual(['7 7/8', '7.874', '+0.001']);
  expect(said(box())).not.toContain('Rounded sizes, inches');
});

test('a flat part has no picture bent and no table of bends', () => {
  const flat = said(
    planned({ family: 'gusset-end', width: 100, shoulderHeight: 30, height: 80, crownWidth: 40 }),
  );
  expect(flat).not.toContain('Formed part');
  expect(flat.some((t) => t.startsWith('Bends'))).toBe(false);
  expect(said(box())).toContain('Formed part');
});

describe('what a brake adds', () => {
  const part = strip();
  const [bend] = part.flat.bends;
  const brake: BrakeMarks = {
    sights: bend === undefined ? [] : [{ bend: bend.id, line: bend.line }],
    setAngles: { [bend?.id ?? '']: 91.5 },
  };

  test('sight lines stand in the marking-out table, angles to set in the table of bends', () => {
    const texts = said(part, A4, brake);
    expect(texts.join(' ')).toContain('sight line of B1');
    expect(texts).toContain('set to');
    expect(texts).toContain('91.5°');
  });

  test('without it there is neither', () => {
    expect(said(part).some((t) => t.includes('sight line of'))).toBe(false);
    expect(said(part)).not.toContain('set to');
  });
});

test('large print: every text on the sheet is 3.5 mm high or more, and in nothing’s way', () => {
  const { pages } = partPlan('garden', box(), { paper: 'A3', dims: 'mm', lettering: 3.5 });
  for (const w of wordsOf(pages)) expect(w.height).toBeGreaterThanOrEqual(3.5);
  expect(pages.flatMap(pageFlaws)).toEqual([]);
});

test('no text is under 2.5 mm (ISO 3098)', () => {
  for (const w of wordsOf(partPlan('', box(), A4).pages)) expect(w.height).toBeGreaterThanOrEqual(2.5);
});

test('names as long as they may be are cut short or broken, and in nothing’s way', () => {
  const part = planned({
    family: 'bent-strip',
    name: 'W'.repeat(40),
    width: 40,
    legs: [30, 60],
    angles: [90],
    note: 'n '.repeat(100),
  });
  const { pages } = partPlan('J'.repeat(200), part, A4);
  expect(pages.flatMap(pageFlaws)).toEqual([]);
});

describe('what cannot be drawn', () => {
  const sail = planned({ family: 'bent-strip', width: 20, legs: [5000, 10], angles: [90] });

  test('paper too small at any scale that can be read: a paper that will do is named', () => {
    const crowded = planned({
      family: 'bent-strip',
      width: 100,
      legs: Array.from({ length: 40 }, () => 8),
      angles: Array.from({ length: 39 }, (_, i) => (i % 2 === 0 ? 60 : -60)),
    });
    expect(problem(crowded, A4)).toMatchObject({
      code: 'paper-small',
      path: ['paper'],
      part: 'part',
      fix: 'Use A3',
    });
    expect(problem(crowded, { ...A4, paper: 'A3' })).toBeUndefined();
  });

  test('no paper here will do: templates', () => {
    expect(problem(sail, A4)).toMatchObject({
      code: 'paper-small',
      fix: 'Print templates at full size instead',
    });
  });

  test('a scale that would overflow: one that fits is named', () => {
    expect(problem(box(), { ...A4, scale: '2:1' })).toMatchObject({
      code: 'scale-unfit',
      path: ['scale'],
      fix: 'Use 1:2',
    });
    expect(partPlan('', box(), { ...A4, scale: '1:5' }).scale).toBe('1:5');
  });
});

test('a pattern that is too large at 1:2 is drawn at 1:3 or 1:4 where that fits, not at 1:5', () => {
  // 300 mm are 150 at 1:2 and 100 at 1:3; with its ordinates it takes more
  const scaleOf = (length: number) => partPlan('', box({ length, width: length, height: 20 }), A4).scale;
  expect(['1:3', '1:4']).toContain(scaleOf(420));
  expect(scaleOf(1200)).toBe('1:10');
});

test.each(PAPERS.map((p) => p.name))(
  'a row of marking out longer than a sheet goes on in the next row: forty-one holes on %s in large letters',
  (paper) => {
    const columns = { count: 41, pitch: 14.3465 };
    const row = { type: 'round' as const, panel: 'north', diameter: 3.69, from: { far: 13.22 }, columns };
    const box = {
      name: 'box',
      family: 'hinged-box' as const,
      length: 606.52,
      width: 379.35,
      height: 63.96,
      cutouts: [row],
    };
    const stock = { material: 'mild-steel', thickness: 0.4 };
    const [part] = planJob(
      readJob({ units: 'mm', stock, parts: [{ ...box, corner: 'open' as const }] }),
    ).parts;
    for (const dims of ['mm', '1/32'] as const) {
      const { pages } = partPlan('long row', part as PartPlan, { paper, dims, lettering: 3.5 });
      expect(pages.flatMap(pageFlaws)).toEqual([]);
    }
  },
);

describe('what rounding costs stands on the first sheet', () => {
  const first = (dims: PlanOptions['dims']) =>
    wordsOf(partPlan('garden', handLayout(), { paper: 'letter', dims }).pages.slice(0, 1))
      .map((w) => w.text)
      .join(' ');

  test('in sixteenths: how many sizes move by more than the tolerance, and by how much; that some are finer is explained', () => {
    const text = first('1/8');
    const [, count, most] =
      /rounding moves (\d+) sizes? by more than that, up to ([\d.]+) in/.exec(text) ?? [];
    expect(Number(count)).toBeGreaterThan(0);
    expect(Number(most)).toBeGreaterThan(0.004); // the least of the marking tolerances
    expect(Number(most)).toBeLessThanOrEqual(0.0625);
    expect(text).toMatch(/to the nearest 1\/8 \(finer where/);
  });

  test('in thousandths: nothing, there is none', () => {
    expect(first('in')).not.toMatch(/rounding|finer/);
  });
});
