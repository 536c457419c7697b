import { MM_PER_INCH, type PartPlan } from '@tinwright/core';
import { LANGUAGES } from '@tinwright/words/internal';
import { dimsIn, dimsOf } from '../page/dims.js';
import { letter, lines } from '../page/letter.js';
import type { Item, Page } from '../page/page.js';
import { LETTERING, typeface } from '../page/typeface.js';
import { featuresOf } from '../pattern/features.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import type { BrakeMarks, PlanOptions } from '../plan/options.js';
import { mapBlocks } from './tile-map.js';
import { type Square, tileItems } from './tile-page.js';
import { MARGIN, type Medium, type Tile, type Tiling, tilingOf } from './tiles.js';

const LEAD = 1.55; // from base line to base line, in heights of text
const NAME = 1.8; // from a tile's lower edge to the base line of its name, in heights of text

/** How templates are printed. */
export type TemplateOptions = Pick<PlanOptions, 'dims' | 'lettering' | 'language' | 'face' | 'date'> & {
  readonly medium: Medium;
};

/** A template: its pages, and how it is cut into tiles; a map of them comes first where there are several. */
export interface Template {
  readonly pages: readonly Page[];
  readonly tiling: Tiling;
}

/**
 * A part's pattern at full size, on one page or cut into tiles that overlap; where there are several, first a map of
 * them. Every page carries a square to measure.
 */
export function partTemplate(
  job: string,
  part: PartPlan,
  options: TemplateOptions,
  { sights = [] }: BrakeMarks = {},
): Template {
  const { language = 'en', face = typeface(), lettering = LETTERING } = options;
  const { plans: words } = LANGUAGES[language];
  const dims = dimsIn(dimsOf(options.dims), language);
  const features = featuresOf(part.flat);
  const ask: PatternAsk = {
    name: part.name,
    flat: part.flat,
    features,
    ordinates: [],
    sights,
    dims,
    words,
    face,
    height: lettering,
  };
  const w = words.template;
  const zinc = part.material.zinc ? ` ${words.cautionZinc}` : '';
  const below = [w.printing, words.cautionShort + zinc];
  const tiling = tilingOf(part.flat.blank.max, options.medium, (width) => stripHeight(ask, below, width));
  const inches = dims.unit === 'in';
  const square: Square = {
    side: inches ? 4 * MM_PER_INCH : 100,
    text: w.square(inches ? '4' : '100', dims.unit),
  };
  const title = w.title(part.name, job);
  const { width, height } = tiling.page;
  const pageOf = (tile: Tile): Page => ({
    title,
    width,
    height,
    blocks: [
      { alt: w.tileAlt(part.name, tile.name), items: tileItems(ask, tiling, tile, square) },
      {
        alt: null,
        items: strip(ask, `${w.page(part.name, tile.name)}, ${w.make(part.quantity)}`, below, width),
      },
    ],
  });
  const tiles = tiling.tiles.map(pageOf);
  const single = tiling.tiles.length === 1;
  const sight = sights.length > 0 ? [w.sights] : [];
  const notes = [w.make(part.quantity), w.printing, w.gluing, w.using, ...sight, words.caution + zinc];
  const map: readonly Page[] = single
    ? []
    : [{ title, width, height, blocks: mapBlocks(ask, tiling, square, title, notes) }];
  return { pages: [...map, ...tiles], tiling };
}

/** What to mind, under a tile, in lines. */
const broken = ({ face, height }: PatternAsk, notes: readonly string[], width: number): readonly string[] =>
  notes.flatMap((n) => lines(face, n, width - 2 * MARGIN, height));

const stripHeight = (ask: PatternAsk, notes: readonly string[], width: number): number =>
  (NAME + LEAD * broken(ask, notes, width).length + 0.4) * ask.height;

/** What a tile is, and what to mind, under it. */
function strip(ask: PatternAsk, name: string, notes: readonly string[], width: number): readonly Item[] {
  const { face, height } = ask;
  const top = MARGIN + stripHeight(ask, notes, width) - NAME * height;
  const named = letter(face, name, [MARGIN, top], { height: 1.2 * height, bold: true });
  return [
    named,
    ...broken(ask, notes, width).map((text, i) =>
      letter(face, text, [MARGIN, top - LEAD * height * (i + 1)], { height }),
    ),
  ];
}
