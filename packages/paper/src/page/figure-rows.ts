import type { Figure } from './figure.js';
import type { Strip } from './flow.js';
import { moved } from './page.js';

const BETWEEN = 10; // mm

const wide = ({ box }: Figure) => box.max[0] - box.min[0];
const high = ({ box }: Figure) => box.max[1] - box.min[1];

/** Figures beside each other, as many to a row as a column of this width holds. */
export function figureRows(figures: readonly Figure[], width: number): readonly Strip[] {
  const rows: Figure[][] = [];
  for (const figure of figures) {
    const last = rows.at(-1);
    const taken = (last ?? []).reduce((sum, f) => sum + wide(f) + BETWEEN, 0);
    if (last !== undefined && taken + wide(figure) <= width) last.push(figure);
    else rows.push([figure]);
  }
  return rows.map(rowOf);
}

function rowOf(figures: readonly Figure[]): Strip {
  let x = 0;
  const items = figures.flatMap((f) => {
    const left = x;
    x += wide(f) + BETWEEN;
    return moved(f.items, [left - f.box.min[0], -f.box.max[1]]);
  });
  return { height: Math.max(...figures.map(high)), items };
}
