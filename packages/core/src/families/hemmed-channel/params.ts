import { reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need } from '../limits.js';

/** Panels an end tab can hang on. */
export type TabSite = 'base' | 'north' | 'south';

const SITES: readonly TabSite[] = ['base', 'north', 'south'];
/** What an end may stand off the tabs, half a millimetre, and the usual clearance. Common practice, no source. */
const STAND_OFF = 0.7;
const LEAST_REST = 1; // mm left of a panel between what is cut from its ends

/** A channel with hemmed sides. Outside sizes, mm. */
export const values = {
  length: v.size('between the outside faces of the folded end tabs'),
  width: v.size('over the outside faces of the sides'),
  height: v.size('height of the sides, over the hem'),
  hem: v.hem('hem along the rim of both sides, folded in; leave out for none'),
  endTabs: v.maybe(
    v.group('tabs at both ends; leave out for open ends', {
      length: v.size('outside length of the tabs'),
      on: v.or(v.list('which panels carry tabs: base, north, south', v.word('', SITES), [1, 3]), SITES),
      notch: v.or(
        v.word(
          'slant (45° or the mitre between tabs), square, or relief (slant with a round hole at the root)',
          ['slant', 'square', 'relief'],
        ),
        'slant',
      ),
      gap: cornerGap('kept between neighbouring tabs'),
      room: v.maybe(
        v.size('thickness of what will stand against the tabs; one sheet when left out', { min: 0, max: 20 }),
      ),
    }),
  ),
};

export type HemmedChannelParams = Given<typeof values>;
/** Tabs at both ends, folded up and in to the ring an end stands against. mm */
export type EndTabs = NonNullable<HemmedChannelParams['endTabs']>;

export function check({ width, height, endTabs }: HemmedChannelParams): readonly Complaint[] {
  if (endTabs === null) return [];
  const { length, on, gap } = endTabs;
  const path = ['endTabs', 'length'];
  const across = on.filter((s) => s !== 'base').length * length + gap + LEAST_REST;
  return [
    ...need(
      (!on.includes('north') && !on.includes('south')) || reaches(width, across),
      path,
      (say) => `the tabs of both sides would meet across a width of ${say.size(width)}`,
    ),
    ...need(
      !on.includes('base') || reaches(height, length),
      path,
      (say) => `the tab of the base would stand over the sides of ${say.size(height)}`,
    ),
  ];
}

/** Where hems start beside the tabs, from the outside of the tabs, mm. */
export function hemStart({ room }: EndTabs, thickness: number): number {
  return thickness + (room ?? thickness) + STAND_OFF;
}

export function derived(p: HemmedChannelParams, { thickness, insideRadius }: Sheet): readonly DerivedSize[] {
  const tabs = p.endTabs === null ? 0 : 2 * thickness;
  const seat = p.width - 2 * (thickness + insideRadius);
  return [
    derivedSize('insideLength', p.length - tabs, 'length', 'between the inside faces of the end tabs'),
    derivedSize('insideWidth', p.width - 2 * thickness, 'width', 'between the inside faces of the sides'),
    derivedSize('insideHeight', p.height - thickness, 'height', 'from the inside of the base to the rim'),
    derivedSize('rimHeight', p.height, 'height', 'from the outside of the base to the rim'),
    derivedSize(
      'clearHeight',
      p.height - thickness - (p.hem?.length ?? 0),
      'height',
      'from the inside of the base to the lower edge of the hem',
    ),
    derivedSize(
      'seatWidth',
      seat,
      'width',
      'between the bends of the sides, where an end lies flat against the tabs',
    ),
  ];
}
