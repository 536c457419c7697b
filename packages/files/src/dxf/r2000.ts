/// <reference path="./dxf-writer.d.ts" />
import Drawing from 'dxf-writer';
import Handle from 'dxf-writer/src/Handle.js';
import { checkDrawing, type DrawingLayer, type Drawing as OurDrawing, type Shape } from '../drawing.js';
import { layerStyle } from '../layers.js';
import { bulgeValue, coordinate } from '../number.js';
import { dxfText } from './text.js';

/**
 * A drawing as DXF R2000 (AC1015) text, mm. Same drawing, same bytes: the writer's handle counter, which it keeps
 * across drawings, is set back first.
 */
export function toDxf(drawing: OurDrawing): string {
  checkDrawing(drawing);
  Handle.seed = 0;
  const file = new Drawing();
  const point = ([x, y]: readonly [number, number]): [number, number][] => [
    [10, coordinate(x)],
    [20, coordinate(y)],
    [30, 0],
  ];
  file.setUnits('Millimeters');
  // its types say number; the version is a text in the format
  file.header('ACADVER', [[1, 'AC1015' as unknown as number]]);
  file.header('MEASUREMENT', [[70, 1]]);
  file.header('EXTMIN', point(drawing.box.min));
  file.header('EXTMAX', point(drawing.box.max));
  for (const layer of drawing.layers) drawLayer(file, layer);
  return finished(file);
}

function drawLayer(file: Drawing, { name, shapes }: DrawingLayer): void {
  file.addLayer(name, layerStyle(name).number, 'CONTINUOUS').setActiveLayer(name);
  for (const shape of shapes) draw(file, shape);
}

function draw(file: Drawing, shape: Shape): void {
  switch (shape.kind) {
    case 'line':
      file.drawLine(
        coordinate(shape.from[0]),
        coordinate(shape.from[1]),
        coordinate(shape.to[0]),
        coordinate(shape.to[1]),
      );
      return;
    case 'circle':
      file.drawCircle(coordinate(shape.centre[0]), coordinate(shape.centre[1]), coordinate(shape.radius));
      return;
    case 'loop': {
      const points = shape.loop.map(({ at, bulge }) => [
        coordinate(at[0]),
        coordinate(at[1]),
        bulgeValue(bulge),
      ]);
      file.drawPolyline(points as unknown as [number, number][], true); // its types leave the bulge out
      return;
    }
    case 'text':
      file.drawText(
        coordinate(shape.at[0]),
        coordinate(shape.at[1]),
        coordinate(shape.height),
        0,
        dxfText(shape.text),
      );
  }
}

/** What the writer's types leave out. */
type WithModelSpace = Drawing & { readonly modelSpace: { readonly handle: string } };

/** The file's text with owners, line ends and final newline as the format has them. */
function finished(file: Drawing): string {
  const { handle } = (file as WithModelSpace).modelSpace;
  const lines = file.toDxfString().split('\n'); // once only: a second call takes new handles
  const table = lines.indexOf('BLOCK_RECORD', lines.indexOf('BLOCK_RECORD') + 1);
  const record = lines[table + 2] as string; // of model space; entities name the block instead
  for (let i = 0; i < lines.length; i += 2)
    if (lines[i] === '330' && lines[i + 1] === handle) lines[i + 1] = record;
  return `${lines.join('\r\n')}\r\n`;
}
