import type { Point } from '@tinwright/core';
import type { Area, ShearStep, SheetPlan } from '@tinwright/cutting';
import type { ShearWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Figure } from '../page/figure.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { TypeSetting } from '../page/table.js';
import { pieceText } from './names.js';

/** Heights of letters that a blank's name may have, as shares of the page's. */
const HEIGHTS = [1, 0.8, 0.64];
/** mm of paper between a name and the edge of its blank */
const CLEAR = 0.6;

/** What a picture of a sheet is drawn with. */
export interface SheetPicture {
  readonly plan: SheetPlan;
  /** Its number through all plans, from 1. */
  readonly number: number;
  /** The cuts of all sheets of its plan in order; `index` is its own place among those sheets. */
  readonly steps: readonly ShearStep[];
  readonly index: number;
}

/** A sheet with its blanks, offcuts and the number of every cut, no larger than `room` mm. mm of the page */
export function sheetFigure(
  { plan, number, steps, index }: SheetPicture,
  room: Point,
  words: ShearWords,
  dims: Dims,
  setting: TypeSetting,
): Figure {
  const { stock, parts, offcuts } = plan;
  const scale = Math.min(room[0] / stock.x, room[1] / stock.y);
  const at = ({ x, y, w, h }: Area): Area => ({ x: x * scale, y: y * scale, w: w * scale, h: h * scale });
  const size = ({ w, h }: Area) => `${dims.text(w)}\u00A0×\u00A0${dims.text(h)}`;
  const named = [
    ...parts.map((p) => ({ area: at(p), texts: [p.id, size(p)] })),
    ...offcuts.map((o, i) => {
      const name = pieceText({ kind: 'offcut', sheet: 0, number: i + 1 }, number, words);
      return { area: at(o), texts: [name, size(o)] };
    }),
  ];
  const items: readonly Item[] = [
    ...offcuts.map((o): Item => ({ kind: 'fill', points: corners(at(o)), tone: 'grey' })),
    ...parts.map((p): Item => ({ kind: 'stroke', pen: 'narrow', closed: true, points: corners(at(p)) })),
    {
      kind: 'stroke',
      pen: 'wide',
      closed: true,
      points: corners(at({ x: 0, y: 0, w: stock.x, h: stock.y })),
    },
    ...named.flatMap(({ area, texts }) => label(area, texts, setting)),
    ...steps.flatMap((step, i) => (step.sheet === index ? cutItems(step, i + 1, scale, setting) : [])),
  ];
  return {
    alt: words.alt(number, stock.name, parts.length),
    items,
    box: { min: [-1, -1], max: [stock.x * scale + 1, stock.y * scale + 1] },
  };
}

function corners({ x, y, w, h }: Area): readonly Point[] {
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
}

/** A name in the middle of its piece, as large as fits, upright where only that does; none where nothing fits. */
function label(
  { x, y, w, h }: Area,
  texts: readonly string[],
  { face, height }: TypeSetting,
): readonly Item[] {
  for (const count of [texts.length, 1])
    for (const share of HEIGHTS)
      for (const turn of [0, 90] as const) {
        const own = share * height;
        const lines = texts.slice(0, count);
        const wide = Math.max(...lines.map((t) => own * face.width(t, 'regular'))) + 2 * CLEAR;
        const high = own * (1.6 * count - 0.6) + 2 * CLEAR;
        const [a, b] = turn === 0 ? [w, h] : [h, w];
        if (wide > a || high > b) continue;
        return lines.map((text, i) => {
          const down = (own * (1.6 * count - 0.6)) / 2 - own - i * 1.6 * own;
          const at: Point = turn === 0 ? [x + w / 2, y + h / 2 + down] : [x + w / 2 - down, y + h / 2];
          return letter(face, text, at, { height: own, align: 'middle', turn });
        });
      }
  return [];
}

/** The line of a cut and its number, on white near the end where the cut starts. */
function cutItems(
  { axis, at, area }: ShearStep,
  n: number,
  scale: number,
  { face, height }: TypeSetting,
): readonly Item[] {
  const [from, to]: readonly [Point, Point] =
    axis === 'x'
      ? [
          [at * scale, area.y * scale],
          [at * scale, (area.y + area.h) * scale],
        ]
      : [
          [area.x * scale, at * scale],
          [(area.x + area.w) * scale, at * scale],
        ];
  const own = 0.72 * height;
  const text = String(n);
  const [half, up] = [(own * face.width(text, 'bold')) / 2 + 0.4, own / 2 + 0.4];
  const length = Math.max(to[0] - from[0], to[1] - from[1]);
  const along = Math.min(length / 2, (axis === 'x' ? up : half) + 0.8);
  const [x, y]: Point = axis === 'x' ? [from[0], from[1] + along] : [from[0] + along, from[1]];
  return [
    { kind: 'stroke', pen: 'narrow', points: [from, to] },
    { kind: 'fill', tone: 'white', points: corners({ x: x - half, y: y - up, w: 2 * half, h: 2 * up }) },
    letter(face, text, [x, y - own / 2], { height: own, align: 'middle', bold: true }),
  ];
}
