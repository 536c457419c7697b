import { type JobPlan, revivePlan, type StopSignal, type ToleranceClass } from '@tinwright/core';
import { frozen } from '@tinwright/core/internal';
import type { KnownCut } from '@tinwright/files';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import type { Flowing } from '../page/flow.js';
import type { Page } from '../page/page.js';
import { PAPERS, type Paper } from '../page/paper.js';
import { type Typeface, typeface } from '../page/typeface.js';
import { dimsOf } from '../plan/dims.js';
import { partPlan } from '../plan/plan-pages.js';
import { partTemplate } from '../template/template-pages.js';
import { brakeMarks } from './brake-marks.js';
import { cautionFlows } from './cautions.js';
import { coverFlows } from './cover.js';
import { cutFlows } from './cut-list.js';
import { inspectionFlows } from './inspection.js';
import { jointFlows } from './joints-plan.js';
import type { PacketKit } from './kit.js';
import type { Making } from './making.js';
import { numbered } from './numbered.js';
import { operationPages } from './operation-pages.js';
import { anchored, chapter, textSheets } from './text-sheets.js';
import { worksheetPages } from './worksheet-pages.js';

/** A section of a packet; cover and cautions are in every one. */
export type Section = 'cautions' | 'cuts' | 'plans' | 'operations' | 'joints' | 'inspection' | 'templates';

/** Sections of a packet, in their order. */
export const SECTIONS: readonly Section[] = frozen([
  'cautions',
  'cuts',
  'plans',
  'operations',
  'joints',
  'inspection',
  'templates',
]);

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
  /** Those to print besides cautions; all that the job has something for when left out. */
  readonly sections?: readonly Section[];
  /** Worksheets with sizes left out in place of plans, and a page of answers. */
  readonly worksheet?: boolean;
  /** Bends whose sizes worksheets leave out, by number or name; some of them all when left out. */
  readonly leaveOut?: readonly string[];
  /** How its blanks are sheared, where stock is known. */
  readonly cut?: KnownCut | null;
  readonly face?: Typeface;
  /** Ends the work with the reason it was aborted for. Asked before each section, and each part's plan and template. */
  readonly signal?: StopSignal;
}

/**
 * Everything for one job on paper: cover, cautions, cut list, plans, operations, joints, inspection, templates; pages
 * numbered, with a list of contents that leads to them.
 * @throws JobError where a plan does not fit its paper, or a section is asked for that the job has nothing for
 */
export function packetPages(given: JobPlan, making: Making, options: PacketOptions): readonly Page[] {
  const {
    language = 'en',
    lettering = 2.5,
    tolerance = 'm',
    face = typeface(),
    sets = 1,
    date = '',
    cut = null,
  } = options;
  const plan = revivePlan(given);
  const { packet: words, plans, steps } = LANGUAGES[language];
  const setting = { face, height: lettering };
  const shear = cut === null ? 'free' : 'numbered';
  const kit: PacketKit = {
    plan,
    sets,
    shear,
    dims: dimsOf(options.dims),
    language,
    words,
    plans,
    steps,
    setting,
  };
  const paper = PAPERS.find((p) => p.name === options.paper) as Paper;
  const asked = { paper: options.paper, dims: options.dims, lettering, tolerance, words: plans, face };
  const set = (title: string, passages: readonly Flowing[]) => textSheets(kit, paper, title, passages, date);
  const sheets = (name: string, title: string, passages: readonly Flowing[], level: 0 | 1 = 0) =>
    anchored(set(title, passages), name, title, level);
  const cuts = () => sheets('cuts', words.sections.cuts, cutFlows(kit, cut, paper));
  /** The cut list on top of the operations, where that saves a sheet. */
  const withCuts: typeof sheets = (name, title, passages) => {
    const apart = sheets(name, title, passages);
    const both = `${words.sections.cuts}, ${title}`;
    const together = set(both, [...cutFlows(kit, cut, paper), ...passages]);
    return together.length > apart.length
      ? [...cuts(), ...apart]
      : anchored(anchored(together, name, title, 0), 'cuts', words.sections.cuts, 0);
  };
  const { job, parts } = plan;
  const wanted = wantedSections(plan, options);
  const heard = <T>(work: () => T): T => {
    options.signal?.throwIfAborted();
    return work();
  };
  const make: Readonly<Record<Section, () => readonly Page[]>> = {
    cautions: () => sheets('cautions', words.sections.cautions, cautionFlows(kit, making)),
    cuts: () => (wanted.includes('operations') ? [] : cuts()),
    plans: () =>
      chapter(
        'plans',
        words.sections.plans,
        parts.map((p) => [
          words.plan(p.name),
          heard(() => partPlan(job.name, p, { ...asked, ...(date && { date }) }, brakeMarks(p, making)))
            .pages,
        ]),
      ),
    operations: () =>
      operationPages(kit, making, paper, options.dims, wanted.includes('cuts') ? withCuts : sheets),
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
          heard(() =>
            partTemplate(
              job.name,
              p,
              { ...asked, medium: { kind: 'sheets', width: paper.width, height: paper.height } },
              brakeMarks(p, making),
            ),
          ).pages,
        ]),
      ),
  };
  const body = [
    ...SECTIONS.filter((s) => wanted.includes(s)).flatMap((s) => heard(make[s])),
    ...(options.worksheet ? worksheetPages(kit, paper, asked, options.leaveOut ?? []) : []),
  ];
  return numbered(
    (contents) =>
      sheets('cover', words.sections.cover, [
        ...coverFlows(kit, making, options.worksheet ? [...wanted, 'worksheets'] : wanted),
        ...contents,
      ]),
    body,
    kit,
  );
}

/** Cautions stand in every packet, whatever else was asked for. */
function wantedSections({ assembly }: JobPlan, { sections, worksheet }: PacketOptions): readonly Section[] {
  if (worksheet) return ['cautions'];
  if (sections !== undefined) return SECTIONS.filter((s) => s === 'cautions' || sections.includes(s));
  return SECTIONS.filter((s) => s !== 'joints' || assembly !== null);
}

/** One class coarser: what a hand brake holds beside what is marked out. */
const coarser = (of: ToleranceClass): ToleranceClass => (({ f: 'm', m: 'c', c: 'c', v: 'v' }) as const)[of];
