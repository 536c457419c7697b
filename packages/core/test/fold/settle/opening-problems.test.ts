// Openings that a job asks for, on panels by hand: made with half a millimetre left, refused with less.
import { JobError, kFactor } from '@tinwright/core';
import { cutout, flange, fold, hole, panel, rectangle, site } from '@tinwright/core/family';
import { circleLoop } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const sheet = { thickness: 1, insideRadius: 1, rule: kFactor(0.42) };
const box = (west: number, south: number, east: number, north: number) =>
  [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ].map(([x, y]) => ({ at: [x as number, y as number] as const, bulge: 0 }));

/** What is told of openings in a base of 60 by 40 with a flange on its north edge, its bend 2 mm deep in it. */
function told(...openings: readonly ReturnType<typeof cutout>[]): readonly string[] {
  try {
    fold(
      sheet,
      panel('base', rectangle(60, 40)),
      flange('north', ['base', 'north'], { height: 20 }),
      ...openings,
    );
    return [];
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return error.problems.map((p) => `${p.path.join('.')} ${p.code}: ${p.message}`);
  }
}
const asked = (i: number, loop: ReturnType<typeof box>) => cutout('base', { loop, by: ['cutouts', i] });

test.each<[string, ReturnType<typeof box>, RegExp | null]>([
  ['in the middle', box(10, 10, 30, 20), null],
  ['half a millimetre from an edge', box(0.5, 10, 30, 20), null],
  [
    'nearer to it',
    box(0.49, 10, 30, 20),
    /cutout-off: .*less than 0\.5 mm of metal to the edge "west" of panel "base"/,
  ],
  ['half a millimetre from the bend', box(10, 10, 30, 37.5), null],
  ['nearer to it', box(10, 10, 30, 37.51), /cutout-off: .*to the bend "north"/],
  ['all over the south edge', box(10, -10, 30, 20), /cutout-off: .*the edge "south"/],
  ['beside the panel', box(70, 10, 80, 20), /cutout-off: .*lies outside panel "base"/],
  ['as long as the panel leaves it', box(0.5, 10, 59.5, 20), null],
  ['longer', box(-1, 10, 59, 20), /cutout-large: .*60 mm × 38 mm/],
  ['wider', box(10, -1, 20, 37), /cutout-large/],
])('an opening %s', (_, loop, problem) => {
  const found = told(asked(0, loop));
  if (problem === null) expect(found).toEqual([]);
  else {
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(problem);
    expect(found[0]).toMatch(/^cutouts\.0 /);
  }
});

test('two openings: half a millimetre between them is enough; with less the later one is told of the other', () => {
  const [one, apart, near] = [box(10, 10, 20, 20), box(20.5, 10, 30, 20), box(20.49, 10, 30, 20)];
  expect(told(asked(0, one), asked(1, apart))).toEqual([]);
  for (const given of [
    [asked(0, one), asked(1, near)],
    [asked(1, near), asked(0, one)],
  ]) {
    const [found, ...more] = told(...given);
    expect(more).toEqual([]);
    expect(found).toMatch(/^cutouts\.1 cutout-over: .*less than 0\.5 mm of metal to cut-out 1/);
  }
  // one in the other touches nothing
  expect(told(asked(0, box(10, 10, 30, 30)), asked(1, box(15, 15, 20, 20)))).toHaveLength(1);
  expect(told(asked(0, box(15, 15, 20, 20)), asked(1, box(10, 10, 30, 30)))).toHaveLength(1);
});

test('one over a hole of the part itself is told of that; round ones are looked at like any other', () => {
  const own = hole('base', { at: [20, 20], diameter: 6 });
  expect(told(own, asked(0, box(15, 15, 25, 25)))[0]).toMatch(
    /^cutouts\.0 cutout-over: .*a hole of the part itself/,
  );
  expect(told(own, asked(0, box(23.5, 15, 30, 25)))).toEqual([]);
  const round = (r: number) => cutout('base', { loop: circleLoop([20, 20], r), by: ['cutouts', 0] });
  expect(told(round(17.4))).toEqual([]);
  expect(told(round(17.6))[0]).toMatch(/cutout-off: .*the bend "north"/);
});

test('openings that one place asks for, a row, are told of once, though each meets the next', () => {
  const row = [0, 1, 2, 3].map((i) => asked(0, box(10 + 8 * i, 10, 17.8 + 8 * i, 20)));
  const [found, ...more] = told(...row);
  expect(more).toEqual([]);
  expect(found).toMatch(/^cutouts\.0 cutout-over: .*its own next one/);
});

/** Where a site's seat lies once a part is folded. */
function seat(rule: typeof sheet.rule, on: string, y: number): readonly number[] | undefined {
  const part = fold(
    { ...sheet, rule },
    panel('base', rectangle(60, 40)),
    flange('wall', ['base', 'east'], { height: 20 }),
    site('here', [{ panel: on, face: 'marked' }], { panel: on, at: [5, y], up: [0, 1] }),
  );
  return part.sites[0]?.seat.at;
}
test('a seat stays where it was put, on a panel that stays put and on a flange', () => {
  expect(seat(sheet.rule, 'base', 12)).toEqual([5, 12]);
  expect(seat(sheet.rule, 'wall', 12)).toEqual([5, 12]);
});
