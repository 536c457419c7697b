import type { Stage } from './fold-tree.js';
import { has, type Mask } from './mask.js';
import type { Work } from './operations.js';

/** The stage of every bend in a state. */
export function stageOf({ last, first }: Work, done: Mask): (panel: number) => Stage {
  return (panel) => {
    const end = last[panel] ?? -1;
    if (end < 0) return 'flat';
    if (has(done, end)) return 'done';
    return first[panel] !== end && has(done, first[panel] as number) ? 'folded' : 'flat';
  };
}
