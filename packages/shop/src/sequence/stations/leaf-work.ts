import type { Material } from '@tinwright/core';
import type { Brake } from '../../machines/shop.js';
import type { SheetSpringback } from '../../metal/springback.js';
import { foldSetting, type LeafSetting, leafSetting } from '../../tools/leaf-setting.js';
import { type FoldTree, setRadius, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import type { LineStroke } from '../part/operations.js';

/** The metal of a part as a machine sees it. */
export interface LeafBlank {
  readonly material: Material;
  /** Kept off every tool, mm. */
  readonly margin: number;
  /** What the metal opens again. */
  readonly springback: SheetSpringback;
}

/** What a leaf brake is set to for an operation, and how far its leaf turns. mm, degrees */
export interface LeafWork extends LeafSetting {
  readonly insideRadius: number;
  /** Turned to, springback included, as a stop is set: to half degrees. */
  readonly set: number;
  /** Turned through where nothing may be in the way: a little further, for metal that opens more. */
  readonly free: number;
}

const STOP = 0.5; // degrees an angle stop is set to; judgement

/** A hem is folded, and lies for closing, with the setting of its sheet's own radius. */
export function leafWork(
  tree: FoldTree,
  { action, angle, panels }: LineStroke,
  brake: Brake,
  springback: SheetSpringback,
): LeafWork {
  const { thickness, fold } = tree;
  const { bend } = tree.panels[panels[0] as number] as TreePanel & { bend: TreeBend };
  const insideRadius = setRadius(tree, bend);
  if (action !== 'bend') {
    const setting = foldSetting(brake, thickness, insideRadius);
    const through = Math.min(setting.most, fold.angle);
    // as far as the leaf goes: not half a degree further
    return { ...setting, insideRadius, set: Math.floor(through / STOP + 1e-6) * STOP, free: through };
  }
  const wanted = Math.abs(angle);
  const set = Math.round(wanted / springback(insideRadius).factor / STOP) * STOP;
  const setting = leafSetting(brake, thickness, insideRadius, { angle: wanted, set });
  return { ...setting, insideRadius, set, free: Math.max(set, wanted + brake.overbend) };
}
