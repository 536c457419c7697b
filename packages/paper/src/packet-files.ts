import type { JobPlan } from '@tinwright/core';
import type { OutFile } from '@tinwright/files';
import { LANGUAGES } from '@tinwright/words/internal';
import { pagesHtml } from './html/write.js';
import type { Making } from './packet/making.js';
import { type PacketOptions, packetSheets } from './packet/packet-pages.js';
import { drawn, oneByOne } from './page/pending.js';
import { isPlainPage, typeface } from './page/typeface.js';
import { pagesPdf } from './pdf/write.js';
import type { SpareFile } from './plan-files.js';

/** Forms a packet is written in. */
export type PacketForm = 'pdf' | 'html';

/** Hears how many pages a packet has once they are set, and of each by its number as it is drawn. */
export type PagesSeen = (pages: number) => Promise<(page: number) => void>;

/** A packet written: how many pages it has, and its files. */
export interface PacketFiles {
  readonly pages: number;
  readonly files: readonly OutFile[];
}

/**
 * The packet of a job as `packet.pdf` and `packet.html`.
 * @param spare font for characters the standard fonts lack
 * @param options with `onPages`, who hears how far it is
 * @throws JobError as `packetPages`
 */
export async function packetFiles(
  plan: JobPlan,
  making: Making,
  options: PacketOptions & { readonly onPages?: PagesSeen },
  forms: readonly PacketForm[],
  spare: SpareFile | null = null,
): Promise<PacketFiles> {
  let { face = typeface() } = options;
  let sheets = packetSheets(plan, making, { ...options, face });
  if (spare !== null && face.spare === null && !sheets.every((s) => isPlainPage(drawn(s)))) {
    const { spareFont } = await import('./page/spare-font.js'); // only here: the library takes its time to load
    face = typeface(spareFont(await spare()));
    sheets = packetSheets(plan, making, { ...options, face });
  }
  const { packet, plans } = LANGUAGES[options.language ?? 'en'];
  const info = { title: packet.packet(plan.job.name), language: plans.language };
  const seen = await options.onPages?.(sheets.length);
  const pages = oneByOne(sheets, seen);
  const files = await Promise.all(
    forms.map(async (form): Promise<OutFile> => {
      const content =
        form === 'pdf'
          ? await pagesPdf(pages, { ...info, face })
          : pagesHtml(pages, { ...info, contents: packet.contents });
      return { path: `packet.${form}`, content };
    }),
  );
  return { pages: sheets.length, files };
}
