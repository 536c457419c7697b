import {
  linearTolerance,
  MM_PER_INCH,
  type PartPlan,
  plainNumber,
  type ToleranceClass,
} from '@tinwright/core';
import type { Flowing } from '../page/flow.js';
import { notesFlow, tableFlow } from '../page/table.js';
import { bendNumber } from '../plan/features.js';
import { sizeWords } from '../plan/part-tables.js';
import type { PacketKit } from './kit.js';

const ROW = 7; // mm, to write in
const MOST = 3; // columns to fill in

/** Classes of ISO 2768-1 that cut and bent sizes are held to. */
export interface Classes {
  readonly cut: ToleranceClass;
  readonly bent: ToleranceClass;
}

/** The inspection sheet: every dimension, nominal and tolerance, and room for what is found. */
export function inspectionFlows(kit: PacketKit, classes: Classes): readonly Flowing[] {
  const { plan, words, setting } = kit;
  return [
    ...plan.parts.map((p) => partTable(kit, p, classes)),
    notesFlow(null, [...words.inspection.notes(classes.cut, classes.bent), words.inspection.sign], setting),
  ];
}

interface Row {
  readonly name: string;
  readonly what: string;
  readonly value: number;
  readonly of: ToleranceClass;
}

function partTable({ words, plans, dims, setting }: PacketKit, part: PartPlan, classes: Classes): Flowing {
  const w = words.inspection;
  const columns = Math.min(MOST, part.quantity);
  const bent = part.flat.bends.length > 0;
  const [x, y] = part.flat.blank.max;
  const finished: readonly Row[] = part.part.asked.map(({ name, value }) => ({
    name,
    what: sizeWords(part, name, plans),
    value,
    of: bent ? classes.bent : classes.cut,
  }));
  const cut: readonly Row[] = bent
    ? [
        { name: '', what: w.blankX, value: x, of: classes.cut },
        { name: '', what: w.blankY, value: y, of: classes.cut },
      ]
    : [];
  const limit = ({ value, of }: Row) => {
    const found = linearTolerance(value, of);
    if (found === null) return '';
    return dims.unit === 'in' ? `±${plainNumber(found / MM_PER_INCH, 3)}` : `±${plainNumber(found, 2)}`;
  };
  const blank = Array.from({ length: columns }, () => '');
  const angles = [...new Set(part.flat.bends.filter((b) => b.hem === null).map((b) => b.angle))];
  return tableFlow(
    {
      heading: w.heading(part.name, part.quantity),
      columns: [
        { title: w.columns.size },
        { title: w.columns.what, grows: true },
        { title: `${w.columns.nominal}, ${dims.unit}`, align: 'end' },
        { title: w.columns.limit, align: 'end' },
        ...blank.map((_, i) => ({ title: `${w.measured(i + 1, columns)}\u00A0\u00A0\u00A0`, blank: true })),
      ],
      rowHeight: ROW,
      rows: [
        ...[...cut, ...finished].map((r) => [
          r.name,
          r.what,
          { text: dims.text(r.value), value: r.value },
          limit(r),
          ...blank,
        ]),
        ...angles.map((angle) => [
          '',
          w.angle(
            part.flat.bends
              .flatMap((b, i) => (b.hem === null && b.angle === angle ? [bendNumber(i)] : []))
              .join(' '),
          ),
          dims.angle(angle),
          '±2°',
          ...blank,
        ]),
      ],
    },
    setting,
  );
}
