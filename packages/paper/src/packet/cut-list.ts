import type { PartPlan } from '@tinwright/core';
import { massText } from '@tinwright/core/internal';
import type { KnownCut } from '@tinwright/files';
import { tellFindings } from '@tinwright/words';
import type { Has } from '@tinwright/words/internal';
import type { Flowing } from '../page/flow.js';
import type { Paper } from '../page/paper.js';
import { tableFlow } from '../page/table.js';
import { shearPassages } from '../shear/shear-pages.js';
import { areaText, blankText, type PacketKit, stockText } from './kit.js';

/** Blanks to shear, and how: from which sheet by which cuts where stock is known, else how much sheet they take. */
export function cutFlows(kit: PacketKit, cut: KnownCut | null, paper: Paper, has: Has): readonly Flowing[] {
  const notes = [...kit.words.cuts.notes(has), ...(cut === null ? stockNotes(kit) : [])];
  return [blanksFlow(kit, notes), ...(cut === null ? [] : planFlows(kit, cut, paper))];
}

function planFlows(
  { plan, dims, language, setting }: PacketKit,
  { work, findings }: KnownCut,
  paper: Paper,
): readonly Flowing[] {
  const left = tellFindings(findings, dims.unit, language).map((f) => `${f.part}: ${f.message}.`);
  return shearPassages(work, { job: plan.job.name, paper, dims, language, setting }, left);
}

const areaOf = ({ flat }: PartPlan) => flat.blank.max[0] * flat.blank.max[1];
/** A blank as it is sheared, kg. */
export const blankMass = (p: PartPlan): number => (areaOf(p) * p.sheet.thickness * p.material.density) / 1e9;

function blanksFlow(kit: PacketKit, notes: readonly string[]): Flowing {
  const { plan, words, dims, setting, sets } = kit;
  const { heading, columns: c } = words.cuts;
  return tableFlow(
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
        String(p.quantity * sets),
        blankText(p, kit),
        dims.text(Math.hypot(...p.flat.blank.max)),
        stockText(p, kit),
        dims.own(massText(blankMass(p), dims.unit)),
        '',
      ]),
      notes,
    },
    setting,
  );
}

/** How much sheet of each kind all blanks take. */
function stockNotes(kit: PacketKit): readonly string[] {
  const { plan, words, dims, sets } = kit;
  const pieces = (p: PartPlan) => p.quantity * sets;
  const stocks = [...new Set(plan.parts.map((p) => stockText(p, kit)))];
  return stocks.map((name) => {
    const own = plan.parts.filter((p) => stockText(p, kit) === name);
    const sum = (of: (p: PartPlan) => number) => own.reduce((t, p) => t + pieces(p) * of(p), 0);
    return words.cuts.stock(
      name,
      sum(() => 1),
      areaText(sum(areaOf), dims),
      dims.own(massText(sum(blankMass), dims.unit)),
    );
  });
}
