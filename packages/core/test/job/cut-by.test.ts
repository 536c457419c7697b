import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type JobContext, type Loop, planJob, readJob, segments } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { contains, distanceToLoop, segmentLength } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const EXAMPLES = fileURLToPath(new URL('../../../../examples/', import.meta.url));
const JOBS = ['bench-bin', 'drip-pan', 'harvest-carrier', 'seed-box', 'tool-crate'].map(
  (name) => `${name}.yaml`,
);
const dataOf = (file: string): object => parse(readFileSync(EXAMPLES + file, 'utf8'));
const planned = (file: string, more: object, context?: JobContext) =>
  planJob(readJob({ ...dataOf(file), ...more } as unknown, undefined, { ...context, hardware }));
const shorts = (loop: Loop, least: number) => segments(loop).filter((s) => segmentLength(s) < least - 1e-6);

test('cutBy table: examples are formed as before, no edge is shorter than 1.5 but those a finding counts', () => {
  let mended = 0;
  for (const file of JOBS) {
    const [drawn, cut] = [planned(file, {}), planned(file, { cutBy: 'table' })];
    cut.parts.forEach(({ name, flat, formed, mass }, i) => {
      const before = drawn.parts[i] as (typeof drawn.parts)[number];
      const left = [flat.outline, ...flat.holes].flatMap((l) => shorts(l, 1.5));
      const told = cut.findings.filter((f) => f.part === name && f.code === 'edge-short');
      expect(told.map((f) => f.values)).toEqual(left.length === 0 ? [] : [{ count: left.length }]);
      mended += shorts(before.flat.outline, 1.5).length - shorts(flat.outline, 1.5).length;
      expect(formed).toEqual(before.formed);
      expect(flat.blank).toEqual(before.flat.blank);
      expect(mass).toBeLessThanOrEqual(before.mass);
      for (const { at } of flat.outline) {
        expect(distanceToLoop(at, before.flat.outline)).toBeLessThan(3);
        expect(contains(before.flat.outline, at) || distanceToLoop(at, before.flat.outline) < 1e-6).toBe(
          true,
        );
      }
      for (const b of flat.bends)
        for (const end of b.line) expect(distanceToLoop(end, flat.outline)).toBeLessThan(1e-6);
    });
  }
  expect(mended).toBeGreaterThan(50);
});

test('the least edge is the one given, else the kerf of the table in the workshop; by hand nothing changes', () => {
  const shortest = (more: object, context?: JobContext) =>
    Math.min(
      ...planned('seed-tray.yaml', more, context).parts.flatMap((p) =>
        segments(p.flat.outline).map(segmentLength),
      ),
    );
  const usualCut = { by: 'table', kerf: 0.9 } as const;
  expect(shortest({})).toBeLessThan(0.21);
  expect(shortest({ cutBy: { table: { leastEdge: '0.7 mm' } } })).toBeCloseTo(0.7, 6);
  expect(shortest({}, { usualCut })).toBeCloseTo(0.9, 6);
  expect(shortest({ cutBy: 'table' }, { usualCut: { by: null, kerf: 1.1 } })).toBeCloseTo(1.1, 6);
  expect(shortest({ cutBy: 'hand' }, { usualCut })).toBeLessThan(0.21);
});

test('another tool, or a least edge below 0, is refused with what is allowed', () => {
  const refused = (cutBy: unknown) => {
    try {
      planned('seed-tray.yaml', { cutBy });
      return '';
    } catch (error) {
      return (error as Error).message;
    }
  };
  expect(refused('laser')).toContain('hand, table or { table: { leastEdge } }');
  expect(refused({ table: { leastEdge: -1 } })).toContain('leastEdge');
});
