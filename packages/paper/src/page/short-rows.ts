import type { Cell } from './columns.js';

const MOST = 240; // characters of a cell: some ten lines of a narrow column

/**
 * A row whose texts are too long to stand in one piece, as several: each goes on in the next one, after a comma or a
 * semicolon. By characters, so that there are as many whatever the width of the column.
 */
export function shortRows(row: readonly Cell[]): readonly (readonly Cell[])[] {
  const cells = row.map((cell) => (typeof cell === 'string' ? pieces(cell) : [cell]));
  const count = Math.max(1, ...cells.map((c) => c.length));
  return Array.from({ length: count }, (_, i) => cells.map((c): Cell => c[i] ?? ''));
}

function pieces(text: string): readonly string[] {
  if (text.length <= MOST) return [text];
  const found: string[] = [];
  let own = '';
  for (const part of text.split(/(?<=[,;]) /)) {
    const longer = own === '' ? part : `${own} ${part}`;
    if (longer.length > MOST && own !== '') {
      found.push(own);
      own = part;
    } else own = longer;
  }
  return [...found, own];
}
