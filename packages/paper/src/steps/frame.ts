import type { Box, Point } from '@tinwright/core';
import { clipped } from '../figure/clip.js';
import type { Item, Pen } from '../page/page.js';
import { cutOff } from './cut-off.js';

/** A picture's frame on the page and what of the machine it shows: page = at + ratio · (machine − from). mm */
export interface SceneFrame {
  readonly box: Box;
  readonly from: Point;
  readonly ratio: number;
}

/** A frame that shows what lies round a point. */
export function frameAround(box: Box, middle: Point, ratio: number): SceneFrame {
  const half = [0, 1].map((k) => (box.max[k as 0] - box.min[k as 0]) / 2 / ratio) as [number, number];
  return { box, from: [middle[0] - half[0], middle[1] - half[1]], ratio };
}

/** A point of the machine on the page. */
export function onPage({ box, from, ratio }: SceneFrame, [x, z]: Point): Point {
  return [box.min[0] + (x - from[0]) * ratio, box.min[1] + (z - from[1]) * ratio];
}

/** What of a line is inside the frame. */
export function lineIn(
  frame: SceneFrame,
  points: readonly Point[],
  closed: boolean,
  pen: Pen,
): readonly Item[] {
  const page = points.map((p) => onPage(frame, p));
  return clipped(page, closed, frame.box).map((piece): Item => ({ kind: 'stroke', pen, points: piece }));
}

/** What of an area is inside the frame; on the page. */
export function areaIn(frame: SceneFrame, outline: readonly Point[]): readonly Point[] {
  const { min, max } = frame.box;
  const sides: readonly (readonly [Point, number])[] = [
    [[1, 0], min[0]],
    [[-1, 0], -max[0]],
    [[0, 1], min[1]],
    [[0, -1], -max[1]],
  ];
  return sides.reduce<readonly Point[]>(
    (rest, [n, c]) => cutOff(rest, n, c),
    outline.map((p) => onPage(frame, p)),
  );
}

/** The line round a picture. */
export const frameLine = ({ box: { min, max } }: Pick<SceneFrame, 'box'>): Item => ({
  kind: 'stroke',
  pen: 'faint',
  closed: true,
  points: [min, [max[0], min[1]], max, [min[0], max[1]]],
});
