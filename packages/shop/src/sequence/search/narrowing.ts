import type { Costs } from '../../machines/shop.js';
import type { Prospect } from '../stations/station.js';
import type { ToolSet } from './fingers.js';

/** Least seconds of changing tools until those that are left go in where a prospect says; nothing when they do already. */
export type Narrowing = (on: ToolSet, rack: readonly number[], prospect: Prospect) => number;

/** Widths of some tools: of the widest group that stands together, and of the narrowest one, two, three … of them. mm */
interface Widths {
  readonly widest: number;
  readonly least: readonly number[];
}

/**
 * Whatever is put on instead, and however often tools are changed until then: what has to come off comes off once, piece
 * by piece, and no more pieces stay than the narrowest of them have room.
 */
export function narrowingOf({ tools, tool }: Costs): Narrowing {
  const known = new WeakMap<object, Widths>();
  return (on, rack, { narrow, room }) => {
    if (narrow === Infinity) return 0;
    const { widest, least } = known.get(on ?? rack) ?? measured(known, on ?? rack, on ?? [rack]);
    if (widest <= narrow + 1e-9) return 0;
    const over = least.findIndex((width) => width > room + 1e-9);
    return tools + tool * (over < 0 ? 0 : least.length - over);
  };
}

function measured(
  known: WeakMap<object, Widths>,
  of: object,
  groups: readonly (readonly number[])[],
): Widths {
  let sum = 0;
  const made = {
    widest: Math.max(...groups.map((pieces) => pieces.reduce((a, b) => a + b, 0))),
    least: groups
      .flat()
      .toSorted((a, b) => a - b)
      .map((piece) => {
        sum += piece;
        return sum;
      }),
  };
  known.set(of, made);
  return made;
}
