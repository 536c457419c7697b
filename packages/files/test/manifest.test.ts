import { FAMILIES, type JobPlan, type Point } from '@tinwright/core';
import { manifestOf } from '@tinwright/files';
import { manifestText } from '@tinwright/files/internal';
import { describe, expect, test } from 'vitest';
import { planned } from './samples.js';

interface Entry {
  readonly name: string;
  readonly family: string;
  readonly quantity: number;
  readonly note?: string;
  readonly material: string;
  readonly thickness: number;
  readonly rule: string;
  readonly blank: { readonly x: number; readonly y: number };
  readonly formed: { readonly x: number; readonly y: number; readonly z: number };
  readonly area: number;
  readonly cutLength: number;
  readonly mass: number;
  readonly base: Point;
  readonly bends: readonly {
    readonly id: string;
    readonly angle: number;
    readonly direction: string;
    readonly insideRadius: number;
    readonly allowance: number;
    readonly deduction: number;
    readonly hem?: string;
    readonly line: readonly [Point, Point];
    readonly zone: number;
  }[];
  readonly marks: readonly object[];
  readonly files: { readonly dxf: string; readonly svg: string };
}

interface Manifest {
  readonly format: number;
  readonly units: string;
  readonly parts: readonly Entry[];
  readonly findings: readonly Readonly<Record<string, unknown>>[];
  readonly files: readonly string[];
}

const FILES = (name: string) => ({ dxf: `parts/${name}.dxf`, svg: `parts/${name}.svg` });
const read = (plan: JobPlan, written: readonly string[] = []): Manifest =>
  JSON.parse(manifestText(manifestOf(plan, (p) => FILES(p.name), written)));

const EXAMPLES = FAMILIES.map((f) => ({ name: f.name, family: f.name, ...f.describe.example }));
const plan = planned(EXAMPLES);
const manifest = read(plan);
const part = (name: string): Entry => {
  const found = manifest.parts.find((p) => p.name === name);
  if (found === undefined) throw new Error(`no part ${name}`);
  return found;
};

/** Crossings of a ray to the right: odd inside. */
function inside([x, y]: Point, outline: readonly Point[]): boolean {
  return outline.reduce((odd, [ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay];
    const crosses = ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
    return crosses ? !odd : odd;
  }, false);
}

/** Distance of a point from a closed polygon. */
function fromOutline([x, y]: Point, outline: readonly Point[]): number {
  const gaps = outline.map(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay];
    const [dx, dy] = [bx - ax, by - ay];
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(x - ax - t * dx, y - ay - t * dy);
  });
  return Math.min(...gaps);
}

test('the head says the format, the units and every file of the set', () => {
  const files = ['parts/a.dxf', 'parts/a.svg'];
  const named = read(planned(EXAMPLES.slice(0, 1), { name: 'harvest carrier', note: 'first try' }), files);
  expect(named).toMatchObject({ format: 1, units: 'mm', name: 'harvest carrier', note: 'first try', files });
});

test('a job without name and note has no such keys', () => {
  expect(Object.keys(manifest)).toEqual(['format', 'program', 'units', 'parts', 'findings', 'files']);
});

describe.each(plan.parts)('$name', ({ name, flat, formed }) => {
  const entry = part(name);
  const outline = flat.outline.map((v) => v.at);

  test('has every key that other programs rely on', () => {
    expect(Object.keys(entry)).toEqual(expect.arrayContaining(KEYS));
    expect(entry.files).toEqual(FILES(name));
    expect(entry).toMatchObject({ family: name, quantity: 1, material: 'galvanised-steel', thickness: 1 });
    expect(entry.rule).toBe('k-factor');
  });

  test('blank, formed size, area and cut length are those of the two views, to nine decimals', () => {
    expect(entry.blank.x).toBeCloseTo(flat.blank.max[0], 8);
    expect(entry.blank.y).toBeCloseTo(flat.blank.max[1], 8);
    expect([entry.formed.x, entry.formed.y, entry.formed.z].map((v) => v.toFixed(6))).toEqual(
      formed.size.map((v) => v.toFixed(6)),
    );
    expect(entry.area).toBeCloseTo(flat.area, 6);
    expect(entry.cutLength).toBeCloseTo(flat.cutLength, 6);
  });

  test('mass is area times thickness times the density of steel', () => {
    expect(entry.mass).toBeCloseTo((entry.area * entry.thickness * 7850) / 1e9, 8); // kg/m³, from memory
  });

  test('the base point lies on material', () => {
    expect(inside(entry.base, outline)).toBe(true);
    expect(fromOutline(entry.base, outline)).toBeGreaterThan(1);
  });

  test('every bend line runs over material from edge to edge of the outline', () => {
    expect(entry.bends).toHaveLength(flat.bends.length);
    for (const { line } of entry.bends) {
      for (const end of line) expect(fromOutline(end, outline)).toBeLessThan(1e-6);
      const [[ax, ay], [bx, by]] = line;
      for (const t of [0.01, 0.5, 0.99])
        expect(inside([ax + t * (bx - ax), ay + t * (by - ay)], outline)).toBe(true);
    }
  });

  test('the zone of a bend is its allowance, and both setbacks less it the deduction', () => {
    for (const b of entry.bends) {
      expect(b.zone).toBe(b.allowance);
      expect(['up', 'down']).toContain(b.direction);
      expect(b.angle).toBeGreaterThan(0);
      const setback = b.angle <= 90 ? Math.tan((b.angle * Math.PI) / 360) : 1; // times R + T
      expect(2 * setback * (b.insideRadius + 1) - b.allowance).toBeCloseTo(b.deduction, 8);
    }
  });
});

const KEYS = [
  ...['name', 'family', 'quantity', 'material', 'thickness', 'rule', 'blank', 'formed'],
  ...['area', 'cutLength', 'mass', 'base', 'bends', 'marks', 'files'],
];

// BA = (π/180)·90·(1 + 0.42·1), FAA-H-8083-31 ch. 4 with K = 0.42 given; BD = 2·(1 + 1) − BA
const ALLOWANCE = (Math.PI / 2) * 1.42;
const DEDUCTION = 4 - ALLOWANCE;

test('a strip of 30, 60 and 30 mm with two square bends: blank is the legs less two deductions', () => {
  const { blank, bends, formed } = part('bent-strip');
  expect(blank.x).toBeCloseTo(120 - 2 * DEDUCTION, 8);
  expect(blank.y).toBe(40);
  expect(formed.x).toBeCloseTo(30, 6);
  expect(formed.z).toBeCloseTo(60, 6);
  for (const b of bends) expect(b.allowance).toBeCloseTo(ALLOWANCE, 8);
  for (const b of bends) expect(b.deduction).toBeCloseTo(DEDUCTION, 8);
});

test('a channel is as long, wide and high as it was asked for', () => {
  const { formed } = part('hemmed-channel');
  expect([formed.x, formed.y, formed.z].map((v) => v.toFixed(6))).toEqual([
    '400.000000',
    '200.000000',
    '55.000000',
  ]);
});

test('a hem says its kind, other bends have no such key', () => {
  const { bends } = part('hemmed-channel');
  expect(bends.filter((b) => b.hem === 'closed').map((b) => b.id)).toEqual(['hem-north', 'hem-south']);
  expect(bends.filter((b) => 'hem' in b)).toHaveLength(2);
  expect(bends.filter((b) => b.hem === 'closed').map((b) => [b.angle, b.insideRadius])).toEqual([
    [180, 0],
    [180, 0],
  ]);
});

test('under the nominal rule allowance and deduction are 0; the zone is as wide as the metal that bends', () => {
  const nominal = read(planned(EXAMPLES, { bending: { rule: 'nominal', insideRadius: 1 } }));
  const bends = nominal.parts.flatMap((p) => p.bends);
  expect(bends.length).toBeGreaterThan(10);
  expect(bends.filter((b) => b.allowance !== 0 || b.deduction !== 0 || !(b.zone > 0))).toEqual([]);
});

test('a finding has the promised keys and stands on the blank', () => {
  const tight = read(planned(EXAMPLES.slice(0, 1), { bending: { rule: 'k-factor', insideRadius: 0.5 } }));
  const [finding] = tight.findings;
  expect(finding).toMatchObject({ code: 'radius-small', severity: 'warning', part: 'hemmed-channel' });
  expect(finding).toMatchObject({ value: 0.5, limit: 1 }); // DIN 6935 (1975-10): 1 mm up to 1 mm thick
  expect(Object.keys(finding ?? {})).toEqual(expect.arrayContaining(['at', 'message', 'source', 'fix']));
  expect(finding).toHaveProperty('unit', 'mm');
});

test('text: one line end at the end, no minus zero, at most nine decimals', () => {
  const text = manifestText({ a: -0, b: 1 / 3, c: [1e-12, -1e-12], d: 12_345.678_901_234_5 });
  expect(JSON.parse(text)).toEqual({ a: 0, b: 0.333333333, c: [0, 0], d: 12_345.678_901_235 });
  expect(text).not.toMatch(/-0[^.\d]/);
  expect(text).toMatch(/[^\n]\n$/);
});
