import { checkDrawing, type Drawing, type Shape } from '../drawing.js';
import { rowOf, rowsOf } from '../layer-looks.js';
import { bulgeValue, coordinate } from '../number.js';
import { cornersOf } from '../sides.js';
import { BLOCKS, CLASSES, objects } from './frame.js';
import { entityHandle, HANDLE } from './handles.js';
import { tables } from './tables.js';
import { point, section, tag, tags } from './tag.js';
import { dxfText } from './text.js';

/** A drawing as DXF R2000 (AC1015) text, in the drawing's unit. Same drawing, same bytes. */
export function toDxf(drawing: Drawing): string {
  checkDrawing(drawing);
  const { min, max } = drawing.box;
  const entities = drawing.layers.flatMap(({ name, shapes }) => {
    const layer = rowOf(drawing, name).name;
    return shapes.map((shape) => ({ layer, shape }));
  });
  const rows = rowsOf(
    drawing,
    drawing.layers.map((l) => l.name),
  );
  const view = [Math.max(1, coordinate(max[0] - min[0])), Math.max(1, coordinate(max[1] - min[1]))] as const;
  return [
    section('HEADER', header(drawing, entities.length)),
    CLASSES,
    tables(rows, view),
    BLOCKS,
    section(
      'ENTITIES',
      entities.map(({ layer, shape }, i) => entity(layer, shape, entityHandle(i))).join(''),
    ),
    objects({
      min: [coordinate(min[0]), coordinate(min[1])],
      max: [coordinate(max[0]), coordinate(max[1])],
    }),
    tag(0, 'EOF'),
  ].join('');
}

function header({ box, unit }: Drawing, entities: number): string {
  const inches = unit === 'in';
  return [
    tags([9, '$ACADVER'], [1, 'AC1015'], [9, '$DWGCODEPAGE'], [3, 'ANSI_1252'], [9, '$INSBASE']),
    point([0, 0]),
    tag(9, '$EXTMIN'),
    point(box.min),
    tag(9, '$EXTMAX'),
    point(box.max),
    tags([9, '$CLAYER'], [8, '0'], [9, '$INSUNITS'], [70, inches ? 1 : 4]),
    tags([9, '$MEASUREMENT'], [70, inches ? 0 : 1], [9, '$HANDSEED'], [5, entityHandle(entities)]),
  ].join('');
}

const IN_MODEL = tags([330, HANDLE.model], [100, 'AcDbEntity']);

function entity(layer: string, shape: Shape, handle: string): string {
  const start = (kind: string, type: string) =>
    tag(0, kind) + tag(5, handle) + IN_MODEL + tag(8, layer) + tag(100, type);
  switch (shape.kind) {
    case 'line':
      return start('LINE', 'AcDbLine') + point(shape.from) + point(shape.to, 11);
    case 'point':
      return start('POINT', 'AcDbPoint') + point(shape.at);
    case 'circle':
      return start('CIRCLE', 'AcDbCircle') + point(shape.centre) + tag(40, coordinate(shape.radius));
    case 'arc':
      return (
        start('ARC', 'AcDbCircle') +
        point(shape.centre) +
        tags([40, coordinate(shape.radius)], [100, 'AcDbArc']) +
        tags([50, coordinate(shape.start)], [51, coordinate(shape.end)])
      );
    case 'loop':
    case 'path':
      return (
        start('LWPOLYLINE', 'AcDbPolyline') +
        tags([90, cornersOf(shape).length], [70, shape.kind === 'loop' ? 1 : 0]) +
        cornersOf(shape)
          .map(
            ({ at, bulge }) =>
              tag(10, coordinate(at[0])) + tag(20, coordinate(at[1])) + tag(42, bulgeValue(bulge)),
          )
          .join('')
      );
    case 'text':
      return (
        start('TEXT', 'AcDbText') +
        point(shape.at) +
        tags([40, coordinate(shape.height)], [1, dxfText(shape.text)], [100, 'AcDbText'])
      );
  }
}
