/// <reference path="../page/pdfkit.d.ts" />
import { MM_PER_INCH, type Point, PROGRAM } from '@tinwright/core';
import type { Bytes } from '@tinwright/files';
import { wordsBox } from '../page/box.js';
import {
  FAINT,
  type Item,
  type Page,
  PEN_DASH,
  PEN_WIDTH,
  type Pen,
  TONES,
  type Words,
} from '../page/page.js';
import type { FontData } from '../page/standard-font.js';
import { SIZE_PER_CAPITAL, STANDARD_FONTS, type Typeface } from '../page/typeface.js';
import { packWith } from './pack.js';

/** What a document says of itself. */
export interface DocumentInfo {
  readonly title: string;
  /** Tag of the language (BCP 47). */
  readonly language: string;
  readonly face: Typeface;
}

/** What the build for browsers asks for, and the one for Node does itself. */
interface BrowserBuild {
  readonly registerStdFonts?: (...fonts: readonly FontData[]) => void;
}

const POINTS = 72 / MM_PER_INCH; // in a millimetre
const FONTS = { regular: 'Helvetica', bold: 'Helvetica-Bold', spare: 'spare' } as const;
const GREY = Math.round(255 * FAINT);

/**
 * Pages as a PDF at true size, text as text, pictures with words for those who cannot see them. Same pages, same bytes:
 * its date is fixed.
 * @param pages asked for one by one
 */
export async function pagesPdf(pages: Iterable<Page>, info: DocumentInfo): Promise<Bytes> {
  // only here: the libraries take their time to load
  const [pdfkit, { toBytes }, { zlibSync }] = await Promise.all([
    import('pdfkit'),
    import('pdfkit/output'),
    import('fflate'),
  ]);
  const { default: PDFDocument } = pdfkit;
  (pdfkit as BrowserBuild).registerStdFonts?.(...STANDARD_FONTS);
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    tagged: true,
    lang: info.language,
    displayTitle: true,
    info: { Title: info.title, Producer: PROGRAM.mark, Creator: PROGRAM.name, CreationDate: new Date(0) },
  });
  packWith(zlibSync, doc);
  const bytes = toBytes(doc);
  const { spare } = info.face;
  if (spare !== null) doc.registerFont(FONTS.spare, spare.font as PDFKit.Mixins.PDFFontSource);
  let chapter = doc.outline;
  for (const page of pages) {
    drawPage(doc, page, info.face);
    for (const { name, title, level } of page.anchors ?? []) {
      doc.addNamedDestination(name, 'Fit');
      if (level === 0) chapter = doc.outline.addItem(title);
      else chapter.addItem(title);
    }
  }
  doc.end();
  return bytes;
}

function drawPage(doc: PDFKit.PDFDocument, page: Page, face: Typeface): void {
  doc.addPage({ size: [page.width * POINTS, page.height * POINTS], margin: 0 });
  const sheet: Sheet = {
    doc,
    face,
    to: ([x, y]) => [tidy(x * POINTS), tidy((page.height - y) * POINTS)],
    pen: penOf(doc),
  };
  for (const { alt, items } of page.blocks) {
    const draw = () => {
      for (const item of items) drawItem(sheet, item);
    };
    const element = alt === null ? doc.struct('P') : doc.struct('Figure', { alt });
    doc.addStructure(element);
    element.add(draw);
    for (const item of items)
      if (item.kind === 'words' && item.link !== undefined) drawLink(sheet, item, element);
    element.end();
  }
}

/** A place to press on over a text that leads somewhere. */
function drawLink({ doc, to }: Sheet, words: Words, element: PDFKit.PDFStructureElement): void {
  const { min, max } = wordsBox(words);
  const [x0, y1] = to(min);
  const [x1, y0] = to(max);
  const link = doc.struct('Link');
  element.add(link);
  const options: object = { structParent: link, Contents: new String(words.text) }; // a String is written as text
  doc.goTo(x0, y0, x1 - x0, y1 - y0, words.link ?? '', options);
  link.end();
}

/** Ten-thousandths of a point: a thirtieth of a micrometre. */
const tidy = (v: number) => Math.round(v * 1e4) / 1e4;

interface Sheet {
  readonly doc: PDFKit.PDFDocument;
  readonly face: Typeface;
  readonly to: (p: Point) => Point;
  /** Take up a pen; it is told to the document only when it is another one. */
  readonly pen: (name: Pen) => void;
}

function penOf(doc: PDFKit.PDFDocument): Sheet['pen'] {
  let held: Pen | null = null;
  return (name) => {
    if (name === held) return;
    held = name;
    const dash = PEN_DASH[name];
    doc
      .lineWidth(tidy(PEN_WIDTH[name] * POINTS))
      .strokeColor(name === 'faint' ? [GREY, GREY, GREY] : 'black');
    // its types know of one dash only
    if (dash === undefined) doc.undash();
    else doc.dash(dash.map((d) => tidy(d * POINTS)) as unknown as number, {});
  };
}

const toneOf = (tone: keyof typeof TONES): [number, number, number] => {
  const brightness = Math.round(255 * TONES[tone]);
  return [brightness, brightness, brightness];
};

function drawItem({ doc, face, to, pen }: Sheet, item: Item): void {
  switch (item.kind) {
    case 'words':
      drawWords(doc, item, to, face);
      return;
    case 'fill':
      if (item.tone === undefined) {
        path(doc, item.points, true, to);
        doc.fill();
        return;
      }
      doc.save();
      path(doc, item.points, true, to);
      doc.fill(toneOf(item.tone)).restore();
      return;
    case 'ring':
      pen(item.pen);
      doc.circle(...to(item.centre), tidy(item.radius * POINTS)).stroke();
      return;
    case 'stroke':
      pen(item.pen);
      path(doc, item.points, item.closed === true, to);
      doc.stroke();
  }
}

function path(doc: PDFKit.PDFDocument, points: readonly Point[], closed: boolean, to: Sheet['to']): void {
  points.forEach((p, i) => {
    if (i === 0) doc.moveTo(...to(p));
    else doc.lineTo(...to(p));
  });
  if (closed) doc.closePath();
}

function drawWords(doc: PDFKit.PDFDocument, words: Words, to: Sheet['to'], face: Typeface): void {
  const size = tidy(words.height * SIZE_PER_CAPITAL * POINTS);
  const [x, y] = to(words.at);
  doc.fontSize(size);
  if (words.turn === 90) doc.save().rotate(-90, { origin: [x, y] });
  let at = x;
  for (const run of face.runs(words.text, words.bold ? 'bold' : 'regular')) {
    doc.font(FONTS[run.font]);
    doc.text(run.text, at, y, { lineBreak: false, baseline: 'alphabetic' });
    at += doc.widthOfString(run.text);
  }
  if (words.turn === 90) doc.restore();
}
