import { hemFold } from '../bending/hem.js';
import { outsideSetback } from '../bending/rule.js';
import { legOf } from '../fold/draft/least.js';
import type { Edge, EdgeFold, Outline, Panel } from '../fold/draft/tree.js';
import { cross, dot, type Point, sub, unit } from '../plane/point.js';
import type { EdgeParams } from './params.js';

const GAP = 0.5; // mm kept between two folds at a corner; common practice, no source

/** What a fold takes up of the panel beside it, mm: its leg where it lies on the panel, its setback where it stands. */
export interface Taken {
  readonly lies: boolean;
  readonly depth: number;
  readonly setback: number;
}

/** What hangs on an edge already. */
export function takenBy(panel: Panel): Taken {
  const { hem, setback } = panel.bend as NonNullable<Panel['bend']>;
  return { ...asFold(hem), depth: hem === null ? setback : legOf(panel), setback };
}

const asFold = (hem: EdgeFold | null) => ({ lies: hem !== null && hem !== 'wired' && hem !== 'curl' });

/** What a finish that is asked for will take up. */
export function takenByFinish(e: EdgeParams, thickness: number, insideRadius: number): Taken {
  if (e.type === 'return') {
    const setback = outsideSetback({ thickness, insideRadius, angle: e.angle });
    return { lies: false, depth: setback, setback };
  }
  if (e.type === 'wired' || e.type === 'curl') {
    const depth = e.diameter + 2 * thickness;
    return { lies: false, depth, setback: depth };
  }
  const type = e.type === 'safe' ? 'closed' : e.type;
  const gap = 'gap' in e && e.gap !== null ? { gap: e.gap } : {};
  const { insideRadius: R } = hemFold({ type, length: e.length, ...gap }, thickness);
  return { lies: true, depth: e.length, setback: R + thickness };
}

/** Who stands at a corner: folded before, so that it runs through, or after, so that it gives way. */
export interface Neighbour extends Taken {
  readonly comes: 'before' | 'after';
}

/**
 * How much shorter a fold is at a corner of its panel, mm, so that it stays on the panel and clear of the fold beside it.
 * @param corner the corner, the point the fold's edge leads to, and the one the other edge leads to
 */
export function insetAt(
  own: Taken,
  other: Neighbour | null,
  [at, along, beside]: readonly [Point, Point, Point],
): number {
  const [u, v] = [unit(sub(along, at)), unit(sub(beside, at))];
  const [sin, cos] = [Math.abs(cross(u, v)), dot(u, v)];
  const reach = own.lies && cos > 1e-9 ? (own.depth * cos) / sin : 0; // past a sharp corner
  if (other === null) return reach;
  const half = (1 + cos) / Math.max(sin, 1e-9); // of the setbacks of two that meet
  const standing = (Math.max(other.setback, own.lies ? 0 : own.setback) + GAP / 2) * half;
  if (!own.lies) return standing;
  if (!other.lies)
    return cos > 0 ? Math.max(standing, (other.setback + GAP / 2 + own.depth * cos) / sin) : standing;
  if (other.comes === 'after') return Math.max(reach, standing);
  const clear = other.depth + GAP;
  return Math.max(standing, cos > 0 ? (clear + own.depth * cos) / sin : clear * sin);
}

/** The corners at both ends of an edge, with where the edges there lead. */
export function cornersOf(outline: Outline, i: number) {
  const n = outline.length;
  const point = (k: number) => (outline[(k + n) % n] as Edge).from;
  const name = (k: number) => (outline[(k + n) % n] as Edge).name;
  return {
    before: { edge: name(i - 1), points: [point(i), point(i + 1), point(i - 1)] as const },
    after: { edge: name(i + 1), points: [point(i + 1), point(i), point(i + 2)] as const },
  };
}
