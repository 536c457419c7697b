import type { CornerStyle } from '../../fold/draft/corner-style.js';
import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, corners, flange, hem, panel, scribe, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { setback } from '../limits.js';
import { ENDS } from '../walls.js';
import { describe } from './describe.js';
import { acrossOf, check, type DuctParams, derived, lastSide, sidesOf, values } from './params.js';

/**
 * Flanges of neighbouring sides stand apart once bent; all that is taken is where bends would cross. Laid out at nominal
 * sizes a bend takes no room on the flat: there the flanges are parted by a slit.
 */
const apart = ({ rule }: Sheet): CornerStyle => ({
  name: 'apart',
  gap: 0,
  meet: 'none',
  beyond: 'free',
  root: 'straight',
  relief: null,
  cuts: ({ edge, start }) =>
    edge === 'north' || edge === 'far' ? [] : [{ t: 1, d: 0, c: start + (rule.compensates ? 0 : SLIT / 2) }],
});

const SLIT = 2; // mm; judgement

function build(p: DuctParams, sheet: Sheet): readonly Step[] {
  const sides = sidesOf(p);
  const [, ...folded] = sides;
  const last = sides.at(-1) as string;
  return [
    panel('bottom', rectangle(p.length, p.width), [['length'], ['width']]),
    ...folded.map((side, i) =>
      flange(side, [sides[i] as string, i === 0 ? 'north' : 'far'], {
        height: acrossOf(p, side, sheet),
        by: [side === 'top' ? 'width' : 'height'],
      }),
    ),
    flange('seam', [last, 'far'], { height: p.seam, by: ['seam'] }),
    ...sides.flatMap((side) => ends(p, side, sheet)),
    corners(sides, apart(sheet)),
    ...(p.crossBreak === 'none' ? [] : sides.flatMap((side) => crossBreak(p, side, sheet))),
    ...sites(p),
    asked('length', p.length, 'x'),
    asked('width', p.width, 'y', { panels: ['bottom', 'north'], bends: ['north'] }),
    ...(p.piece === 'wrap'
      ? [asked('height', p.height, 'z', { panels: ['bottom', 'top'], bends: ['north', 'top'] })]
      : [
          asked('seamSide', lastSide(p, sheet), 'z', {
            panels: ['bottom', 'north', 'seam'],
            bends: ['north', 'seam'],
          }),
        ]),
    asked('seam', p.seam, 'y', { panels: [last, 'seam'], bends: ['seam'] }),
  ];
}

/** Both ends of a side. */
function ends({ ends: given }: DuctParams, side: string, { thickness }: Sheet): readonly Step[] {
  if (given.type === 'flanged') {
    // told from the inside of the side, where the bend's outside is
    const spec = { height: given.width + thickness, angle: -90, by: ['ends', 'width'] };
    return ENDS.map((end) => flange(`${side}-${end}`, [side, end], spec));
  }
  if (given.type === 'plain' || side === 'bottom' || side === 'top') return [];
  const fold = { type: 'open', length: given.fold, by: ['ends', 'fold'] } as const;
  return ENDS.map((end) => hem(`${side}-${end}`, [side, end], fold, 'down'));
}

/** Lines from corner to corner of what is flat. */
function crossBreak(p: DuctParams, side: string, sheet: Sheet): readonly Step[] {
  const off = setback(sheet) + sheet.thickness / 2;
  const [x, y] = [p.length - off, acrossOf(p, side, sheet) - off];
  return [scribe(side, [off, off], [x, y]), scribe(side, [off, y], [x, off])];
}

/** The tab, and the inside of the free edge that another half lays over it; bottom from both sides. */
function sites({ length, width, seam }: DuctParams): readonly Step[] {
  const middle = { panel: 'bottom', at: [length / 2, width / 2], up: [0, 1] } as const;
  return [
    site('tab', [{ panel: 'seam', face: 'unmarked' }], {
      panel: 'seam',
      at: [length / 2, seam / 2],
      up: [1, 0],
    }),
    site('edge', [{ panel: 'bottom', face: 'marked' }], {
      panel: 'bottom',
      at: [length / 2, seam / 2],
      up: [1, 0],
    }),
    site('floor', [{ panel: 'bottom', face: 'marked' }], middle),
    site('underside', [{ panel: 'bottom', face: 'unmarked' }], middle),
  ];
}

/**
 * Rectangular duct. A straight piece, wrapped from one sheet or half of it, closed by a tab inside the duct; ends plain,
 * flanged or folded back for slips; lines to cross-break its sides by if wanted. x runs along the duct. Outside sizes.
 */
export const duct: NamedFamily<'duct', typeof values> = defineFamily({
  name: 'duct',
  values,
  check,
  build,
  derived,
  describe,
});
