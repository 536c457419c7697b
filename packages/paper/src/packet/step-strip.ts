import type { Operation } from '@tinwright/shop';
import type { OperationText } from '@tinwright/words/internal';
import type { Strip } from '../page/flow.js';
import { bound, letter, lines } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { Typeface } from '../page/typeface.js';
import type { PacketKit } from './kit.js';

const BOX = 3.5; // mm, side of the box to tick
const INDENT = 9; // mm from the number to the text
const LEAD = 1.6;

/** What an operation is told with. */
export interface ToldOperation extends OperationText, Pick<Operation, 'reasons' | 'tools'> {}

/** Number, title, box to tick, and behind the title what to do, why and with what. */
export function stepStrip(
  { title, lines: said, reasons, tools }: ToldOperation,
  number: number,
  width: number,
  { words, setting: { face, height } }: PacketKit,
): Strip {
  const w = words.operations;
  const room = width - INDENT - BOX - 3;
  const text = [
    ...said,
    ...(reasons.length > 0 ? [w.why(reasons.map((r) => w.reasons[r]).join('; '))] : []),
    ...(tools.length > 0 ? [w.with(tools.map((t) => w.toolNames[t]).join(', '))] : []),
  ].join(' ');
  const top = -1.3 * height;
  const heads = lines(face, `${title}.`, room, height, 'bold');
  const run = height * (face.width(heads.at(-1) ?? '', 'bold') + face.width(' ', 'regular'));
  const [beside = '', ...below] = broken(face, text, [room - run, room], height);
  const at = (line: number) => top - LEAD * height * line;
  const last = heads.length - 1;
  const items: readonly Item[] = [
    letter(face, String(number), [INDENT - 2.5, top], { height, bold: true, align: 'end' }),
    ...heads.map((t, i) => letter(face, t, [INDENT, at(i)], { height, bold: true })),
    ...(beside === '' ? [] : [letter(face, beside, [INDENT + run, at(last)], { height })]),
    ...below.map((t, i) => letter(face, t, [INDENT, at(last + 1 + i)], { height })),
    tickBox(width - BOX - 1, -0.4 * height),
  ];
  return { height: -at(last + 1 + below.length) - 0.7 * height, items };
}

/** A text in lines, the first of another width than the rest. */
function broken(
  face: Typeface,
  text: string,
  [first, rest]: readonly [number, number],
  height: number,
): readonly string[] {
  const whole = bound(text);
  const [head = ''] = lines(face, whole, first, height);
  const beside = `${whole} `.startsWith(`${head} `) ? head : ''; // no word is cut to stand there
  return [beside, ...lines(face, whole.slice(beside.length).trim(), rest, height)];
}

function tickBox(x: number, top: number): Item {
  return {
    kind: 'stroke',
    pen: 'narrow',
    closed: true,
    points: [
      [x, top],
      [x + BOX, top],
      [x + BOX, top - BOX],
      [x, top - BOX],
    ],
  };
}

/** A strip with a line under it. */
export function ruled(strip: Strip, width: number): Strip {
  const y = -strip.height;
  const rule: Item = {
    kind: 'stroke',
    pen: 'faint',
    points: [
      [0, y],
      [width, y],
    ],
  };
  return { ...strip, items: [...strip.items, rule] };
}
