import type { PartPlan } from '@tinwright/core';
import type { Page } from '../page/page.js';
import type { Paper } from '../page/paper.js';
import { type PendingPage, pending } from '../page/pending.js';
import type { PlanOptions } from '../plan/options.js';
import { partPlan } from '../plan/plan-pages.js';
import type { PacketKit } from './kit.js';
import { withFoot } from './numbered.js';
import { chapter, textSheets } from './text-sheets.js';
import { answerFlows, blankedPages, blanksFor, type LetteredSize, worksheetFlows } from './worksheet.js';

interface PaperSheet {
  readonly part: PartPlan;
  readonly blanks: readonly LetteredSize[];
  readonly pages: readonly Page[];
}

/**
 * Worksheets of every part, once however many sets there are, then the answers: plans without marking-out table, some sizes
 * left out.
 * @param chosen bends whose sizes are left out, by number or name; some of them all when empty
 */
export function worksheetPages(
  kit: PacketKit,
  paper: Paper,
  options: PlanOptions,
  chosen: readonly string[],
): readonly PendingPage[] {
  const { plan, sets, words } = kit;
  const sheets = plan.parts.map((part) => sheetOf(kit, part, options, chosen));
  const w = words.worksheet;
  const own = ({ part, blanks, pages }: PaperSheet): readonly PendingPage[] =>
    [
      ...pages.map(pending),
      ...textSheets(kit, paper, [
        { name: null, title: w.title(part.name), passages: worksheetFlows(part, blanks, w.heading, kit) },
      ]),
    ].map((page) => (sets === 1 ? page : withFoot(page, w.copies(sets), kit)));
  const runs = sheets.map((s) => [w.title(s.part.name), own(s)] as const);
  const all = sheets.map(({ part, blanks }) => ({ part: part.name, blanks }));
  return [
    ...chapter('worksheets', words.sections.worksheets, runs),
    ...textSheets(kit, paper, [
      { name: 'answers', title: words.sections.answers, passages: answerFlows(all, kit) },
    ]),
  ];
}

function sheetOf(
  kit: PacketKit,
  part: PartPlan,
  options: PlanOptions,
  chosen: readonly string[],
): PaperSheet {
  const { pages } = partPlan(kit.plan.job.name, part, { ...options, marking: 'none' });
  // sizes go from the pattern and its details; the finished ones stay on the picture of the bent part
  const formed = kit.plans.formedAlt(part.name);
  const pictures = pages.flatMap((p) => p.blocks.flatMap((b) => b.alt ?? [])).filter((alt) => alt !== formed);
  const blanks = blanksFor(part, pages, pictures, chosen);
  return { part, blanks, pages: blankedPages(pages, blanks, pictures, kit) };
}
