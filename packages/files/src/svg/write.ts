import type { Point } from '@tinwright/core';
import { checkDrawing, type Drawing, type Shape } from '../drawing.js';
import { layerStyle } from '../layers.js';
import { coordinate } from '../number.js';
import type { Writer } from '../writer.js';
import { escapeXml } from './escape.js';
import { pathData } from './path-data.js';

const MARGIN = 5; // mm of white round the drawing

/** A drawing as SVG text at true scale: one user unit is 1 mm, one group a layer. */
export function toSvg(drawing: Drawing): string {
  checkDrawing(drawing);
  const names = drawing.layers.map((l) => l.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw new RangeError(`layer ${twice} given twice, once allowed in an SVG`);
  const { min, max } = drawing.box;
  const origin: Point = [MARGIN - min[0], max[1] + MARGIN]; // of the drawing's axes, on the page
  const [width, height] = [
    coordinate(max[0] - min[0] + 2 * MARGIN),
    coordinate(max[1] - min[1] + 2 * MARGIN),
  ];
  const groups = drawing.layers.map(({ name, shapes }) => {
    const { colour, width: stroke } = layerStyle(name, drawing.paints);
    const paint =
      name === 'NOTE' || name === 'LABEL'
        ? `fill="${colour}"`
        : `fill="none" stroke="${colour}" stroke-width="${stroke}"`;
    return [`<g id="${name}" ${paint}>`, ...shapes.map((s) => element(s, origin)), '</g>'].join('\n');
  });
  return `${[
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escapeXml(drawing.title)}</title>`,
    ...groups,
    '</svg>',
  ].join('\n')}\n`;
}

/** SVG at true scale. */
export const SVG: Writer<Drawing> = Object.freeze({
  format: 'svg',
  words: 'SVG',
  extension: 'svg',
  mediaType: 'image/svg+xml',
  write: toSvg,
});

function element(shape: Shape, origin: Point): string {
  const x = (p: Point) => coordinate(origin[0] + p[0]);
  const y = (p: Point) => coordinate(origin[1] - p[1]);
  switch (shape.kind) {
    case 'line':
      return `<line x1="${x(shape.from)}" y1="${y(shape.from)}" x2="${x(shape.to)}" y2="${y(shape.to)}"/>`;
    case 'circle':
      return `<circle cx="${x(shape.centre)}" cy="${y(shape.centre)}" r="${coordinate(shape.radius)}"/>`;
    case 'point': // a dot as wide as the line
      return `<path d="M ${x(shape.at)} ${y(shape.at)} h 0.000001" stroke-linecap="round"/>`;
    case 'arc':
      return arcElement(shape, origin);
    case 'loop':
    case 'path':
      return `<path d="${pathData(shape, origin)}"/>`;
    case 'text':
      return textElement(shape, x(shape.at), y(shape.at));
  }
}

function arcElement(
  { centre, radius, start, end }: Extract<Shape, { kind: 'arc' }>,
  [ox, oy]: Point,
): string {
  const at = (degrees: number) => {
    const angle = (degrees * Math.PI) / 180;
    return `${coordinate(ox + centre[0] + radius * Math.cos(angle))} ${coordinate(oy - centre[1] - radius * Math.sin(angle))}`;
  };
  const sweep = (((end - start) % 360) + 360) % 360;
  const r = coordinate(radius);
  return `<path d="M ${at(start)} A ${r} ${r} 0 ${sweep > 180 ? 1 : 0} 0 ${at(end)}"/>`;
}

const EM_PER_CAP = 1.4; // font size over the height of capitals, of common sans-serif faces

function textElement(shape: Extract<Shape, { kind: 'text' }>, x: number, y: number): string {
  const anchor = shape.centred === true ? ' text-anchor="middle"' : '';
  const turn =
    shape.rotation === undefined
      ? `x="${x}" y="${y}"`
      : `transform="translate(${x} ${y}) rotate(${coordinate(-shape.rotation)})"`;
  const size = coordinate(shape.height * EM_PER_CAP);
  return `<text ${turn} font-family="sans-serif" font-size="${size}"${anchor}>${escapeXml(shape.text)}</text>`;
}
