import type { Box, Point } from '@tinwright/core';
import type { Language } from '@tinwright/words';
import { sideWords } from '@tinwright/words/internal';
import { boxOfItems } from '../page/box.js';
import type { Figure } from '../page/figure.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { TypeSetting } from '../page/table.js';
import type { PacketKit } from './kit.js';

const SHEET: Point = [74, 34]; // mm on the page
const IN = 2; // mm from an edge to its name
const HEAD = 2.2; // mm

/** The sheet as it lies before a person, with what its edges are called: every direction on paper is one of these. */
export function directionsFigure({ language, words, setting }: PacketKit): Figure {
  const w = words.operations.directions;
  const { face, height } = setting;
  const items = [
    letter(face, w.heading, [0, SHEET[1] + 0.9 * height], { height, bold: true }),
    ...sheet([0, 0], language, setting),
    ...marks([0, 0], w, setting),
  ];
  return { alt: w.alt, items, box: boxOfItems(items) as Box };
}

/** The sheet with its lower left corner at a point, and the names of its edges along them. */
function sheet([x, y]: Point, language: Language, { face, height }: TypeSetting): readonly Item[] {
  const [w, h] = SHEET;
  const name = (side: 'left' | 'right' | 'near' | 'far', at: Point, turn: 0 | 90 = 0) =>
    letter(face, sideWords(side, language), at, { height, align: 'middle', turn });
  return [
    {
      kind: 'stroke',
      pen: 'wide',
      closed: true,
      points: [
        [x, y],
        [x + w, y],
        [x + w, y + h],
        [x, y + h],
      ],
    },
    name('near', [x + w / 2, y + IN]),
    name('far', [x + w / 2, y + h - IN - height]),
    name('left', [x + IN + height, y + h / 2], 90),
    name('right', [x + w - IN, y + h / 2], 90),
  ];
}

/** Marked face, datum corner, and the person from above. */
function marks(
  [x, y]: Point,
  w: PacketKit['words']['operations']['directions'],
  { face, height }: TypeSetting,
): readonly Item[] {
  const [wide, high] = SHEET;
  const [px, py] = [x + wide / 2, y - 6];
  const shoulders = Array.from({ length: 25 }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / 24;
    return [px + 3 * HEAD * Math.cos(turn), py - 1.2 + 0.8 * HEAD * Math.sin(turn)];
  });
  return [
    letter(face, w.face, [px, y + high / 2 - height / 2], { height, align: 'middle', bold: true }),
    { kind: 'ring', pen: 'narrow', centre: [x, y], radius: 1.5 },
    letter(face, w.datum, [x - 3, y - 2.6 - height], { height, align: 'start' }),
    { kind: 'fill', tone: 'grey', points: shoulders },
    { kind: 'stroke', pen: 'narrow', closed: true, points: shoulders },
    { kind: 'ring', pen: 'wide', centre: [px, py], radius: 0.8 * HEAD },
    letter(face, w.you, [px + 3 * HEAD + 2, py - height / 2], { height }),
  ];
}
