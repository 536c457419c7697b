/// <reference path="./svg-parser.d.ts" />
import { fail, MOST_CORNERS, quoted } from '@tinwright/core/internal';
import type { ElementNode } from 'svg-parser';
import svgpath from 'svgpath';
import { leastSegments, shortRuns } from './short-runs.js';

/** Path data that is read, in units of the drawing, y down. */
export type DrawnPath = ReturnType<typeof svgpath>;

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

/** Elements that hold nothing to be seen where they stand. */
const UNSEEN = 'defs clipPath mask symbol marker pattern text title desc metadata style'.split(' ');
/** Elements that show what stands elsewhere, or in a frame of its own. */
const ELSEWHERE = ['use', 'svg', 'image', 'foreignObject'];

/**
 * Path data of an element and all in it, absolute and without arcs, with the transforms round it applied, one path after
 * the other; what is not shown is left out.
 * @throws JobError for what is shown and cannot be read
 */
export function* pathsOf(node: ElementNode, around: string, depth: number): Generator<DrawnPath, void> {
  if (depth > DEEPEST)
    return fail('drawing-deep', [], 'the drawing is nested too deeply', 'Save it as plain SVG');
  const { tagName = '', properties = {} } = node;
  if (UNSEEN.includes(tagName) || isHidden(properties)) return;
  if (depth > 0 && ELSEWHERE.includes(tagName))
    return fail(
      'drawing-entity',
      [],
      `the drawing holds ${tagName}, which is no path or shape`,
      'Make paths of what it shows, or take it out',
    );
  const transform = `${around} ${transformOf(properties)}`.trim();
  const d = dataOf(tagName, properties);
  if (d !== null) {
    if (leastSegments(d) > MOST_CORNERS) return large('corners');
    const path = svgpath(shortRuns(d));
    if ((path as { readonly err?: string }).err) return broken(tagName, 'd', d);
    if ((path as unknown as { readonly segments: readonly unknown[] }).segments.length > MOST_CORNERS)
      return large('corners');
    // curves in place of arcs before the transform: what applies it turns an arc the wrong way where it mirrors
    yield path.abs().unshort().unarc().transform(transform);
  }
  for (const c of node.children)
    if (typeof c === 'object' && c.type === 'element') yield* pathsOf(c, transform, depth + 1);
}

/** What a style sheet may not say: it hides what is drawn, or puts it elsewhere. */
const SHAPING = /(?:^|[{;\s])(?:display|visibility|transform|d|cx|cy|r|rx|ry|x|y|width|height)\s*:/;

/** Refuses a drawing whose style sheets decide what is seen where, which is not followed. @throws JobError */
export function checkStyles(text: string): void {
  for (const sheet of text.split(/<style\b/i).slice(1)) {
    const [rules = ''] = sheet.split(/<\/style/i, 1);
    const [said] = SHAPING.exec(rules) ?? [];
    if (said !== undefined)
      fail(
        'drawing-entity',
        [],
        `a style sheet of the drawing says ${quoted(said.replace(/[{;:\s]/g, ''))}`,
        'Say it with the shapes, or save it as plain SVG',
      );
  }
}

type Properties = NonNullable<ElementNode['properties']>;

/** What a style says of a property, else what an attribute does. */
const styled = ({ style, ...p }: Properties, name: string): string =>
  new RegExp(`(?:^|;)\\s*${name}\\s*:\\s*([^;]*)`).exec(String(style ?? ''))?.[1]?.trim() ??
  String(p[name] ?? '');

const isHidden = (p: Properties) =>
  styled(p, 'display') === 'none' || /^(hidden|collapse)$/.test(styled(p, 'visibility'));

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
function transformOf(p: Properties): string {
  const said = styled(p, 'transform').trim();
  if (said === '' || said === 'none') return '';
  const origin = styled(p, 'transform-origin');
  if (origin !== '') return broken('transform-origin', '', origin);
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
  switch (tag) {
    case 'path':
      return String(p.d ?? '');
    case 'rect':
      return rectData(n);
    case 'circle':
    case 'ellipse': {
      const [rx, ry] = tag === 'circle' ? [n('r'), n('r')] : [n('rx'), n('ry')];
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

/** A rectangle; its corners are round where one of their radii is given, half a side at most. */
function rectData(n: (name: string, other?: number) => number): string {
  const [x, y, w, h] = [n('x'), n('y'), n('width'), n('height')];
  const rx = Math.min(n('rx', n('ry')), w / 2);
  const ry = Math.min(n('ry', n('rx')), h / 2);
  if (!(rx > 0 && ry > 0)) return `M${x} ${y}h${w}v${h}h${-w}z`;
  const turn = (right: number, down: number) => `a${rx} ${ry} 0 0 1 ${right} ${down}`;
  const [across, up] = [w - 2 * rx, h - 2 * ry];
  return `M${x + rx} ${y}h${across}${turn(rx, ry)}v${up}${turn(-rx, ry)}h${-across}${turn(-rx, -ry)}v${-up}${turn(rx, -ry)}z`;
}
