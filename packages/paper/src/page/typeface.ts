/// <reference path="./pdfkit.d.ts" />

import regular from 'pdfkit/standard-fonts/Helvetica';
import bold from 'pdfkit/standard-fonts/HelveticaBold';
import type { Page } from './page.js';
import { type FontData, isStandard, isStandardText, standardFont, standardised } from './standard-font.js';

/** Height of capitals on these papers when none is asked for, mm (ISO 3098). */
export const LETTERING = 2.5;

/** Font size over the height of capitals: Helvetica's capitals are 0.718 of its size. */
export const SIZE_PER_CAPITAL: number = 1000 / regular.capHeight;

/** A font for characters the standard fonts lack. */
export interface SpareFont {
  /** True where it has the character. */
  readonly has: (codePoint: number) => boolean;
  /** Length of a text at font size 1. */
  readonly width: (text: string) => number;
  /** The font as the writer of PDF embeds it. */
  readonly font: unknown;
}

/** A stretch of text in one font. */
export interface Run {
  readonly font: 'regular' | 'bold' | 'spare';
  readonly text: string;
}

/** What texts are set in: a standard font and perhaps one for what it lacks. */
export interface Typeface {
  readonly spare: SpareFont | null;
  /** A text in stretches of one font; a character that no font has becomes its code point in brackets, `[5C71]`. */
  readonly runs: (text: string, weight: 'regular' | 'bold') => readonly Run[];
  /** Length of a text whose capitals are 1 mm high, mm. */
  readonly width: (text: string, weight: 'regular' | 'bold') => number;
}

/** The standard fonts as the writer of PDF takes them. */
export const STANDARD_FONTS: readonly FontData[] = [regular, bold];

const FONTS = { regular: standardFont(regular), bold: standardFont(bold) };

/** Texts set in Helvetica, and in the spare font where a character asks for it. */
export function typeface(spare: SpareFont | null = null): Typeface {
  const runs: Typeface['runs'] = (text, weight) => {
    const found: { font: Run['font']; text: string }[] = [];
    for (const [cluster] of standardised(text).matchAll(/\P{M}\p{M}*|\p{M}+/gu)) {
      const next = runOf(cluster, weight, spare);
      const last = found.at(-1);
      if (last?.font === next.font) last.text += next.text;
      else found.push({ ...next });
    }
    return found;
  };
  const measured = (text: string, weight: 'regular' | 'bold') => {
    const plain = standardised(text);
    if (isStandardText(plain)) return SIZE_PER_CAPITAL * FONTS[weight].width(plain);
    return (
      SIZE_PER_CAPITAL *
      runs(text, weight).reduce(
        (sum, r) => sum + (r.font === 'spare' ? (spare?.width(r.text) ?? 0) : FONTS[r.font].width(r.text)),
        0,
      )
    );
  };
  // laying out tries the same texts at many places
  const known = { regular: new Map<string, number>(), bold: new Map<string, number>() };
  const width: Typeface['width'] = (text, weight) => {
    const found = known[weight].get(text) ?? measured(text, weight);
    known[weight].set(text, found);
    return found;
  };
  return { spare, runs, width };
}

/** True when the standard fonts have every character of a text. */
export const isPlain = (text: string): boolean => isStandardText(standardised(text));

/** True for a page that needs no spare face. */
export const isPlainPage = ({ blocks }: Page): boolean =>
  blocks.every((b) => b.items.every((i) => i.kind !== 'words' || isPlain(i.text)));

/** A character with the marks that combine with it, in the first font that has all of it. */
function runOf(cluster: string, weight: 'regular' | 'bold', spare: SpareFont | null): Run {
  const characters = [...cluster];
  if (characters.every(isStandard)) return { font: weight, text: cluster };
  const points = characters.map((c) => c.codePointAt(0) as number);
  if (spare !== null && points.every(spare.has)) return { font: 'spare', text: cluster };
  const code = points.map((p) => p.toString(16).toUpperCase().padStart(4, '0')).join('+');
  return { font: weight, text: `[${code}]` };
}
