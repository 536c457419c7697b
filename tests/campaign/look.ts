// The files of a part looked at: closed loops inside the blank, as large as the pattern, the same in both files.
import type { PartPlan } from '@tinwright/core';
import type { TableStyle } from '@tinwright/files';
import { cutLoops } from '../kit/cut-layer.js';
import { svgCuts } from '../kit/svg-cuts.js';

const LEAST_SEGMENT = 0.0009; // mm: a thousandth, less the rounding of the file's decimals
const NEAR = 0.01; // mm
const SAGITTA = 0.001; // mm
const NO_NUMBER = /\bNaN\b|\bInfinity\b|\bundefined\b/;

/** What was written of a part. */
export interface Written {
  readonly dxf: string;
  readonly svg: string;
}

/** @throws Error that says what is wrong with a file */
export function looked({ name, flat }: PartPlan, { dxf, svg }: Written, style: TableStyle): void {
  for (const text of [dxf, svg]) if (NO_NUMBER.test(text)) throw new Error(`${name}: a file holds no number`);
  const scale = style.unit === 'in' ? 25.4 : 1;
  const loops = cutLoops(dxf, SAGITTA / scale).map((loop) =>
    loop.map(([x, y]) => [x * scale, y * scale] as const),
  );
  const areas = loops.map((l) => Math.abs(signedArea(l))).toSorted((a, b) => b - a);
  for (const loop of loops) apart(name, loop);
  const cuts = svgCuts(svg);
  if (cuts.count !== loops.length)
    throw new Error(`${name}: ${loops.length} loops in the DXF, ${cuts.count} in the SVG`);
  if (cuts.outside !== null) throw new Error(`${name}: ${cuts.outside} lies off the picture`);
  // a table may turn small holes into marks and take metal off at corners
  const asPlanned = style.leastHole === 0 && style.leastEdge === 0;
  const net = areas.reduce((sum, a, i) => (i === 0 ? a : sum - a), 0);
  const allowed = 0.002 * flat.cutLength + 0.01; // chords of arcs, and the decimals of the file
  if (asPlanned && Math.abs(net - flat.area) > allowed)
    throw new Error(`${name}: ${net} mm² in the file, ${flat.area} planned`);
  for (const k of [0, 1] as const) {
    const values = loops.flat().map((p) => p[k]);
    const [least, most] = [Math.min(...values), Math.max(...values)];
    const wrong = asPlanned
      ? Math.abs(most - least - flat.blank.max[k]) > NEAR
      : most - least > flat.blank.max[k] + NEAR;
    if (wrong)
      throw new Error(`${name}: ${most - least} in the file, a blank of ${flat.blank.max[k]} planned`);
  }
}

function apart(name: string, loop: readonly (readonly [number, number])[]): void {
  const cut = new Set<string>();
  loop.forEach(([x, y], i) => {
    const [u, v] = loop[(i + 1) % loop.length] ?? [x, y];
    if (cut.has(`${u} ${v} ${x} ${y}`)) throw new Error(`${name}: cut there and back at ${x}, ${y}`);
    cut.add(`${x} ${y} ${u} ${v}`);
    if (Math.hypot(u - x, v - y) < LEAST_SEGMENT)
      throw new Error(`${name}: two corners less than ${LEAST_SEGMENT} mm apart at ${x}, ${y}`);
  });
}

const signedArea = (loop: readonly (readonly [number, number])[]): number =>
  loop.reduce((sum, [x, y], i) => {
    const [u, v] = loop[(i + 1) % loop.length] ?? [x, y];
    return sum + (x * v - u * y) / 2;
  }, 0);
