import type { Box, Point } from '@tinwright/core';
import type { LayerLooks } from './layer-looks.js';
import type { LayerName, LayerPaint, LayerPaints, OwnLayerName } from './layers.js';
import { coordinate } from './number.js';
import { type Cornered, cornersOf } from './sides.js';

/**
 * A line, point, circle, arc, closed loop, open path or text of a drawing. mm, y up. Text runs to the right from its lower left corner,
 * or is centred on `at`; `rotation` in degrees, counter-clockwise.
 */
export type Shape =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'point'; readonly at: Point }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  | {
      readonly kind: 'arc';
      readonly centre: Point;
      readonly radius: number;
      /** Degrees, counter-clockwise from `start` to `end`. */
      readonly start: number;
      readonly end: number;
    }
  | Cornered
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly height: number;
      readonly text: string;
      readonly centred?: boolean;
      readonly rotation?: number;
    };

/** What is drawn on one layer. */
export interface DrawingLayer {
  /** Ours, or one of your own. */
  readonly name: LayerName | OwnLayerName;
  readonly shapes: readonly Shape[];
}

/**
 * A drawing before it becomes a file: layers in the order they are written, none of them empty. For a DXF a layer may
 * come again, where the order of cutting goes back and forth between layers. `box` encloses all lines; mm, y up.
 */
export interface Drawing {
  readonly title: string;
  readonly layers: readonly DrawingLayer[];
  readonly box: Box;
  /** Unit of all lengths; mm where it is not said. */
  readonly unit?: 'in';
  /** What layers are called in a DXF, and how they look there. */
  readonly looks?: LayerLooks;
  /** Colours and widths of layers, ours or one's own, where they are other than ours. */
  readonly paints?: LayerPaints;
}

/**
 * Hold a drawing to what every writer relies on: names that every reader takes, loops of two corners or more, plain
 * finite numbers.
 * @throws RangeError naming the layer
 */
export function checkDrawing({ layers, box, paints = {} }: Drawing): void {
  for (const [name, paint] of Object.entries(paints)) checkPaint(name, paint);
  for (const { name, shapes } of layers) {
    if (!NAME.test(name))
      throw new RangeError(`layer ${JSON.stringify(name)} given, 1 to 31 of A-Z a-z 0-9 _ $ - allowed`);
    const check = (value: number) => checked(value, name);
    for (const shape of shapes) eachNumber(shape, check);
    const short = shapes.find((s) => (s.kind === 'loop' || s.kind === 'path') && cornersOf(s).length < 2);
    if (short !== undefined)
      throw new RangeError(`layer ${name}: a ${short.kind} of fewer than two corners given`);
    const flat = shapes.find(
      (s) =>
        ((s.kind === 'circle' || s.kind === 'arc') && s.radius <= 0) || (s.kind === 'text' && s.height <= 0),
    );
    if (flat !== undefined) throw new RangeError(`layer ${name}: a ${flat.kind} without size given`);
  }
  for (const v of [...box.min, ...box.max]) checked(v, 'box');
}

/** What also older readers take. */
const NAME = /^[A-Za-z0-9_$-]{1,31}$/;

function checkPaint(layer: string, { colour = '#000000', number = 7, width = 0.18 }: LayerPaint): void {
  const wrong = !/^#[0-9a-f]{6}$/i.test(colour)
    ? `colour ${JSON.stringify(colour)} given, such as #0072B2 allowed`
    : !(Number.isInteger(number) && number >= 1 && number <= 255)
      ? `number ${number} given, 1 to 255 allowed`
      : !(width > 0 && width <= 5)
        ? `width ${width} given, more than 0 to 5 mm allowed`
        : null;
  if (wrong !== null) throw new RangeError(`layer ${layer}: ${wrong}`);
}

function eachNumber(shape: Shape, check: (value: number) => void): void {
  if (shape.kind !== 'loop' && shape.kind !== 'path') numbers(shape).forEach(check);
  else
    for (const { at, bulge } of cornersOf(shape)) {
      at.forEach(check);
      check(bulge);
    }
}

function numbers(shape: Exclude<Shape, { readonly kind: 'loop' | 'path' }>): readonly number[] {
  switch (shape.kind) {
    case 'line':
      return [...shape.from, ...shape.to];
    case 'point':
      return shape.at;
    case 'circle':
      return [...shape.centre, shape.radius];
    case 'arc':
      return [...shape.centre, shape.radius, shape.start, shape.end];
    case 'text':
      return [...shape.at, shape.height, shape.rotation ?? 0];
  }
}

function checked(value: number, layer: string): void {
  try {
    coordinate(value);
  } catch (error) {
    throw new RangeError(`layer ${layer}: ${(error as RangeError).message}`);
  }
}
