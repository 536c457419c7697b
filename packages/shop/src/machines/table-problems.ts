import type { Problem } from '@tinwright/core';
import type { Shop } from './shop.js';

/** A way to cut that the shop has no machine for. */
export function tableProblems({ cutBy, table }: Shop): readonly Problem[] {
  if (cutBy !== 'table' || table !== null) return [];
  const message = 'table given, and the shop has none';
  return [
    { code: 'machine-missing', path: ['cutBy'], message, fix: 'Give table: with its kerf, or cutBy: hand' },
  ];
}
