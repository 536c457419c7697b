import type { Point } from '@tinwright/core';

/**
 * Kinds of line on a page, all black (line group 0.35 of ISO 128-2: wide 0.35 mm, narrow 0.18 mm): `wide` and `narrow`
 * continuous; `bold` continuous, twice as wide; `chain` long-dashed double-dotted narrow, for outlines before forming; `centre` long-dashed dotted
 * narrow; `faint` continuous narrow in grey, for marks that only help and may be lost in a copy.
 */
export type Pen = 'wide' | 'bold' | 'narrow' | 'chain' | 'centre' | 'faint';

/** Straight lines from point to point. mm of the page, y up. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly pen: Pen;
  readonly points: readonly Point[];
  readonly closed?: boolean;
}

/** A circle's line. */
export interface Ring {
  readonly kind: 'ring';
  readonly pen: Pen;
  readonly centre: Point;
  readonly radius: number;
}

/** A polygon filled with black, an arrowhead or a piece of a bar, or with a tone: `grey` prints letters legibly over it. */
export interface Fill {
  readonly kind: 'fill';
  readonly points: readonly Point[];
  readonly tone?: 'grey' | 'white';
}

/**
 * A line of text. `at` is where its base line starts; it runs to the right, or up when `turn` is 90. `height` is that of
 * its capitals, `width` its length along the base line, mm.
 */
export interface Words {
  readonly kind: 'words';
  readonly text: string;
  readonly at: Point;
  readonly height: number;
  readonly width: number;
  readonly turn: 0 | 90;
  readonly bold: boolean;
  /** The length or coordinate it states, mm, before rounding; for those who check or blank it out. */
  readonly value?: number;
  /** Name of the page it leads to. */
  readonly link?: string;
}

/** Anything on a page. */
export type Item = Stroke | Ring | Fill | Words;

/** Things on a page that belong together; a picture says in words what it shows. */
export interface Block {
  readonly alt: string | null;
  readonly items: readonly Item[];
}

/** What a page starts: a name to lead to, and an entry of the document's bookmarks, 1 under the 0 before it. */
export interface Anchor {
  readonly name: string;
  readonly title: string;
  readonly level: 0 | 1;
}

/** A sheet of paper with what stands on it. mm, origin at its lower left corner, y up. */
export interface Page {
  readonly title: string;
  readonly anchors?: readonly Anchor[];
  readonly width: number;
  readonly height: number;
  readonly blocks: readonly Block[];
}

/** Widths of the pens, mm. */
export const PEN_WIDTH: Readonly<Record<Pen, number>> = {
  wide: 0.35,
  bold: 0.7,
  narrow: 0.18,
  chain: 0.18,
  centre: 0.18,
  faint: 0.18,
};

/** Dashes and gaps of the pens that have some, mm: long dash 24 d, gap 3 d, dot 0.5 d at d = 0.18 mm (ISO 128-2). */
export const PEN_DASH: Readonly<Partial<Record<Pen, readonly number[]>>> = {
  chain: [4.3, 0.54, 0.1, 0.54, 0.1, 0.54],
  centre: [4.3, 0.54, 0.1, 0.54],
};

/** Grey of the faint pen, 0 black to 1 white. */
export const FAINT = 0.55;

/** Brightness of the tones of a fill, 0 black to 1 white. */
export const TONES: Readonly<Record<NonNullable<Fill['tone']>, number>> = { grey: 0.87, white: 1 };

/** The same things elsewhere on the page. */
export function moved(items: readonly Item[], [dx, dy]: Point): readonly Item[] {
  const to = ([x, y]: Point): Point => [x + dx, y + dy];
  return items.map((i): Item => {
    switch (i.kind) {
      case 'ring':
        return { ...i, centre: to(i.centre) };
      case 'words':
        return { ...i, at: to(i.at) };
      default:
        return { ...i, points: i.points.map(to) };
    }
  });
}
