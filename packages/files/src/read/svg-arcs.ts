import type { Point } from '@tinwright/core';
import type svgpath from 'svgpath';

/** Path data that is read, in units of the drawing, y down. */
export type DrawnPath = ReturnType<typeof svgpath>;

/** Radii, tilt in degrees, which of four arcs, and where it ends. */
type Arc = readonly [
  rx: number,
  ry: number,
  tilt: number,
  isLarge: number,
  sweep: number,
  x: number,
  y: number,
];

// what is made of a quarter turn as one cubic lies 0.03 % of its radius off, of half a quarter 0.0004 %
const HALVINGS = 3;

/** The path, absolute, with each arc in eight, so that the curves made of them are as round as they are drawn. */
export function withShortArcs(path: DrawnPath): DrawnPath {
  return path.iterate(([op, ...v], _, x, y) => {
    if (op !== 'A') return;
    let arcs: readonly Arc[] = [v as unknown as Arc];
    for (let i = 0; i < HALVINGS; i++) arcs = halves([x, y], arcs);
    return arcs.map((arc) => ['A', ...arc]);
  });
}

function halves(start: Point, arcs: readonly Arc[]): readonly Arc[] {
  let from = start;
  return arcs.flatMap((arc) => {
    const both = halved(from, arc);
    from = [arc[5], arc[6]];
    return both;
  });
}

/** An arc in two, SVG 1.1 F.6: on a circle of radius 1, its middle stands over the middle of its chord. */
function halved([x, y]: Point, arc: Arc): readonly Arc[] {
  const [rx, ry, tilt, isLarge, sweep, u, v] = arc;
  if (rx === 0 || ry === 0 || (x === u && y === v)) return [arc]; // a line, or nothing
  const [cos, sin] = [Math.cos((tilt * Math.PI) / 180), Math.sin((tilt * Math.PI) / 180)];
  const [across, down] = [(cos * (u - x) + sin * (v - y)) / rx, (cos * (v - y) - sin * (u - x)) / ry];
  const chord = Math.hypot(across, down);
  const grown = Math.max(1, chord / 2); // radii too small for the chord grow until it is a diameter
  const aside = Math.sqrt(Math.max(0, 1 - (chord / 2 / grown) ** 2));
  const over = ((sweep === 1 ? 1 : -1) * (1 + (isLarge === 1 ? aside : -aside)) * grown) / chord;
  const [a, b] = [across / 2 + over * down, down / 2 - over * across];
  const middle = [x + cos * rx * a - sin * ry * b, y + sin * rx * a + cos * ry * b] as const;
  const short = [rx * grown, ry * grown, tilt, 0, sweep] as const;
  return [
    [...short, ...middle],
    [...short, u, v],
  ];
}
