import { lazy } from '@tinwright/core/internal';
import type { HeldSide } from './line.js';
import type { LineStroke } from './operations.js';

/** Something of every line with either side held, each made when it is first asked for. */
export function bySide<T>(
  operations: readonly LineStroke[],
  make: (operation: LineStroke, held: HeldSide) => T,
): (operation: LineStroke, held: HeldSide) => T {
  const lines = operations.map((o) => ({
    parent: lazy(() => make(o, 'parent')),
    child: lazy(() => make(o, 'child')),
  }));
  return ({ index }, held) => (lines[index] as (typeof lines)[number])[held]();
}
