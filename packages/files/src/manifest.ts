import {
  type Assembly,
  type Bought,
  type Finding,
  type FlatBend,
  type FlatPanel,
  type JobPlan,
  type PartPlan,
  type Placed,
  PROGRAM,
} from '@tinwright/core';
import { cutPose, sortFindings } from '@tinwright/core/internal';
import type { ShopPlan } from '@tinwright/shop';
import { type Language, tellFindings } from '@tinwright/words';
import { findingEntry, spotWords } from '@tinwright/words/internal';
import { clearPoint } from './clear-point.js';
import type { KnownCut } from './cut-list/cut-list.js';
import { cutListEntry } from './cut-list/entry.js';
import { type WrittenMark, type WrittenMarks, writtenMarks } from './manifest-marks.js';
import { sequenceEntry } from './sequence-entry.js';

/** Where a part's files stand in the output folder. */
export interface PartFiles {
  readonly dxf: string;
  readonly svg: string;
}

/** What a manifest tells beside the plan. */
export interface ManifestTells {
  /** The job as a shop makes it: bend orders and findings; null when no shop was asked for. */
  readonly inShop?: ShopPlan | null;
  /** What it is cut from, and what was left out; null where nobody said what stock there is. */
  readonly cut?: KnownCut | null;
  /** Of findings, bend notes and reasons; codes and values are the same in all. English where nobody says. */
  readonly language?: Language;
}

/** The manifest `job.json` of a job; `written` are the set's other files. All lengths mm, angles deg, mass kg, area mm². */
export function manifestOf(
  plan: JobPlan,
  files: (part: PartPlan) => PartFiles,
  written: readonly string[],
  { inShop = null, cut = null, language = 'en' }: ManifestTells = {},
): object {
  const marks = writtenMarks(plan);
  const sequence = (name: string) => {
    const found = inShop?.sequences.find((s) => s.part === name);
    return found === undefined ? {} : { sequence: sequenceEntry(found, plan.job.units, language) };
  };
  return {
    format: 1,
    program: PROGRAM.mark,
    ...(plan.job.name === '' ? {} : { name: plan.job.name }),
    ...(plan.job.note === '' ? {} : { note: plan.job.note }),
    units: plan.job.units,
    ...measuredEntry(plan),
    parts: plan.parts.map((p) => ({ ...partEntry(p, marks.of(p.name), files(p)), ...sequence(p.name) })),
    ...(inShop === null ? {} : { shop: inShop.shop.name, batch: inShop.batch }),
    findings: tellFindings(allFindings(plan, inShop, cut), plan.job.units, language).map(findingEntry),
    ...(cut === null ? {} : { cutList: cutListEntry(cut.work) }),
    ...(plan.assembly === null ? {} : { assembly: assemblyEntry(plan, plan.assembly, marks) }),
    files: written,
  };
}

/** What was measured on parts that are made, by `part.size`, mm; absent where nothing was. */
function measuredEntry({ job: { parts } }: JobPlan): object {
  const all = parts.flatMap((p) =>
    p.measured.map(({ size, value }) => [`${p.name}.${size}`, value] as const),
  );
  return all.length === 0 ? {} : { measured: Object.fromEntries(all) };
}

/** All there is to know of a job: of its parts, of the shop, of the stock; by part, worst first. */
export function allFindings(
  plan: JobPlan,
  inShop: ShopPlan | null,
  cut: KnownCut | null,
): readonly Finding[] {
  const own = inShop?.findings ?? plan.findings;
  if (cut === null || cut.findings.length === 0) return own;
  const order = plan.parts.map((p) => p.name);
  return sortFindings([...own, ...cut.findings], order);
}

/** The manifest as text. */
export function manifestText(manifest: object): string {
  return `${JSON.stringify(manifest, (_, v) => (typeof v === 'number' ? rounded(v) : v), 2)}\n`;
}

/** Nine decimals: below any tool, above rounding noise. */
const rounded = (v: number) => Math.round(v * 1e9) / 1e9 + 0;

function partEntry(p: PartPlan, marks: readonly WrittenMark[], files: PartFiles): object {
  const { flat, formed } = p;
  return {
    name: p.name,
    family: p.family.name,
    quantity: p.quantity,
    ...(p.note === '' ? {} : { note: p.note }),
    material: p.material.name,
    thickness: p.sheet.thickness,
    rule: p.sheet.rule.name,
    ruleTitle: p.sheet.rule.title,
    blank: { x: flat.blank.max[0], y: flat.blank.max[1] },
    formed: { x: formed.size[0], y: formed.size[1], z: formed.size[2] },
    area: flat.area,
    cutLength: flat.cutLength,
    mass: p.mass,
    base: clearPoint(flat),
    bends: flat.bends.map(bendEntry),
    marks,
    files,
  };
}

function bendEntry(b: FlatBend): object {
  return {
    id: b.id,
    angle: b.angle,
    direction: b.direction,
    insideRadius: b.insideRadius,
    allowance: b.terms.allowance,
    deduction: b.terms.deduction,
    ...(b.hem === null ? {} : { hem: b.hem }),
    line: b.line,
    zone: b.zone,
  };
}

/** Placements, fasteners and fits; matrices map a part's flat coordinates with its base panel at rest. */
function assemblyEntry(plan: JobPlan, assembly: Assembly, marks: WrittenMarks): object {
  const { placed, bought, fasteners, fits } = assembly;
  const written = fasteners.map((f, i) => ({
    id: `${f.joint}-${i + 1}`,
    kind: f.kind,
    joint: f.joint,
    on: f.on.map((end) => ({ placement: end.piece, mark: marks.index(end) })),
  }));
  const holding = (piece: string) => written.filter((f) => f.joint === piece);
  const ofBought = new Set(bought.flatMap((b) => holding(b.piece)));
  return {
    placements: placed.map(({ piece, part, pose }) => ({
      name: piece,
      part: part.name,
      matrix: matrixOf(plan, { part, pose }),
    })),
    ...(bought.length === 0
      ? {}
      : { bought: bought.map((b) => ({ ...boughtEntry(b), fasteners: holding(b.piece) })) }),
    fasteners: written.filter((f) => !ofBought.has(f)),
    fits: fits.map(({ joint, asked, found, between, gap }) => ({
      joint,
      asked,
      found,
      between: between.map((spot) => spotWords(spot, 'en')),
      gap,
    })),
  };
}

/** A bought part: which, its sizes, what it stands on, and where its frame stands: x right, y up, z off the face. */
function boughtEntry({ piece, spec, holds, pose: { x, y, z, origin } }: Bought): object {
  const { type, ...sizes } = spec.params;
  const on = holds.map((h) => h.piece);
  return { name: piece, type, of: spec.name, sizes, on, matrix: [...x, 0, ...y, 0, ...z, 0, ...origin, 1] };
}

/** Column-major; the formed part's frame starts at its base panel's own origin, the flat's at the outline's corner. */
function matrixOf(plan: JobPlan, placed: Pick<Placed, 'part' | 'pose'>): readonly number[] {
  const base = planOf(plan, placed.part.name).flat.panels[0] as FlatPanel;
  const { x, y, z, origin } = cutPose(placed, base.id);
  const [u, v] = base.frame.origin;
  const from = ([0, 1, 2] as const).map((k) => origin[k] - u * x[k] - v * y[k]);
  return [...x, 0, ...y, 0, ...z, 0, ...from, 1];
}

const planOf = (plan: JobPlan, name: string) => plan.parts.find((p) => p.name === name) as PartPlan;
