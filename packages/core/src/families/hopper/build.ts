import type { Sheet, Step } from '../../fold/draft/tree.js';
import { cutout } from '../../fold/draft/verbs.js';
import { placeLoop, roundedRectangle } from '../../plane/shapes.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { panSteps } from '../flared-pan/build.js';
import { describe } from './describe.js';
import { check, derived, type HopperParams, throatAt, values } from './params.js';

function build(p: HopperParams, sheet: Sheet): readonly Step[] {
  const { throat } = p;
  const middle = { origin: throatAt(p), x: [1, 0], y: [0, 1] } as const;
  return [
    ...panSteps(p, sheet),
    cutout('bottom', {
      loop: placeLoop(middle, roundedRectangle(throat.length, throat.width, 0)),
      by: ['throat'],
    }),
  ];
}

/**
 * Hopper. Four walls that lean out over a ledge with a rectangular throat, their corners folded or mitred, the rim
 * plain, hemmed or rolled round a wire. x runs along the length. Outside sizes.
 */
export const hopper: NamedFamily<'hopper', typeof values> = defineFamily({
  name: 'hopper',
  values,
  check,
  build,
  derived,
  describe,
});
