import { linearTolerance, MM_PER_INCH, type PartPlan, type ToleranceClass } from '@tinwright/core';
import { measuredBox, plainNumber, stand } from '@tinwright/core/internal';
import type { PacketWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type Cell, notesFlow, type TypeSetting, tableFlow } from '../page/table.js';
import { bendNumber } from '../pattern/features.js';
import { finishedSizes } from './finished-sizes.js';
import type { PacketKit } from './kit.js';
import { objectsOf } from './objects.js';

const WIDE = '\u00A0'.repeat(8);
const ROW = 6.5; // mm, to write in
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
    notesFlow(null, [words.inspection.sign, ...words.inspection.notes(classes.cut, classes.bent)], setting),
    ...plan.parts.map((p) => partTable(kit, p, classes)),
    ...objectTables(kit, classes),
  ];
}

interface Row {
  readonly what: string;
  readonly value: number;
  readonly of: ToleranceClass;
}

function partTable({ words, plans, dims, setting }: PacketKit, part: PartPlan, classes: Classes): Flowing {
  const w = words.inspection;
  const columns = Math.min(MOST, part.quantity);
  const bent = part.flat.bends.length > 0;
  const [x, y] = part.flat.blank.max;
  const finished: readonly Row[] = finishedSizes(part, plans).map(({ what, value, side }) => ({
    what: w.sides[side] === '' ? what : `${what}; ${w.sides[side]}`,
    value,
    of: bent ? classes.bent : classes.cut,
  }));
  const cut: readonly Row[] = bent
    ? [
        { what: w.blankX, value: x, of: classes.cut },
        { what: w.blankY, value: y, of: classes.cut },
      ]
    : [];
  const blank = Array.from({ length: columns }, () => '');
  const angles = [...new Set(part.flat.bends.filter((b) => b.hem === null).map((b) => b.angle))];
  const rows = [
    ...[...cut, ...finished].map((r) => [
      r.what,
      { text: dims.text(r.value), value: r.value },
      limitText(r.value, r.of, dims),
      ...blank,
    ]),
    ...angles.map((angle) => [
      w.angle(
        part.flat.bends
          .flatMap((b, i) => (b.hem === null && b.angle === angle ? [bendNumber(i)] : []))
          .join(' '),
      ),
      dims.angle(angle),
      '±2°',
      ...blank,
    ]),
  ];
  return inspectionTable(w, w.heading(part.name, part.quantity), rows, columns, dims, setting);
}

function limitText(value: number, of: ToleranceClass, { unit, own }: Dims): string {
  const found = linearTolerance(value, of);
  if (found === null) return '';
  return own(unit === 'in' ? `±${plainNumber(found / MM_PER_INCH, 3)}` : `±${plainNumber(found, 2)}`);
}

/** Rows of dimensions with columns to write into. */
function inspectionTable(
  w: PacketWords['inspection'],
  heading: string,
  rows: readonly (readonly Cell[])[],
  columns: number,
  { unit }: Dims,
  setting: TypeSetting,
): Flowing {
  const found = Array.from({ length: columns }, (_, i) => ({
    title: `${w.measured(i + 1, columns)}${WIDE}`,
    blank: true,
  }));
  return tableFlow(
    {
      heading,
      columns: [
        { title: w.columns.what, grows: true },
        { title: `${w.columns.nominal}, ${unit}`, align: 'end' },
        { title: w.columns.limit, align: 'end' },
        ...found,
      ],
      rowHeight: ROW,
      rows,
    },
    setting,
  );
}

const NAMED = 3; // pieces that tell an object from others

/** Overall sizes of the object put together; of several objects those of more than one piece, each by its pieces. */
function objectTables({ plan, words, dims, setting }: PacketKit, classes: Classes): readonly Flowing[] {
  const objects = plan.assembly === null ? [] : objectsOf(plan.assembly);
  const w = words.inspection;
  const shown = objects.length === 1 ? objects : objects.filter((pieces) => pieces.length > 1);
  return shown.map((pieces) => {
    const names = pieces.slice(0, NAMED).map((p) => p.piece);
    const told = [...names, ...(pieces.length > NAMED ? ['…'] : [])].join(', ');
    const boxes = pieces.map(({ part, pose }) => measuredBox(stand(part.formed, pose), 'all'));
    const extent = (k: 0 | 1 | 2) =>
      Math.max(...boxes.map((box) => box.max[k])) - Math.min(...boxes.map((box) => box.min[k]));
    const rows = ([0, 1, 2] as const).map((k) => {
      const value = extent(k);
      return [
        w.overall[(['x', 'y', 'z'] as const)[k]],
        { text: dims.text(value), value },
        limitText(value, classes.bent, dims),
        '',
      ];
    });
    return inspectionTable(
      w,
      objects.length === 1 ? w.object : `${w.object}: ${told}`,
      rows,
      1,
      dims,
      setting,
    );
  });
}
