import type { Point } from '@tinwright/core';
import type { Words } from './page.js';
import type { Typeface } from './typeface.js';

const TINY = 1e-6; // mm, of rounding

/** How a text stands at its point. */
export interface Stand {
  readonly height: number;
  readonly align?: 'start' | 'middle' | 'end';
  readonly turn?: 0 | 90;
  readonly bold?: boolean;
  readonly value?: number;
  readonly link?: string;
}

/** A text at a point: its base line starts, is centred or ends there. No-break spaces have done their work by then. */
export function letter(face: Typeface, text: string, at: Point, stand: Stand): Words {
  const { height, align = 'start', turn = 0, bold = false, value, link } = stand;
  const width = height * face.width(text, bold ? 'bold' : 'regular');
  const back = align === 'start' ? 0 : align === 'middle' ? width / 2 : width;
  const start: Point = turn === 0 ? [at[0] - back, at[1]] : [at[0], at[1] - back];
  return {
    kind: 'words',
    text: text.replaceAll('\u00A0', ' '),
    at: start,
    height,
    width,
    turn,
    bold,
    ...(value === undefined ? {} : { value }),
    ...(link === undefined ? {} : { link }),
  };
}

/**
 * A text in lines no wider than `width`, broken at plain spaces; a word that is wider by itself is broken at its no-break
 * spaces, else cut. A whole number and its fraction are one word. mm
 */
export function lines(
  face: Typeface,
  text: string,
  width: number,
  height: number,
  weight: 'regular' | 'bold' = 'regular',
): readonly string[] {
  const fits = (t: string) => height * face.width(t, weight) <= width + TINY;
  const found: string[] = [];
  for (const word of words(text)) {
    const last = found.at(-1);
    if (last !== undefined && fits(`${last} ${word}`)) found[found.length - 1] = `${last} ${word}`;
    else found.push(...cut(word, fits));
  }
  return found;
}

/** Width of the widest word of a text: in less it is cut. mm */
export const widestWord = (
  face: Typeface,
  text: string,
  height: number,
  weight: 'regular' | 'bold' = 'regular',
): number => Math.max(0, ...words(text).map((w) => height * face.width(w, weight)));

/** A text with whole numbers bound to their fractions. */
export const bound = (text: string): string => text.replaceAll(/(?<=\d) (?=\d+\/\d)/g, '\u00A0');

const words = (text: string): readonly string[] =>
  bound(text)
    .split(' ')
    .filter((w) => w !== '');

function cut(word: string, fits: (text: string) => boolean): readonly string[] {
  if (fits(word)) return [word];
  const found: string[] = [];
  for (const piece of word.split(/\u00A0(?!\d+\/\d)/)) {
    const last = found.at(-1);
    if (last !== undefined && fits(`${last}\u00A0${piece}`))
      found[found.length - 1] = `${last}\u00A0${piece}`;
    else found.push(...cutAnywhere(piece, fits));
  }
  return found;
}

function cutAnywhere(piece: string, fits: (text: string) => boolean): readonly string[] {
  const found: string[] = [''];
  for (const c of piece) {
    const last = found.at(-1) as string;
    if (last === '' || fits(last + c)) found[found.length - 1] = last + c;
    else found.push(c);
  }
  return found;
}

/** A text, or as much of it as fits with an ellipsis. */
export function fitted(
  face: Typeface,
  text: string,
  width: number,
  { height, bold = false }: Pick<Stand, 'height' | 'bold'>,
): string {
  const fits = (t: string) => height * face.width(t, bold ? 'bold' : 'regular') <= width;
  if (fits(text)) return text;
  const characters = [...text];
  while (characters.length > 0 && !fits(`${characters.join('').trimEnd()}…`)) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
