import type { HardwareSpec } from '@tinwright/core';
import { letterOf } from '@tinwright/files/internal';
import type { Flowing } from '../page/flow.js';
import { tableFlow } from '../page/table.js';
import type { PacketKit } from './kit.js';

/** Bought parts with their letters on the picture, their sizes and what they go on; nothing where there are none. */
export function boughtFlow({ plan, words, plans, dims, setting, sets }: PacketKit): readonly Flowing[] {
  const { placed = [], bought = [] } = plan.assembly ?? {};
  const rows = [...new Map(bought.map((b) => [b.spec.name, b])).values()];
  if (rows.length === 0) return [];
  const { heading, columns: c, open } = words.bought;
  const letters = (name: string) =>
    bought.flatMap(({ spec }, i) => (spec.name === name ? [letterOf(placed.length + i)] : [])).join(' ');
  return [
    tableFlow(
      {
        heading,
        columns: [
          { title: c.letter },
          { title: c.part },
          { title: c.what, grows: true },
          { title: c.count, align: 'end' },
          { title: `${c.size}, ${dims.unit}`, grows: true },
          { title: c.on, grows: true },
          { title: c.by },
        ],
        rows: rows.map(({ spec, holds, body }) => [
          letters(spec.name),
          spec.name,
          plans.fastener(spec.params.type),
          String(spec.at.length * sets),
          `${sizesOf(spec.params).map(dims.fine).join(' × ')}${body.pin === null || spec.params.type !== 'hinge' ? '' : `, ${open(String(spec.params.opens))}`}`,
          holds.map((h) => h.piece).join(', '),
          spec.by === null ? '' : plans.fastener(spec.by.kind.name, spec.by.kind.facts.words),
        ]),
      },
      setting,
    ),
  ];
}

/** The sizes it is bought by. mm */
function sizesOf(p: HardwareSpec['params']): readonly number[] {
  switch (p.type) {
    case 'hinge':
      return [p.length, 2 * p.leaf];
    case 'hasp':
      return [p.width, p.strap + p.staple];
    case 'handle':
      return [p.span, p.reach];
    case 'rivet-nut':
      return [p.hole, p.length];
    case 'magnet':
      return [p.diameter, p.height];
    case 'caster':
      return [p.length, p.width, p.height];
  }
}
