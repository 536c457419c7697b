import { type Fastener, JobError, type Seated } from '@tinwright/core';
import type { StackSheet } from '@tinwright/core/family';
import { length3, rivetSize, sub3 } from '@tinwright/core/internal';
import { explodedPicture } from '@tinwright/files';
import { letterOf } from '@tinwright/files/internal';
import { sourceWords } from '@tinwright/words/internal';
import { drawingFigure, heightOf, hung } from '../figure/drawing-figure.js';
import type { Flowing } from '../page/flow.js';
import { headingStrip, notesFlow, tableFlow } from '../page/table.js';
import { type PacketKit, thicknessText } from './kit.js';

const TALLEST = 36; // of the picture, in heights of text

/** The joints plan: which piece goes where, by which fasteners. @throws JobError `no-joints` */
export function jointFlows(kit: PacketKit): readonly Flowing[] {
  const { plan, words, setting } = kit;
  const { assembly, job } = plan;
  if (assembly === null)
    throw new JobError([
      {
        code: 'no-joints',
        path: ['sections'],
        message: 'a joints plan is asked for, and the job has no joints',
        fix: 'Give joints: in the job, or leave the joints plan out',
      },
    ]);
  const drawing = explodedPicture(job.name, assembly, 'letters only');
  const legend = `${[...assembly.placed, ...assembly.bought].map(({ piece }, i) => `${letterOf(i)}\u00A0${piece}`).join(', ')}.`;
  const alt = words.joints.pictureAlt(job.name);
  const picture: Flowing = (width) => {
    const figure = drawingFigure(drawing, alt, [width, TALLEST * setting.height], setting);
    return {
      alt: null,
      heading: headingStrip(words.joints.picture, setting),
      head: null,
      rows: [{ height: heightOf(figure), items: hung(figure, width), alt }],
    };
  };
  return [
    jointTable(kit, assembly.seated, assembly.fasteners),
    ...rulesFlow(kit, assembly.seated),
    picture,
    notesFlow(null, [legend, ...words.joints.notes], setting),
  ];
}

function jointTable(
  { plan, words, plans, dims, setting }: PacketKit,
  seated: readonly Seated[],
  fasteners: readonly Fastener[],
): Flowing {
  const { columns: c, heading, placed } = words.joints;
  return tableFlow(
    {
      heading,
      columns: [
        { title: c.joint },
        { title: c.pieces, grows: true },
        { title: c.by },
        { title: c.count, align: 'end' },
        { title: `${c.pitch}, ${dims.unit}`, align: 'end' },
        { title: `${c.hole}, ${dims.unit}`, align: 'end' },
        { title: `${c.clearance}, ${dims.unit}`, align: 'end' },
      ],
      rows: seated.map(({ joint, from, to }) => {
        const own = fasteners.filter((f) => f.joint === joint.name);
        const kind = joint.by?.kind;
        const holes = [...new Set(own.flatMap((f) => f.on.flatMap((e) => e.hole ?? [])).map(dims.fine))];
        const fit = plan.assembly?.fits.find((r) => r.joint === joint.name);
        return [
          joint.name,
          `${from.piece}, ${to.piece}`,
          kind === undefined ? placed : plans.fastener(kind.name, kind.facts.words),
          own.length === 0 ? '' : String(own.length),
          pitchText(own, dims.text),
          holes.map((h) => `Ø${h}`).join(', '),
          fit === undefined || !Number.isFinite(fit.found) ? '' : dims.fine(fit.found),
        ];
      }),
    },
    setting,
  );
}

/** Distance from each fastener to the next one on the same panels, the least and the greatest. */
function pitchText(own: readonly Fastener[], text: (mm: number) => string): string {
  const row = (f: Fastener) => f.on.map((e) => `${e.piece} ${e.panel}`).join();
  const rows = [...new Set(own.map(row))].map((key) => own.filter((f) => row(f) === key));
  const found = rows.flatMap((r) =>
    r.flatMap((f) => {
      const others = r.filter((o) => o !== f).map((o) => length3(sub3(o.at, f.at)));
      return others.length === 0 ? [] : [Math.min(...others)];
    }),
  );
  if (found.length === 0) return '';
  const [least, most] = [text(Math.min(...found)), text(Math.max(...found))];
  return least === most ? least : `${least} – ${most}`;
}

/** Distances each kind of fastener keeps, with their sources. */
function rulesFlow(
  { plan, words, plans, dims, setting, language }: PacketKit,
  seated: readonly Seated[],
): readonly Flowing[] {
  const { rules, ruleColumns: c, drill, grip, by } = words.joints;
  const sheetOf = (name: string): readonly StackSheet[] => {
    const part = plan.parts.find((p) => p.name === name);
    return part === undefined
      ? []
      : [{ part: name, thickness: part.sheet.thickness, material: part.material }];
  };
  const kinds = new Map<string, readonly [readonly string[], readonly string[]]>();
  for (const { joint, from, to } of seated) {
    if (joint.by === null) continue;
    const stack = [...sheetOf(from.part.name), ...sheetOf(to.part.name)];
    const needs = joint.by.kind.needs(stack, joint.by.ask as never, stack.length);
    const { facts } = joint.by.kind;
    const name = plans.fastener(joint.by.kind.name, facts.words);
    const diameter = (joint.by.ask as { readonly diameter?: number }).diameter;
    const rivet = diameter === undefined ? null : rivetSize(diameter);
    const row = [name, ...[needs.edge, needs.pitch, needs.bend].map(dims.fine)];
    const sources = [needs.edgeSource, needs.pitchSource, needs.bendSource]
      .map((s) => sourceWords(s, dims.unit, language))
      .filter((s, i, all) => all.indexOf(s) === i);
    const thick = thicknessText(
      stack.reduce((sum, s) => sum + s.thickness, 0),
      dims,
    );
    const held =
      facts.rivet === 'blind' && rivet !== null
        ? `${drill(dims.own(rivet.name), dims.own(rivet.drill))} ${grip(thick)}`
        : `${name}: ${grip(thick)}`;
    kinds.set(row.join('\n'), [row, [`${held} ${by(sources.join('; '))}`]]);
  }
  if (kinds.size === 0) return [];
  return [
    tableFlow(
      {
        heading: rules,
        columns: [
          { title: c.by, grows: true },
          { title: `${c.edge}, ${dims.unit}`, align: 'end' },
          { title: `${c.pitch}, ${dims.unit}`, align: 'end' },
          { title: `${c.bend}, ${dims.unit}`, align: 'end' },
        ],
        rows: [...kinds.values()].map(([row]) => row),
        notes: [...new Set([...kinds.values()].flatMap(([, notes]) => notes))],
      },
      setting,
    ),
  ];
}
