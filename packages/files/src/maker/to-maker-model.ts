import type { Segment } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';
import type makerjs from 'makerjs';
import type { Drawing, Shape } from '../drawing.js';
import { sidesOf } from '../sides.js';

const turn = (radian: number) => (radian * 180) / Math.PI;

/**
 * A drawing as a makerjs model, one model a layer, for people who embed. mm, y up. Models and paths are plain values,
 * as makerjs documents them, so that whoever writes no model loads no makerjs. A text becomes a model with a caption.
 */
export function toMakerModel(drawing: Drawing): makerjs.IModel {
  const models = drawing.layers.map(({ name, shapes }): [string, makerjs.IModel] => {
    const parts = shapes.map((s, i): [string, makerjs.IModel] => [`${s.kind}-${i + 1}`, shapeModel(s)]);
    return [name, { layer: name, models: Object.fromEntries(parts) }];
  });
  return { units: 'mm', models: Object.fromEntries(models) };
}

const line = (from: readonly [number, number], to: readonly [number, number]): makerjs.IPathLine => ({
  type: 'line',
  origin: [...from],
  end: [...to],
});

function captionOf([x, y]: readonly [number, number], text: string, height: number): makerjs.ICaption {
  return { text, anchor: line([x, y], [x + height * text.length, y]) };
}

function shapeModel(shape: Shape): makerjs.IModel {
  switch (shape.kind) {
    case 'text':
      return { caption: captionOf(shape.at, shape.text, shape.height) };
    case 'loop':
    case 'path':
      return { paths: sidePaths(sidesOf(shape)) };
    case 'circle': {
      const circle: makerjs.IPathCircle = {
        type: 'circle',
        origin: [...shape.centre],
        radius: shape.radius,
      };
      return { paths: { circle } };
    }
    case 'line':
      return { paths: { line: line(shape.from, shape.to) } };
    case 'point':
      return { origin: [...shape.at] };
    case 'arc': {
      const arc: makerjs.IPathArc = {
        type: 'arc',
        origin: [...shape.centre],
        radius: shape.radius,
        startAngle: shape.start,
        endAngle: shape.end,
      };
      return { paths: { arc } };
    }
  }
}

/** Sides as lines and true arcs, in order. */
function sidePaths(sides: readonly Segment[]): makerjs.IPathMap {
  const paths = sides.map((s, i): [string, makerjs.IPath] => {
    const id = `side-${i + 1}`;
    if (s.bulge === 0) return [id, line(s.from, s.to)];
    const { centre, radius, start, sweep } = arcOf(s);
    const [a, b] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
    const arc: makerjs.IPathArc = {
      type: 'arc',
      origin: [...centre],
      radius,
      startAngle: turn(a),
      endAngle: turn(b),
    };
    return [id, arc];
  });
  return Object.fromEntries(paths);
}
