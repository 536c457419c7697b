import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Loop, planJob, readJob, segments } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { contains, distanceToLoop, leastEdges, loopArea, segmentLength } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

const LEAST = 1.3;
const loop = (...corners: readonly (readonly [number, number])[]): Loop =>
  corners.map((at) => ({ at, bulge: 0 }));
const shortest = (l: Loop) => Math.min(...segments(l).map(segmentLength));
const shorts = (l: Loop) => segments(l).filter((s) => segmentLength(s) < LEAST - 1e-9).length;

test('a chamfer of 0.5 is widened to the least edge, at its own slope', () => {
  const nipped = loop([0, 0], [40, 0], [40, 19.6], [39.6, 20], [0, 20]);
  const mended = leastEdges(nipped, LEAST);
  expect(shortest(mended)).toBeCloseTo(LEAST, 9);
  const [a, b] = [mended[2], mended[3]];
  expect((b?.at[0] as number) - (a?.at[0] as number)).toBeCloseTo(-LEAST / Math.SQRT2, 9);
});

test('the foot of a notch of 0.3 runs to a point; a slot with parallel sides cannot be helped', () => {
  const notched = loop([0, 0], [40, 0], [40, 20], [24, 20], [20.15, 12], [19.85, 12], [16, 20], [0, 20]);
  const mended = leastEdges(notched, LEAST);
  expect(shorts(mended)).toBe(0);
  expect(mended).toHaveLength(7);
  const slotted = loop([0, 0], [40, 0], [40, 20], [20.2, 20], [20.2, 12], [19.8, 12], [19.8, 20], [0, 20]);
  expect(leastEdges(slotted, LEAST)).toEqual(slotted);
});

test('a step of 0.2, up or down, becomes a slope as long as the least edge', () => {
  for (const [left, right] of [
    [20, 20.2],
    [20.2, 20],
  ] as const) {
    const stepped = loop([0, 0], [40, 0], [40, right], [20, right], [20, left], [0, left]);
    const mended = leastEdges(stepped, LEAST);
    expect(shortest(mended)).toBeCloseTo(LEAST, 9);
    expect(loopArea(mended)).toBeLessThan(loopArea(stepped));
  }
});

test('every example: fewer short edges, metal only taken off and not far from where it was', () => {
  const folder = fileURLToPath(new URL('../../../../examples/', import.meta.url));
  const jobs = readdirSync(folder).filter((f) => f.endsWith('.yaml') && !/shop|row-markers/.test(f));
  expect(jobs.length).toBeGreaterThan(5);
  let [before, after] = [0, 0];
  for (const file of jobs)
    for (const { flat } of planJob(
      readJob(parse(readFileSync(folder + file, 'utf8')) as unknown, undefined, { hardware }),
    ).parts) {
      const mended = leastEdges(flat.outline, LEAST);
      before += shorts(flat.outline);
      after += shorts(mended);
      for (const { at } of mended) {
        expect(distanceToLoop(at, flat.outline)).toBeLessThan(2 * LEAST);
        expect(contains(flat.outline, at) || distanceToLoop(at, flat.outline) < 1e-6).toBe(true);
      }
    }
  expect(before).toBeGreaterThan(10);
  expect(after).toBeLessThan(before / 2);
});

test('a short edge beside an arc is left: only straight neighbours run on', () => {
  const before: Loop = [
    { at: [0, 0], bulge: 0 },
    { at: [40, 0], bulge: 0.2 },
    { at: [40, 19.6], bulge: 0 },
    { at: [39.6, 20], bulge: 0 },
    { at: [0, 20], bulge: 0 },
  ];
  const after = before.map((v, i) => ({ ...v, bulge: i === 3 ? 0.2 : 0 }));
  for (const beside of [before, after]) expect(leastEdges(beside, LEAST)).toEqual(beside);
});

test('a step that leans becomes a slope as long as the least edge too', () => {
  const stepped = loop([0, 0], [40, 0], [40, 20.2], [20, 20.2], [19.9, 20], [0, 20]);
  expect(shortest(leastEdges(stepped, LEAST))).toBeCloseTo(LEAST, 9);
});

describe('wherever the outline starts and however it lies', () => {
  type Corner = readonly [number, number];
  const turnedBy = (degrees: number, [x, y]: Corner): Corner => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    return [300 + x * c - y * s, -200 + x * s + y * c];
  };
  /** Corners of what `leastEdges` makes of an outline, for every start and some ways to lie; back where they came from. */
  function everyWay(corners: readonly Corner[]): readonly (readonly Corner[])[] {
    return [0, 37, 90, 205].flatMap((degrees) =>
      corners.map((_, start) => {
        const from = [...corners.slice(start), ...corners.slice(0, start)].map((p) => turnedBy(degrees, p));
        const made = leastEdges(loop(...from), LEAST).map((v) => v.at);
        return made.map(([x, y]) => {
          const [u, v] = [x - 300, y + 200];
          const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
          return [u * c + v * s, -u * s + v * c] as const;
        });
      }),
    );
  }
  const apart = (p: Corner, q: Corner) => Math.hypot(p[0] - q[0], p[1] - q[1]);
  /** Same corners, whichever comes first. */
  function expectCorners(corners: readonly Corner[], asked: readonly Corner[]): void {
    for (const made of everyWay(corners)) {
      expect(made).toHaveLength(asked.length);
      for (const p of asked) expect(Math.min(...made.map((q) => apart(p, q)))).toBeLessThan(1e-9);
    }
  }

  test('a chamfer between sides at 70° and 100° is moved in along itself', () => {
    // a triangle with its tip cut square to the bisector: similar triangles say where a cut of 1.3 lies
    const [a, b, tip] = [
      [0, 0],
      [40, 0],
      [16, 30],
    ] as const;
    const on = (p: Corner, share: number): Corner => [
      tip[0] + (p[0] - tip[0]) * share,
      tip[1] + (p[1] - tip[1]) * share,
    ];
    const share = 0.02;
    const cut = apart(on(a, share), on(b, share));
    expect(cut).toBeLessThan(LEAST);
    const wide = (share * LEAST) / cut;
    expectCorners([a, b, on(b, share), on(a, share)], [a, b, on(b, wide), on(a, wide)]);
  });

  test('a chamfer that leans is widened at its own slope', () => {
    // 0.4 along the top, 0.3 down: as long as 1.3 at 1.04 and 0.78
    expectCorners(
      [
        [0, 0],
        [40, 0],
        [40, 19.7],
        [39.6, 20],
        [0, 20],
      ],
      [
        [0, 0],
        [40, 0],
        [40, 20 - 0.78],
        [40 - 1.04, 20],
        [0, 20],
      ],
    );
  });

  test('the foot of a notch whose sides lean unlike each other runs to where they meet', () => {
    // sides from (16, 20) and (24, 20) to a foot at 12: they meet below it, by hand
    const [u, v] = [
      [19.85 - 16, 12 - 20],
      [20.15 - 28, 12 - 20],
    ] as const;
    const det = u[0] * v[1] - u[1] * v[0];
    const t = ((28 - 16) * v[1] - 0) / det;
    const met = [16 + u[0] * t, 20 + u[1] * t] as const;
    expect(met[1]).toBeLessThan(12);
    expectCorners(
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [28, 20],
        [20.15, 12],
        [19.85, 12],
        [16, 20],
        [0, 20],
      ],
      [[0, 0], [40, 0], [40, 20], [28, 20], met, [16, 20], [0, 20]],
    );
  });

  test('steps up and down, upright and leaning, are cut back along the upper side', () => {
    const across = Math.sqrt(LEAST ** 2 - 0.2 ** 2);
    expectCorners(
      [
        [0, 0],
        [40, 0],
        [40, 20.2],
        [20, 20.2],
        [20, 20],
        [0, 20],
      ],
      [
        [0, 0],
        [40, 0],
        [40, 20.2],
        [20 + across, 20.2],
        [20, 20],
        [0, 20],
      ],
    );
    expectCorners(
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [20, 20],
        [20, 20.2],
        [0, 20.2],
      ],
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [20, 20],
        [20 - across, 20.2],
        [0, 20.2],
      ],
    );
    // leaning by a tenth: the foot stays, the upper corner goes to where it is 1.3 from it
    expectCorners(
      [
        [0, 0],
        [40, 0],
        [40, 20.2],
        [20, 20.2],
        [19.9, 20],
        [0, 20],
      ],
      [
        [0, 0],
        [40, 0],
        [40, 20.2],
        [19.9 + across, 20.2],
        [19.9, 20],
        [0, 20],
      ],
    );
  });

  test('a step beside sides of 4, where the turns are small in area', () => {
    const across = Math.sqrt(LEAST ** 2 - 0.2 ** 2);
    expectCorners(
      [
        [0, 0],
        [8, 0],
        [8, 20.2],
        [4, 20.2],
        [4, 20],
        [0, 20],
      ],
      [
        [0, 0],
        [8, 0],
        [8, 20.2],
        [4 + across, 20.2],
        [4, 20],
        [0, 20],
      ],
    );
    expectCorners(
      [
        [0, 0],
        [8, 0],
        [8, 20],
        [4, 20],
        [4, 20.2],
        [0, 20.2],
      ],
      [
        [0, 0],
        [8, 0],
        [8, 20],
        [4, 20],
        [4 - across, 20.2],
        [0, 20.2],
      ],
    );
  });

  test.each<[string, readonly Corner[]]>([
    [
      'a tongue with parallel sides',
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [20.2, 20],
        [20.2, 28],
        [19.8, 28],
        [19.8, 20],
        [0, 20],
      ],
    ],
    [
      'a foot whose sides meet further off than 1.3',
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [21, 20],
        [20.2, 12],
        [19.8, 12],
        [19, 20],
        [0, 20],
      ],
    ],
    [
      'a foot whose sides widen towards it',
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [20.1, 20],
        [20.2, 10],
        [19.8, 10],
        [19.9, 20],
        [0, 20],
      ],
    ],
    [
      'a chamfer beside a side of 1.5, which would be too short',
      [
        [0, 0],
        [40, 0],
        [40, 19.6],
        [39.6, 20],
        [38.1, 20],
        [38.1, 15],
        [0, 15],
      ],
    ],
    [
      'a step beside a side of 2, which would be too short',
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [22, 25],
        [22, 20.2],
        [20, 20.2],
        [20, 20],
        [0, 20],
      ],
    ],
    [
      'an edge as long as asked',
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [20, 20],
        [20, 20 - LEAST],
        [0, 20 - LEAST],
      ],
    ],
    [
      'a notch over a web that its point would cut through',
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [24, 20],
        [20.15, 0.2],
        [19.85, 0.2],
        [16, 20],
        [0, 20],
      ],
    ],
    [
      'a triangle',
      [
        [0, 0],
        [1, 0],
        [0.5, 20],
      ],
    ],
  ])('%s stays as it is', (_, corners) => {
    for (const made of everyWay(corners)) {
      expect(made).toHaveLength(corners.length);
      for (const p of corners) expect(Math.min(...made.map((q) => apart(p, q)))).toBeLessThan(1e-9);
    }
  });
});
