import { arcOf, type Loop, segments } from '@tinwright/core';
import makerjs from 'makerjs';
import type { Drawing, Shape } from '../drawing.js';

const turn = (radian: number) => (radian * 180) / Math.PI;

/**
 * A drawing as a makerjs model, one model a layer, for people who embed. mm, y up.
 * A text becomes a model with a caption.
 */
export function toMakerModel(drawing: Drawing): makerjs.IModel {
  const models = drawing.layers.map(({ name, shapes }): [string, makerjs.IModel] => {
    const parts = shapes.map((s, i): [string, makerjs.IModel] => [`${s.kind}-${i + 1}`, shapeModel(s)]);
    return [name, { layer: name, models: Object.fromEntries(parts) }];
  });
  return { units: makerjs.unitType.Millimeter, models: Object.fromEntries(models) };
}

function captionOf([x, y]: readonly [number, number], text: string, height: number): makerjs.ICaption {
  return { text, anchor: new makerjs.paths.Line([x, y], [x + height * text.length, y]) };
}

function shapeModel(shape: Shape): makerjs.IModel {
  if (shape.kind === 'text') return { caption: captionOf(shape.at, shape.text, shape.height) };
  if (shape.kind === 'loop') return loopModel(shape.loop);
  if (shape.kind === 'circle')
    return { paths: { circle: new makerjs.paths.Circle([...shape.centre], shape.radius) } };
  return { paths: { line: new makerjs.paths.Line([...shape.from], [...shape.to]) } };
}

/** A closed loop as lines and true arcs, in order. */
export function loopModel(loop: Loop): makerjs.IModel {
  const paths = segments(loop).map((s, i): [string, makerjs.IPath] => {
    if (s.bulge === 0) return [`side-${i + 1}`, new makerjs.paths.Line([...s.from], [...s.to])];
    const { centre, radius, start, sweep } = arcOf(s);
    const [a, b] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
    return [`side-${i + 1}`, new makerjs.paths.Arc([...centre], radius, turn(a), turn(b))];
  });
  return { paths: Object.fromEntries(paths) };
}
