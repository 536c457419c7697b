import {
  type AnyFamily,
  type Asked,
  type Formed,
  type PartPlan,
  type Point,
  planJob,
  readJob,
} from '@tinwright/core';
import type { Drawing, DrawingLayer, Shape } from '../drawing.js';
import { dimensions } from '../picture/dimensions.js';
import { partSurface } from '../picture/part-surface.js';
import { ISOMETRIC } from '../picture/view.js';
import { visibleLines } from '../picture/visible.js';

const PAGE = 150; // mm, the longer side of a picture

/**
 * Isometric picture of a formed part (ISO 5456-3), hidden lines removed, with dimension lines for `asked`.
 * Scaled to about 150 mm; the drawing's y is up.
 */
export function partPicture(title: string, formed: Formed, asked: readonly Asked[] = []): Drawing {
  const lines = visibleLines(partSurface(formed, ISOMETRIC), ISOMETRIC);
  const points = lines.flatMap((l) => [l.from, l.to]);
  const extent = (k: 0 | 1) => Math.max(...points.map((p) => p[k])) - Math.min(...points.map((p) => p[k]));
  const scale = PAGE / Math.max(extent(0), extent(1), 1);
  const at = ([x, y]: Point): Point => [x * scale, y * scale];
  const drawn = (kind: 'edge' | 'bend') =>
    lines
      .filter((l) => l.kind === kind)
      .map((l): Shape => ({ kind: 'line', from: at(l.from), to: at(l.to) }));
  const sizes = dimensions(formed, asked, ISOMETRIC, scale);
  const layers: readonly DrawingLayer[] = [
    { name: 'EDGE', shapes: drawn('edge') },
    { name: 'BEND', shapes: drawn('bend') },
    { name: 'DIMENSION', shapes: sizes.lines },
    { name: 'LABEL', shapes: sizes.texts },
  ];
  const full = layers.filter((l) => l.shapes.length > 0);
  return { title, layers: full, box: boxOf(full) };
}

/** Picture of a family's example with the names of its sizes, in 1 mm mild steel bent to 1 mm inside. */
export function familyPicture(family: AnyFamily): Drawing {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [{ name: 'example', family: family.name, ...family.describe.example }],
  };
  const [plan] = planJob(readJob(data, [family])).parts as [PartPlan];
  return partPicture(family.name, plan.formed, plan.part.asked);
}

/** Box round lines and texts; a centred text is taken to reach its half length every way. */
function boxOf(layers: readonly DrawingLayer[]): Drawing['box'] {
  const points = layers
    .flatMap((l) => l.shapes)
    .flatMap((s): readonly Point[] => {
      if (s.kind === 'line') return [s.from, s.to];
      if (s.kind !== 'text') return [];
      const a = ((s.rotation ?? 0) * Math.PI) / 180;
      const [dx, dy] = [
        0.4 * s.height * s.text.length * Math.cos(a),
        0.4 * s.height * s.text.length * Math.sin(a),
      ];
      return [
        [s.at[0] - dx, s.at[1] - Math.abs(dy)],
        [s.at[0] + dx, s.at[1] + Math.abs(dy) + s.height],
      ];
    });
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}
