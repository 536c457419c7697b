import type { Problem } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import { impossible } from './impossible.js';
import type { Shop } from './shop.js';

/** Metals that stand twice in the capacity of a machine. */
export function capacityProblems(shop: Shop): readonly Problem[] {
  return (['brake', 'vise', 'handSeamer', 'shear'] as const).flatMap((machine) => {
    const list = shop[machine]?.capacity ?? [];
    return list.flatMap(({ material }, i) => {
      const first = list.findIndex((c) => c.material === material);
      if (first === i) return [];
      const message = `${quoted(material)} stands in number ${first + 1} already`;
      return [impossible([machine, 'capacity', i, 'material'], message, 'Keep one of the two')];
    });
  });
}
