import type { Problem } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import { impossible } from './impossible.js';
import type { Shop } from './shop.js';

/** Metals that stand twice in the capacity of a machine. */
export function capacityProblems(shop: Shop): readonly Problem[] {
  const machines = [
    ...(['brake', 'vise', 'handSeamer', 'formerBlock', 'shear'] as const).map((m) => ({
      path: [m],
      machine: shop[m],
    })),
    ...shop.brakes.map((machine, i) => ({ path: ['brakes', i], machine })),
  ];
  return machines.flatMap(({ path, machine }) => {
    const list = machine?.capacity ?? [];
    return list.flatMap(({ material }, i) => {
      const first = list.findIndex((c) => c.material === material);
      if (first === i) return [];
      const message = `${quoted(material)} stands in number ${first + 1} already`;
      return [impossible([...path, 'capacity', i, 'material'], message, 'Keep one of the two')];
    });
  });
}
