import { type Loop, MM_PER_INCH, type Path, type Point, type Segment } from '@tinwright/core';
import { fail, loopArea, meetings, plainNumber } from '@tinwright/core/internal';
import type makerjs from 'makerjs';
import { chained } from './chained.js';

/** Millimetres in a unit of makerjs. */
const PER_UNIT: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000, inch: MM_PER_INCH, foot: 304.8 };
const TOUCH = 1e-3; // mm: ends nearer than this are one

/** A line or arc of a model, with the way to it. */
export interface MakerSegment extends Segment {
  readonly path: Path;
}

/**
 * The closed chains of a makerjs model as loops in mm, arcs as arcs, counter-clockwise, the largest first: the outline of
 * a sheet, or openings for `cutout` of `@tinwright/core/family`. Captions are left out; a model without a unit is in mm.
 * Paths and models are plain values, so that no makerjs is loaded.
 * @throws JobError `maker-open`, `maker-crossing` or `maker-path` with the place in mm and the way to the path
 */
export function fromMakerModel(model: makerjs.IModel): readonly Loop[] {
  const per = PER_UNIT[model.units ?? 'mm'];
  if (per === undefined)
    return fail(
      'maker-unit',
      ['units'],
      `${String(model.units)} given`,
      `Known: ${Object.keys(PER_UNIT).join(', ')}`,
    );
  const found = segmentsOf(model, [0, 0], per, []);
  refuseCrossings(found);
  const loops = chained(found, TOUCH, (at, path, others) =>
    others === 0
      ? fail('maker-open', path, `the chain is open at ${placed(at)}`, 'Close it, or leave it out')
      : fail('maker-crossing', path, `${others + 1} paths end at ${placed(at)}`, 'Let two meet there'),
  );
  const wound = loops.map((loop) => (loopArea(loop) < 0 ? turnedRound(loop) : loop));
  return wound.toSorted((a, b) => loopArea(b) - loopArea(a));
}

const placed = ([x, y]: Point) => `${plainNumber(x, 3)}, ${plainNumber(y, 3)} mm`;

/** The same loop the other way round. */
function turnedRound(loop: Loop): Loop {
  return loop.map((_, i) => {
    const [to, from] = [loop.at(-i), loop.at(-i - 1)];
    return { at: to?.at ?? [0, 0], bulge: -(from?.bulge ?? 0) };
  });
}

function segmentsOf(model: makerjs.IModel, [x, y]: Point, per: number, path: Path): readonly MakerSegment[] {
  const at: Point = [x + (model.origin?.[0] ?? 0), y + (model.origin?.[1] ?? 0)];
  const own = Object.entries(model.paths ?? {}).flatMap(([id, p]) =>
    pathSegments(p, at, per, [...path, 'paths', id]),
  );
  const inner = Object.entries(model.models ?? {}).flatMap(([id, m]) =>
    segmentsOf(m, at, per, [...path, 'models', id]),
  );
  return [...own, ...inner];
}

function pathSegments(p: makerjs.IPath, [ox, oy]: Point, per: number, path: Path): readonly MakerSegment[] {
  const on = (at: ArrayLike<number> | undefined): Point => [
    (ox + (at?.[0] ?? Number.NaN)) * per,
    (oy + (at?.[1] ?? Number.NaN)) * per,
  ];
  const numbers = (values: readonly unknown[]) =>
    values.every((v) => typeof v === 'number' && Number.isFinite(v));
  const wrong = () =>
    fail(
      'maker-path',
      path,
      `a path of type ${JSON.stringify(p.type)} cannot be read`,
      'Lines, arcs and circles are read',
    );
  if (p.type === 'line') {
    const { origin, end } = p as unknown as Ends;
    return numbers([...on(origin), ...on(end)])
      ? [{ from: on(origin), to: on(end), bulge: 0, path }]
      : wrong();
  }
  const { origin, radius } = p as unknown as Round;
  if ((p.type !== 'circle' && p.type !== 'arc') || !numbers([...on(origin), radius]) || radius <= 0)
    return wrong();
  const { startAngle = 0, endAngle = 360 } = p as Partial<makerjs.IPathArc>;
  const sweep = p.type === 'circle' ? 360 : (((endAngle - startAngle) % 360) + 360) % 360 || 360;
  const point = (degrees: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    return on([
      (origin[0] as number) + radius * Math.cos(angle),
      (origin[1] as number) + radius * Math.sin(angle),
    ]);
  };
  // halves: a bulge cannot say a whole turn
  const middle = startAngle + sweep / 2;
  const bulge = Math.tan((sweep * Math.PI) / 180 / 8);
  return [
    { from: point(startAngle), to: point(middle), bulge, path },
    { from: point(middle), to: point(startAngle + sweep), bulge, path },
  ];
}

/** Points of makerjs, as they are. */
interface Ends {
  readonly origin: ArrayLike<number>;
  readonly end: ArrayLike<number>;
}
interface Round {
  readonly origin: ArrayLike<number>;
  readonly radius: number;
}

/** Two paths meet at their ends or nowhere. */
function refuseCrossings(all: readonly MakerSegment[]): void {
  const boxes = all.map(boxOf);
  const ends = ({ from, to }: Segment) => [from, to];
  for (const [i, a] of all.entries())
    for (let j = i + 1; j < all.length; j += 1) {
      const b = all[j] as MakerSegment;
      if (apart(boxes[i] as Bounds, boxes[j] as Bounds)) continue;
      const crossing = meetings(a, b).find((p) => ![a, b].every((s) => ends(s).some((e) => near(e, p))));
      if (crossing !== undefined)
        fail(
          'maker-crossing',
          b.path,
          `it meets ${a.path.join('.')} at ${placed(crossing)}`,
          'Let paths meet at their ends alone',
        );
    }
}

const near = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) < TOUCH;

type Bounds = readonly [left: number, low: number, right: number, high: number];

/** Round a segment, generously where it is an arc. */
function boxOf({ from, to, bulge }: Segment): Bounds {
  const more = (Math.abs(bulge) * Math.hypot(to[0] - from[0], to[1] - from[1])) / 2 + TOUCH;
  const [x, y] = [
    [from[0], to[0]],
    [from[1], to[1]],
  ] as const;
  return [Math.min(...x) - more, Math.min(...y) - more, Math.max(...x) + more, Math.max(...y) + more];
}

const apart = (a: Bounds, b: Bounds) => a[2] < b[0] || b[2] < a[0] || a[3] < b[1] || b[3] < a[1];
