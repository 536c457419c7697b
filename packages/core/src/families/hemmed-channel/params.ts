import { type HemSpec, hemFold, leastHemLength } from '../../bending/hem.js';
import { reliefHole, reliefReach } from '../../fold/corners/relief.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import {
  CORNER_GAP,
  type Complaint,
  hemFits,
  hemHeight,
  leastFlange,
  need,
  reaches,
  setback,
} from '../limits.js';

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
  height: v.size('of the sides, over the hem'),
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
      gap: v.or(v.size('kept between neighbouring tabs', { min: 0, max: 20 }), CORNER_GAP),
      room: v.maybe(
        v.size('thickness of what will stand against the tabs; one sheet when left out', { min: 0, max: 20 }),
      ),
    }),
  ),
};

export type HemmedChannelParams = Given<typeof values>;
/** Tabs at both ends, folded up and in to the ring an end stands against. mm */
export type EndTabs = NonNullable<HemmedChannelParams['endTabs']>;

export function check(p: HemmedChannelParams, sheet: Sheet): readonly Complaint[] {
  const outer = [...lengthHolds(p, sheet), ...widthHolds(p, sheet), ...heightHolds(p, sheet)];
  if (outer.length > 0) return outer;
  const bend = setback(sheet);
  const side = { height: p.height, bend, path: ['height'], name: 'side' };
  return [
    ...(p.hem === null ? [] : hemFits(['hem'], p.hem, sheet, side)),
    ...(p.hem === null || p.endTabs === null ? [] : hemEnds(p, p.hem, p.endTabs, sheet)),
    ...(p.endTabs === null ? [] : tabsFit(p, p.endTabs, sheet)),
  ];
}

function lengthHolds(p: HemmedChannelParams, sheet: Sheet): readonly Complaint[] {
  const shortest = p.hem === null ? null : { ...p.hem, length: leastHemLength(p.hem, sheet.thickness) };
  const ends =
    p.endTabs === null
      ? 0
      : Math.max(
          setback(sheet) + rootReach(p.endTabs, sheet),
          shortest === null ? 0 : hemCut(shortest, p.endTabs, sheet),
        );
  return need(
    reaches(p.length, 2 * ends + LEAST_REST),
    ['length'],
    'what is cut from both ends takes up more',
  );
}

function widthHolds({ width, hem, endTabs }: HemmedChannelParams, sheet: Sheet): readonly Complaint[] {
  const sides = 2 * (setback(sheet) + hemHeight(hem, sheet.thickness));
  const tabs = endTabs === null ? 0 : sideTabs(endTabs) * leastFlange(sheet) + endTabs.gap;
  const base = endTabs?.on.includes('base') ? 2 * (leastFlange(sheet) + endTabs.gap) : 0;
  const roots = endTabs === null ? 0 : 2 * (setback(sheet) + rootReach(endTabs, sheet));
  return need(
    reaches(width, Math.max(sides, tabs, base, roots) + LEAST_REST),
    ['width'],
    'the sides with their hems and tabs take up more',
  );
}

function heightHolds(p: HemmedChannelParams, sheet: Sheet): readonly Complaint[] {
  const tabs = p.endTabs;
  const root = tabs === null ? 0 : rootReach(tabs, sheet);
  const least = leastFlange(sheet) + (p.hem === null ? 1 : 2) * root;
  const room = tabs === null || sideTabs(tabs) === 0 || reaches(sideRoom(p, tabs, sheet), least);
  return need(
    reaches(p.height, least) && room,
    ['height'],
    'the bends, hems and tabs of a side take up more',
  );
}

/** How far the relief at the root of a notch reaches, mm. */
function rootReach({ notch }: EndTabs, { thickness, insideRadius }: Sheet): number {
  return notch === 'relief' ? reliefReach(reliefHole(thickness, insideRadius)) : 0;
}

const sideTabs = ({ on }: EndTabs) => on.filter((s) => s !== 'base').length;

function hemEnds(
  { length }: HemmedChannelParams,
  hem: HemSpec,
  tabs: EndTabs,
  sheet: Sheet,
): readonly Complaint[] {
  const holds = reaches(length, 2 * hemCut(hem, tabs, sheet) + LEAST_REST);
  return need(
    holds,
    ['hem', 'length'],
    (say) => `its slanted ends would meet on a length of ${say.size(length)}`,
  );
}

/** What is cut from an end of a hem at its free edge, from the outside of the tabs, mm. */
function hemCut(hem: HemSpec, tabs: EndTabs, { thickness, insideRadius }: Sheet): number {
  const fold = hemFold(hem, thickness);
  const start = Math.max(hemStart(tabs, thickness), thickness + insideRadius);
  return start + (tabs.notch === 'square' ? 0 : fold.leg - fold.insideRadius - thickness);
}

function tabsFit(p: HemmedChannelParams, tabs: EndTabs, sheet: Sheet): readonly Complaint[] {
  const path = ['endTabs', 'length'];
  const { width, height } = p;
  const across = sideTabs(tabs) * tabs.length + tabs.gap + LEAST_REST;
  return [
    ...need(reaches(tabs.length, leastFlange(sheet)), path, 'a tab has to reach past its own bend'),
    ...need(
      sideTabs(tabs) === 0 || reaches(width, across),
      path,
      (say) => `the tabs of both sides would meet across a width of ${say.size(width)}`,
    ),
    ...need(
      !tabs.on.includes('base') || tabs.notch === 'square' || reaches(width, 2 * tabs.length + 2 * tabs.gap),
      path,
      (say) => `the slanted ends of the base's tab would meet on a width of ${say.size(width)}`,
    ),
    ...need(
      !tabs.on.includes('base') || reaches(height, tabs.length),
      path,
      (say) => `the tab of the base would stand over the sides of ${say.size(height)}`,
    ),
    ...need(
      sideTabs(tabs) === 0 || reaches(sideRoom(p, tabs, sheet), tabs.length),
      path,
      (say) => `the notches would meet on a side of ${say.size(height)}`,
    ),
  ];
}

/** Where hems start beside the tabs, from the outside of the tabs, mm. */
export function hemStart({ room }: EndTabs, thickness: number): number {
  return thickness + (room ?? thickness) + STAND_OFF;
}

/** Longest tab on a side before its two end cuts meet: mitre or butt below, hem notch above. mm */
function sideRoom(p: HemmedChannelParams, { on, gap, notch, length }: EndTabs, sheet: Sheet): number {
  const bend = setback(sheet);
  const top = p.hem === null ? 0 : setback(sheet, 180, hemFold(p.hem, sheet.thickness).insideRadius);
  const free = p.height - top - sheet.thickness;
  if (notch === 'square')
    return on.includes('base') ? free - gap : reaches(free, bend) ? Math.max(length, leastFlange(sheet)) : 0;
  // below: the mitre, t = d + gap/√2, or 45° from the bend; above: 45° from the hem
  const below = on.includes('base') ? gap / Math.SQRT2 : 0;
  return p.hem === null ? free - below : (free - below + bend) / 2;
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
