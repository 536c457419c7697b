import type { FlatBend, Point } from '@tinwright/core';
import type { BendStep } from '../sequence/answer/plan.js';
import { lineAxes } from './setup.js';
import type { Along } from './tool-solids.js';

/** What a machine has to cover lines with, and how much of a line it may leave bare. mm */
export interface ToolRack {
  readonly pieces: readonly number[];
  readonly gaps: { readonly end: number; readonly inner: number };
  readonly length: number;
}

const PLAY = 1e-6;

/** Tools that are not in the rack, stand in each other, or leave too much of a line bare. */
export function toolFlaws(step: BendStep, bends: readonly FlatBend[], rack: ToolRack): readonly string[] {
  if (step.tools === null) return [];
  const used = step.tools.flatMap((g) => g.pieces);
  const missing = [...new Set(used)].filter((w) => count(used, w) > count(rack.pieces, w));
  // from the left end of the line to the right
  const tools = step.tools
    .map(({ from, pieces, gap }): Along => [from, from + width(pieces, gap)])
    .toSorted((a, b) => a[0] - b[0]);
  const crowded = tools.some(([from], i) => i > 0 && from < (tools[i - 1]?.[1] ?? 0) - PLAY);
  const apart = step.tools.some((g) => g.gap > rack.gaps.inner + PLAY);
  return [
    ...missing.map((w) => `there are not that many pieces of ${w} mm`),
    ...(crowded ? ['tools stand in each other'] : []),
    ...(apart ? ['pieces of tool stand too far apart'] : []),
    ...(width(used, 0) > rack.length + PLAY ? ['tools are longer than the machine'] : []),
    ...bare(linesOf(step, bends), tools, rack),
  ];
}

const count = (list: readonly number[], w: number) => list.filter((v) => v === w).length;

const width = (pieces: readonly number[], gap: number) =>
  pieces.reduce((a, b) => a + b, 0) + gap * Math.max(0, pieces.length - 1);

/** Bent material of every line, counted from the left end of them all. */
function linesOf(step: BendStep, bends: readonly FlatBend[]): readonly Along[] {
  const { right: axis } = lineAxes(step, bends[0] as FlatBend);
  const right = ([x, y]: Point) => x * axis[0] + y * axis[1];
  const start = Math.min(...bends.flatMap((b) => b.line.map(right)));
  return bends.map(({ line: [p, q] }): Along => {
    const [a, b] = [right(p) - start, right(q) - start];
    return a < b ? [a, b] : [b, a];
  });
}

/** What stays bare of the lines: at the ends of them all the gap for ends is allowed, elsewhere the inner one. */
function bare(lines: readonly Along[], tools: readonly Along[], { gaps }: ToolRack): readonly string[] {
  const last = Math.max(...lines.map((l) => l[1]));
  const open = lines.flatMap((l) =>
    tools.reduce<readonly Along[]>((left, tool) => left.flatMap((s) => less(s, tool)), [l]),
  );
  return open.flatMap(([from, to]) => {
    const most = from <= PLAY || to >= last - PLAY ? gaps.end : gaps.inner;
    return to - from > most + PLAY ? [`${(to - from).toFixed(1)} mm of the line stay bare`] : [];
  });
}

/** A stretch without another. */
function less([from, to]: Along, [a, b]: Along): readonly Along[] {
  if (b <= from || a >= to) return [[from, to]];
  return [...(a > from ? [[from, a] as const] : []), ...(b < to ? [[b, to] as const] : [])];
}
