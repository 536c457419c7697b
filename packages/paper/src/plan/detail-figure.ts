import type { Box, Point } from '@tinwright/core';
import { flattened } from '@tinwright/core/internal';
import { clipped } from '../figure/clip.js';
import { boxOfItems } from '../page/box.js';
import type { Figure } from '../page/figure.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import { SCALES } from '../page/paper.js';
import type { Detail } from '../pattern/details.js';
import { ordinateLines } from '../pattern/ordinate-lines.js';
import { type Ordinate, turnsIn } from '../pattern/ordinates.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';

const SIZE = 48; // mm, most a detail measures on the page
const SAGITTA = 0.01; // mm on the page

/** A detail of a pattern, enlarged, with the ordinates of what turns in it. mm of the page */
export function detailFigure(ask: PatternAsk, { letter: name, region, alike }: Detail): Figure {
  const { flat, features, dims, words, face, height } = ask;
  const size = Math.max(region.max[0] - region.min[0], region.max[1] - region.min[1]);
  const { ratio, text } =
    SCALES.find((s) => size * s.ratio <= SIZE) ?? (SCALES.at(-1) as (typeof SCALES)[number]);
  const on = ([x, y]: Point): Point => [(x - region.min[0]) * ratio, (y - region.min[1]) * ratio];
  const far = on(region.max);
  const ordinates = ([0, 1] as const).flatMap((axis) =>
    turnsIn(flat, features, axis, dims, region).map((points): Ordinate => {
      const other = axis === 0 ? 1 : 0;
      const low = points.toSorted((a, b) => a[other] - b[other])[0] as Point;
      return { axis, value: low[axis], text: dims.text(low[axis]), side: 'low', from: low };
    }),
  );
  const lines: readonly Item[] = [
    ...ordinates.map(({ axis, from }): Item => {
      const [x, y] = on(from);
      return { kind: 'stroke', pen: 'faint', points: [[x, y], axis === 0 ? [x, 0] : [0, y]] };
    }),
    ...clipped(flattened(flat.outline, SAGITTA / ratio), true, region).map(
      (points): Item => ({ kind: 'stroke', pen: 'wide', points: points.map(on) }),
    ),
    ...flat.bends.flatMap((b) =>
      clipped(b.line, false, region).map(
        (points): Item => ({ kind: 'stroke', pen: 'narrow', points: points.map(on) }),
      ),
    ),
    { kind: 'stroke', pen: 'narrow', closed: true, points: [[0, 0], [far[0], 0], far, [0, far[1]]] },
  ];
  const at = (o: Ordinate): Ordinate => ({
    ...o,
    from: o.axis === 0 ? [o.from[0], region.min[1]] : [region.min[0], o.from[1]],
  });
  const bands = ordinateLines(ordinates.map(at), region, ratio, face, height);
  const drawn = [...lines, ...bands];
  const { min, max } = boxOfItems(drawn) as Box;
  const caption = letter(face, words.detail(name, text, alike), [min[0], max[1] + 0.8 * height], {
    height,
    bold: true,
  });
  const items = [...drawn, caption];
  return { alt: words.detailAlt(name), items, box: boxOfItems(items) as Box };
}
