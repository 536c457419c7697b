import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, panel, type SeatSpec, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { describe } from './describe.js';
import { type BentStripParams, check, radiusAt, values } from './params.js';

const leg = (i: number) => `leg-${i + 1}`;

function build(p: BentStripParams, sheet: Sheet): readonly Step[] {
  return [
    panel(leg(0), rectangle(p.legs[0] as number, p.width), [['legs', 0], ['width']]),
    ...p.angles.map((angle, i) =>
      flange(leg(i + 1), [leg(i), i === 0 ? 'east' : 'far'], {
        height: p.legs[i + 1] as number,
        angle,
        insideRadius: radiusAt(p, i, sheet),
        by: ['legs', i + 1],
      }),
    ),
    ...p.legs.flatMap((length, i) => legSites(p, length, i)),
    asked('width', p.width, 'y'),
    ...squareLegs(p),
  ];
}

/** Both faces of a leg, told from its middle; upright is away from the leg before it. */
function legSites({ width }: BentStripParams, length: number, i: number): readonly Step[] {
  const seat: SeatSpec =
    i === 0
      ? { panel: leg(i), at: [length / 2, width / 2], up: [1, 0] }
      : { panel: leg(i), at: [width / 2, length / 2], up: [0, 1] };
  return [
    site(leg(i), [{ panel: leg(i), face: 'marked' }], seat),
    site(`${leg(i)}-back`, [{ panel: leg(i), face: 'unmarked' }], seat),
  ];
}

/** Legs between square bends can be measured straight over: one panel with the bends at its ends. */
function squareLegs(p: BentStripParams): readonly Step[] {
  const square = (i: number) => Math.abs(p.angles[i] ?? 90) === 90;
  let heading = 0;
  return p.legs.flatMap((length, i) => {
    const axis = heading % 180 === 0 ? 'x' : 'z';
    const measurable = heading % 90 === 0 && square(i - 1) && square(i);
    heading += p.angles[i] ?? 0;
    // the bend at its start is called after it, the one at its end after the next leg
    const over = { panels: [leg(i)], bends: [leg(i), leg(i + 1)] };
    return measurable ? [asked(`legs[${i}]`, length, axis, over)] : [];
  });
}

/**
 * Strip with parallel bends. An angle, channel, Z, hat or any other strip bent across its width. x runs along the
 * first leg, which stays put. Outside sizes unless a parameter says otherwise.
 */
export const bentStrip: NamedFamily<'bent-strip', typeof values> = defineFamily({
  name: 'bent-strip',
  values,
  check,
  build,
  describe,
});
