import { MM_PER_INCH, type PartPlan, type ToleranceClass } from '@tinwright/core';
import { formedSizes, plainNumber } from '@tinwright/core/internal';
import { measuredLabel, type PlanWords } from '@tinwright/words/internal';
import { bendText } from '../marking/marking-table.js';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type TypeSetting, tableFlow } from '../page/table.js';
import { bendNumber, groupsOf } from '../pattern/features.js';
import { isOver, roundedOff } from './rounding.js';

/** The bends of a part, those alike in one row; null when it has none. `setAngles` by the bend's id, degrees */
export function bendTable(
  { flat }: PartPlan,
  setAngles: Readonly<Record<string, number>>,
  dims: Dims,
  words: PlanWords,
  setting: TypeSetting,
): Flowing | null {
  if (flat.bends.length === 0) return null;
  const { heading, columns: c } = words.bends;
  const set = flat.bends.some((b) => setAngles[b.id] !== undefined);
  const numbered = flat.bends.map((bend, i) => ({ bend, number: bendNumber(i) }));
  const alike = groupsOf(numbered, ({ bend: b }) =>
    [
      bendText([], b, dims, words),
      ...[b.insideRadius, b.terms.allowance, b.terms.deduction].map(dims.fine),
      setAngles[b.id] ?? '',
    ].join(),
  );
  return tableFlow(
    {
      heading: heading(dims.unit),
      columns: [
        { title: c.panel, grows: true },
        { title: c.bend },
        { title: c.radius, align: 'end' },
        { title: c.allowance, align: 'end' },
        { title: c.deduction, align: 'end' },
        ...(set ? [{ title: c.set, align: 'end' } as const] : []),
      ],
      rows: alike.map(([, list]) => {
        const [{ bend }] = list as [(typeof list)[number]];
        const angle = setAngles[bend.id];
        return [
          list.map((l) => `${l.number}\u00A0${l.bend.id}`).join(', '),
          bendText([], bend, dims, words),
          dims.fine(bend.insideRadius),
          dims.fine(bend.terms.allowance),
          dims.fine(bend.terms.deduction),
          ...(set ? [angle === undefined ? '' : dims.angle(angle)] : []),
        ];
      }),
    },
    setting,
  );
}

const SAME = 5e-3; // mm

/** Sizes asked of the part, in the words of its family, with what they are formed to where that is something else. */
export function finishedTable(
  { part, family, formed }: PartPlan,
  dims: Dims,
  words: PlanWords,
  setting: TypeSetting,
): Flowing | null {
  if (part.asked.length === 0) return null;
  const { heading, columns: c } = words.finished;
  const sizes = formedSizes(part, formed);
  const grows = sizes.some((s) => Math.abs(s.formed - s.asked) > SAME);
  return tableFlow(
    {
      heading: heading(dims.unit),
      columns: [
        { title: c.what, grows: true },
        { title: c.size, align: 'end' },
        ...(grows ? [{ title: c.formed, align: 'end' } as const] : []),
      ],
      rows: sizes.map((s) => [
        measuredLabel(family, s.name, words.language),
        { text: dims.text(s.asked), value: s.asked },
        ...(grows ? [dims.fine(s.formed)] : []),
      ]),
    },
    setting,
  );
}

/** Sizes beside each other in a column of 168 mm, by the height of lettering. */
const setsFor = (height: number): number => Math.max(1, Math.floor(168 / (22 * height)));

/** Sizes that their fractions do not meet, with what rounding does; null when all are exact. */
export function roundedTable(
  sizes: readonly number[],
  dims: Dims,
  tolerance: ToleranceClass,
  words: PlanWords,
  setting: TypeSetting,
): Flowing | null {
  const off = roundedOff(sizes, dims);
  if (off.length === 0) return null;
  const over = (mm: number) => isOver(mm, dims, tolerance);
  const { heading, columns: c, over: warning } = words.rounded;
  const cells = off.map((mm) => {
    const error = dims.error(mm) / MM_PER_INCH;
    return [
      dims.text(mm),
      dims.fine(mm),
      `${error < 0 ? '–' : '+'}${dims.own(plainNumber(Math.abs(error), 4))}${over(mm) ? ' *' : ''}`,
    ];
  });
  const sets = setsFor(setting.height);
  const rows = Math.ceil(cells.length / sets);
  const count = off.filter(over).length;
  return tableFlow(
    {
      heading,
      columns: Array.from({ length: sets }, (_, i) => [
        ...[c.printed, c.exact, c.off].map((title) => ({ title, align: 'end' as const })),
        ...(i < sets - 1 ? [{ title: '', grows: true } as const] : []),
      ]).flat(),
      rows: Array.from({ length: rows }, (_, r) =>
        Array.from({ length: sets }, (_, s) => [
          ...(cells[r + s * rows] ?? ['', '', '']),
          ...(s < sets - 1 ? [''] : []),
        ]).flat(),
      ),
      notes: count === 0 ? [] : [warning(count)],
    },
    setting,
  );
}
