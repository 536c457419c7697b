import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const job = (cover: object, more: object = {}) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'aluminium-5052-h32', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1.2 },
      parts: [
        { name: 'base', family: 'open-box', length: 180, width: 120, height: 25 },
        {
          name: 'cover',
          family: 'cover',
          length: { of: 'base.length' },
          width: { of: 'base.width' },
          height: 70,
          overlap: { of: 'base.height' },
          ...cover,
        },
      ],
      ...more,
    } as unknown),
  );

test('screwed to its base it reaches down to the underside, and clears the walls by its play', () => {
  const { assembly, findings } = job(
    { clearance: 0.4 },
    {
      joints: [
        { name: 'west', from: 'cover.west', to: 'base.west-out', by: { screw: { diameter: 3.5 } } },
        { name: 'east', from: 'cover.east', to: 'base.east-out', by: { screw: { diameter: 3.5 } } },
      ],
    },
  );
  const cover = assembly?.placed.find((p) => p.piece === 'cover');
  const base = assembly?.placed.find((p) => p.piece === 'base');
  // both plates level, the cover turned over, its outside 70 above the base's
  expect(cover?.pose.z[2]).toBeCloseTo(-(base?.pose.z[2] ?? 0), 9);
  const up = base?.pose.z[2] ?? 1;
  expect(((cover?.pose.origin[2] ?? 0) - (base?.pose.origin[2] ?? 0)) * up).toBeCloseTo(70, 9);
  expect(assembly?.fits[0]?.found).toBeCloseTo(0.4, 6);
  expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
});

test('a field of vents stands in the middle of its side, above the walls of the base', () => {
  const { parts } = job({ vents: { on: ['south'], diameter: 4, pitch: 9, columns: 5, rows: 2 } });
  const south = parts[1]?.formed.panels.find((p) => p.id === 'south');
  const [x, y] = [0, 1].map((i) => {
    const all = (south?.holes ?? []).map((h) => h.at[i] as number);
    return [Math.min(...all), Math.max(...all)] as const;
  }) as [readonly [number, number], readonly [number, number]];
  expect((x[0] + x[1]) / 2).toBeCloseTo((180 + 2 * 1.3) / 2, 9);
  expect([x[1] - x[0], y[1] - y[0]]).toEqual([expect.closeTo(36, 9), expect.closeTo(9, 9)]);
  expect(y[1] + 2).toBeLessThan(70 - 25);
});

test('vents that reach past their side are refused with the pitch that works', () => {
  expect(() => job({ vents: { diameter: 4, pitch: 30, columns: 10, rows: 2 } })).toThrow(
    /vents\.pitch: 30 mm given/,
  );
});
