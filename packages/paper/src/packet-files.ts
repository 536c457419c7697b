import type { JobPlan } from '@tinwright/core';
import { inTurns, type Pieces } from '@tinwright/core/internal';
import type { OutFile } from '@tinwright/files';
import { LANGUAGES } from '@tinwright/words/internal';
import { pagesHtml } from './html/write.js';
import type { Making } from './packet/making.js';
import { type PacketOptions, packetSheets } from './packet/packet-pages.js';
import { piecesOf } from './packet/sections.js';
import { drawn, oneByOne, type PendingPage } from './page/pending.js';
import { isPlainPage, typeface } from './page/typeface.js';
import { pagesPdf } from './pdf/write.js';
import type { SpareFile } from './plan-files.js';

/** Forms a packet is written in. */
export type PacketForm = 'pdf' | 'html';

/**
 * Hears how far a packet is: how many plans, templates and sections it has and how many of them are set, then the same
 * of its pages as they are drawn.
 */
export type PacketSeen = (what: 'set' | 'drawn', of: number) => Promise<(done: number) => void>;

/** A packet written: how many pages it has, and its files. */
export interface PacketFiles {
  readonly pages: number;
  readonly files: readonly OutFile[];
}

/**
 * The packet of a job as `packet.pdf` and `packet.html`.
 * @param spare font for characters the standard fonts lack
 * @param options with `onProgress`, who hears how far it is
 * @throws JobError as `packetPages`
 */
export async function packetFiles(
  plan: JobPlan,
  making: Making,
  options: PacketOptions & { readonly onProgress?: PacketSeen },
  forms: readonly PacketForm[],
  spare: SpareFile | null = null,
): Promise<PacketFiles> {
  let { face = typeface() } = options;
  let sheets = await setHeard(plan, making, { ...options, face });
  if (spare !== null && face.spare === null && !sheets.every((s) => isPlainPage(drawn(s)))) {
    const { spareFont } = await import('./page/spare-font.js'); // only here: the library takes its time to load
    face = typeface(spareFont(await spare()));
    sheets = await setHeard(plan, making, { ...options, face });
  }
  const { packet, plans } = LANGUAGES[options.language ?? 'en'];
  const info = { title: packet.packet(plan.job.name), language: plans.language };
  const seen = await options.onProgress?.('drawn', sheets.length);
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

/** The packet set, with room for timers and messages between its pieces. */
async function setHeard(
  plan: JobPlan,
  making: Making,
  options: PacketOptions & { readonly onProgress?: PacketSeen },
): Promise<readonly PendingPage[]> {
  const seen = await options.onProgress?.('set', piecesOf(plan, options));
  const pieces = packetSheets(plan, making, options);
  const told = (function* (): Pieces<readonly PendingPage[]> {
    for (let done = 0; ; done += 1) {
      const piece = pieces.next();
      seen?.(done);
      if (piece.done) return piece.value;
      yield;
    }
  })();
  return inTurns(told, 1, options.signal);
}
