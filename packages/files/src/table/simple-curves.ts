import { isArc, type Segment } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';
import type { Drawing, Shape } from '../drawing.js';
import { sidesOf } from '../sides.js';

/** The drawing with every loop and path as lines and arcs in their order. */
export function simpleCurves(drawing: Drawing): Drawing {
  const layers = drawing.layers.map((layer) => ({
    ...layer,
    shapes: layer.shapes.flatMap((s) =>
      s.kind === 'loop' || s.kind === 'path' ? sidesOf(s).map(runOf) : [s],
    ),
  }));
  return { ...drawing, layers };
}

/** A side as a line or an arc. */
export function runOf(s: Segment): Shape {
  if (!isArc(s)) return { kind: 'line', from: s.from, to: s.to };
  const { centre, radius, start, sweep } = arcOf(s);
  const degrees = (radians: number) => ((((radians * 180) / Math.PI) % 360) + 360) % 360;
  const [from, to] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  return { kind: 'arc', centre, radius, start: degrees(from), end: degrees(to) };
}
