import {
  type JobPlan,
  type PartPlan,
  revivePlan,
  type StopSignal,
  type ToleranceClass,
} from '@tinwright/core';
import { atOnce, type Pieces } from '@tinwright/core/internal';
import type { KnownCut } from '@tinwright/files';
import type { Language } from '@tinwright/words';
import type { DimsName, Has } from '@tinwright/words/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import { dimsIn, dimsOf } from '../page/dims.js';
import { type Flowing, once } from '../page/flow.js';
import type { Page } from '../page/page.js';
import { paperNamed } from '../page/paper.js';
import { drawn, type PendingPage, pending } from '../page/pending.js';
import { LETTERING, type Typeface, typeface } from '../page/typeface.js';
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
import { COVER, numbered } from './numbered.js';
import { operationFlows } from './operations.js';
import { type Section, wantedSections } from './sections.js';
import { chapter, fewestSheets, type TextSection, textSheets } from './text-sheets.js';
import { worksheetPages } from './worksheet-pages.js';

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
 * @throws JobError where a plan does not fit its paper, or a section is asked for that the job has nothing for;
 * RangeError for a paper there is none of
 */
export function packetPages(given: JobPlan, making: Making, options: PacketOptions): readonly Page[] {
  return atOnce(packetSheets(given, making, options), options.signal).map(drawn);
}

/** The same pages before they are drawn, set in as many pieces as `piecesOf` says. */
export function* packetSheets(
  given: JobPlan,
  making: Making,
  options: PacketOptions,
): Pieces<readonly PendingPage[]> {
  const {
    language = 'en',
    lettering = LETTERING,
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
    dims: dimsIn(dimsOf(options.dims), language),
    language,
    words,
    plans,
    steps,
    setting,
  };
  const paper = paperNamed(options.paper);
  const wanted = wantedSections(plan, options);
  const has: Has = (name) => wanted.some((s) => s === name);
  const asked = { paper: options.paper, dims: options.dims, lettering, tolerance, language, face };
  const { job, parts } = plan;
  const passages: Readonly<Record<TextName, () => readonly Flowing[]>> = {
    cautions: () => cautionFlows(kit, making),
    cuts: () => cutFlows(kit, cut, paper, has),
    operations: () => operationFlows(kit, making, has),
    joints: () => jointFlows(kit),
    inspection: () => inspectionFlows(kit, { cut: tolerance, bent: coarser(tolerance) }),
  };
  const texts = (names: readonly TextName[]) =>
    eachPiece(
      names.filter((n) => wanted.includes(n)),
      (name): TextSection => ({ name, title: words.sections[name], passages: passages[name]().map(once) }),
    );
  const leftOut = [
    ...(wanted.includes('operations') ? (['notes'] as const) : []),
    ...(wanted.includes('inspection') ? (['finished'] as const) : []),
  ];
  const onPlans = { ...asked, leftOut, ...(date && { date }) };
  function* ofParts(
    name: 'plans' | 'templates',
    of: (part: PartPlan) => readonly [string, readonly Page[]],
  ): Pieces<readonly PendingPage[]> {
    if (!wanted.includes(name)) return [];
    const made = yield* eachPiece(parts, (p) => {
      const [title, pages] = of(p);
      return [title, pages.map(pending)] as const;
    });
    return chapter(name, words.sections[name], made);
  }
  const planned = yield* ofParts('plans', (p) => [
    words.plan(p.name),
    partPlan(job.name, p, onPlans, brakeMarks(p, making)).pages,
  ]);
  const full = { ...asked, medium: { kind: 'sheets', width: paper.width, height: paper.height } } as const;
  const templates = yield* ofParts('templates', (p) => [
    words.template(p.name),
    partTemplate(job.name, p, full, brakeMarks(p, making)).pages,
  ]);
  const last = options.worksheet ? worksheetPages(kit, paper, asked, options.leaveOut ?? []) : [];
  const set = (list: readonly TextSection[]) => fewestSheets(kit, paper, list, date);
  const cuts = yield* texts(['cuts']);
  const cautions = yield* texts(['cautions']);
  const after = yield* texts(['operations', 'joints', 'inspection']);
  const alone = { before: set(cautions), after: set(after) };
  const first = coverFlows(kit, making, options.worksheet ? [...wanted, 'worksheets'] : wanted).map(once);
  const title = words.sections.cover;
  /** The cut list stands on the cover, behind the cautions or before the operations: where it takes fewest sheets. */
  const ways = (cuts.length === 0 ? (['cover'] as const) : (['before', 'cover', 'after'] as const)).map(
    (where) => {
      const body = [
        ...(where === 'before' ? set([...cautions, ...cuts]) : alone.before),
        ...planned,
        ...(where === 'after' ? set([...cuts, ...after]) : alone.after),
        ...templates,
        ...last,
      ];
      const cover = (contents: readonly Flowing[]) =>
        textSheets(
          kit,
          paper,
          [{ name: COVER, title, passages: [...first, ...contents] }, ...(where === 'cover' ? cuts : [])],
          date,
        );
      return numbered(cover, body, kit);
    },
  );
  return ways.reduce((best, way) => (way.length < best.length ? way : best));
}

/** Each of them worked on in a piece of its own. */
function* eachPiece<T, R>(list: readonly T[], work: (of: T) => R): Pieces<readonly R[]> {
  const done: R[] = [];
  for (const of of list) {
    yield;
    done.push(work(of));
  }
  return done;
}

type TextName = 'cautions' | 'cuts' | 'operations' | 'joints' | 'inspection';

/** One class coarser: what a hand brake holds beside what is marked out. */
const coarser = (of: ToleranceClass): ToleranceClass => (({ f: 'm', m: 'c', c: 'c', v: 'v' }) as const)[of];
