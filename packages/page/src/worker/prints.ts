import type { JobPlan } from '@tinwright/core';
import { makingOf, type Page, packetPages, pageSvg, pagesPdf, partPlan } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import type { Asks, FileView, PrintView } from '../protocol.js';

/** A page to print and the part it is of. */
interface PartPage {
  readonly part: string;
  readonly page: Page;
}

/** Paper a job is printed on. */
export const paperFor = (
  units: 'mm' | 'in',
): { readonly paper: PrintView['paper']; readonly dims: 'mm' | 'in' } => ({
  paper: units === 'in' ? 'letter' : 'A4',
  dims: units,
});

/** Pages to print: the plans of every part, or for a class its worksheets, without the answers. */
export function printed(plan: JobPlan, ask: Omit<Asks['prints'], 'data'>): readonly PrintView[] {
  const { paper } = paperFor(plan.job.units);
  const pages = ask.worksheet ? worksheets(plan, ask.language) : plans(plan, ask.language);
  return pages.map(({ part, page }) => ({ part, paper, svg: pageSvg(page, ask.language) }));
}

/** The worksheets of a class in one file. */
export async function worksheetFile(plan: JobPlan, language: 'en' | 'de'): Promise<FileView> {
  const { packet } = LANGUAGES[language];
  const pages = worksheets(plan, language).map(({ page }) => page);
  const info = { title: packet.packet(plan.job.name), language, face: typeface() };
  return { path: 'worksheet.pdf', content: await pagesPdf(pages, info) };
}

function plans({ job, parts }: JobPlan, language: 'en' | 'de'): readonly PartPage[] {
  return parts.flatMap((part) =>
    partPlan(job.name, part, { ...paperFor(job.units), language }).pages.map((page) => ({
      part: part.name,
      page,
    })),
  );
}

/** Pages of a packet from where a part's worksheet starts to where the next or the answers do. */
function worksheets(plan: JobPlan, language: 'en' | 'de'): readonly PartPage[] {
  const asked = { ...paperFor(plan.job.units), language, worksheet: true };
  let part: string | null = null;
  return packetPages(plan, makingOf(plan, null), asked).flatMap((page): readonly PartPage[] => {
    for (const { name } of page.anchors ?? []) {
      const [, number] = /^worksheets-(\d+)$/.exec(name) ?? [];
      if (name === 'answers') part = null;
      else if (number !== undefined) part = plan.parts[Number(number) - 1]?.name ?? null;
    }
    return part === null ? [] : [{ part, page }];
  });
}
