import type { PartPlan } from '@tinwright/core';
import type { Flowing } from '../page/flow.js';
import { tableFlow } from '../page/table.js';
import { areaText, blankText, massText, type PacketKit, stockText } from './kit.js';

/** Blanks to shear, and how much sheet they take. */
export function cutFlows(kit: PacketKit): readonly Flowing[] {
  const { plan, words, dims, setting, sets } = kit;
  const { heading, columns: c, notes, stock, stockColumns: s } = words.cuts;
  const pieces = (p: PartPlan) => p.quantity * sets;
  const stocks = [...new Set(plan.parts.map((p) => stockText(p, kit)))];
  const areaOf = ({ flat }: PartPlan) => flat.blank.max[0] * flat.blank.max[1];
  const massOf = (p: PartPlan) => (areaOf(p) * p.sheet.thickness * p.material.density) / 1e9;
  return [
    tableFlow(
      {
        heading,
        columns: [
          { title: c.part },
          { title: c.pieces, align: 'end' },
          { title: `${c.blank}, ${dims.unit}`, align: 'end' },
          { title: `${c.diagonal}, ${dims.unit}`, align: 'end' },
          { title: c.stock, grows: true },
          { title: c.mass, align: 'end' },
          { title: c.done },
        ],
        rows: plan.parts.map((p) => [
          p.name,
          String(pieces(p)),
          blankText(p, kit),
          dims.text(Math.hypot(...p.flat.blank.max)),
          stockText(p, kit),
          massText(massOf(p), dims),
          '',
        ]),
        notes,
      },
      setting,
    ),
    tableFlow(
      {
        heading: stock,
        columns: [
          { title: s.stock, grows: true },
          { title: s.pieces, align: 'end' },
          { title: s.area, align: 'end' },
          { title: s.mass, align: 'end' },
        ],
        rows: stocks.map((name) => {
          const own = plan.parts.filter((p) => stockText(p, kit) === name);
          const sum = (of: (p: PartPlan) => number) => own.reduce((t, p) => t + pieces(p) * of(p), 0);
          return [name, String(sum(() => 1)), areaText(sum(areaOf), dims), massText(sum(massOf), dims)];
        }),
      },
      setting,
    ),
  ];
}
