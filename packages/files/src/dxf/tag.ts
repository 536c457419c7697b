import { coordinate } from '../number.js';

/** A group of a DXF file: its code and value. */
type Tag = readonly [code: number, value: string | number];

/** The text of a group: a line for its code and one for its value, CR LF. */
export const tag = (code: number, value: string | number): string => `${code}\r\n${value}\r\n`;

/** The text of groups one after another. */
export function tags(...all: readonly Tag[]): string {
  let text = '';
  for (const [code, value] of all) text += tag(code, value);
  return text;
}

/** A named section. */
export const section = (name: string, inside: string): string =>
  tags([0, 'SECTION'], [2, name]) + inside + tag(0, 'ENDSEC');

/** A point in the plane of the drawing; `first` 10 for its own place, 11 for a second one. */
export const point = ([x, y]: readonly [number, number], first = 10): string =>
  tag(first, coordinate(x)) + tag(first + 10, coordinate(y)) + tag(first + 20, 0);
