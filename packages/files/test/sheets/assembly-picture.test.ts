import type { Point } from '@tinwright/core';
import type { Drawing, Shape } from '@tinwright/files';
import { assemblyPicture, explodedPicture, toSvg } from '@tinwright/files';
import { letterOf } from '@tinwright/files/internal';
import { describe, expect, test } from 'vitest';
import { objectOf, plannedCarrier } from '../carrier.js';
import { readSvg } from '../svg-reader.js';

const object = objectOf(plannedCarrier());
const drawings = [
  ['together', assemblyPicture('carrier', object)],
  ['taken apart', explodedPicture('carrier', object)],
] as const;

const on = ({ layers }: Drawing, name: string): readonly Shape[] =>
  layers.find((l) => l.name === name)?.shapes ?? [];
const texts = (drawing: Drawing) => on(drawing, 'LABEL').flatMap((s) => (s.kind === 'text' ? [s] : []));

function extents(shapes: readonly Shape[]) {
  const points = shapes.flatMap((s): readonly Point[] => (s.kind === 'line' ? [s.from, s.to] : []));
  const at = (k: 0 | 1) => points.map((p) => p[k]);
  return {
    min: [Math.min(...at(0)), Math.min(...at(1))],
    max: [Math.max(...at(0)), Math.max(...at(1))],
  } as const;
}

describe.each(drawings)('a carrier %s', (_, drawing) => {
  test('every piece has a letter and a line in the legend', () => {
    const words = texts(drawing).map((t) => t.text);
    for (const [i, piece] of ['body', 'end-1', 'end-2', 'handle'].entries()) {
      expect(words.filter((w) => w === letterOf(i))).toHaveLength(1);
      expect(words).toContain(`${letterOf(i)}  ${piece}`);
    }
  });

  test('as many leaders as letters, none crossing another', () => {
    const leaders = on(drawing, 'LEADER').flatMap((s) => (s.kind === 'line' ? [s] : []));
    expect(leaders).toHaveLength(4);
    const side = (p: Point, q: Point, r: Point) =>
      (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
    for (const [i, a] of leaders.entries())
      for (const b of leaders.slice(i + 1)) {
        const one = side(a.from, a.to, b.from) * side(a.from, a.to, b.to);
        const other = side(b.from, b.to, a.from) * side(b.from, b.to, a.to);
        expect(one < 0 && other < 0).toBe(false);
      }
  });

  test('a leader starts on a line that is drawn', () => {
    const edges = [...on(drawing, 'EDGE'), ...on(drawing, 'BEND'), ...on(drawing, 'MARK')];
    const off = ({ from, to }: Extract<Shape, { kind: 'line' }>, [x, y]: Point) => {
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const l2 = dx * dx + dy * dy;
      const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, ((x - from[0]) * dx + (y - from[1]) * dy) / l2));
      return Math.hypot(x - from[0] - t * dx, y - from[1] - t * dy);
    };
    for (const leader of on(drawing, 'LEADER')) {
      if (leader.kind !== 'line') throw new Error(leader.kind);
      const nearest = Math.min(...edges.map((e) => (e.kind === 'line' ? off(e, leader.from) : Infinity)));
      expect(nearest).toBeLessThan(1e-6);
    }
  });

  test('the object is 150 mm long on its longer side, letters and legend outside of it', () => {
    const { min, max } = extents(on(drawing, 'EDGE'));
    expect(Math.max(max[0] - min[0], max[1] - min[1])).toBeCloseTo(150, 6);
    for (const { at, text } of texts(drawing)) {
      const inside = at[0] > min[0] && at[0] < max[0] && at[1] > min[1] && at[1] < max[1];
      expect(inside, text).toBe(false);
    }
  });

  test('bends and weld marks show', () => {
    expect(on(drawing, 'BEND').length).toBeGreaterThan(10);
    expect(on(drawing, 'MARK').length).toBeGreaterThan(2);
  });

  test('as SVG it is well-formed and the same bytes every time', () => {
    const svg = toSvg(drawing);
    expect(readSvg(svg).name).toBe('svg');
    const again = objectOf(plannedCarrier());
    const [first] = drawing === drawings[0][1] ? [assemblyPicture] : [explodedPicture];
    expect(toSvg(first('carrier', again))).toBe(svg);
  });
});

test('taken apart, more of the ends shows than together', () => {
  const [together, apart] = drawings.map(([, d]) => on(d, 'MARK').length);
  expect(apart).toBeGreaterThan(together ?? Infinity);
});

test('riveted, the holes show and there are no weld crosses', () => {
  const riveted = assemblyPicture('carrier', objectOf(plannedCarrier('blind-rivet')));
  const edges = (d: Drawing) => on(d, 'EDGE').length;
  expect(on(riveted, 'MARK')).toEqual([]);
  expect(edges(riveted)).toBeGreaterThan(edges(drawings[0][1]));
});

test.each([
  [0, 'A'],
  [25, 'Z'],
  [26, 'AA'],
  [51, 'AZ'],
  [52, 'BA'],
  [701, 'ZZ'],
  [702, 'AAA'],
])('piece %d is called %s', (i, letter) => {
  expect(letterOf(i)).toBe(letter);
});
