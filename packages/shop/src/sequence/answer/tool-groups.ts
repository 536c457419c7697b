import type { ToolSet } from '../search/fingers.js';
import type { Stretch } from '../stations/station.js';
import type { Interval } from '../stations/stretches.js';
import type { ToolGroup } from './plan.js';

/**
 * Where tools stand along a line, from its left end as the operator sees it (the machine's y runs to his right).
 * A group stands in the middle of the bent material it covers, as far as its stretch lets it; pieces keep equal gaps
 * when they have to reach further than they are wide.
 * @param set null for the whole rack side by side; it only has to be said where it ends beside something
 * @param inner greatest gap between two pieces, mm
 */
export function toolGroups(
  set: ToolSet,
  stretches: readonly Stretch[],
  spans: readonly Interval[],
  rack: readonly number[],
  inner: number,
): readonly ToolGroup[] | null {
  const open = stretches.every((s) => !Number.isFinite(s.from) && !Number.isFinite(s.to));
  if (set === null && open) return null;
  const line: Interval = [Math.min(...spans.map((s) => s[0])), Math.max(...spans.map((s) => s[1]))];
  const seen = stretches.map((s): Interval => [s.from - line[0], s.to - line[0]]);
  const length = line[1] - line[0];
  return (set ?? [rack]).map((pieces, i): ToolGroup => {
    const [from, to] = seen[i] ?? [0, length];
    const need: Interval = [Math.max(from, 0), Math.min(to, length)];
    const sum = pieces.reduce((a, b) => a + b, 0);
    const least = stretches[i]?.least ?? 0;
    const gap = pieces.length > 1 ? Math.min(inner, Math.max(0, (least - sum) / (pieces.length - 1))) : 0;
    const wide = sum + gap * (pieces.length - 1);
    const middle = (need[0] + need[1]) / 2;
    const start = Math.min(Math.max(middle - wide / 2, from), to - wide);
    return {
      pieces,
      from: start,
      gap,
      bare: [Math.max(0, start - need[0]), Math.max(0, need[1] - start - wide)],
    };
  });
}
