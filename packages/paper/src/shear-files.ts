import { PROGRAM, type Unit } from '@tinwright/core';
import type { ShearPlan } from '@tinwright/cutting';
import type { CutWork, OutFile } from '@tinwright/files';
import { cutListFiles, shearJson } from '@tinwright/files/internal';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { heightOf } from './figure/drawing-figure.js';
import { dimsIn, dimsOf } from './page/dims.js';
import { moved, type Page } from './page/page.js';
import { paperNamed } from './page/paper.js';
import { isPlainPage, LETTERING, type Typeface, typeface } from './page/typeface.js';
import { pagesPdf } from './pdf/write.js';
import type { SpareFile } from './plan-files.js';
import { firstNumbers, type ShearPrint, shearPages, shearWords } from './shear/shear-pages.js';
import { sheetFigure } from './shear/sheet-figure.js';
import { pageSvg } from './svg/page.js';

/** How the files of a shear plan are written. */
export interface ShearFilesOptions {
  readonly job: string;
  readonly units: Unit;
  readonly paper: string;
  readonly dims: DimsName;
  /** English where nobody says. */
  readonly language?: Language;
}

/** mm of a diagram by itself */
const ALONE = { width: 267, height: 180, margin: 5 };

/**
 * The files of shear plans: `shear.json` for programs, `cutlist.csv` and `fasteners.csv`, `shear.pdf` to work from, each sheet by itself as
 * SVG, and the list of them.
 */
export async function shearFiles(
  work: CutWork,
  options: ShearFilesOptions,
  spare: SpareFile | null = null,
): Promise<readonly OutFile[]> {
  const { plans } = work;
  let print = printOf(options, typeface());
  let pages = shearPages(work, print);
  if (spare !== null && !pages.every(isPlainPage)) {
    const { spareFont } = await import('./page/spare-font.js'); // only here: the library takes its time to load
    print = printOf(options, typeface(spareFont(await spare())));
    pages = shearPages(work, print);
  }
  const { language = 'en' } = options;
  const title = shearWords(language).title(options.job);
  const files: readonly OutFile[] = [
    { path: 'shear.json', content: shearJson(plans) },
    ...cutListFiles(work, options.units),
    { path: 'shear.pdf', content: await pagesPdf(pages, { title, language, face: print.setting.face }) },
    ...diagrams(plans, print).map((page, i) => ({
      path: `diagrams/sheet-${i + 1}.svg`,
      content: pageSvg(page, language),
    })),
  ];
  const list = { format: 1, program: PROGRAM.mark, files: files.map((f) => f.path) };
  return [...files, { path: 'shear-files.json', content: `${JSON.stringify(list, null, 2)}\n` }];
}

function printOf({ job, paper, dims, language = 'en' }: ShearFilesOptions, face: Typeface): ShearPrint {
  return {
    job,
    paper: paperNamed(paper),
    dims: dimsIn(dimsOf(dims), language),
    language,
    setting: { face, height: LETTERING },
  };
}

/** Every sheet on a page of its own, no frame, as large as it needs. */
function diagrams(plans: readonly ShearPlan[], { language, dims, setting }: ShearPrint): readonly Page[] {
  const words = shearWords(language);
  const numbers = firstNumbers(plans);
  return plans.flatMap((plan, p) =>
    plan.sheets.map((sheet, index): Page => {
      const number = (numbers[p] as number) + index;
      const picture = { plan: sheet, number, steps: plan.steps, index };
      const figure = sheetFigure(picture, [ALONE.width, ALONE.height], words, dims, setting);
      const { min, max } = figure.box;
      return {
        title: figure.alt,
        width: max[0] - min[0] + 2 * ALONE.margin,
        height: heightOf(figure) + 2 * ALONE.margin,
        blocks: [
          {
            alt: figure.alt,
            items: moved(figure.items, [ALONE.margin - min[0], ALONE.margin - min[1]]),
          },
        ],
      };
    }),
  );
}
