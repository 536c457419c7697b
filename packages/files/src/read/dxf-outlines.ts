import { MM_PER_INCH, type Point } from '@tinwright/core';
import { bulgeAround, fail } from '@tinwright/core/internal';
import * as dxf from 'dxf-parser';
import { chained, type ReadOutline, type ReadStroke } from './chains.js';

/** Millimetres in the units a DXF names by number: inches, feet, mm, cm, m. */
const UNITS: Readonly<Record<number, number>> = { 1: MM_PER_INCH, 2: 304.8, 4: 1, 5: 10, 6: 1000 };

interface Entity {
  readonly type: string;
  readonly vertices?: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[];
  readonly shape?: boolean;
  readonly center?: { readonly x: number; readonly y: number };
  readonly radius?: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
}

/**
 * The closed outlines of a DXF: lines, arcs, circles and polylines, joined end to end. mm
 * @param perUnit millimetres in a unit of the drawing; null for what the drawing itself says
 * @throws JobError for a drawing that cannot be read, says no unit, or holds what is no closed outline
 */
export function dxfOutlines(text: string, perUnit: number | null): readonly ReadOutline[] {
  const drawing = parsed(text);
  const mm = perUnit ?? UNITS[Number(drawing.header.$INSUNITS ?? 0)];
  if (mm === undefined)
    return fail('drawing-unit', [], 'the drawing says no unit', 'Give unit: mm or in beside it');
  const at = (p: { x: number; y: number }): Point => [p.x * mm, p.y * mm];
  const strokes = drawing.entities.flatMap((e): readonly ReadStroke[] => {
    const { vertices = [], center, radius } = e;
    switch (e.type) {
      case 'LINE':
      case 'LWPOLYLINE':
      case 'POLYLINE': {
        const closed = e.type !== 'LINE' && e.shape === true;
        return vertices.slice(0, closed ? undefined : -1).map((v, i) => {
          const next = vertices[(i + 1) % vertices.length] as typeof v;
          return { from: at(v), to: at(next), bulge: v.bulge ?? 0 };
        });
      }
      case 'CIRCLE':
      case 'ARC': {
        if (center === undefined || radius === undefined) return [];
        const on = (a: number): Point =>
          at({ x: center.x + radius * Math.cos(a), y: center.y + radius * Math.sin(a) });
        if (e.type === 'CIRCLE')
          return [
            { from: on(0), to: on(Math.PI), bulge: 1 },
            { from: on(Math.PI), to: on(0), bulge: 1 },
          ];
        const [from, to] = [on(e.startAngle ?? 0), on(e.endAngle ?? 0)];
        return [{ from, to, bulge: bulgeAround(at(center), from, to, 'ccw') }];
      }
      case 'TEXT':
      case 'MTEXT':
      case 'POINT':
        return [];
      default:
        return fail(
          'drawing-entity',
          [],
          `the drawing holds ${e.type}, which is no line, arc, circle or polyline`,
          'Draw it with those',
        );
    }
  });
  return chained(strokes.filter((s) => s.from[0] !== s.to[0] || s.from[1] !== s.to[1]));
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
    if (countsTooMany(text)) throw new RangeError('a polyline of more corners than the file has lines');
    const found = parser().parseSync(text);
    return { header: found?.header ?? {}, entities: (found?.entities ?? []) as unknown as readonly Entity[] };
  } catch {
    return fail('drawing-unread', [], 'the drawing cannot be read as DXF', 'Write it as ASCII DXF');
  }
}

const COUNT = 90; // group code of how many corners a polyline has

/** The reader goes on for as many corners as a polyline says it has, past the end of the file too. */
function countsTooMany(text: string): boolean {
  const lines = text.split('\n');
  return lines.some(
    (line, i) => i % 2 === 0 && Number(line) === COUNT && Number(lines[i + 1]) > lines.length,
  );
}
