import type { ToolGroup } from './plan.js';

/**
 * How far the middle of a line stands off the middle of a machine at the least, mm, to the right of who stands before it
 * positive: tools stand as near to the middle as their length lets them. @param tools null where they may stand anywhere
 */
export function offMiddle(tools: readonly ToolGroup[] | null, line: number, machine: number): number {
  if (tools === null) return 0;
  const ends = tools.flatMap(({ from, pieces, gap }) => [
    from,
    from + pieces.reduce((a, b) => a + b, 0) + gap * (pieces.length - 1),
  ]);
  const [left, right] = [Math.min(...ends), Math.max(...ends)];
  const play = Math.max(0, (machine - (right - left)) / 2);
  const off = line / 2 - (left + right) / 2;
  return Math.sign(off) * Math.max(0, Math.abs(off) - play);
}
