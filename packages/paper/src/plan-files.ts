import { JobError, type JobPlan, type PartPlan, PROGRAM, type Problem } from '@tinwright/core';
import type { Bytes, OutFile } from '@tinwright/files';
import type { MarkingRow } from './marking/row.js';
import { brakeMarks } from './packet/brake-marks.js';
import type { Making } from './packet/making.js';
import type { Page } from './page/page.js';
import { isPlainPage, type Typeface, typeface } from './page/typeface.js';
import { pagesPdf } from './pdf/write.js';
import type { PlanOptions } from './plan/options.js';
import { partPlan } from './plan/plan-pages.js';
import { pageSvg } from './svg/page.js';
import { partTemplate, type TemplateOptions } from './template/template-pages.js';

/** What was drawn for a part, and where it stands. */
export interface DrawnPart {
  readonly name: string;
  readonly pages: number;
  /** Scale of the pattern; `1:1` for a template. */
  readonly scale: string;
  readonly pdf: string;
  /** Its sheets as pictures, and its marking program, for a plan. */
  readonly svg?: readonly string[];
  readonly marking?: readonly MarkingRow[];
}

/** Drawn parts, their files, and the list of those, which stands last. */
export interface DrawnFiles {
  readonly parts: readonly DrawnPart[];
  readonly files: readonly OutFile[];
}

/** Reads the font for characters the standard fonts lack; asked only when there are some. */
export type SpareFile = () => Promise<Uint8Array>;

/**
 * Plans of parts: a PDF each, and its sheets as SVG, in `plans`; `plans.json` lists them.
 * @param making how a shop makes the job: sight lines and angles to set go on the plan
 * @throws JobError with every part that cannot be drawn so
 */
export async function planFiles(
  { job }: Pick<JobPlan, 'job'>,
  parts: readonly PartPlan[],
  options: PlanOptions,
  spare: SpareFile | null = null,
  making: Making | null = null,
): Promise<DrawnFiles> {
  const drawn = await drawnParts(parts, options.face, spare, (part, face) =>
    partPlan(job.name, part, { ...options, face }, making === null ? {} : brakeMarks(part, making)),
  );
  const { language = 'en' } = options;
  const files = await Promise.all(
    drawn.map(
      async ({ part, pages, face }): Promise<readonly OutFile[]> => [
        { path: `plans/${part.name}.pdf`, content: await pdfOf(pages, language, face) },
        ...pages.map((page, i) => ({
          path: sheetPath(part, i),
          content: pageSvg(page, language),
        })),
      ],
    ),
  );
  const list = drawn.map(({ part, pages, scale, program = [] }) => ({
    name: part.name,
    pages: pages.length,
    scale,
    pdf: `plans/${part.name}.pdf`,
    svg: pages.map((_, i) => sheetPath(part, i)),
    marking: program,
  }));
  return listed(
    'plans.json',
    { name: job.name, paper: options.paper, dims: options.dims },
    list,
    files.flat(),
  );
}

const sheetPath = ({ name }: PartPlan, i: number) => `plans/${name}-${i + 1}.svg`;

/**
 * Templates of parts at full size: a PDF each in `templates`; `templates.json` lists them.
 */
export async function templateFiles(
  { job }: Pick<JobPlan, 'job'>,
  parts: readonly PartPlan[],
  options: TemplateOptions,
  spare: SpareFile | null = null,
  making: Making | null = null,
): Promise<DrawnFiles> {
  const drawn = await drawnParts(parts, options.face, spare, (part, face) => ({
    ...partTemplate(job.name, part, { ...options, face }, making === null ? {} : brakeMarks(part, making)),
    scale: '1:1',
  }));
  const { language = 'en' } = options;
  const files = await Promise.all(
    drawn.map(async ({ part, pages, face }) => ({
      path: `templates/${part.name}.pdf`,
      content: await pdfOf(pages, language, face),
    })),
  );
  const list = drawn.map(({ part, pages, scale }) => ({
    name: part.name,
    pages: pages.length,
    scale,
    pdf: `templates/${part.name}.pdf`,
  }));
  return listed('templates.json', { name: job.name, dims: options.dims }, list, files);
}

interface Drawn {
  readonly part: PartPlan;
  readonly pages: readonly Page[];
  readonly scale: string;
  readonly program?: readonly MarkingRow[];
  readonly face: Typeface;
}

/** Every part drawn, in the standard fonts where they have all its characters. */
async function drawnParts(
  parts: readonly PartPlan[],
  given: Typeface | undefined,
  spare: SpareFile | null,
  draw: (part: PartPlan, face: Typeface) => Omit<Drawn, 'part' | 'face'>,
): Promise<readonly Drawn[]> {
  const problems: Problem[] = [];
  const drawn: Drawn[] = [];
  let face = given ?? typeface();
  for (const part of parts)
    try {
      let result = draw(part, face);
      if (spare !== null && face.spare === null && !result.pages.every(isPlainPage)) {
        const { spareFont } = await import('./page/spare-font.js'); // only here: the library takes its time to load
        face = typeface(spareFont(await spare()));
        result = draw(part, face);
      }
      drawn.push({ part, ...result, face });
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      problems.push(...error.problems);
    }
  if (problems.length > 0) throw new JobError(problems);
  return drawn;
}

const pdfOf = (pages: readonly Page[], language: string, face: Typeface): Promise<Bytes> =>
  pagesPdf(pages, { title: pages[0]?.title ?? '', language, face });

function listed(
  path: string,
  head: object,
  parts: readonly DrawnPart[],
  files: readonly OutFile[],
): DrawnFiles {
  const list = { format: 1, program: PROGRAM.mark, ...head, parts, files: files.map((f) => f.path) };
  return { parts, files: [...files, { path, content: `${JSON.stringify(list, null, 2)}\n` }] };
}
