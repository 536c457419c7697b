/// <reference path="./svg-parser.d.ts" />
import { MM_PER_INCH } from '@tinwright/core';
import { fail, MOST_CORNERS } from '@tinwright/core/internal';
import { type ElementNode, parse, type RootNode } from 'svg-parser';
import { near, outlinesOf, type ReadOutline, type ReadStroke } from './chains.js';
import { checkSizes, checkStyles } from './svg-looks.js';
import { large, pathsOf } from './svg-paths.js';
import { strokesOf } from './svg-strokes.js';

const MM: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: MM_PER_INCH,
  pt: MM_PER_INCH / 72,
  pc: MM_PER_INCH / 6,
};
const MOST_TAGS = 2 * MOST_CORNERS; // one that opens an element, one that closes it

/**
 * The closed outlines of an SVG: paths and basic shapes with their transforms, y upwards; curves as chords within
 * 0.01 mm. mm
 * @param perUnit millimetres in a unit of the drawing; null for what its width and viewBox say
 * @throws JobError for a drawing that cannot be read, says no unit, or holds what is no closed outline
 */
export function svgOutlines(text: string, perUnit: number | null): readonly ReadOutline[] {
  const svg = rootOf(text);
  checkStyles(text);
  const mm = perUnit ?? unitOf(svg);
  if (mm === null)
    return fail(
      'drawing-unit',
      [],
      'the drawing says no unit',
      'Give unit: mm or in beside it, or its width in mm with a viewBox',
    );
  const lines: (readonly ReadStroke[])[] = [];
  let strokes = 0;
  for (const path of pathsOf(svg)) {
    const drawn = strokesOf(path, mm);
    if (!drawn.every(({ from, to }) => [...from, ...to].every(Number.isFinite)))
      return fail('drawing-number', [], 'a coordinate in the drawing is no number', 'Save it as plain SVG');
    strokes += drawn.length;
    if (strokes > MOST_CORNERS) return large('corners');
    lines.push(...linesOf(drawn));
  }
  return outlinesOf(lines);
}

/** Strokes that go on from each other as they are drawn. */
function linesOf(strokes: readonly ReadStroke[]): readonly (readonly ReadStroke[])[] {
  const lines: ReadStroke[][] = [];
  for (const s of strokes) {
    const line = lines.at(-1);
    if (line !== undefined && near((line.at(-1) as ReadStroke).to, s.from)) line.push(s);
    else lines.push([s]);
  }
  return lines;
}

function rootOf(text: string): ElementNode {
  if (manyTags(text)) return large('elements'); // a million empty ones take more room than what can be drawn
  const svg = parsed(text)?.children.find((c) => c.type === 'element' && c.tagName === 'svg');
  if (svg?.type !== 'element') return unread('the drawing cannot be read as SVG');
  return /<\/svg\s*>/.test(text) ? svg : unread('the drawing breaks off before its </svg>'); // the parser takes what came
}

function parsed(text: string): RootNode | null {
  try {
    return parse(text);
  } catch {
    return null;
  }
}

const unread = (what: string): never => fail('drawing-unread', [], what, 'Save it as plain SVG');

function manyTags(text: string): boolean {
  let count = 0;
  for (let at = text.indexOf('<'); at >= 0 && count <= MOST_TAGS; at = text.indexOf('<', at + 1)) count += 1;
  return count > MOST_TAGS;
}

/** Millimetres in a unit of the drawing; null where it does not say. @throws JobError where a style says another size */
function unitOf({ properties: p = {} }: ElementNode): number | null {
  checkSizes(p);
  const [wide, high] = [sizeOf(p.width), sizeOf(p.height)];
  if (wide === null) return null;
  const box = String(p.viewBox ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , x = 0, y = 0] = box;
  if (box.length !== 4 || !(x > 0 && y > 0)) return null; // dots of a screen, whatever its width is given in
  const across = wide / x;
  const up = high === null ? across : high / y;
  // a size that is rounded is off by less; where it is not, programs draw to the smaller scale or to two
  if (Math.abs(across / up - 1) > 0.005)
    return fail(
      'drawing-unit',
      [],
      "the drawing's width and height do not go with its viewBox",
      'Give unit: mm or in beside it, or make them go together',
    );
  return across;
}

/** A length with a unit that a rule measures; null for any other. */
function sizeOf(text: unknown): number | null {
  const [, size, unit] = /^\s*([\d.]+)\s*(mm|cm|in|pt|pc)\s*$/.exec(String(text ?? '')) ?? [];
  if (size === undefined || unit === undefined || !(Number(size) > 0)) return null;
  return Number(size) * (MM[unit] as number);
}
