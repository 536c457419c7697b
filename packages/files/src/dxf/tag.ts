import { coordinate } from '../number.js';

/** A group of a DXF file: its code and value. */
export type Tag = readonly [code: number, value: string | number];

/** A named section. */
export const section = (name: string, inside: readonly Tag[]): readonly Tag[] => [
  [0, 'SECTION'],
  [2, name],
  ...inside,
  [0, 'ENDSEC'],
];

/** A point in the plane of the drawing; `first` 10 for its own place, 11 for a second one. */
export const point = ([x, y]: readonly [number, number], first = 10): readonly Tag[] => [
  [first, coordinate(x)],
  [first + 10, coordinate(y)],
  [first + 20, 0],
];

/** The text of a file: a line for each code and value, CR LF. */
export const textOf = (tags: readonly Tag[]): string =>
  tags.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
