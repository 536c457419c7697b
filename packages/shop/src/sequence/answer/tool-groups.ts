import { spanOf } from '../part/line.js';
import type { ToolSet } from '../search/fingers.js';
import type { Stretch } from '../stations/station.js';
import { bareEnds, type Interval, mounted } from '../stations/stretches.js';
import type { ToolGroup } from './plan.js';

/** True where nothing is beside the line that tools could stand in. */
export const isOpen = (stretches: readonly Stretch[]): boolean =>
  stretches.every((s) => !Number.isFinite(s.from) && !Number.isFinite(s.to));

/**
 * Where tools stand along a line, from its left end as the operator sees it (the machine's y runs to his right).
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
  if (set === null && isOpen(stretches)) return null;
  const line = spanOf(spans);
  const seen = stretches.map((s): Interval => [s.from - line[0], s.to - line[0]]);
  const length = line[1] - line[0];
  return (set ?? [rack]).map((pieces, i): ToolGroup => {
    const [from, to] = seen[i] ?? [0, length];
    const need: Interval = [Math.max(from, 0), Math.min(to, length)];
    const stretch = stretches[i] ?? { least: 0, covered: length, slack: [0, 0], past: [0, 0] };
    const own = mounted(pieces, stretch, inner);
    const { gap, wide } = own;
    const over = Math.max(0, wide - (need[1] - need[0])) / 2;
    const start = Math.min(Math.max(need[0] + own.bare[0] - over, from), to - wide);
    return { pieces, from: start, gap, bare: bareEnds(stretch, own) };
  });
}
