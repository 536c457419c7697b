import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

const [CELL, LETTER, ACROSS] = [80, 4, 6] as const; // mm, mm, pictures in a row

/** Sizes shown at most: a page to look at, not a catalogue. */
export const MOST_PICTURES = 120;

/** Pictures of sizes side by side, each as large as fits its cell: the flat pattern of its first part. */
export async function indexPicture(out: string, names: readonly string[]): Promise<string> {
  const cells = await Promise.all(
    names.map(async (name, i) => cellOf(name, await pictureOf(join(out, name)), i)),
  );
  const [width, height] = [ACROSS * CELL, Math.max(1, Math.ceil(names.length / ACROSS)) * CELL];
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">
<title>sizes</title>
${cells.join('\n')}
</svg>
`;
}

function cellOf(name: string, picture: string, i: number): string {
  const [x, y] = [(i % ACROSS) * CELL, Math.floor(i / ACROSS) * CELL];
  const inner = CELL - 3 * LETTER;
  const placed = picture.replace(
    /<svg([^>]*)>/,
    (_, given: string) =>
      `<svg${given.replace(/ (x|y|width|height|xmlns)="[^"]*"/g, '')} x="${x + LETTER}" y="${y + 2 * LETTER}" width="${inner}" height="${inner}">`,
  );
  return `<text x="${x + LETTER}" y="${y + 1.5 * LETTER}" font-family="sans-serif" font-size="${LETTER}">${name}</text>\n${placed}`;
}

/** The first cut file of a size, without what stands before its picture; empty when it is gone. Ids are taken off. */
async function pictureOf(folder: string): Promise<string> {
  try {
    const [first] = (await readdir(join(folder, 'parts'))).filter((n) => n.endsWith('.svg')).toSorted();
    const svg = await readFile(join(folder, 'parts', first ?? ''), 'utf8');
    return svg
      .slice(svg.indexOf('<svg'))
      .replace(/ id="[^"]*"/g, '')
      .trim();
  } catch {
    return '';
  }
}
