import { type Box, JobError, type Point } from '@tinwright/core';
import { PAPERS, PATTERN_SCALES, type Paper } from '../page/paper.js';
import { COLUMN, type PaperSheet, roomOf, sheetOf } from '../page/sheet.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import { type PatternFigure, patternFigure } from './pattern-figure.js';

/** The sheet a pattern is drawn on, where it stands, and what is left beside or below it. mm of the page */
export interface FirstSheet {
  readonly sheet: PaperSheet;
  readonly scale: string;
  readonly figure: PatternFigure;
  /** From the figure's own frame to the page. */
  readonly at: Point;
  readonly left: Box | null;
}

const APART = 6; // mm between the pattern and what stands beside it
const ENLARGED = 120; // mm, longest an enlarged pattern gets
const LITTLE = 0.6; // of its largest scale, that a pattern is drawn smaller to save a sheet
const LOW = 45; // mm, a lower rest is left empty

type TitleHeight = (width: number) => number;

/**
 * A pattern as large as one of the scales allows, upright or on its side, with the most room left first; behind that what
 * may save a sheet: the same the other way up, and a little smaller. At least one.
 * @throws JobError `paper-small` naming a paper that would do, `scale-unfit` naming a scale that would
 */
export function firstSheets(
  ask: PatternAsk,
  paper: Paper,
  scale: string | undefined,
  title: TitleHeight,
): readonly FirstSheet[] {
  const sheets = onPaper(ask, paper, scale, title);
  if (sheets.length > 0) return sheets;
  const [x, y] = ask.flat.blank.max.map((v) => ask.dims.text(v)) as [string, string];
  const blank = `a blank of ${x} x ${y} ${ask.dims.unit}`;
  const refuse = (code: string, option: string, message: string, fix: string): never => {
    throw new JobError([{ code, path: [option], part: ask.name, message, fix }]);
  };
  const [other] = scale === undefined ? [] : onPaper(ask, paper, undefined, title);
  if (scale !== undefined && other !== undefined)
    return refuse(
      'scale-unfit',
      'scale',
      `${scale} given; ${blank} does not fit on ${paper.name} at it, or cannot be read`,
      `Use ${other.scale}`,
    );
  const larger = PAPERS.find(
    (p) => p.width * p.height > paper.width * paper.height && onPaper(ask, p, undefined, title).length > 0,
  );
  return refuse(
    'paper-small',
    'paper',
    `${paper.name} given, too small for ${blank} at any scale that can be read`,
    larger === undefined ? 'Print templates at full size instead' : `Use ${larger.name}`,
  );
}

/** At the first scale at which the pattern fits and can be read, and at those not much smaller, the ways up that do. */
function onPaper(
  ask: PatternAsk,
  paper: Paper,
  scale: string | undefined,
  title: TitleHeight,
): readonly FirstSheet[] {
  const sheets = (['portrait', 'landscape'] as const).map((way) => {
    const sheet = sheetOf(paper, way);
    return { sheet, room: roomOf(sheet, title(sheet.frame.max[0] - sheet.frame.min[0])) };
  });
  const found: FirstSheet[] = [];
  let largest = 0;
  for (const { text, ratio } of scalesFor(ask.flat, scale)) {
    if (ratio < LITTLE * largest) break;
    const own = sheets.flatMap(({ sheet, room }): readonly FirstSheet[] => {
      const figure = patternFigure(ask, ratio, [room.max[0] - room.min[0], room.max[1] - room.min[1]]);
      return figure === null ? [] : [{ sheet, scale: text, figure, ...standing(figure, room) }];
    });
    if (own.length > 0 && largest === 0) largest = ratio;
    found.push(...own.toSorted((a, b) => areaOf(b.left) - areaOf(a.left)));
  }
  return found;
}

/** The scale asked for, or all that are sensible: what is not small is not drawn enlarged. */
function scalesFor({ blank }: PatternAsk['flat'], scale: string | undefined): typeof PATTERN_SCALES {
  if (scale !== undefined) return PATTERN_SCALES.filter((s) => s.text === scale);
  return PATTERN_SCALES.filter((s) => s.ratio <= 1 || Math.max(...blank.max) * s.ratio <= ENLARGED);
}

/** The pattern at the top of the room, to the left when there is room for a column beside it; what is left. */
function standing({ box }: PatternFigure, room: Box): Pick<FirstSheet, 'at' | 'left'> {
  const [w, h] = [box.max[0] - box.min[0], box.max[1] - box.min[1]];
  const below: Box = { min: room.min, max: [room.max[0], room.max[1] - h - APART] };
  const beside: Box = { min: [room.min[0] + w + APART, room.min[1]], max: room.max };
  const fits = (b: Box) => b.max[0] - b.min[0] >= COLUMN && b.max[1] - b.min[1] >= LOW;
  const [left = null] = [below, beside].filter(fits).toSorted((a, b) => areaOf(b) - areaOf(a));
  const free: Point = [room.max[0] - room.min[0] - w, room.max[1] - room.min[1] - h];
  const x = room.min[0] + (left === beside ? 0 : free[0] / 2);
  const y = room.max[1] - h - (left === null ? free[1] / 2 : 0);
  return { at: [x - box.min[0], y - box.min[1]], left };
}

const areaOf = (box: Box | null) =>
  box === null ? 0 : (box.max[0] - box.min[0]) * (box.max[1] - box.min[1]);
