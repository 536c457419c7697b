import { JobError, MM_PER_INCH, type Point } from '@tinwright/core';
import { bulgeAround, fail } from '@tinwright/core/internal';
import * as dxf from 'dxf-parser';
import { outlinesOf, type ReadOutline, type ReadStroke } from './chains.js';
import { shownDxf } from './dxf-shown.js';

/** Millimetres in the units a DXF names by number: inches, feet, mm, cm, m. */
const UNITS: Readonly<Record<number, number>> = { 1: MM_PER_INCH, 2: 304.8, 4: 1, 5: 10, 6: 1000 };

interface Vertex {
  readonly x: number;
  readonly y: number;
  /** Of a line, or of a polyline in space. */
  readonly z?: number;
  readonly bulge?: number;
  /** Of the frame of a spline, not on the line. */
  readonly splineControlPoint?: boolean;
}

interface Entity {
  readonly type: string;
  readonly vertices?: readonly Vertex[];
  readonly shape?: boolean;
  readonly is3dPolygonMesh?: boolean;
  readonly isPolyfaceMesh?: boolean;
  readonly center?: Pick<Vertex, 'x' | 'y'>;
  readonly radius?: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
  readonly extrusionDirection?: { readonly x: number; readonly y: number; readonly z?: number };
  readonly extrusionDirectionX?: number;
  readonly extrusionDirectionY?: number;
  readonly extrusionDirectionZ?: number;
}

/**
 * The closed outlines that a DXF shows: lines, arcs, circles and polylines, joined end to end. mm
 * @param perUnit millimetres in a unit of the drawing; null for what the drawing itself says
 * @throws JobError for a drawing that cannot be read, says no unit, or holds what is no closed outline
 */
export function dxfOutlines(text: string, perUnit: number | null): readonly ReadOutline[] {
  const drawing = parsed(text);
  const mm = perUnit ?? UNITS[Number(drawing.header.$INSUNITS ?? 0)];
  if (mm === undefined)
    return fail('drawing-unit', [], 'the drawing says no unit', 'Give unit: mm or in beside it');
  const lines = drawing.entities.map((e) => {
    const seen = side(e);
    return strokesOf(e).map(({ from, to, bulge }): ReadStroke => {
      const at = ([x, y]: Point): Point => [x * mm * seen, y * mm];
      return { from: at(from), to: at(to), bulge: bulge * seen };
    });
  });
  if (!lines.flat().every(({ from, to, bulge }) => [...from, ...to, bulge].every(Number.isFinite)))
    return fail('drawing-number', [], 'a coordinate in the drawing is no number', 'Write it again as DXF');
  const isLong = ({ from, to }: ReadStroke) => from[0] !== to[0] || from[1] !== to[1];
  return outlinesOf(lines.map((line) => line.filter(isLong)));
}

const TILT = 1e-6;
const RISE = 1e-3; // what programs that draw in space leave on a flat line, units of the drawing

/** 1, or -1 for an entity drawn in the mirrored frame that its direction asks for; a line stands in that of the drawing. */
function side({ type, extrusionDirection: d, ...e }: Entity): 1 | -1 {
  if (type === 'LINE') return 1;
  const [x = 0, y = 0, z = 1] = d
    ? [d.x, d.y, d.z]
    : [e.extrusionDirectionX, e.extrusionDirectionY, e.extrusionDirectionZ];
  if (Math.hypot(x, y) > TILT * Math.abs(z))
    return fail('drawing-tilted', [], `the drawing holds ${type} in a slanting plane`, 'Draw it flat');
  return z < 0 ? -1 : 1;
}

/** Strokes of an entity in its own frame and the unit of the drawing. */
function strokesOf(e: Entity): readonly ReadStroke[] {
  if (e.is3dPolygonMesh || e.isPolyfaceMesh)
    return fail(
      'drawing-entity',
      [],
      'the drawing holds a mesh',
      'Draw it with lines, arcs, circles or polylines',
    );
  if (e.type === 'ARC') return roundStrokes(e);
  const vertices = (e.vertices ?? []).filter((v) => v.splineControlPoint !== true);
  const heights = vertices.map(({ z = 0 }) => z);
  if (heights.some((z) => Math.abs(z - (heights[0] as number)) > RISE))
    return fail(
      'drawing-tilted',
      [],
      `the drawing holds ${e.type} that rises out of its plane`,
      'Draw it flat',
    );
  const closed = e.type !== 'LINE' && e.shape === true;
  return vertices.slice(0, closed ? undefined : -1).map((v, i): ReadStroke => {
    const next = vertices[(i + 1) % vertices.length] as Vertex;
    return { from: [v.x, v.y], to: [next.x, next.y], bulge: v.bulge ?? 0 };
  });
}

const WHOLE = 1e-6; // of a turn

function roundStrokes({
  center: c,
  radius = Number.NaN,
  startAngle,
  endAngle,
}: Entity): readonly ReadStroke[] {
  const middle: Point = [c?.x ?? Number.NaN, c?.y ?? Number.NaN];
  const on = (a: number): Point => [middle[0] + radius * Math.cos(a), middle[1] + radius * Math.sin(a)];
  const [start, end] = [startAngle ?? 0, endAngle ?? 0];
  const turns = (end - start) / (2 * Math.PI);
  if (turns !== 0 && Math.abs(turns - Math.round(turns)) < WHOLE)
    return [
      { from: on(0), to: on(Math.PI), bulge: 1 },
      { from: on(Math.PI), to: on(0), bulge: 1 },
    ];
  const [from, to] = [on(start), on(end)];
  return [{ from, to, bulge: bulgeAround(middle, from, to, 'ccw') }];
}

/** Its reader: loaders wrap what is no module in different ways. */
function parser(): dxf.DxfParser {
  type Loaded = { readonly DxfParser?: typeof dxf.DxfParser; readonly default?: Loaded };
  const { DxfParser, default: inner } = dxf as unknown as Loaded;
  const Parser = DxfParser ?? inner?.DxfParser ?? (inner as unknown as typeof dxf.DxfParser);
  return new Parser();
}

function parsed(text: string): { header: Record<string, unknown>; entities: readonly Entity[] } {
  try {
    const found = parser().parseSync(shownDxf(text));
    return { header: found?.header ?? {}, entities: (found?.entities ?? []) as unknown as readonly Entity[] };
  } catch (error) {
    if (error instanceof JobError) throw error;
    return fail('drawing-unread', [], 'the drawing cannot be read as DXF', 'Write it as ASCII DXF');
  }
}
