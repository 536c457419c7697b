import { MM_PER_INCH, type PartPlan } from '@tinwright/core';
import { letter, lines } from '../page/letter.js';
import type { Item, Page } from '../page/page.js';
import { typeface } from '../page/typeface.js';
import { dimsOf } from '../plan/dims.js';
import { ENGLISH } from '../plan/english.js';
import { featuresOf } from '../plan/features.js';
import type { PlanOptions } from '../plan/options.js';
import type { PatternAsk } from '../plan/pattern-figure.js';
import { mapBlocks } from './tile-map.js';
import { type Square, tileItems } from './tile-page.js';
import { MARGIN, type Medium, STRIP, type Tile, tilingOf } from './tiles.js';

const LETTERING = 2.5; // mm
const LEAD = 1.55;

/** How templates are printed. */
export type TemplateOptions = Pick<PlanOptions, 'dims' | 'lettering' | 'words' | 'face' | 'date'> & {
  readonly medium: Medium;
};

/** A template: its pages, and how many tiles it is cut into. */
export interface Template {
  readonly pages: readonly Page[];
  readonly tiles: number;
}

/**
 * A part's pattern at full size, on one page or cut into tiles that overlap; where there are several, first a map of
 * them. Every page carries a square to measure.
 */
export function partTemplate(job: string, part: PartPlan, options: TemplateOptions): Template {
  const { words = ENGLISH, face = typeface(), lettering = LETTERING } = options;
  const dims = dimsOf(options.dims);
  const features = featuresOf(part.flat);
  const ask: PatternAsk = {
    name: part.name,
    flat: part.flat,
    features,
    ordinates: [],
    sights: [],
    dims,
    words,
    face,
    height: lettering,
  };
  const tiling = tilingOf(part.flat.blank.max, options.medium);
  const w = words.template;
  const inches = dims.unit === 'in';
  const square: Square = {
    side: inches ? 4 * MM_PER_INCH : 100,
    text: w.square(inches ? '4' : '100', dims.unit),
  };
  const title = w.title(part.name, job);
  const { width, height } = tiling.page;
  const zinc = part.material.zinc ? ` ${words.cautionZinc}` : '';
  const pageOf = (tile: Tile): Page => ({
    title,
    width,
    height,
    blocks: [
      { alt: w.tileAlt(part.name, tile.name), items: tileItems(ask, tiling, tile, square) },
      {
        alt: null,
        items: strip(ask, w.page(part.name, tile.name), [w.printing, words.cautionShort + zinc], width),
      },
    ],
  });
  const tiles = tiling.tiles.map(pageOf);
  const single = tiling.tiles.length === 1;
  const overlap = inches ? '3/8 in' : '10 mm';
  const notes = [w.make(part.quantity), w.printing, w.gluing(overlap), w.using, words.caution + zinc];
  const map: readonly Page[] = single
    ? []
    : [{ title, width, height, blocks: mapBlocks(ask, tiling, square, title, notes) }];
  return { pages: [...map, ...tiles], tiles: tiles.length };
}

/** What a tile is, and what to mind, under it. */
function strip(
  { face, height }: PatternAsk,
  name: string,
  notes: readonly string[],
  width: number,
): readonly Item[] {
  const top = MARGIN + STRIP - 1.4 * height;
  const named = letter(face, name, [MARGIN, top], { height: 1.2 * height, bold: true });
  const broken = notes.flatMap((n) => lines(face, n, width - 2 * MARGIN, height));
  return [
    named,
    ...broken.map((text, i) => letter(face, text, [MARGIN, top - LEAD * height * (i + 1)], { height })),
  ];
}
