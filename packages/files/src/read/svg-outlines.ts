/// <reference path="./svg-parser.d.ts" />
import { MM_PER_INCH, type Point } from '@tinwright/core';
import { fail, MOST_CORNERS, quoted } from '@tinwright/core/internal';
import { type ElementNode, parse, type RootNode } from 'svg-parser';
import svgpath from 'svgpath';
import { chained, near, type ReadOutline, type ReadStroke } from './chains.js';
import { leastSegments, shortRuns } from './short-runs.js';

const MM: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: MM_PER_INCH,
  pt: MM_PER_INCH / 72,
  pc: MM_PER_INCH / 6,
};
type Path = ReturnType<typeof svgpath>;

const SAG = 0.01; // mm a chord may lie off a curve
const MOST_TAGS = 2 * MOST_CORNERS; // one that opens an element, one that closes it
const MOST_CHORDS = 20_000; // of one curve
const DEEPEST = 500; // groups in each other

/**
 * The closed outlines of an SVG: paths and basic shapes with their transforms, y upwards; curves as chords within
 * 0.01 mm. mm
 * @param perUnit millimetres in a unit of the drawing; null for what its width and viewBox say
 * @throws JobError for a drawing that cannot be read, says no unit, or holds what is no closed outline
 */
export function svgOutlines(text: string, perUnit: number | null): readonly ReadOutline[] {
  const svg = rootOf(text);
  const mm = perUnit ?? unitOf(svg);
  if (mm === null)
    return fail(
      'drawing-unit',
      [],
      'the drawing says no unit',
      'Give unit: mm or in beside it, or its width in mm with a viewBox',
    );
  const lines: (readonly ReadStroke[])[] = [];
  let strokes = 0;
  for (const path of pathsOf(svg, '', 0)) {
    const drawn = strokesOf(path, mm);
    if (!drawn.every(({ from, to }) => [...from, ...to].every(Number.isFinite)))
      return fail('drawing-number', [], 'a coordinate in the drawing is no number', 'Save it as plain SVG');
    strokes += drawn.length;
    if (strokes > MOST_CORNERS) return large('corners');
    lines.push(...linesOf(drawn));
  }
  // what is drawn closed is an outline of its own, though another touches it; the rest is joined across elements
  const [closed, open] = [lines.filter(isClosed), lines.filter((l) => !isClosed(l))];
  return [...closed.flatMap(chained), ...chained(open.flat())];
}

const large = (what: 'corners' | 'elements') =>
  fail(
    'drawing-large',
    [],
    `the drawing holds more than ${MOST_CORNERS} ${what}`,
    'Draw the outlines to be cut alone, and with fewer corners',
  );

/** Strokes that go on from each other as they are drawn. */
function linesOf(strokes: readonly ReadStroke[]): readonly (readonly ReadStroke[])[] {
  const lines: ReadStroke[][] = [];
  for (const s of strokes) {
    const line = lines.at(-1);
    if (line !== undefined && near((line.at(-1) as ReadStroke).to, s.from)) line.push(s);
    else lines.push([s]);
  }
  return lines;
}

const isClosed = (line: readonly ReadStroke[]) =>
  near((line[0] as ReadStroke).from, (line.at(-1) as ReadStroke).to);

function rootOf(text: string): ElementNode {
  if (manyTags(text)) return large('elements'); // a million empty ones take more room than what can be drawn
  try {
    const root: RootNode = parse(text);
    const svg = root.children.find((c) => c.type === 'element' && c.tagName === 'svg');
    if (svg !== undefined && svg.type === 'element') return svg;
  } catch {
    // told below
  }
  return fail('drawing-unread', [], 'the drawing cannot be read as SVG', 'Save it as plain SVG');
}

function manyTags(text: string): boolean {
  let count = 0;
  for (let at = text.indexOf('<'); at >= 0 && count <= MOST_TAGS; at = text.indexOf('<', at + 1)) count += 1;
  return count > MOST_TAGS;
}

/** Millimetres in a unit of the drawing; null where it does not say. */
function unitOf({ properties: p = {} }: ElementNode): number | null {
  const [wide, high] = [sizeOf(p.width), sizeOf(p.height)];
  if (wide === null) return null;
  const box = String(p.viewBox ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , x = 0, y = 0] = box;
  if (box.length !== 4 || !(x > 0 && y > 0)) return null; // dots of a screen, whatever its width is given in
  const across = wide / x;
  const up = high === null ? across : high / y;
  // a size that is rounded is off by less; where it is not, programs draw to the smaller scale or to two
  if (Math.abs(across / up - 1) > 0.005)
    return fail(
      'drawing-unit',
      [],
      "the drawing's width and height do not go with its viewBox",
      'Give unit: mm or in beside it, or make them go together',
    );
  return across;
}

/** A length with a unit that a rule measures; null for any other. */
function sizeOf(text: unknown): number | null {
  const [, size, unit] = /^\s*([\d.]+)\s*(mm|cm|in|pt|pc)\s*$/.exec(String(text ?? '')) ?? [];
  if (size === undefined || unit === undefined || !(Number(size) > 0)) return null;
  return Number(size) * (MM[unit] as number);
}

/** Elements that hold nothing to be seen where they stand. */
const UNSEEN = 'defs clipPath mask symbol marker pattern text title desc metadata style'.split(' ');
/** Elements that show what stands elsewhere, or in a frame of its own. */
const ELSEWHERE = ['use', 'svg', 'image', 'foreignObject'];

/** Path data with the transforms round it applied, one path after the other. */
function* pathsOf(node: ElementNode, around: string, depth: number): Generator<Path, void> {
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
    yield path.transform(transform);
  }
  for (const c of node.children)
    if (typeof c === 'object' && c.type === 'element') yield* pathsOf(c, transform, depth + 1);
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

/** Chords of a path, in mm, y up. */
function strokesOf(drawn: Path, mm: number): readonly ReadStroke[] {
  const path = drawn.abs().unshort().unarc();
  const strokes: ReadStroke[] = [];
  let [at, start]: [Point, Point] = [
    [0, 0],
    [0, 0],
  ];
  const on = ([x, y]: Point): Point => [x * mm, -y * mm];
  const line = (to: Point) => {
    if (to[0] !== at[0] || to[1] !== at[1]) strokes.push({ from: on(at), to: on(to), bulge: 0 });
    at = to;
  };
  path.iterate(([op, ...v]) => {
    const p = v as number[];
    const end: Point = [p.at(-2) ?? 0, p.at(-1) ?? 0];
    if (op === 'M') [at, start] = [end, end];
    else if (op === 'Z' || op === 'z') line(start);
    else if (op === 'H') line([p[0] as number, at[1]]);
    else if (op === 'V') line([at[0], p[0] as number]);
    else if (op === 'L') line(end);
    else for (const to of chords(at, p, mm)) line(to);
  });
  return strokes;
}

/** Points along a Bézier curve, the last its end. */
function chords(from: Point, v: readonly number[], mm: number): readonly Point[] {
  const controls: Point[] = [from];
  for (let i = 0; i + 1 < v.length; i += 2) controls.push([v[i] as number, v[i + 1] as number]);
  const bend = controls.slice(2).reduce((most, p, i) => {
    const [a, b] = [controls[i] as Point, controls[i + 1] as Point];
    return Math.max(most, Math.hypot(p[0] - 2 * b[0] + a[0], p[1] - 2 * b[1] + a[1]));
  }, 0);
  const degree = controls.length - 1;
  // chords of n equal steps lie within degree (degree − 1) / 8 n² of the second differences
  const n = Math.max(1, Math.ceil(Math.sqrt((degree * (degree - 1) * bend * mm) / (8 * SAG))));
  if (!(n <= MOST_CHORDS))
    return fail('drawing-large', [], 'the drawing holds a curve of kilometres', 'Check its unit and sizes');
  return Array.from({ length: n }, (_, i) =>
    i === n - 1 ? (controls.at(-1) as Point) : pointAt(controls, (i + 1) / n),
  );
}

function pointAt(controls: readonly Point[], t: number): Point {
  if (controls.length === 1) return controls[0] as Point;
  const next = controls.slice(1).map((p, i): Point => {
    const q = controls[i] as Point;
    return [q[0] + (p[0] - q[0]) * t, q[1] + (p[1] - q[1]) * t];
  });
  return pointAt(next, t);
}
