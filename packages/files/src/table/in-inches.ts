import { MM_PER_INCH, type Point } from '@tinwright/core';
import type { Drawing, Shape } from '../drawing.js';

/** The drawing with all lengths in inches, and saying so. */
export function inInches(drawing: Drawing): Drawing {
  const layers = drawing.layers.map((layer) => ({ ...layer, shapes: layer.shapes.map(smaller) }));
  const { min, max } = drawing.box;
  return { ...drawing, layers, box: { min: inches(min), max: inches(max) }, unit: 'in' };
}

const inch = (mm: number) => mm / MM_PER_INCH;
const inches = ([x, y]: Point): Point => [inch(x), inch(y)];

function smaller(s: Shape): Shape {
  switch (s.kind) {
    case 'line':
      return { ...s, from: inches(s.from), to: inches(s.to) };
    case 'point':
      return { ...s, at: inches(s.at) };
    case 'circle':
    case 'arc':
      return { ...s, centre: inches(s.centre), radius: inch(s.radius) };
    case 'loop':
      return { ...s, loop: s.loop.map((v) => ({ ...v, at: inches(v.at) })) };
    case 'path':
      return { ...s, path: s.path.map((v) => ({ ...v, at: inches(v.at) })) };
    case 'text':
      return { ...s, at: inches(s.at), height: inch(s.height) };
  }
}
