import { isArc, type Loop, type Segment, segments } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';
import type { Drawing, Shape } from '../drawing.js';

/** The drawing with every loop as lines and arcs in their order. */
export function simpleCurves(drawing: Drawing): Drawing {
  const layers = drawing.layers.map((layer) => ({
    ...layer,
    shapes: layer.shapes.flatMap((s) => (s.kind === 'loop' ? runsOf(s.loop) : [s])),
  }));
  return { ...drawing, layers };
}

const runsOf = (loop: Loop): readonly Shape[] => segments(loop).map(runOf);

/** A side as a line or an arc. */
export function runOf(s: Segment): Shape {
  if (!isArc(s)) return { kind: 'line', from: s.from, to: s.to };
  const { centre, radius, start, sweep } = arcOf(s);
  const degrees = (radians: number) => ((((radians * 180) / Math.PI) % 360) + 360) % 360;
  const [from, to] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  return { kind: 'arc', centre, radius, start: degrees(from), end: degrees(to) };
}
