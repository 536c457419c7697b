// A PDF read back with a reader that shares nothing with the writer: page sizes, texts and straight lines, in mm from
// the lower left corner.
import type * as Reader from 'pdfjs-dist/legacy/build/pdf.mjs';

const { getDocument, OPS } = await reader();

const MM = 25.4 / 72;

type Point = readonly [number, number];
type Matrix = readonly [number, number, number, number, number, number];

/** A text with where its base line starts, how far it reaches along it, and degrees it is turned by. */
export interface ReadText {
  readonly text: string;
  readonly at: Point;
  readonly width: number;
  readonly size: number;
  readonly turn: number;
}

/** A page as it was read. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  /** Corners of every path in order; curves by their end points. */
  readonly paths: readonly (readonly Point[])[];
  /** Words for pictures, in order. */
  readonly alts: readonly string[];
  /** Pages its links lead to, from 0. */
  readonly links: readonly number[];
}

/** A bookmark: how deep it lies, and the page it leads to, from 0. */
export interface ReadBookmark {
  readonly title: string;
  readonly level: number;
  readonly page: number;
}

/** A document as it was read. */
export interface ReadDocument {
  readonly title: string;
  readonly language: string;
  readonly pages: readonly ReadPage[];
  readonly bookmarks: readonly ReadBookmark[];
}

/** Read a PDF. */
export async function readPdf(bytes: Uint8Array): Promise<ReadDocument> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const document = await task.promise;
  try {
    const { info } = (await document.getMetadata()) as { info: { Title?: string; Language?: string } };
    const pages: ReadPage[] = [];
    for (let n = 1; n <= document.numPages; n++)
      pages.push(await readPage(document, await document.getPage(n)));
    const bookmarks = await bookmarksOf(document, (await document.getOutline()) ?? [], 0);
    return { title: info.Title ?? '', language: info.Language ?? '', pages, bookmarks };
  } finally {
    await task.destroy();
  }
}

type PdfDocument = Awaited<ReturnType<typeof getDocument>['promise']>;
type PdfPage = Awaited<ReturnType<PdfDocument['getPage']>>;

/** The page a destination lies on, by its name or as it is. */
async function pageAt(document: PdfDocument, dest: unknown): Promise<number> {
  const found = typeof dest === 'string' ? await document.getDestination(dest) : dest;
  if (!Array.isArray(found)) throw new Error(`nothing at ${String(dest)}`);
  return document.getPageIndex(found[0] as Parameters<PdfDocument['getPageIndex']>[0]);
}

interface OutlineItem {
  readonly title: string;
  readonly dest: unknown;
  readonly items: readonly OutlineItem[];
}

async function bookmarksOf(
  document: PdfDocument,
  items: readonly OutlineItem[],
  level: number,
): Promise<readonly ReadBookmark[]> {
  const found: ReadBookmark[] = [];
  for (const { title, dest, items: below } of items)
    found.push(
      { title, level, page: await pageAt(document, dest) },
      ...(await bookmarksOf(document, below, level + 1)),
    );
  return found;
}

async function readPage(document: PdfDocument, page: PdfPage): Promise<ReadPage> {
  const [x0, y0, x1, y1] = page.view as [number, number, number, number];
  const { items } = await page.getTextContent();
  const texts = items.flatMap((item): readonly ReadText[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a, b, , , x, y] = item.transform as unknown as Matrix;
    const size = Math.hypot(a, b);
    const turn = Math.round((Math.atan2(b, a) * 180) / Math.PI);
    return [{ text: item.str, at: [x * MM, y * MM], width: item.width * MM, size: size * MM, turn }];
  });
  const tree = (await page.getStructTree()) as { children?: readonly { alt?: string }[] } | null;
  return {
    width: (x1 - x0) * MM,
    height: (y1 - y0) * MM,
    texts,
    paths: pathsOf(await page.getOperatorList()),
    alts: (tree?.children ?? []).flatMap((c) => c.alt ?? []),
    links: await Promise.all(
      ((await page.getAnnotations()) as readonly { dest?: unknown }[])
        .filter((a) => a.dest !== undefined)
        .map((a) => pageAt(document, a.dest)),
    ),
  };
}

function pathsOf(list: {
  fnArray: readonly number[];
  argsArray: readonly unknown[];
}): readonly (readonly Point[])[] {
  const paths: Point[][] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  list.fnArray.forEach((fn, i) => {
    const args = list.argsArray[i] as readonly unknown[];
    if (fn === OPS.save) kept.push(matrix);
    else if (fn === OPS.restore) matrix = kept.pop() ?? matrix;
    else if (fn === OPS.transform) matrix = product(matrix, args as unknown as Matrix);
    else if (fn === OPS.constructPath)
      paths.push(...runsOf((args[1] as readonly ArrayLike<number>[])[0] ?? [], matrix));
  });
  return paths;
}

/** Operators of a path, each followed by its coordinates: 0 move, 1 line, 2 curve, 3 close. */
function runsOf(numbers: ArrayLike<number>, matrix: Matrix): Point[][] {
  const runs: Point[][] = [];
  const on = (i: number): Point => {
    const [x, y] = [numbers[i] as number, numbers[i + 1] as number];
    const [a, b, c, d, e, f] = matrix;
    return [(a * x + c * y + e) * MM, (b * x + d * y + f) * MM];
  };
  for (let i = 0; i < numbers.length; ) {
    const op = numbers[i];
    const last = runs.at(-1);
    if (op === 0) runs.push([on(i + 1)]);
    else if (op === 1) last?.push(on(i + 1));
    else if (op === 2) last?.push(on(i + 5));
    else if (op === 3 && last?.[0] !== undefined) last.push(last[0]);
    else throw new RangeError(`operator ${op} of a path`);
    i += 1 + ([2, 2, 6, 0][op as number] as number);
  }
  return runs;
}

function product([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** The reader without a canvas: nothing is painted here, so what it says of that when it is loaded is not heard. */
async function reader(): Promise<typeof Reader> {
  const names = ['DOMMatrix', 'ImageData', 'Path2D'] as const;
  const globals = globalThis as Record<string, unknown>;
  for (const name of names) globals[name] ??= class {};
  const { warn, log } = console;
  Object.assign(console, { warn: () => {}, log: () => {} });
  try {
    return await import('pdfjs-dist/legacy/build/pdf.mjs');
  } finally {
    Object.assign(console, { warn, log });
  }
}
