import { checkDrawing, type Drawing, type DrawingLayer, type Shape } from '../drawing.js';
import { layerStyle } from '../layers.js';
import { bulgeValue, coordinate } from '../number.js';
import { dxfTextR12 } from './text.js';

type Tag = readonly [code: number, value: string | number];

/**
 * A drawing as DXF R12 (AC1009) text, mm: POLYLINE with bulges, LINE, CIRCLE, TEXT and nothing later readers added.
 * The format has no units; say them in a note on the drawing.
 */
export function toDxfR12(drawing: Drawing): string {
  checkDrawing(drawing);
  const tags: readonly Tag[] = [
    ...section('HEADER', header(drawing)),
    ...section('TABLES', tables(drawing)),
    ...section('ENTITIES', drawing.layers.flatMap(entities)),
    [0, 'EOF'],
  ];
  return tags.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
}

const section = (name: string, inside: readonly Tag[]): readonly Tag[] => [
  [0, 'SECTION'],
  [2, name],
  ...inside,
  [0, 'ENDSEC'],
];

const point = ([x, y]: readonly [number, number]): readonly Tag[] => [
  [10, coordinate(x)],
  [20, coordinate(y)],
  [30, 0],
];

function header({ box }: Drawing): readonly Tag[] {
  return [
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$EXTMIN'],
    ...point(box.min),
    [9, '$EXTMAX'],
    ...point(box.max),
  ];
}

function tables({ layers }: Drawing): readonly Tag[] {
  const table = (name: string, entries: readonly (readonly Tag[])[]): readonly Tag[] => [
    [0, 'TABLE'],
    [2, name],
    [70, entries.length],
    ...entries.flatMap((e): readonly Tag[] => [[0, name], ...e]),
    [0, 'ENDTAB'],
  ];
  const continuous: readonly Tag[] = [
    [2, 'CONTINUOUS'],
    [70, 0],
    [3, 'Solid line'],
    [72, 65],
    [73, 0],
    [40, 0],
  ];
  const style: readonly Tag[] = [
    [2, 'STANDARD'],
    [70, 0],
    [40, 0],
    [41, 1],
    [50, 0],
    [71, 0],
    [42, 2.5],
    [3, 'txt'],
    [4, ''],
  ];
  const layer = ({ name }: DrawingLayer): readonly Tag[] => [
    [2, name],
    [70, 0],
    [62, layerStyle(name).number],
    [6, 'CONTINUOUS'],
  ];
  return [...table('LTYPE', [continuous]), ...table('LAYER', layers.map(layer)), ...table('STYLE', [style])];
}

function entities({ name, shapes }: DrawingLayer): readonly Tag[] {
  return shapes.flatMap((s) => entity(name, s));
}

function entity(layer: string, shape: Shape): readonly Tag[] {
  switch (shape.kind) {
    case 'line':
      return [
        [0, 'LINE'],
        [8, layer],
        ...point(shape.from),
        [11, coordinate(shape.to[0])],
        [21, coordinate(shape.to[1])],
        [31, 0],
      ];
    case 'circle':
      return [[0, 'CIRCLE'], [8, layer], ...point(shape.centre), [40, coordinate(shape.radius)]];
    case 'loop':
      return [
        [0, 'POLYLINE'],
        [8, layer],
        [66, 1],
        ...point([0, 0]),
        [70, 1],
        ...shape.loop.flatMap((v): readonly Tag[] => [
          [0, 'VERTEX'],
          [8, layer],
          ...point(v.at),
          [42, bulgeValue(v.bulge)],
        ]),
        [0, 'SEQEND'],
        [8, layer],
      ];
    case 'text':
      return [
        [0, 'TEXT'],
        [8, layer],
        ...point(shape.at),
        [40, coordinate(shape.height)],
        [1, dxfTextR12(shape.text)],
      ];
  }
}
