import type { Path } from '../errors/problem.js';
import type { Sheet, Step } from '../fold/draft/tree.js';
import { flange, site } from '../fold/draft/verbs.js';

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
export function wallSites(walls: Walls, { thickness }: Sheet): readonly Step[] {
  const panel = 'base';
  const { length, width, height } = walls;
  const middle = { panel, at: [length / 2, width / 2], up: [0, 1] } as const;
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
    site('floor', [{ panel, face: 'marked' }], middle),
    site('underside', [{ panel, face: 'unmarked' }], middle),
    site('rim', [], { ...middle, lift: 'top' }),
  ];
}

/** Tabs at the ends of the north and south walls, inside the other two. mm */
export interface CornerTabs {
  readonly length: number;
  readonly by: Path;
  readonly gap: number;
  /** How far what hangs on a wall's rim reaches down along it: tabs of the neighbours stop below. */
  readonly rimDepth: (side: Side) => number;
}

/** How much walls that carry tabs are shorter at either end: their tabs stand inside the others. mm */
export function tabInset(side: Side, { thickness }: Sheet, gap: number): readonly [number, number] {
  const inset = side === 'north' || side === 'south' ? thickness + gap : 0;
  return [inset, inset];
}

/** The tabs, and two sites that a joint of the part with itself closes its corners between: the tabs, and the walls they lie behind. */
export function cornerTabs(walls: Walls, tabs: CornerTabs): readonly Step[] {
  const names = (['north', 'south'] as const).flatMap((side) => ENDS.map((end) => `tab-${side}-${end}`));
  const behind = names.map((panel) => ({ panel, face: 'unmarked' }) as const);
  const before = ENDS.map((panel) => ({ panel, face: 'marked' }) as const);
  return [
    ...tabFlanges(walls, tabs),
    site('corner-tabs', behind, { panel: names[0] as string, at: [0, 0], up: [1, 0] }),
    site('end-walls', before, { panel: 'west', at: [0, 0], up: [0, 1] }),
  ];
}

function tabFlanges({ height }: Walls, { length, by, gap, rimDepth }: CornerTabs): readonly Step[] {
  return (['north', 'south'] as const).flatMap((side) =>
    ENDS.map((end) => {
      const over = height(side) - (height(end) - rimDepth(end));
      const top = Math.max(over > 0 || rimDepth(end) > 0 ? over + gap : 0, 0);
      // a tab's x runs up the wall where its corner at the base is the low end
      const up = (side === 'north') === (end === 'west');
      return flange(`tab-${side}-${end}`, [side, end], {
        height: length,
        by,
        inset: up ? [0, top] : [top, 0],
      });
    }),
  );
}
