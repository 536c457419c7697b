import type { JobPlan, ToleranceClass } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import type { PacketFiles, PacketForm, PacketSeen, Section } from '@tinwright/paper';
import type { Shop } from '@tinwright/shop';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode } from '../host/failure.js';
import type { ProgressBar } from '../host/progress.js';
import { makingIn } from '../open/open-shop.js';
import { cutKnown } from '../stock/cut-known.js';
import { spareFile } from '../write/spare-file.js';
import { refusable } from './drawing.js';

/** What the files of a packet are called where nothing else is asked for. */
export const PACKET = 'packet';

/** What a packet is to hold and how it is printed, as asked on the command line. */
export interface PacketAsk {
  readonly paper?: string;
  readonly dims?: DimsName;
  readonly rack?: string;
  readonly sections: readonly Section[];
  readonly lang: Language;
  readonly 'large-print': boolean;
  readonly tolerance: ToleranceClass;
  readonly date?: string;
  readonly worksheet: boolean;
  readonly blank: readonly string[];
  readonly json: boolean;
}

/** What is made in which shop, so many sets of it, printed in which forms. */
export interface Printed {
  /** Of its files. */
  readonly name: string;
  readonly plan: JobPlan;
  readonly shop: Shop | null;
  readonly sets: number;
  readonly forms: readonly PacketForm[];
}

/** A packet drawn, and whether it says what to cut from which sheet; or the exit after it was told why it cannot be. */
export async function packetOf(
  host: Host,
  { name, plan, shop, sets, forms }: Printed,
  ask: PacketAsk,
): Promise<(PacketFiles & { readonly cut: boolean }) | { readonly exit: ExitCode }> {
  const { units } = plan.job;
  const { json, dims = units, paper = units === 'in' ? 'letter' : 'A4', date, sections } = ask;
  const { DEFAULT_SHOP } = await import('@tinwright/shop');
  // without a shop the blanks are cut on the shear that is assumed, never from stock that is
  const cuttingShop = shop ?? { ...DEFAULT_SHOP, sheets: [], stock: [] };
  const cut = await cutKnown(host, { plan, shop: cuttingShop, rack: ask.rack, json, sets });
  if (cut !== null && 'exit' in cut) return cut;
  const whose = name === PACKET ? PACKET : `packet of ${quoted(name)}`;
  const written = await refusable(whose, host, json, async () => {
    const { packetFiles } = await import('@tinwright/paper');
    const asked = {
      paper,
      dims,
      tolerance: ask.tolerance,
      language: ask.lang,
      lettering: ask['large-print'] ? (3.5 as const) : (2.5 as const),
      sets,
      cut,
      worksheet: ask.worksheet,
      leaveOut: ask.blank,
      ...(sections.length > 0 && { sections }),
      ...(date && { date }),
    };
    const making = await makingIn(host, plan, shop, sets);
    return heardBy(host, (onProgress) =>
      packetFiles(plan, making, { ...asked, onProgress }, forms, spareFile),
    );
  });
  if (written === null) return { exit: EXIT.unreadable };
  const files = written.files.map((f) => ({ ...f, path: f.path.replace(PACKET, () => name) }));
  return { pages: written.pages, files, cut: cut !== null };
}

const HEARD = { set: 'plans and sections', drawn: 'pages' } as const;

/** What of a packet is set, and its pages, told as they are made. */
async function heardBy<T>(host: Host, work: (onProgress: PacketSeen) => Promise<T>): Promise<T> {
  let bar: ProgressBar | undefined;
  try {
    return await work(async (what, of) => {
      bar?.end();
      bar = await host.progress?.(HEARD[what], of);
      return (done) => bar?.to(done);
    });
  } finally {
    bar?.end();
  }
}
