/// <reference path="./svg-parser.d.ts" />
import { fail, MOST_CORNERS, quoted } from '@tinwright/core/internal';
import type { ElementNode } from 'svg-parser';
import svgpath from 'svgpath';
import { leastSegments, shortRuns } from './short-runs.js';
import { type DrawnPath, withShortArcs } from './svg-arcs.js';
import { checkSizes, looksOf } from './svg-looks.js';

const DEEPEST = 500; // groups in each other

/** Ends with what a drawing holds too many of. @throws JobError */
export function large(what: 'corners' | 'elements'): never {
  return fail(
    'drawing-large',
    [],
    `the drawing holds more than ${MOST_CORNERS} ${what}`,
    'Draw the outlines to be cut alone, and with fewer corners',
  );
}

/** Elements that are read, with what stands in them. */
const FRAMES = ['g', 'a'];
const SHAPES = ['path', 'rect', 'circle', 'ellipse', 'polygon', 'polyline', 'line'];
/** Elements that hold nothing to be cut where they stand. */
const UNSEEN =
  'defs clipPath mask symbol marker pattern linearGradient radialGradient filter text title desc metadata style script view'.split(
    ' ',
  );

/** What stands round an element. */
interface Around {
  readonly transform: string;
  readonly isHidden: boolean;
  readonly depth: number;
}

/**
 * Path data of a drawing, absolute and without arcs, with the transforms round it applied, one path after the other; what
 * is not shown is left out.
 * @throws JobError for what is shown and cannot be read
 */
export const pathsOf = (svg: ElementNode): Generator<DrawnPath, void> =>
  inFrame(svg, { transform: '', isHidden: false, depth: 0 });

function* inFrame({ properties = {}, children }: ElementNode, around: Around): Generator<DrawnPath, void> {
  const inside = within(properties, around);
  if (inside === null) return;
  for (const c of children) if (typeof c === 'object' && c.type === 'element') yield* pathsIn(c, inside);
}

function* pathsIn(node: ElementNode, around: Around): Generator<DrawnPath, void> {
  const { tagName = '', properties = {} } = node;
  // nobody shows elements of a name space of their own: programs keep notes in them
  if (UNSEEN.includes(tagName) || tagName.includes(':')) return;
  if (FRAMES.includes(tagName)) return yield* inFrame(node, around);
  const inside = within(properties, around);
  if (inside === null || inside.isHidden) return;
  const moving = node.children.find((c) => typeof c === 'object' && c.type === 'element' && moves(c));
  const stray = SHAPES.includes(tagName) ? moving : node;
  if (stray !== undefined)
    return fail(
      'drawing-entity',
      [],
      `the drawing holds ${(stray as ElementNode).tagName}, which is no path or shape`,
      'Make paths of what it shows, or take it out',
    );
  checkSizes(properties);
  const d = dataOf(tagName, properties);
  if (d !== null) yield pathOf(tagName, d, inside.transform);
}

const moves = ({ tagName = '' }: ElementNode) => tagName === 'set' || tagName.startsWith('animate');

/** What stands round the content of an element; null for one that is not shown with all in it. */
function within(p: Properties, { transform, isHidden, depth }: Around): Around | null {
  if (depth > DEEPEST)
    return fail('drawing-deep', [], 'the drawing is nested too deeply', 'Save it as plain SVG');
  const looks = looksOf(p, isHidden);
  if (looks.isGone) return null;
  return {
    transform: `${transform} ${transformOf(looks.transform)}`.trim(),
    isHidden: looks.isHidden,
    depth: depth + 1,
  };
}

function pathOf(tag: string, d: string, transform: string): DrawnPath {
  if (leastSegments(d) > MOST_CORNERS) return large('corners');
  const path = svgpath(shortRuns(d));
  if ((path as { readonly err?: string }).err) return broken(tag, 'd', d);
  if ((path as unknown as { readonly segments: readonly unknown[] }).segments.length > MOST_CORNERS)
    return large('corners');
  // curves in place of arcs before the transform: what applies it turns an arc the wrong way where it mirrors
  return withShortArcs(path.abs().unshort()).unarc().transform(transform);
}

type Properties = NonNullable<ElementNode['properties']>;

const NUMBER = String.raw`[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?`;
const called = (names: string, ...counts: readonly number[]) =>
  counts.map((n) => String.raw`(?:${names})\s*\(\s*${NUMBER}(?:[\s,]+${NUMBER}){${n - 1}}\s*\)`).join('|');
const STEPS = [
  called('matrix', 6),
  called('translate|scale', 1, 2),
  called('rotate', 1, 3),
  called('skewX|skewY', 1),
];
const STEP = new RegExp(String.raw`(?:${STEPS.join('|')})[\s,]*`, 'g');

/** A transform that is read whole: the reader passes over what it does not know. */
function transformOf(said: string): string {
  return said.replace(STEP, '') === '' ? said : broken('transform', '', said);
}

function broken(tag: string, name: string, said: unknown): never {
  const what = `${tag} ${name}`.trim();
  return fail(
    'drawing-number',
    [],
    `${what} ${quoted(String(said).slice(0, 60))} cannot be read`,
    'Save it as plain SVG',
  );
}

function dataOf(tag: string, p: Properties): string | null {
  const n = (name: string, other = 0): number => {
    const said = p[name];
    if (said === undefined) return other;
    return String(said).trim() !== '' && Number.isFinite(Number(said))
      ? Number(said)
      : broken(tag, name, said);
  };
  /** A size: nobody shows a shape of nothing, and what is negative is an error in the drawing. */
  const size = (name: string, other?: number): number => {
    const found = n(name, other);
    return found >= 0 ? found : broken(tag, name, p[name]);
  };
  switch (tag) {
    case 'path':
      return String(p.d ?? '');
    case 'rect':
      return rectData(n, size);
    case 'circle':
    case 'ellipse': {
      const [rx, ry] = tag === 'circle' ? [size('r'), size('r')] : [size('rx'), size('ry')];
      if (rx === 0 || ry === 0) return null;
      return `M${n('cx') - rx} ${n('cy')}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0z`;
    }
    case 'polygon':
    case 'polyline': {
      const points = String(p.points ?? '').trim();
      return points === '' ? null : `M${points}${tag === 'polygon' ? 'z' : ''}`;
    }
    case 'line':
      return `M${n('x1')} ${n('y1')}L${n('x2')} ${n('y2')}`;
    default:
      return null;
  }
}

type Read = (name: string, other?: number) => number;

/** A rectangle; its corners are round where one of their radii is given, half a side at most. */
function rectData(n: Read, size: Read): string | null {
  const [x, y, w, h] = [n('x'), n('y'), size('width'), size('height')];
  if (w === 0 || h === 0) return null;
  const rx = Math.min(size('rx', size('ry')), w / 2);
  const ry = Math.min(size('ry', size('rx')), h / 2);
  if (!(rx > 0 && ry > 0)) return `M${x} ${y}h${w}v${h}h${-w}z`;
  const turn = (right: number, down: number) => `a${rx} ${ry} 0 0 1 ${right} ${down}`;
  const [across, up] = [w - 2 * rx, h - 2 * ry];
  return `M${x + rx} ${y}h${across}${turn(rx, ry)}v${up}${turn(-rx, ry)}h${-across}${turn(-rx, -ry)}v${-up}${turn(rx, -ry)}z`;
}
