import { MM_PER_INCH } from '@tinwright/core';
import { massText, plainNumber } from '@tinwright/core/internal';
import type { CutWork } from '@tinwright/files';
import { cutTotals } from '@tinwright/files/internal';
import type { ShearWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type TypeSetting, tableFlow } from '../page/table.js';

/** `12.4 m`, or feet beside inches. */
const far = (mm: number, { unit, own }: Dims): string =>
  own(
    unit === 'in'
      ? `${plainNumber(mm / (12 * MM_PER_INCH), 1)}\u00A0ft`
      : `${plainNumber(mm / 1000, 2)}\u00A0m`,
  );

/** What all the cutting takes: sheet used and lost, mass, price, and estimates of time. @param left what was left out, in words */
export function sumsTable(
  work: CutWork,
  left: readonly string[],
  words: ShearWords,
  dims: Dims,
  setting: TypeSetting,
): Flowing {
  const { sums: s } = words;
  const all = cutTotals(work);
  const number = (value: number, digits: number) => dims.own(plainNumber(value, digits));
  const percent = (share: number) => `${number(share * 100, 1)}\u00A0%`;
  const minutes = (m: number) => s.minutes(number(m, m < 10 ? 1 : 0));
  const rows: readonly (readonly [string, string])[] = [
    [s.used, percent(all.used)],
    [s.kept, percent(all.kept)],
    [s.waste, percent(all.waste)],
    [s.mass, dims.own(massText(all.mass, dims.unit)).replace(' ', '\u00A0')],
    ...(all.price === null ? [] : [[s.price, number(all.price, 2)] as const]),
    [s.shear, minutes(all.minutes.shear)],
    [s.table, s.cuts(far(all.cutLength, dims), all.pierces, minutes(all.minutes.table))],
    ...(all.fasteners === 0 ? [] : [[s.joining, minutes(all.minutes.joining)] as const]),
  ];
  return tableFlow(
    {
      heading: s.heading,
      columns: [{ title: s.what }, { title: s.amount, grows: true }],
      rows,
      notes: [s.estimate, ...left],
    },
    setting,
  );
}

/** Fasteners by kind and length; nothing where there are none. @param nameOf a kind, in words */
export function fastenerTable(
  { fasteners }: CutWork,
  nameOf: (kind: string) => string,
  words: ShearWords,
  dims: Dims,
  setting: TypeSetting,
): readonly Flowing[] {
  if (fasteners.length === 0) return [];
  const { columns: c, heading } = words.fasteners;
  const size = (mm: number | null) => (mm === null ? '' : dims.fine(mm));
  return [
    tableFlow(
      {
        heading,
        columns: [
          { title: c.kind, grows: true },
          { title: `${c.diameter}, ${dims.unit}`, align: 'end' },
          { title: `${c.length}, ${dims.unit}`, align: 'end' },
          { title: `${c.stack}, ${dims.unit}`, align: 'end' },
          { title: c.count, align: 'end' },
        ],
        rows: fasteners.map((f) => [
          nameOf(f.kind),
          size(f.diameter),
          size(f.length),
          size(f.stack),
          String(f.count),
        ]),
      },
      setting,
    ),
  ];
}
