// Areas of random patterns by clipper2-ts, a general polygon library: the outline less its holes, and the panels and
// bend zones put together again.
import { FAMILIES, JobError, type JobPlan, jobReader, type Loop, planJob, segments } from '@tinwright/core';
import { paramsOf, sheets } from '@tinwright/testing';
import { areaPathsD, differenceD, FillRule, type PathD, unionD, xorD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const DIGITS = 7;
const BITS = 512; // straight bits an arc is replaced by

type Point = readonly [number, number];
const path = (points: readonly Point[]): PathD => points.map(([x, y]) => ({ x, y }));

/** The loop with each arc as straight bits, from the definition of the bulge: tan of a quarter of the turn. */
function flattened(loop: Loop): PathD {
  return path(
    segments(loop).flatMap(({ from: p, to: q, bulge }): readonly Point[] => {
      if (bulge === 0) return [p];
      const turn = 4 * Math.atan(bulge);
      const away = 1 / Math.tan(turn / 2) / 2; // of the centre from the chord's middle, to its left, in chords
      const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
      const [cx, cy] = [(p[0] + q[0]) / 2 - dy * away, (p[1] + q[1]) / 2 + dx * away];
      return Array.from({ length: BITS }, (_, i): Point => {
        const [s, c] = [Math.sin((turn * i) / BITS), Math.cos((turn * i) / BITS)];
        const [u, v] = [p[0] - cx, p[1] - cy];
        return [cx + u * c - v * s, cy + u * s + v * c];
      });
    }),
  );
}

function planned(family: string, params: object, sheet: object): JobPlan | null {
  try {
    return planJob(read({ units: 'mm', ...sheet, parts: [{ name: 'part', family, ...params }] }));
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

describe.each(FAMILIES.map((f) => [f.name, f] as const))('%s at random', (name, family) => {
  test('outline less holes, and panels with bend zones: areas as clipper2-ts has them', () => {
    fc.assert(
      fc.property(paramsOf(family), sheets, (params, sheet) => {
        const flat = planned(name, params, sheet)?.parts[0]?.flat;
        if (flat === undefined) return fc.pre(false);
        const outline = flattened(flat.outline);
        const holes = flat.holes.map(flattened);
        const near = 1e-4 + 1e-6 * flat.area;
        const net = differenceD([outline], holes, FillRule.NonZero, DIGITS);
        expect(Math.abs(areaPathsD(net) - flat.area)).toBeLessThan(near + 2e-4 * areaPathsD(holes));
        expect(unionD([outline], [], FillRule.Positive, DIGITS)).toHaveLength(1);
        const pieces = [
          ...flat.panels.map((p) => path(p.shape)),
          ...flat.bends.map(({ tangents: [[a, b], [c, d]] }) => path([a, b, d, c])),
        ];
        const together = unionD(pieces, [], FillRule.NonZero, DIGITS);
        // only reliefs at the roots of notches, whose rims are arcs, are taken from the pieces
        const bitten = areaPathsD(together) - areaPathsD([outline]);
        if (flat.outline.every((v) => v.bulge === 0)) expect(Math.abs(bitten)).toBeLessThan(near);
        const outside = differenceD([outline], together, FillRule.NonZero, DIGITS);
        expect(areaPathsD(outside)).toBeLessThan(near);
        expect(
          Math.abs(areaPathsD(xorD([outline], together, FillRule.NonZero, DIGITS)) - bitten),
        ).toBeLessThan(near);
      }),
      { numRuns: 8 },
    );
  });
});
