import { square } from '../../fold/corners/square.js';
import { polygon } from '../../fold/draft/outline.js';
import type { Outline, Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hole, panel, site } from '../../fold/draft/verbs.js';
import { distance, type Point } from '../../plane/point.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { describe } from './describe.js';
import { check, type ToteEndParams, values } from './params.js';

const TABS = ['south', 'west', 'east'] as const;

function build(p: ToteEndParams, _sheet: Sheet): readonly Step[] {
  const crown: Point = [p.width / 2, p.height];
  return [
    panel('plate', plate(p), [['width'], ['height']]),
    ...TABS.map((side) =>
      flange(`tab-${side}`, ['plate', side], { height: p.tabs.length, by: ['tabs', 'length'] }),
    ),
    corners(['plate'], square(p.tabs.gap)),
    ...(p.bar === null
      ? []
      : [
          hole('plate', {
            at: [crown[0], crown[1] - p.bar.below],
            diameter: p.bar.diameter,
            by: { at: [[], ['bar', 'below']], diameter: ['bar', 'diameter'] },
          }),
        ]),
    // it stands on its lower tab, the outside of the plate at the end of what it closes
    site(
      'rim',
      TABS.map((side) => ({ panel: `tab-${side}`, face: 'unmarked' })),
      { panel: 'tab-south', at: [p.width / 2, 0], up: [0, -1] },
      p.width,
    ),
    site('crown', [{ panel: 'plate', face: 'marked' }], { panel: 'plate', at: crown, up: [0, 1] }),
    asked('width', p.width, 'x'),
    asked('height', p.height, 'y'),
    asked('crownWidth', p.crownWidth, 'x', { edges: [['plate', 'crown']] }),
    asked('tabs.length', p.tabs.length, 'z', { panels: ['plate', 'tab-south'] }),
  ];
}

function plate({ width, shoulderHeight, height, crownWidth }: ToteEndParams): Outline {
  const points: readonly Point[] = [
    [0, 0],
    [width, 0],
    [width, shoulderHeight],
    [(width + crownWidth) / 2, height],
    [(width - crownWidth) / 2, height],
    [0, shoulderHeight],
  ];
  const edges = polygon(points, ['south', 'east', 'slope-east', 'crown', 'slope-west', 'west']);
  return edges.filter((e, i) => distance(e.from, points[(i + 1) % points.length] as Point) > 0);
}

/**
 * End with tabs of its own. Closes a channel that has no tabs: a plate with straight sides, sloped shoulders and a
 * crown, tabs folded in along its foot and sides, and a hole for a bar to carry it by. x runs along the width, y up.
 * Outside sizes unless a parameter says otherwise.
 */
export const toteEnd: NamedFamily<'tote-end', typeof values> = defineFamily({
  name: 'tote-end',
  values,
  check,
  build,
  describe,
});
