import type { Point } from '@tinwright/core';
import { flattened } from '@tinwright/core/internal';
import type { Item } from '../page/page.js';
import { isRectangle } from './features.js';
import type { PatternAsk } from './pattern-ask.js';

const CROSS = 1; // mm on the page, half the size of a mark
const DATUM = 0.8; // mm, radius of the origin's circle (ISO 129-1)
const SAGITTA = 0.01; // mm on the page
const APART = 0.7; // mm; a sight line nearer to its bend line than this is only told in the table

/** Lines of a pattern at a scale, datum corner at the origin. mm of the page */
export function patternLines({ flat, features, sights }: PatternLinesAsk, scale: number): readonly Item[] {
  const on = ([x, y]: Point): Point => [x * scale, y * scale];
  const [w, h] = on(flat.blank.max);
  const corners: readonly Point[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  const outline = flattened(flat.outline, SAGITTA / scale).map(on);
  return [
    ...(isRectangle(flat) ? [] : [{ kind: 'stroke', pen: 'chain', points: corners, closed: true } as const]),
    { kind: 'stroke', pen: 'wide', points: outline, closed: true },
    ...flat.bends.map((b): Item => ({ kind: 'stroke', pen: 'narrow', points: b.line.map(on) })),
    ...flat.scribes.map((line): Item => ({ kind: 'stroke', pen: 'narrow', points: line.map(on) })),
    ...sights
      .filter((s) => apart(s, flat.bends) * scale >= APART)
      .map((s): Item => ({ kind: 'stroke', pen: 'centre', points: s.line.map(on) })),
    ...features.cutouts.map(
      (loop): Item => ({
        kind: 'stroke',
        pen: 'wide',
        points: flattened(loop, SAGITTA / scale).map(on),
        closed: true,
      }),
    ),
    ...features.holes.flatMap((f) => hole(on(f.at), (f.diameter / 2) * scale)),
    ...flat.marks.flatMap((m) => (m.hole === null ? cross(on(m.at)) : hole(on(m.at), (m.hole / 2) * scale))),
    { kind: 'ring', pen: 'narrow', centre: [0, 0], radius: DATUM },
  ];
}

type PatternLinesAsk = Pick<PatternAsk, 'flat' | 'features' | 'sights'>;

/** How far a sight line lies from its bend line, mm. */
function apart({ bend, line }: PatternAsk['sights'][number], bends: PatternAsk['flat']['bends']): number {
  const [a, b] = bends.find((f) => f.id === bend)?.line ?? line;
  const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [p] = line;
  return Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / l;
}

/** A hole with its centre lines, which reach a little past it. */
function hole(at: Point, radius: number): readonly Item[] {
  const reach = radius + CROSS;
  return [
    { kind: 'ring', pen: 'wide', centre: at, radius },
    {
      kind: 'stroke',
      pen: 'centre',
      points: [
        [at[0] - reach, at[1]],
        [at[0] + reach, at[1]],
      ],
    },
    {
      kind: 'stroke',
      pen: 'centre',
      points: [
        [at[0], at[1] - reach],
        [at[0], at[1] + reach],
      ],
    },
  ];
}

function cross([x, y]: Point): readonly Item[] {
  return [
    {
      kind: 'stroke',
      pen: 'narrow',
      points: [
        [x - CROSS, y - CROSS],
        [x + CROSS, y + CROSS],
      ],
    },
    {
      kind: 'stroke',
      pen: 'narrow',
      points: [
        [x - CROSS, y + CROSS],
        [x + CROSS, y - CROSS],
      ],
    },
  ];
}
