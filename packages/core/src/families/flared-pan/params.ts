import { outsideSetback } from '../../bending/rule.js';
import { LEAST_METAL, reaches } from '../../fold/draft/least.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { degrees, radians } from '../../units/angle.js';
import { cornerGap, tabGroup } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import { type Complaint, need } from '../limits.js';
import { wireFits } from '../wire-fits.js';

/** A pan with walls that lean out. Outside sizes, mm. */
export const values = {
  bottom: v.group('of the bottom, between the lines where the outside faces of walls and bottom meet', {
    length: v.size('length of the bottom, along x'),
    width: v.size('width of the bottom, along y'),
  }),
  depth: v.size('from under the bottom to the top of the finished rim'),
  flare: v.size('how far each wall leans out over the depth; 0 for upright walls', { min: 0 }),
  edge: v.or(
    v.choice('rim: plain, hem (folded in) or wire (rolled outwards)', 'plain, hem or wire', {
      plain: {},
      hem: { length: v.size('finished width of the hem') },
      wire: {
        diameter: v.maybe(v.size('diameter of the wire', { max: 20 })),
        allowance: v.maybe(
          v.size('flat metal the roll takes; 2.5 wire diameters when left out', { max: 100 }),
        ),
      },
    }),
    { type: 'plain' },
  ),
  corner: v.or(
    v.word('mitred, or folded (tabs of the north and south walls inside the other two)', [
      'mitred',
      'folded',
    ]),
    'mitred',
  ),
  tabs: tabGroup('folded corners', 12),
  gap: cornerGap(),
};

export type FlaredPanParams = Given<typeof values>;
/** How the rim is finished. mm */
export type PanEdge = FlaredPanParams['edge'];

/** Diameter of the wire: given, or what the allowance is meant for. mm */
export function wireDiameter({ diameter, allowance }: Extract<PanEdge, { type: 'wire' }>): number {
  return diameter ?? (allowance ?? 0) / 2.5;
}

/** A wall as it is folded. mm, degrees */
export interface PanWall {
  /** Bent up from the bottom. */
  readonly angle: number;
  /** Outside leg, along the slope, to the outer tangent of what finishes its rim. */
  readonly leg: number;
  /** How far the corner runs out along the wall, over its leg. */
  readonly spread: number;
  /** How far the rim reaches out past the bottom's mould line. */
  readonly reach: number;
  readonly setback: number;
  /** At the fold of the rim, a setback below its top, the wall is shorter by this at either end. */
  readonly rimInset: number;
}

/**
 * Lean and leg of the walls. The outside face leans by `flare` over `depth`; the leg is as long as makes the finished
 * rim stand at the depth: the square edge of a plain rim, the round of a hem or a roll. Laid out without
 * compensation the leg is the slant itself.
 */
export function panWall({ depth, flare, edge }: FlaredPanParams, sheet: Sheet): PanWall {
  const { thickness: T, insideRadius, rule } = sheet;
  const lean = Math.atan2(depth, flare);
  const [sin, cos] = [Math.sin(lean), flare === 0 ? 0 : Math.cos(lean)];
  const angle = flare === 0 ? 90 : degrees(lean);
  const setback = outsideSetback({ thickness: T, insideRadius, angle });
  // the round a rim is finished with: its radius, and how far inside of the outside face its centre lies
  const round =
    edge.type === 'hem'
      ? { radius: T, inside: T }
      : edge.type === 'wire'
        ? { radius: wireDiameter(edge) / 2 + T, inside: -wireDiameter(edge) / 2 }
        : { radius: 0, inside: T };
  const leg = rule.compensates
    ? round.radius + (depth - round.radius - round.inside * cos) / sin
    : depth / sin;
  const plain = edge.type === 'plain';
  const reach = plain ? leg * cos : (leg - round.radius) * cos - round.inside * sin + round.radius;
  const rimInset = plain || !rule.compensates ? 0 : round.radius * cos;
  return { angle, leg, spread: leg * cos, reach, setback, rimInset };
}

/** What finishes the rim reaches down a wall by this, along the slope. mm */
function rimDepth({ edge }: FlaredPanParams, thickness: number): number {
  if (edge.type === 'plain') return 0;
  return edge.type === 'hem' ? edge.length : wireDiameter(edge) / 2 + thickness;
}

/** Room of the corner tabs, measured along the slanted ends of the walls that carry them. mm */
export interface TabRoom {
  /** Where they start at the bottom, and how far below the rim they end. */
  readonly low: number;
  readonly high: number;
  /** On the flat the neighbour's slanted end runs at this angle to their bend, radians; they are cut along it. */
  readonly beside: number;
  /** Kept off that end. */
  readonly off: number;
}

export function tabRoom(p: FlaredPanParams, wall: PanWall, { thickness }: Sheet): TabRoom {
  const tilt = Math.atan(wall.spread / wall.leg);
  // inside of the neighbour's face a tab stands higher on the slope
  const raised = (2 * thickness + p.gap) / Math.tan(radians(wall.angle));
  return {
    low: wall.setback / Math.cos(tilt) + p.gap,
    high: (rimDepth(p, thickness) + raised + p.tabs.length * Math.sin(tilt)) / Math.cos(tilt) + p.gap,
    beside: Math.PI / 2 - 2 * tilt,
    off: wall.setback + p.gap,
  };
}

/** Corner tabs turn by the angle between neighbouring walls, degrees. */
export function tabAngle({ angle }: PanWall): number {
  return degrees(Math.acos(Math.cos(radians(angle)) ** 2));
}

/** How far the bends of its tabs shorten a wall at either end, along its rim, mm. */
export function tabSetback(wall: PanWall, { thickness, insideRadius, rule }: Sheet): number {
  const across = outsideSetback({ thickness, insideRadius, angle: tabAngle(wall) });
  return rule.compensates ? across / Math.cos(Math.atan(wall.spread / wall.leg)) : 0;
}

/** A wall that carries tabs is shorter at either end: its tab stands inside the neighbour. mm */
export function tabbedInset(p: FlaredPanParams, wall: PanWall, { thickness }: Sheet): number {
  return p.corner === 'folded' ? (thickness + p.gap) / Math.sin(radians(wall.angle)) : 0;
}

export function check(p: FlaredPanParams, sheet: Sheet): readonly Complaint[] {
  const edge = p.edge.type === 'wire' ? rimFits(p.edge, sheet) : [];
  if (edge.length > 0) return edge;
  const rim = p.edge.type === 'wire' ? wireDiameter(p.edge) / 2 + sheet.thickness : 0;
  return [
    ...need(reaches(p.depth, 2 * rim), ['depth'], 'the rim stands higher'),
    ...(p.corner === 'folded' ? tabsFit(p, panWall(p, sheet), sheet) : []),
  ];
}

function rimFits(edge: Extract<PanEdge, { type: 'wire' }>, { thickness }: Sheet): readonly Complaint[] {
  if (edge.diameter === null && edge.allowance === null)
    return [{ path: ['edge'], why: 'a wired edge without a wire', fix: 'Give diameter, or allowance' }];
  const path = ['edge', edge.allowance === null ? 'diameter' : 'allowance'];
  return wireFits({ ...edge, diameter: wireDiameter(edge) }, thickness, path, 'wall');
}

function tabsFit(p: FlaredPanParams, wall: PanWall, sheet: Sheet): readonly Complaint[] {
  const path = ['tabs', 'length'];
  const { low, high, beside, off } = tabRoom(p, wall, sheet);
  const corner = Math.hypot(wall.leg, wall.spread);
  const outer = (p.tabs.length * Math.cos(beside) + off) / Math.sin(beside);
  return [
    ...need(
      beside > 0 && reaches(corner, Math.max(low, outer) + high + LEAST_METAL),
      path,
      'nothing would be left of it between bottom and rim',
    ),
    ...need(reaches(p.bottom.width / 2 - p.gap, p.tabs.length), path, 'tabs from both sides would meet'),
  ];
}

export function derived(p: FlaredPanParams, sheet: Sheet): readonly DerivedSize[] {
  const { reach } = panWall(p, sheet);
  return [
    derivedSize(
      'topLength',
      p.bottom.length + 2 * reach,
      'bottom.length',
      'over the rim along the length, a roll round a wire included',
    ),
    derivedSize(
      'topWidth',
      p.bottom.width + 2 * reach,
      'bottom.width',
      'over the rim along the width, a roll round a wire included',
    ),
    derivedSize(
      'insideHeight',
      p.depth - sheet.thickness,
      'depth',
      'from the inside of the bottom to the rim',
    ),
  ];
}
