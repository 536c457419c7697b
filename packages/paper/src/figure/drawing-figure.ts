import { type Box, type Point, segments } from '@tinwright/core';
import type { Drawing, DrawingLayer, Shape } from '@tinwright/files';
import { boxOfItems } from '../page/box.js';
import type { Figure } from '../page/figure.js';
import { letter } from '../page/letter.js';
import { type Item, moved, type Pen } from '../page/page.js';
import type { TypeSetting } from '../page/table.js';

/** Pens of layers on paper, where colours may be lost: outlines wide, what only helps narrow. */
const PENS: Readonly<Record<string, Pen>> = { EDGE: 'wide', CUT: 'wide', BEND: 'faint' };

/** A drawing on a page, no larger than `room` mm and no larger than it is. mm of the page */
export function drawingFigure(
  drawing: Drawing,
  alt: string,
  room: Point,
  { face, height }: TypeSetting,
): Figure {
  const { min, max } = drawing.box;
  const scale = Math.min(1, ...([0, 1] as const).map((k) => room[k] / Math.max(1e-9, max[k] - min[k])));
  const on = ([x, y]: Point): Point => [x * scale, y * scale];
  const items = drawing.layers.flatMap(({ name, shapes }: DrawingLayer) =>
    shapes.flatMap((s) => itemsOf(s, PENS[name] ?? 'narrow', on, scale)),
  );
  const texts = drawing.layers.flatMap(({ shapes }) =>
    shapes.flatMap((s): readonly Item[] => {
      if (s.kind !== 'text' || s.text === '') return [];
      const own = Math.max(height, s.height * scale);
      const turn = Math.abs(s.rotation ?? 0) > 45 ? 90 : 0;
      return [letter(face, s.text, on(s.at), { height: own, align: s.centred ? 'middle' : 'start', turn })];
    }),
  );
  const all = [...items, ...texts];
  return { alt, items: all, box: boxOfItems(all) ?? { min: [0, 0], max: [0, 0] } };
}

function itemsOf(s: Shape, pen: Pen, on: (p: Point) => Point, scale: number): readonly Item[] {
  switch (s.kind) {
    case 'line':
      return [{ kind: 'stroke', pen, points: [on(s.from), on(s.to)] }];
    case 'circle':
      return [{ kind: 'ring', pen, centre: on(s.centre), radius: s.radius * scale }];
    case 'point':
      return [{ kind: 'ring', pen, centre: on(s.at), radius: scale / 2 }];
    case 'arc':
      return [{ kind: 'stroke', pen, points: arcPoints(s).map(on) }];
    case 'loop':
      return [{ kind: 'stroke', pen, closed: true, points: segments(s.loop).map((g) => on(g.from)) }];
    case 'path':
      return [{ kind: 'stroke', pen, points: s.path.map((v) => on(v.at)) }];
    case 'text':
      return [];
  }
}

/** Points along an arc, one every five degrees. */
function arcPoints({ centre, radius, start, end }: Extract<Shape, { kind: 'arc' }>): readonly Point[] {
  const sweep = (((end - start) % 360) + 360) % 360;
  const steps = Math.ceil(sweep / 5);
  return Array.from({ length: steps + 1 }, (_, k): Point => {
    const angle = ((start + (sweep * k) / steps) * Math.PI) / 180;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

/** A figure hung in the middle of a column, its top at 0. */
export function hung({ items, box }: Figure, width: number): readonly Item[] {
  const wide = box.max[0] - box.min[0];
  return moved(items, [(width - wide) / 2 - box.min[0], -box.max[1]]);
}

export const heightOf = ({ box }: { readonly box: Box }): number => box.max[1] - box.min[1];
