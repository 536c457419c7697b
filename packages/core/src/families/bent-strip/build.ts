import { rectangle } from '../../fold/outline.js';
import type { Sheet, Step } from '../../fold/tree.js';
import { asked, flange, panel } from '../../fold/verbs.js';
import { type AnyFamily, defineFamily } from '../family.js';
import { describe } from './describe.js';
import { type BentStripParams, check, params, radiusAt } from './params.js';

const leg = (i: number) => `leg-${i + 1}`;

function build(p: BentStripParams, sheet: Sheet): readonly Step[] {
  return [
    panel(leg(0), rectangle(p.legs[0] as number, p.width)),
    ...p.angles.map((angle, i) =>
      flange(leg(i + 1), [leg(i), i === 0 ? 'east' : 'far'], {
        height: p.legs[i + 1] as number,
        angle,
        insideRadius: radiusAt(p, i, sheet),
      }),
    ),
    asked('width', p.width, 'y'),
    ...squareLegs(p),
  ];
}

/** Legs between square bends can be measured straight over: one with the legs beside it. */
function squareLegs(p: BentStripParams): readonly Step[] {
  const square = (i: number) => Math.abs(p.angles[i] ?? 90) === 90;
  let heading = 0;
  return p.legs.flatMap((length, i) => {
    const axis = heading % 180 === 0 ? 'x' : 'z';
    const measurable = heading % 90 === 0 && square(i - 1) && square(i);
    heading += p.angles[i] ?? 0;
    const panels = [i - 1, i, i + 1].filter((j) => j >= 0 && j < p.legs.length).map(leg);
    return measurable ? [asked(`legs[${i}]`, length, axis, { panels })] : [];
  });
}

export const bentStrip: AnyFamily = defineFamily({ name: 'bent-strip', params, check, build, describe });
