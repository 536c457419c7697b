import type { JobPlan, PartPlan, ToleranceClass } from '@tinwright/core';
import type { Flowing } from '../page/flow.js';
import type { Page } from '../page/page.js';
import { PAPERS, type Paper } from '../page/paper.js';
import { setSheets } from '../page/set-sheets.js';
import { sheetOf } from '../page/sheet.js';
import { type Typeface, typeface } from '../page/typeface.js';
import { type DimsName, dimsOf } from '../plan/dims.js';
import type { BrakeMarks } from '../plan/options.js';
import { partPlan } from '../plan/plan-pages.js';
import { partTemplate } from '../template/template-pages.js';
import { cautionFlows } from './cautions.js';
import { coverFlows } from './cover.js';
import { cutFlows } from './cut-list.js';
import { inspectionFlows } from './inspection.js';
import { jointFlows } from './joints-plan.js';
import type { PacketKit } from './kit.js';
import { LANGUAGES, type Language } from './languages.js';
import type { Making } from './making.js';
import { numbered } from './numbered.js';
import { operationFlows } from './operations.js';

/** Sections of a packet, in their order. */
export const SECTIONS = [
  'cautions',
  'cuts',
  'plans',
  'operations',
  'joints',
  'inspection',
  'templates',
] as const;
/** A section of a packet; the cover stands before them always. */
export type Section = (typeof SECTIONS)[number];

/** How a packet is printed. */
export interface PacketOptions {
  readonly paper: string;
  readonly dims: DimsName;
  readonly language?: Language;
  /** Height of lettering, mm: 2.5, or 3.5 for large print. */
  readonly lettering?: 2.5 | 3.5;
  readonly tolerance?: ToleranceClass;
  readonly date?: string;
  /** Sets of the object to make. */
  readonly sets?: number;
  /** Those to print; all that the job has something for when left out. */
  readonly sections?: readonly Section[];
  /** Worksheets with sizes left out in place of plans, and a page of answers. */
  readonly worksheet?: boolean;
  readonly face?: Typeface;
}

/**
 * Everything for one job on paper: cover, cautions, cut list, plans, operations, joints, inspection, templates; pages
 * numbered, with a list of contents that leads to them.
 * @throws JobError where a plan does not fit its paper, or a section is asked for that the job has nothing for
 */
export function packetPages(plan: JobPlan, making: Making, options: PacketOptions): readonly Page[] {
  const {
    language = 'en',
    lettering = 2.5,
    tolerance = 'm',
    face = typeface(),
    sets = 1,
    date = '',
  } = options;
  const { packet: words, plans } = LANGUAGES[language];
  const setting = { face, height: lettering };
  const kit: PacketKit = { plan, sets, dims: dimsOf(options.dims), words, plans, setting };
  const paper = PAPERS.find((p) => p.name === options.paper) as Paper;
  const given = { paper: options.paper, dims: options.dims, lettering, tolerance, words: plans, face };
  const sheets = (name: string, title: string, passages: readonly Flowing[], level: 0 | 1 = 0) =>
    anchored(textSheets(kit, paper, title, passages, date), name, title, level);
  const { job, parts } = plan;
  const make: Readonly<Record<Section, () => readonly Page[]>> = {
    cautions: () => sheets('cautions', words.sections.cautions, cautionFlows(kit, making)),
    cuts: () => sheets('cuts', words.sections.cuts, cutFlows(kit)),
    plans: () =>
      chapter(
        'plans',
        words.sections.plans,
        parts.map((p) => [
          words.plan(p.name),
          partPlan(job.name, p, { ...given, ...(date && { date }) }, marksOf(p, making)).pages,
        ]),
      ),
    operations: () =>
      sheets(
        'operations',
        words.sections.operations,
        operationFlows(kit, { pictures: new Map(), ...making }),
      ),
    joints: () => sheets('joints', words.sections.joints, jointFlows(kit)),
    inspection: () =>
      sheets(
        'inspection',
        words.sections.inspection,
        inspectionFlows(kit, { cut: tolerance, bent: coarser(tolerance) }),
      ),
    templates: () =>
      chapter(
        'templates',
        words.sections.templates,
        parts.map((p) => [
          words.template(p.name),
          partTemplate(job.name, p, {
            ...given,
            medium: { kind: 'sheets', width: paper.width, height: paper.height },
          }).pages,
        ]),
      ),
  };
  const wanted = options.sections ?? SECTIONS.filter((s) => s !== 'joints' || plan.assembly !== null);
  const body = SECTIONS.filter((s) => wanted.includes(s)).flatMap((s) => make[s]());
  return numbered(
    (contents) => sheets('cover', words.sections.cover, [...coverFlows(kit), ...contents]),
    body,
    kit,
  );
}

const LARGE = 100_000; // mm² of paper that is read on its side, in two columns

/** Sheets of tables and texts under the name of the job. */
function textSheets(
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
    },
    first: null,
    rest: sheetOf(paper, paper.width * paper.height < LARGE ? 'portrait' : 'landscape'),
    passages,
    setting,
    sheet: plans.sheet,
  });
}

/** Pages whose first one can be led to. */
function anchored(pages: readonly Page[], name: string, title: string, level: 0 | 1): readonly Page[] {
  return pages.map((page, i) =>
    i === 0 ? { ...page, anchors: [{ name, title, level }, ...(page.anchors ?? [])] } : page,
  );
}

/** Runs of pages under one entry of the contents, each with an entry of its own. */
function chapter(
  name: string,
  title: string,
  runs: readonly (readonly [title: string, pages: readonly Page[]])[],
): readonly Page[] {
  const all = runs.flatMap(([own, pages], i) => anchored(pages, `${name}-${i + 1}`, own, 1));
  return anchored(all, name, title, 0);
}

/** Sight lines and angles to set of the brake, where a shop is given and an order was found for it. */
function marksOf({ name, flat }: PartPlan, { assumed, sequences }: Making): BrakeMarks {
  const steps = assumed ? [] : (sequences.get(name)?.steps ?? []);
  const set = steps.filter((s) => s.action === 'bend' || s.action === 'fold');
  return {
    sights: set.flatMap((s) =>
      s.sight === null
        ? []
        : s.bends.map((bend) => ({
            bend,
            held: s.heldSide === 'parent' ? ('parent' as const) : ('flange' as const),
            offset: (flat.bends.find((b) => b.id === bend)?.zone ?? 0) / 2 - s.insideRadius,
          })),
    ),
    setAngles: Object.fromEntries(
      set.flatMap((s) => s.bends.flatMap((b) => (s.setAngle === null ? [] : [[b, s.setAngle] as const]))),
    ),
  };
}

/** One class coarser: what a hand brake holds beside what is marked out. */
const coarser = (of: ToleranceClass): ToleranceClass => (({ f: 'm', m: 'c', c: 'c', v: 'v' }) as const)[of];
