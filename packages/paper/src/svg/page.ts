import type { Point } from '@tinwright/core';
import { coordinate, escapeXml } from '@tinwright/files/internal';
import { FAINT, type Item, type Page, PEN_DASH, PEN_WIDTH, TONES, type Words } from '../page/page.js';
import { SIZE_PER_CAPITAL } from '../page/typeface.js';

/** Faces with Helvetica's widths first; what none of them has comes from the reader's own. */
const FACES = "Helvetica, Arial, 'Liberation Sans', 'Nimbus Sans', Arimo, sans-serif";
const grey = (brightness: number): string =>
  `#${Math.round(255 * brightness)
    .toString(16)
    .repeat(3)}`;
const GREY = grey(FAINT);

/** A page as SVG text at true size: one user unit is 1 mm. Texts are as long as they were laid out, whatever the font. */
export function pageSvg(page: Page, language: string): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${pageElement(page, language)}\n`;
}

/** The same as an element of a document. */
export function pageElement({ title, width, height, blocks }: Page, language: string): string {
  const x = (p: Point) => coordinate(p[0]);
  const y = (p: Point) => coordinate(height - p[1]);
  const groups = blocks.map(({ alt, items }) => {
    const open = alt === null ? '<g>' : `<g role="img" aria-label="${escapeXml(alt)}">`;
    return [open, ...items.map((i) => element(i, x, y)), '</g>'].join('\n');
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" xml:lang="${language}" width="${coordinate(width)}mm" height="${coordinate(height)}mm" viewBox="0 0 ${coordinate(width)} ${coordinate(height)}" font-family="${FACES}">`,
    `<title>${escapeXml(title)}</title>`,
    '<rect width="100%" height="100%" fill="#fff"/>',
    ...groups,
    '</svg>',
  ].join('\n');
}

type Along = (p: Point) => number;

function element(item: Item, x: Along, y: Along): string {
  if (item.kind === 'words') return wordsElement(item, x, y);
  if (item.kind === 'fill') {
    const tone = item.tone === undefined ? '' : ` fill="${grey(TONES[item.tone])}"`;
    return `<path d="${pathOf(item.points, x, y)}Z"${tone}/>`;
  }
  const dash = PEN_DASH[item.pen];
  const paint = `fill="none" stroke="${item.pen === 'faint' ? GREY : '#000'}" stroke-width="${PEN_WIDTH[item.pen]}"${
    dash === undefined ? '' : ` stroke-dasharray="${dash.join(' ')}"`
  }`;
  if (item.kind === 'ring')
    return `<circle cx="${x(item.centre)}" cy="${y(item.centre)}" r="${coordinate(item.radius)}" ${paint}/>`;
  return `<path d="${pathOf(item.points, x, y)}${item.closed ? 'Z' : ''}" ${paint}/>`;
}

const pathOf = (points: readonly Point[], x: Along, y: Along): string =>
  points.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p)} ${y(p)}`).join('');

function wordsElement(w: Words, x: Along, y: Along): string {
  const size = coordinate(w.height * SIZE_PER_CAPITAL);
  const place =
    w.turn === 0
      ? `x="${x(w.at)}" y="${y(w.at)}"`
      : `transform="translate(${x(w.at)} ${y(w.at)}) rotate(-90)"`;
  const weight = w.bold ? ' font-weight="bold"' : '';
  const text = `<text ${place} font-size="${size}"${weight} textLength="${coordinate(w.width)}" lengthAdjust="spacingAndGlyphs" xml:space="preserve">${escapeXml(w.text)}</text>`;
  return w.link === undefined ? text : `<a href="#${escapeXml(w.link)}">${text}</a>`;
}
