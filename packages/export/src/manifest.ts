import type { Finding, FlatBend, JobPlan, PartPlan } from '@tinwright/core';

/** Where a part's files stand in the output folder. */
export interface PartFiles {
  readonly dxf: string;
  readonly svg: string;
}

/** The manifest `job.json` of a job; `written` are the set's other files. All lengths mm, angles deg, mass kg, area mm². */
export function manifestOf(
  plan: JobPlan,
  files: (part: PartPlan) => PartFiles,
  written: readonly string[],
): object {
  return {
    format: 1,
    ...(plan.job.name === '' ? {} : { name: plan.job.name }),
    ...(plan.job.note === '' ? {} : { note: plan.job.note }),
    units: plan.job.units,
    parts: plan.parts.map((p) => partEntry(p, files(p))),
    findings: plan.findings.map(findingEntry),
    files: written,
  };
}

/** The manifest as text. */
export function manifestText(manifest: object): string {
  return `${JSON.stringify(manifest, (_, v) => (typeof v === 'number' ? rounded(v) : v), 2)}\n`;
}

/** Nine decimals: below any tool, above rounding noise. */
const rounded = (v: number) => Math.round(v * 1e9) / 1e9 + 0;

function partEntry(p: PartPlan, files: PartFiles): object {
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
    base: flat.base,
    bends: flat.bends.map(bendEntry),
    marks: flat.marks.map(({ kind, at, joint }) => ({ kind, at, joint })),
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

function findingEntry(f: Finding): object {
  const { unit: _, ...rest } = f;
  return rest;
}
