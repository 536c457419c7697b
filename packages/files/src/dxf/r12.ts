import { checkDrawing, type Drawing, type Shape } from '../drawing.js';
import { type LayerRow, rowOf, rowsOf } from '../layer-looks.js';
import { bulgeValue, coordinate } from '../number.js';
import { point, section, type Tag, textOf } from './tag.js';
import { dxfTextR12 } from './text.js';

/**
 * A drawing as DXF R12 (AC1009) text, mm: POLYLINE with bulges, LINE, CIRCLE, TEXT and nothing later readers added.
 * The format has no units; say them in a note on the drawing.
 */
export function toDxfR12(drawing: Drawing): string {
  checkDrawing(drawing);
  const tags: readonly Tag[] = [
    ...section('HEADER', header(drawing)),
    ...section('TABLES', tables(drawing)),
    ...section(
      'ENTITIES',
      drawing.layers.flatMap(({ name, shapes }) =>
        shapes.flatMap((s) => entity(rowOf(drawing, name).name, s)),
      ),
    ),
    [0, 'EOF'],
  ];
  return textOf(tags);
}

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

function tables(drawing: Drawing): readonly Tag[] {
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
  const layer = ({ name, number }: LayerRow): readonly Tag[] => [
    [2, name],
    [70, 0],
    [62, number],
    [6, 'CONTINUOUS'], // linetypes are left to what reads the file: the least that any reader takes
  ];
  const rows = rowsOf(
    drawing,
    drawing.layers.map((l) => l.name),
  );
  return [...table('LTYPE', [continuous]), ...table('LAYER', rows.map(layer)), ...table('STYLE', [style])];
}

function entity(layer: string, shape: Shape): readonly Tag[] {
  switch (shape.kind) {
    case 'line':
      return [[0, 'LINE'], [8, layer], ...point(shape.from), ...point(shape.to, 11)];
    case 'point':
      return [[0, 'POINT'], [8, layer], ...point(shape.at)];
    case 'circle':
      return [[0, 'CIRCLE'], [8, layer], ...point(shape.centre), [40, coordinate(shape.radius)]];
    case 'arc':
      return [
        [0, 'ARC'],
        [8, layer],
        ...point(shape.centre),
        [40, coordinate(shape.radius)],
        [50, coordinate(shape.start)],
        [51, coordinate(shape.end)],
      ];
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
