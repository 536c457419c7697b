import type { Flowing } from '../page/flow.js';
import type { Page } from '../page/page.js';
import type { Paper } from '../page/paper.js';
import { setSheets } from '../page/set-sheets.js';
import { sheetOf } from '../page/sheet.js';
import type { PacketKit } from './kit.js';

const LARGE = 100_000; // mm² of paper that is read on its side, in two columns

/** Sheets of tables and texts under the name of the job. */
export function textSheets(
  { plan, plans, words, setting }: PacketKit,
  paper: Paper,
  title: string,
  passages: readonly Flowing[],
  date: string,
): readonly Page[] {
  const { job, parts } = plan;
  const zinc = parts.some((p) => p.material.zinc) ? ` ${plans.cautionZinc}` : '';
  return setSheets({
    name: words.packet(job.name),
    title: {
      caution: plans.cautionShort + zinc,
      name: title,
      what: '',
      job: plans.job(job.name),
      date,
      stock: '',
      make: '',
      sizes: '',
      bar: null,
      widest: { sheet: plans.sheet(88, 88), scale: plans.patternScale('1:100') },
    },
    first: null,
    rest: sheetOf(paper, paper.width * paper.height < LARGE ? 'portrait' : 'landscape'),
    passages,
    setting,
    sheet: plans.sheet,
  });
}

/** Pages whose first one can be led to. */
export function anchored(pages: readonly Page[], name: string, title: string, level: 0 | 1): readonly Page[] {
  return pages.map((page, i) =>
    i === 0 ? { ...page, anchors: [{ name, title, level }, ...(page.anchors ?? [])] } : page,
  );
}

/** Runs of pages under one entry of the contents, each with an entry of its own. */
export function chapter(
  name: string,
  title: string,
  runs: readonly (readonly [title: string, pages: readonly Page[]])[],
): readonly Page[] {
  const all = runs.flatMap(([own, pages], i) => anchored(pages, `${name}-${i + 1}`, own, 1));
  return anchored(all, name, title, 0);
}
