import type { Point } from '@tinwright/core';
import { type ToolRow, toolRows } from '@tinwright/words/internal';
import { bendPrint } from '../bend-print.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { Scene } from './scene.js';
import type { StepSetting } from './setting.js';

const SAME = 0.05; // mm between two edges that are one
const AIR = 0.8; // mm of white round a text
const ACROSS = 1.3; // heights of text that an upright number is wide

/** A figure of rows of tools, its things from its upper left corner, and how high it is. mm */
export interface ToolRowFigure {
  readonly caption: string;
  readonly height: number;
  readonly items: readonly Item[];
}

/**
 * Tools along the bend as who stands before the machine sees them: where each begins and the last one ends, from the end
 * of the bend that they are set by. What is narrow is drawn wider, so that every number finds room. Null where tools may
 * stand anywhere, and where the width does not take them. @param width mm
 */
export function toolRowFigure(scene: Scene, width: number, setting: StepSetting): ToolRowFigure | null {
  const { step } = scene;
  const rows = toolRows(step);
  if (rows.length === 0) return null;
  const { dims, height, face, words } = setting;
  const ends = [0, step.length];
  const end = rows.every((r) => r.from === 'right') ? 'right' : 'left';
  const marks = distinct([...ends, ...rows.flatMap((r) => r.edges)]).map((mm): Mark => {
    const value = end === 'left' ? mm : step.length - mm;
    return { mm, value, text: dims.text(value), isEnd: ends.some((e) => same(e, mm)) };
  });
  const widest = Math.max(...marks.map((m) => height * face.width(m.text, 'regular')));
  // level where all of them find room beside each other
  const level = (widest + AIR) * marks.length <= width;
  const room = (level ? widest : ACROSS * height) + AIR;
  if (room * marks.length > width) return null;
  const places = spaced(
    marks.map((m) => m.mm),
    room,
    width,
  );
  const at = (mm: number) => places[marks.findIndex((m) => same(m.mm, mm))] as number;
  const pieces = rows.flatMap((r) => piecesOf(r, at, scene, setting));
  const high = Math.max(2 * height, ...pieces.map((p) => p.high));
  const [bend, foot] = [-high - 0.9 * height, -high - 1.8 * height];
  return {
    caption: words.row(step.machine === 'press' ? 'punch' : 'fingers', end, dims.unit),
    height: -foot + AIR + (level ? ACROSS * height : widest),
    items: [
      ...pieces.flatMap((p) => p.draw(high)),
      line('bold', [at(0), bend], [at(step.length), bend]),
      ...marks.flatMap((m): readonly Item[] => [
        line('narrow', [at(m.mm), m.isEnd ? bend + 0.6 * height : -high], [at(m.mm), foot]),
        numberAt(m, at(m.mm), foot - AIR, level ? 0 : 90, setting),
      ]),
    ],
  };
}

/** An edge of a tool or an end of the bend, and what it is told as. */
interface Mark {
  readonly mm: number;
  readonly value: number;
  readonly text: string;
  readonly isEnd: boolean;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

const distinct = (all: readonly number[]): readonly number[] =>
  all.toSorted((a, b) => a - b).filter((v, i, sorted) => i === 0 || !same(v, sorted[i - 1] as number));

const line = (pen: 'bold' | 'narrow', from: Point, to: Point): Item => ({
  kind: 'stroke',
  pen,
  points: [from, to],
});

/** Under the end of its line. */
function numberAt(
  { text, value }: Mark,
  x: number,
  top: number,
  turn: 0 | 90,
  { face, height }: StepSetting,
): Item {
  return turn === 0
    ? letter(face, text, [x, top - height], { height, align: 'middle', value })
    : letter(face, text, [x + height / 2, top], { height, align: 'end', turn, value });
}

/** Places in a width for numbers that rise: each takes the same room, what is left is shared by how far they are apart. */
function spaced(values: readonly number[], room: number, width: number): readonly number[] {
  const [first, last] = [values[0] as number, values.at(-1) as number];
  const free = width - room * values.length;
  return values.map((v, i) => room * (i + 0.5) + (free * (v - first)) / (last - first));
}

/** A piece with its width in it, along it or upright; how high it has to be for that. */
interface Piece {
  readonly high: number;
  readonly draw: (high: number) => readonly Item[];
}

function piecesOf(
  { pieces, edges }: ToolRow,
  at: (mm: number) => number,
  { part, shop }: Scene,
  { dims, face, height }: StepSetting,
): readonly Piece[] {
  const { piece } = bendPrint(part, dims, shop.units);
  return pieces.map((wide, i): Piece => {
    const [a, b] = [at(edges[i] as number), at(edges[i + 1] as number)];
    const text = piece?.(wide) ?? dims.text(wide);
    const long = height * face.width(text, 'regular') + 2 * AIR;
    const turn = long <= b - a ? 0 : 90;
    const middle = (a + b) / 2;
    return {
      high: turn === 0 ? 0 : long,
      draw: (high) => [
        {
          kind: 'fill',
          tone: 'grey',
          points: [
            [a, -high],
            [b, -high],
            [b, 0],
            [a, 0],
          ],
        },
        {
          kind: 'stroke',
          pen: 'wide',
          closed: true,
          points: [
            [a, -high],
            [b, -high],
            [b, 0],
            [a, 0],
          ],
        },
        letter(face, text, turn === 0 ? [middle, -high / 2 - height / 2] : [middle + height / 2, -high / 2], {
          height,
          align: 'middle',
          turn,
          value: wide,
        }),
      ],
    };
  });
}
