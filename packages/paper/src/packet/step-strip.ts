import type { Operation } from '@tinwright/shop';
import type { OperationText } from '@tinwright/words/internal';
import type { Strip } from '../page/flow.js';
import { letter, lines, type Stand } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { PacketKit } from './kit.js';

const BOX = 3.5; // mm, side of the box to tick
const INDENT = 9; // mm from the number to the text
const LEAD = 1.6;

/** Where the picture of a step of bending is found. */
export interface Picture {
  readonly text: string;
  readonly link: string;
}

/** Number, title, box to tick, what to do, why and with what. */
export function stepStrip(
  { title, lines: said }: OperationText,
  picture: Picture | null,
  { reasons, tools }: Pick<Operation, 'reasons' | 'tools'>,
  number: number,
  width: number,
  { words, setting: { face, height } }: PacketKit,
): Strip {
  const w = words.operations;
  const room = width - INDENT - BOX - 3;
  const items: Item[] = [];
  let y = -1.3 * height;
  const add = (text: string, more: Pick<Stand, 'bold' | 'link'> = {}) => {
    for (const line of lines(face, text, room, height, more.bold ? 'bold' : 'regular')) {
      items.push(letter(face, line, [INDENT, y], { height, ...more }));
      y -= LEAD * height;
    }
  };
  items.push(letter(face, String(number), [INDENT - 2.5, y], { height, bold: true, align: 'end' }));
  add(title, { bold: true });
  for (const text of said) add(text);
  if (picture !== null) add(picture.text, { link: picture.link });
  const foot = [
    ...(reasons.length > 0 ? [w.why(reasons.map((r) => w.reasons[r]).join('; '))] : []),
    ...(tools.length > 0 ? [w.with(tools.map((t) => w.toolNames[t]).join(', '))] : []),
  ];
  if (foot.length > 0) add(foot.join(' '));
  const [x, top] = [width - BOX - 1, -0.4 * height];
  const box: Item = {
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
  const bottom = y + (LEAD - 0.7) * height;
  const rule: Item = {
    kind: 'stroke',
    pen: 'faint',
    points: [
      [0, bottom],
      [width, bottom],
    ],
  };
  return { height: -bottom, items: [...items, box, rule] };
}
