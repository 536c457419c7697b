import { type Layout, SPARE } from '../search/layout.js';
import type { Area, CutTree } from './shear-plan.js';

/** Sizes nearer than this are one, mm. */
const SAME = 1e-6;

/** How a sheet is cut: kerf, and the longest cut. */
export interface Cutting {
  readonly kerf: number;
  readonly longest: number;
}

/** A sheet parted: the cuts, the items where they lie, and everything that is left. */
export interface CutUp {
  readonly cuts: CutTree | null;
  readonly items: readonly (Area & { readonly item: number })[];
  readonly left: readonly Area[];
}

interface Sized {
  readonly w: number;
  readonly h: number;
  readonly layout: Layout;
  readonly children: readonly Sized[];
}

/** Tight sizes without the kerf that every item of a layout carries. Widest, then highest first, so that equal ones meet. */
function sized(layout: Layout, kerf: number): Sized {
  if ('item' in layout) return { w: layout.w - kerf, h: layout.h - kerf, layout, children: [] };
  const own = layout.children.map((c) => sized(c, kerf));
  const row = layout.kind === 'row';
  const children = own.toSorted((a, b) => (row ? b.w - a.w || b.h - a.h : b.h - a.h || b.w - a.w));
  const sum = (of: (s: Sized) => number) => children.reduce((t, c) => t + of(c) + kerf, -kerf);
  const most = (of: (s: Sized) => number) => Math.max(...children.map(of));
  return row
    ? { w: sum((c) => c.w), h: most((c) => c.h), layout, children }
    : { w: most((c) => c.w), h: sum((c) => c.h), layout, children };
}

/**
 * Cuts that free what a layout holds from a sheet, and what they leave. Where two orders are possible the one that
 * leaves the larger piece comes first.
 * @param sheet the whole sheet; @param corner lower left corner of what may be used
 */
export function cutUp(
  sheet: Area,
  corner: readonly [number, number],
  layout: Layout,
  cutting: Cutting,
): CutUp {
  const items: (Area & { item: number })[] = [];
  const left: Area[] = [];
  const keep = (area: Area) => {
    if (area.w > SAME && area.h > SAME) left.push(area);
  };
  const free = (piece: Area, node: Sized, x: number, y: number): CutTree | null => {
    if ('item' in node.layout && node.layout.item === SPARE) {
      keep(piece);
      return null;
    }
    const content: Area = { x, y, w: node.w, h: node.h };
    const trim = nextTrim(piece, content, node, cutting);
    if (trim === null) return inside(piece, node, content);
    const [low, high] = parted(piece, trim, cutting.kerf);
    keep(trim.waste === 'low' ? low : high);
    const rest = free(trim.waste === 'low' ? high : low, node, x, y);
    return trim.waste === 'low'
      ? { axis: trim.axis, at: trim.at, low: null, high: rest }
      : { axis: trim.axis, at: trim.at, low: rest, high: null };
  };
  const inside = (piece: Area, node: Sized, content: Area): CutTree | null => {
    if ('item' in node.layout) {
      items.push({ ...content, item: node.layout.item });
      return null;
    }
    return chain(piece, node.layout.kind === 'row' ? 'x' : 'y', node.children, content.x, content.y);
  };
  const chain = (
    piece: Area,
    axis: 'x' | 'y',
    children: readonly Sized[],
    x: number,
    y: number,
  ): CutTree | null => {
    const [first, ...others] = children;
    if (first === undefined) {
      keep(piece);
      return null;
    }
    const at = axis === 'x' ? x + first.w : y + first.h;
    const end = axis === 'x' ? piece.x + piece.w : piece.y + piece.h;
    if (others.length === 0 && end - at <= SAME) return free(piece, first, x, y);
    const [low, high] = parted(piece, { axis, at }, cutting.kerf);
    const before = free(low, first, x, y);
    const after = axis === 'x' ? chain(high, axis, others, high.x, y) : chain(high, axis, others, x, high.y);
    return { axis, at, low: before, high: after };
  };
  const whole = sized(layout, cutting.kerf);
  const cuts = free(sheet, whole, ...corner);
  return { cuts, items, left };
}

interface Trim {
  readonly axis: 'x' | 'y';
  readonly at: number;
  readonly waste: 'low' | 'high';
  readonly size: number;
}

/** Both sides of a cut; the upper one is empty where the kerf runs over the edge. */
function parted(piece: Area, { axis, at }: Pick<Trim, 'axis' | 'at'>, kerf: number): readonly [Area, Area] {
  if (axis === 'x') {
    const from = Math.min(at + kerf, piece.x + piece.w);
    return [
      { ...piece, w: Math.max(0, at - piece.x) },
      { ...piece, x: from, w: piece.x + piece.w - from },
    ];
  }
  const from = Math.min(at + kerf, piece.y + piece.h);
  return [
    { ...piece, h: Math.max(0, at - piece.y) },
    { ...piece, y: from, h: piece.y + piece.h - from },
  ];
}

/**
 * The next edge to trim off round a content, the one that leaves most; null where none is or the content is parted
 * first. Along its own direction a row or column ends in what is left anyway.
 */
function nextTrim(piece: Area, content: Area, node: Sized, { kerf, longest }: Cutting): Trim | null {
  const [west, south] = [content.x - piece.x, content.y - piece.y];
  const east = piece.w - west - content.w;
  const north = piece.h - south - content.h;
  const own = 'item' in node.layout ? null : node.layout.kind;
  const trims: Trim[] = [];
  if (west > SAME) trims.push({ axis: 'x', at: content.x - kerf, waste: 'low', size: west * piece.h });
  if (east > SAME) trims.push({ axis: 'x', at: content.x + content.w, waste: 'high', size: east * piece.h });
  if (south > SAME) trims.push({ axis: 'y', at: content.y - kerf, waste: 'low', size: south * piece.w });
  if (north > SAME)
    trims.push({ axis: 'y', at: content.y + content.h, waste: 'high', size: north * piece.w });
  const possible = trims.filter((t) => (t.axis === 'x' ? piece.h : piece.w) <= longest + SAME);
  const [best] = (own === null && possible.length === 0 ? trims : possible).toSorted(
    (a, b) => b.size - a.size,
  );
  if (best === undefined) return null;
  const end = own === 'row' ? 'x' : own === 'column' ? 'y' : null;
  const others = possible.filter((t) => t.axis !== end || t.waste === 'low');
  return others.length === 0 && own !== null ? null : best;
}
