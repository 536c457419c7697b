import type { Brake } from '../../machines/shop.js';
import type { TreeBend, TreePanel } from '../part/fold-tree.js';
import type { LineFrame } from '../part/line.js';
import type { LineStroke } from '../part/operations.js';
import type { AccessBook } from './access.js';
import type { LeafWork } from './leaf-work.js';

/** Everything about a line that no state changes. */
export interface LeafLineSetup {
  readonly brake: Brake;
  readonly operation: LineStroke;
  readonly frame: LineFrame;
  readonly child: TreePanel & { readonly bend: TreeBend };
  readonly thickness: number;
  readonly leaf: LeafWork;
  /** Flange the leaf needs, sheet the fingers need. mm */
  readonly least: { readonly flange: number; readonly hold: number };
  readonly access: AccessBook;
}

/** Outside leg of a flange, from its fold to its edge. mm */
export function legOf({ panel }: Pick<TreePanel, 'panel'>): number {
  return Math.max(...panel.outline.map((e) => e.from[1]));
}
