import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { boxCorner, cornerGap, tabGroup } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, hemHeight, need, setback } from '../limits.js';
import {
  boxLength,
  boxMeant,
  boxWidth,
  lengthsInside,
  lengthsOutside,
  outsideWalls,
  tabsMeet,
} from '../upright-box.js';

/** Body or lid of a box that opens on a hinge. mm */
export const values = {
  length: boxLength,
  width: boxWidth,
  height: v.size('height of this half, over what is folded at its rim'),
  dimensions: boxMeant('length, width and height'),
  hem: v.hem('hem on every rim, folded in; leave out for none'),
  ledge: v.maybe(
    v.group('places on the west and east walls for angles that carry a tray; leave out for none', {
      height: v.size('from the underside to what the tray stands on'),
      leg: v.size('height of the angles, up the wall'),
    }),
  ),
  corner: boxCorner('tabbed'),
  tabs: tabGroup('a tabbed box', 20),
  gap: cornerGap(),
};

export type HingedBoxParams = Given<typeof values>;

export const rimDepth = ({ hem }: HingedBoxParams): number => hem?.length ?? 0;

export function check(p: HingedBoxParams, sheet: Sheet): readonly Complaint[] {
  const { length, width, height } = outsideWalls(p, sheet);
  const { ledge, hem } = p;
  return [
    ...need(
      ledge === null || reaches(ledge.height - 2 * sheet.thickness, setback(sheet) + LEAST_METAL),
      ['ledge', 'height'],
      'the angles would stand in the bends of the base',
    ),
    ...need(
      ledge === null || reaches(height('west') - rimDepth(p), ledge.height + ledge.leg),
      ['ledge', 'leg'],
      'the angles would reach the rim',
    ),
    ...need(
      hem === null || reaches(Math.min(length, width) / 2 - LEAST_METAL, hemHeight(hem, sheet.thickness)),
      ['hem', 'length'],
      'hems from both sides would meet',
    ),
    ...tabsMeet(p, width),
  ];
}

export function derived(p: HingedBoxParams, sheet: Sheet): readonly DerivedSize[] {
  const walls = outsideWalls(p, sheet);
  const t = sheet.thickness;
  const high = walls.height('north');
  return [
    ...lengthsInside(walls, t),
    derivedSize('insideHeight', high - t, 'height', 'from the inside of the base to the rim'),
    ...lengthsOutside(walls),
    derivedSize('rimHeight', high, 'height', 'from the outside of the base to the rim'),
  ];
}
