import { PROGRAM } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { StripSample } from '@tinwright/shop';
import type { Drawing, DrawingLayer } from './drawing.js';
import { type DxfForm, dxfOf } from './dxf/write.js';
import { LAYERS } from './layers.js';
import type { OutFile } from './out-file.js';
import { toSvg } from './svg/write.js';
import { flatDrawing } from './table/flat.js';

/** The cut files of a test strip, witness lines on `SCRIBE`; `strip.json` lists them. */
export function stripFiles(sample: StripSample, form: DxfForm): readonly OutFile[] {
  const drawing = stripDrawing(sample, form === 'r12' ? ['mm'] : []);
  const files = [
    { path: 'strip.dxf', content: dxfOf(drawing, form) },
    { path: 'strip.svg', content: toSvg(stripDrawing(sample, [])) },
  ];
  const { flat, width, between } = sample;
  const list = { format: 1, program: PROGRAM.mark, flat, width, between, files: files.map((f) => f.path) };
  return [...files, { path: 'strip.json', content: `${JSON.stringify(list, null, 2)}\n` }];
}

function stripDrawing({ plan, flat, width, between }: StripSample, more: readonly string[]): Drawing {
  const { material, sheet } = plan;
  const name = `${material.name} T ${plainNumber(sheet.thickness, 2)} R ${plainNumber(sheet.insideRadius, 2)}`;
  const drawing = flatDrawing(plan.flat, 'test strip', [name, `${between} between lines`, ...more]);
  const witness: DrawingLayer = {
    name: 'SCRIBE',
    shapes: [-1, 1].map((side) => {
      const x = (flat + side * between) / 2;
      return { kind: 'line', from: [x, 0], to: [x, width] };
    }),
  };
  const order = LAYERS.map((l) => l.name as string);
  const layers = [...drawing.layers, witness].toSorted(
    (a, b) => order.indexOf(a.name) - order.indexOf(b.name),
  );
  return { ...drawing, layers };
}
