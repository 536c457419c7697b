import type { Path } from '../errors/problem.js';
import { square } from '../fold/corners/square.js';
import type { CornerStyle } from '../fold/draft/corner-style.js';
import { rectangle } from '../fold/draft/outline.js';
import type { Sheet, Step } from '../fold/draft/tree.js';
import { asked, corners, flange, panel, site } from '../fold/draft/verbs.js';

/** Walls of a box by the compass. */
export type Side = 'north' | 'south' | 'east' | 'west';
export const SIDES: readonly Side[] = ['north', 'south', 'east', 'west'];
/** Walls along a family's length. */
export const LONG_SIDES = ['north', 'south'] as const;
/** Ends of a family's length. */
export const ENDS = ['west', 'east'] as const;

/** A base with upright walls on its edges, in outside sizes. mm */
export interface Walls {
  readonly length: number;
  readonly width: number;
  readonly height: (side: Side) => number;
}

/** Length of a wall over the corners, mm. */
export const spanOf = ({ length, width }: Pick<Walls, 'length' | 'width'>, side: Side): number =>
  side === 'north' || side === 'south' ? length : width;

/** Inside and outside of each wall, the floor, the underside, and the rim with nothing to fasten to. */
function wallSites(walls: Walls, { thickness }: Sheet): readonly Step[] {
  const { length, width, height } = walls;
  const middle = { panel: 'base', at: [length / 2, width / 2], up: [0, 1] } as const;
  return [
    ...SIDES.flatMap((side) => [
      site(
        side,
        [{ panel: side, face: 'marked' }],
        { panel: side, at: [spanOf(walls, side) / 2, thickness], up: [0, 1] },
        length + width - spanOf(walls, side) - 2 * thickness,
      ),
      site(`${side}-out`, [{ panel: side, face: 'unmarked' }], {
        panel: side,
        at: [spanOf(walls, side) / 2, height(side)],
        up: [0, 1],
      }),
    ]),
    site('floor', [{ panel: 'base', face: 'marked' }], middle),
    site('underside', [{ panel: 'base', face: 'unmarked' }], middle),
    site('rim', [], { ...middle, lift: 'top' }),
  ];
}

/** What a box says of its corners. mm */
export interface BoxCorners {
  /** `tabbed`: tabs at the ends of the north and south walls, inside the other two. */
  readonly corner: string;
  readonly tabs: { readonly length: number };
  readonly gap: number;
}

/** Parameters that the sizes of base and walls come from, where they have other names. */
interface SizedBy {
  readonly length: Path;
  readonly width: Path;
  readonly height: (side: Side) => Path;
}

/** A base with a wall on each edge; walls that carry tabs are shorter at either end: their tabs stand inside the others. */
export function baseAndWalls(
  walls: Walls,
  p: BoxCorners,
  sheet: Sheet,
  { length = ['length'], width = ['width'], height = () => ['height'] }: Partial<SizedBy> = {},
): readonly Step[] {
  const inset = (side: Side) =>
    p.corner === 'tabbed' && (side === 'north' || side === 'south') ? sheet.thickness + p.gap : 0;
  return [
    panel('base', rectangle(walls.length, walls.width), [length, width]),
    ...SIDES.map((side) =>
      flange(side, ['base', side], {
        height: walls.height(side),
        inset: [inset(side), inset(side)],
        by: height(side),
      }),
    ),
  ];
}

/** How the corners of a box are closed, after what hangs on its walls. */
interface Closing {
  /** How far what hangs on a wall's rim reaches down along it, mm: tabs of the neighbours stop below. */
  readonly rimDepth: (side: Side) => number;
  /** How they are cut; square if left out. */
  readonly style?: CornerStyle;
}

/** Its corners, with tabs where it has them, and the sites of its walls. */
export function closedCorners(
  walls: Walls,
  p: BoxCorners,
  sheet: Sheet,
  { rimDepth, style = square(p.gap) }: Closing,
): readonly Step[] {
  const tabbed = p.corner === 'tabbed';
  return [
    ...(tabbed ? cornerTabs(walls, p, rimDepth) : []),
    corners(['base', ...(tabbed ? ['north', 'south'] : [])], style),
    ...wallSites(walls, sheet),
  ];
}

/** The length of its tabs, where it has them. */
export const askedTabs = ({ corner, tabs }: BoxCorners): readonly Step[] =>
  corner === 'tabbed'
    ? [asked('tabs.length', tabs.length, 'y', { panels: ['north', 'tab-north-west'] })]
    : [];

/** The tabs, and two sites that a joint of the part with itself closes its corners between: the tabs, and the walls they lie behind. */
function cornerTabs(walls: Walls, p: BoxCorners, rimDepth: Closing['rimDepth']): readonly Step[] {
  const names = (['north', 'south'] as const).flatMap((side) => ENDS.map((end) => `tab-${side}-${end}`));
  const behind = names.map((panel) => ({ panel, face: 'unmarked' }) as const);
  const before = ENDS.map((panel) => ({ panel, face: 'marked' }) as const);
  return [
    ...tabFlanges(walls, p, rimDepth),
    site('corner-tabs', behind, { panel: names[0] as string, at: [0, 0], up: [1, 0] }),
    site('end-walls', before, { panel: 'west', at: [0, 0], up: [0, 1] }),
  ];
}

function tabFlanges(
  { height }: Walls,
  { tabs, gap }: BoxCorners,
  rimDepth: Closing['rimDepth'],
): readonly Step[] {
  return (['north', 'south'] as const).flatMap((side) =>
    ENDS.map((end) => {
      const over = height(side) - (height(end) - rimDepth(end));
      const top = Math.max(over > 0 || rimDepth(end) > 0 ? over + gap : 0, 0);
      // a tab's x runs up the wall where its corner at the base is the low end
      const up = (side === 'north') === (end === 'west');
      return flange(`tab-${side}-${end}`, [side, end], {
        height: tabs.length,
        by: ['tabs', 'length'],
        inset: up ? [0, top] : [top, 0],
      });
    }),
  );
}
