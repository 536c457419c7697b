import { polygon } from '../../fold/draft/outline.js';
import type { Outline, Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, panel, site } from '../../fold/draft/verbs.js';
import { add, type Point, scale } from '../../plane/point.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { setback } from '../limits.js';
import { describe } from './describe.js';
import { check, derived, lengthsOf, type OffsetCheekParams, type OffsetLengths, values } from './params.js';

/** Both sides are the same, one turned half about the middle: each is told from its longer straight edge on. */
const SIDES = ['under', 'over'] as const;

function build(p: OffsetCheekParams, sheet: Sheet): readonly Step[] {
  const along = lengthsOf(p, sheet);
  return [
    panel('plate', plate(p, along, setback(sheet) + sheet.thickness), [['straight'], ['height']]),
    ...SIDES.flatMap((side) => tabs(side, p, along)),
    asked('offset', p.offset, 'y', { moulds: ['under-1', 'under-3'] }),
    asked('height', p.height, 'y', { moulds: ['under-1', 'over-3'] }),
    asked('tabs.length', p.tabs.length, 'z', { panels: ['plate', 'under-1'] }),
  ];
}

/** The outline; inner corners are notched `deep`, past the bends, so that the tabs fold free of each other. */
function plate(p: OffsetCheekParams, along: OffsetLengths, deep: number): Outline {
  const { run, long } = along;
  const [reach, top] = [long + run + p.straight, p.offset + p.height];
  const under = lowerSide(p, along, deep);
  const points = [...under, ...under.map(([x, y]): Point => [reach - x, top - y])];
  const names = SIDES.flatMap((side) => [
    `${side}-1`,
    `${side}-corner`,
    `${side}-2`,
    ...['in', 'slant', 'straight', 'out'].map((part) => `${side}-notch-${part}`),
    `${side}-3`,
    side === 'under' ? 'upper-end' : 'lower-end',
  ]);
  if (p.hand === 'right') return polygon(points, names);
  const last = names.pop() as string;
  return polygon(points.map(([x, y]): Point => [reach - x, y]).reverse(), [...names.reverse(), last]);
}

/** Corners of the lower side of a right-hand cheek, from its lower end. */
function lowerSide(
  { offset, straight }: OffsetCheekParams,
  along: OffsetLengths,
  deep: number,
): readonly Point[] {
  const { bend, run, long, back } = along;
  const d: Point = [Math.cos(bend), Math.sin(bend)];
  const widening = deep * Math.tan(bend / 2); // a notch ends beside the bends of mitred tabs
  const inwards: Point = [-d[1], d[0]];
  const inner: Point = [long + run, offset];
  const [before, after] = [add(inner, scale(d, -back)), add(inner, [back, 0])];
  return [
    [0, 0],
    [long - back, 0],
    add([long, 0], scale(d, back)),
    before,
    add(add(before, scale(d, -widening)), scale(inwards, deep)),
    add(inner, [-widening, deep]),
    add(after, [widening, deep]),
    after,
    [long + run + straight, offset],
  ];
}

/** Three tabs, mitred where they meet at the inner corner, and a site on each where the middle of a wrapper's leg comes. */
function tabs(side: (typeof SIDES)[number], p: OffsetCheekParams, along: OffsetLengths): readonly Step[] {
  const { slant, long, further, back, mitre } = along;
  // each by its length, how much its far end is shorter at its start and its end, and where the wrapper's leg has its middle
  const rows = [
    { length: long - back, start: 0, end: 0, middle: (long + further) / 2 },
    { length: slant - 2 * back, start: 0, end: mitre, middle: (slant - further) / 2 - back },
    { length: p.straight - back, start: mitre, end: 0, middle: p.straight / 2 - back },
  ];
  const height = p.tabs.length;
  const right = p.hand === 'right';
  return rows.flatMap(({ length, start, end, middle }, i) => {
    const name = `${side}-${i + 1}`;
    // a tab's x runs against the counter-clockwise sense
    const [low, high] = right ? [end, start] : [start, end];
    return [
      flange(name, ['plate', name], {
        height,
        far: [
          [low, height],
          [length - high, height],
        ],
        by: ['tabs', 'length'],
      }),
      site(name, [{ panel: name, face: 'unmarked' }], {
        panel: name,
        at: [right ? length - middle : middle, 0],
        up: [right ? -1 : 1, 0],
      }),
    ];
  });
}

/**
 * Cheek of an offset duct. One flat side of the fitting that steps a rectangular duct aside by two equal bends: straight,
 * slanted, straight, as wide all along, with tabs for the two wrappers. x runs along the straight ends, y up.
 * Outside sizes.
 */
export const offsetCheek: NamedFamily<'offset-cheek', typeof values> = defineFamily({
  name: 'offset-cheek',
  values,
  check,
  build,
  derived,
  describe,
});
