import { type Flowing, once } from '../page/flow.js';
import type { Paper } from '../page/paper.js';
import type { PendingPage } from '../page/pending.js';
import { setSheets } from '../page/set-sheets.js';
import { readingSheet } from '../page/sheet.js';
import type { PacketKit } from './kit.js';

/** Tables and texts under a title, with the name that leads to it; null where nothing does. */
export interface TextSection {
  readonly name: string | null;
  readonly title: string;
  readonly passages: readonly Flowing[];
}

/** Sheets of tables and texts under the name of the job, sections one behind the other on them. */
export function textSheets(
  { plan, plans, words, setting }: PacketKit,
  paper: Paper,
  sections: readonly TextSection[],
  date = '',
): readonly PendingPage[] {
  const { job, parts } = plan;
  const zinc = parts.some((p) => p.material.zinc) ? ` ${plans.cautionZinc}` : '';
  return setSheets({
    name: words.packet(job.name),
    title: {
      caution: plans.cautionShort + zinc,
      name: '',
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
    rest: readingSheet(paper),
    passages: sections.flatMap((s) => s.passages),
    chapters: sections.map(({ name, title }, i) => ({
      name,
      title,
      first: sections.slice(0, i).reduce((sum, s) => sum + s.passages.length, 0),
    })),
    setting,
    sheet: plans.sheet,
  });
}

/** Sections on as few sheets as they take, each on a sheet of its own where that takes no more. */
export function fewestSheets(
  kit: PacketKit,
  paper: Paper,
  sections: readonly TextSection[],
  date = '',
): readonly PendingPage[] {
  const kept = sections.map((s) => ({ ...s, passages: s.passages.map(once) }));
  const set = (from: number, to: number) => textSheets(kit, paper, kept.slice(from, to), date);
  // the best of what follows each section, last first
  const best: (readonly PendingPage[])[] = [[]];
  for (let from = kept.length - 1; from >= 0; from--) {
    const ways = best.map((pages, i) => [...set(from, from + i + 1), ...pages]);
    const fewest = Math.min(...ways.map((w) => w.length));
    best.unshift(ways.find((w) => w.length === fewest) ?? []);
  }
  return best[0] ?? [];
}

/** Pages whose first one can be led to. */
function anchored(
  pages: readonly PendingPage[],
  name: string,
  title: string,
  level: 0 | 1,
): readonly PendingPage[] {
  return pages.map((page, i) =>
    i === 0 ? { ...page, anchors: [{ name, title, level }, ...(page.anchors ?? [])] } : page,
  );
}

/** Runs of pages under one entry of the contents, each with an entry of its own. */
export function chapter(
  name: string,
  title: string,
  runs: readonly (readonly [title: string, pages: readonly PendingPage[]])[],
): readonly PendingPage[] {
  const all = runs.flatMap(([own, pages], i) => anchored(pages, `${name}-${i + 1}`, own, 1));
  return anchored(all, name, title, 0);
}
