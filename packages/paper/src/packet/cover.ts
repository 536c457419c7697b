import { massText } from '@tinwright/core/internal';
import { assemblyPicture, partPicture } from '@tinwright/files';
import { letterOf } from '@tinwright/files/internal';
import { familyTitle, type Has } from '@tinwright/words/internal';
import { drawingFigure, heightOf, hung } from '../figure/drawing-figure.js';
import type { Flowing } from '../page/flow.js';
import { headingStrip, notesFlow, tableFlow } from '../page/table.js';
import { boughtFlow } from './bought.js';
import { blankText, type PacketKit, stockText } from './kit.js';
import type { Making } from './making.js';
import { totalsText } from './totals.js';

const TALLEST = 32; // of the picture, in heights of text

/**
 * The cover: what it will be, and its parts.
 * @param sections that stand behind it
 */
export function coverFlows(kit: PacketKit, making: Making, sections: readonly string[]): readonly Flowing[] {
  const { plan, words, setting, sets } = kit;
  const { note } = plan.job;
  const has: Has = (section) => sections.includes(section);
  return [
    ...(note === '' ? [] : [notesFlow(null, [note], setting)]),
    pictureFlow(kit),
    partsFlow(kit),
    ...boughtFlow(kit),
    notesFlow(
      null,
      [...(sets > 1 ? [words.cover.sets(sets, has), totalsText(kit, making)] : []), words.cover.start(has)],
      setting,
    ),
  ];
}

function pictureFlow({ plan, words, setting }: PacketKit): Flowing {
  const { assembly, job, parts } = plan;
  const [first] = parts;
  const drawing =
    assembly !== null
      ? assemblyPicture(job.name, assembly, 'letters only')
      : first === undefined
        ? null
        : partPicture(first.name, first);
  const alt =
    assembly !== null
      ? words.cover.pictureAlt(job.name, assembly.placed.map((p) => p.piece).join(', '))
      : words.cover.partAlt(first?.name ?? '');
  return (width) => {
    const heading = headingStrip(words.cover.picture, setting);
    if (drawing === null) return { alt: null, heading, head: null, rows: [] };
    const figure = drawingFigure(drawing, alt, [width, TALLEST * setting.height], setting);
    const rows = [{ height: heightOf(figure), items: hung(figure, width), alt }];
    return { alt: null, heading, head: null, rows };
  };
}

/** Parts with the letters of their pieces on the picture. */
function partsFlow(kit: PacketKit): Flowing {
  const { plan, words, language, setting, sets, dims } = kit;
  const { columns: c, mass, parts: heading } = words.cover;
  const placed = plan.assembly?.placed ?? [];
  const letters = (name: string) =>
    placed.flatMap(({ part }, i) => (part.name === name ? [letterOf(i)] : [])).join(' ');
  const total = plan.parts.reduce((sum, p) => sum + p.mass * p.quantity, 0) * sets;
  return tableFlow(
    {
      heading,
      columns: [
        { title: c.letter },
        { title: c.part },
        { title: c.what, grows: true },
        { title: c.make, align: 'end' },
        { title: c.stock, grows: true },
        { title: `${c.blank}, ${dims.unit}`, align: 'end' },
        { title: c.mass, align: 'end' },
      ],
      rows: plan.parts.map((p) => [
        letters(p.name),
        p.name,
        familyTitle(p.family, language),
        String(p.quantity * sets),
        stockText(p, kit),
        blankText(p, kit),
        dims.own(massText(p.mass, dims.unit)),
      ]),
      notes: [mass(dims.own(massText(total, dims.unit)))],
    },
    setting,
  );
}
