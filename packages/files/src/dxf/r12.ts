import { checkDrawing, type Drawing, type Shape } from '../drawing.js';
import { type LayerRow, rowOf, rowsOf } from '../layer-looks.js';
import { bulgeValue, coordinate } from '../number.js';
import { cornersOf } from '../sides.js';
import { point, section, tag, tags } from './tag.js';
import { dxfTextR12 } from './text.js';

/**
 * A drawing as DXF R12 (AC1009) text, mm: POLYLINE with bulges, LINE, CIRCLE, TEXT and nothing later readers added.
 * The format has no units; say them in a note on the drawing.
 */
export function toDxfR12(drawing: Drawing): string {
  checkDrawing(drawing);
  const entities = drawing.layers.flatMap(({ name, shapes }) => {
    const layer = rowOf(drawing, name).name;
    return shapes.map((s) => entity(layer, s));
  });
  return [
    section('HEADER', header(drawing)),
    section('TABLES', tables(drawing)),
    section('ENTITIES', entities.join('')),
    tag(0, 'EOF'),
  ].join('');
}

const header = ({ box }: Drawing): string =>
  tags([9, '$ACADVER'], [1, 'AC1009'], [9, '$EXTMIN']) + point(box.min) + tag(9, '$EXTMAX') + point(box.max);

const CONTINUOUS = tags([2, 'CONTINUOUS'], [70, 0], [3, 'Solid line'], [72, 65], [73, 0], [40, 0]);

const TEXT_STYLE =
  tags([2, 'STANDARD'], [70, 0], [40, 0], [41, 1], [50, 0]) + tags([71, 0], [42, 2.5], [3, 'txt'], [4, '']);

function tables(drawing: Drawing): string {
  const table = (name: string, entries: readonly string[]) =>
    [
      tags([0, 'TABLE'], [2, name], [70, entries.length]),
      ...entries.map((e) => tag(0, name) + e),
      tag(0, 'ENDTAB'),
    ].join('');
  // linetypes are left to what reads the file: the least that any reader takes
  const layer = ({ name, number }: LayerRow) => tags([2, name], [70, 0], [62, number], [6, 'CONTINUOUS']);
  const rows = rowsOf(
    drawing,
    drawing.layers.map((l) => l.name),
  );
  return table('LTYPE', [CONTINUOUS]) + table('LAYER', rows.map(layer)) + table('STYLE', [TEXT_STYLE]);
}

function entity(layer: string, shape: Shape): string {
  const start = (kind: string) => tags([0, kind], [8, layer]);
  switch (shape.kind) {
    case 'line':
      return start('LINE') + point(shape.from) + point(shape.to, 11);
    case 'point':
      return start('POINT') + point(shape.at);
    case 'circle':
      return start('CIRCLE') + point(shape.centre) + tag(40, coordinate(shape.radius));
    case 'arc':
      return (
        start('ARC') +
        point(shape.centre) +
        tags([40, coordinate(shape.radius)], [50, coordinate(shape.start)], [51, coordinate(shape.end)])
      );
    case 'loop':
    case 'path':
      return [
        start('POLYLINE'),
        tag(66, 1),
        point([0, 0]),
        tag(70, shape.kind === 'loop' ? 1 : 0),
        ...cornersOf(shape).map((v) => start('VERTEX') + point(v.at) + tag(42, bulgeValue(v.bulge))),
        start('SEQEND'),
      ].join('');
    case 'text':
      return (
        start('TEXT') + point(shape.at) + tags([40, coordinate(shape.height)], [1, dxfTextR12(shape.text)])
      );
  }
}
