import {
  explainBlank,
  type Finding,
  type FlatPattern,
  type JobPlan,
  type PartPlan,
  type Placed,
  type Pose,
} from '@tinwright/core';
import { assemblyPicture, flatDrawing, partPicture, toSvg } from '@tinwright/files';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { jobFindings, withChanges } from '@tinwright/shop/internal';
import { type Language, tellFindings } from '@tinwright/words';
import { severityWord } from '@tinwright/words/internal';
import type { BlankView, FindingView, FlatView, JobView, PartView, Quick, SolidView } from '../protocol.js';
import { solidView } from './solid.js';
import { spansOf } from './spans.js';

/** Both views of a part, nothing else: what a change shows at once. */
export function quickView({ name, flat, formed }: Pick<PartPlan, 'name' | 'flat' | 'formed'>): Quick {
  return { name, flat: flatView(name, flat), solid: solidView(formed) };
}

/** A job with everything a screen shows of it. */
export function jobView(plan: JobPlan, language: Language): JobView {
  const { job, parts, assembly } = plan;
  const each = (of: (p: PartPlan) => number) => parts.reduce((sum, p) => sum + p.quantity * of(p), 0);
  return {
    units: job.units,
    name: job.name,
    parts: parts.map(partView),
    object:
      assembly === null
        ? null
        : [
            ...assembly.placed.map((p) => pieceView(p, null)),
            ...assembly.bought.map((b) => pieceView(b, solidView(b.part.formed))),
          ],
    findings: findingViews(plan, language, jobFindings(plan, DEFAULT_SHOP)),
    totals: {
      mass: each((p) => p.mass),
      area: each((p) => p.flat.area),
      pieces: each(() => 1),
      fasteners: assembly?.fasteners.length ?? 0,
    },
  };
}

/** The findings of a job with the values that would mend them, found by trying. */
export const mendedFindings = (plan: JobPlan, language: Language): readonly FindingView[] =>
  findingViews(plan, language, withChanges(jobFindings(plan, DEFAULT_SHOP), plan, DEFAULT_SHOP));

const pieceView = ({ piece, part, pose }: Placed, solid: SolidView | null) => ({
  piece,
  part: part.name,
  matrix: matrixOf(pose),
  solid,
});

/** What core and the machines of the usual shop have to say, told. */
function findingViews(
  plan: JobPlan,
  language: Language,
  findings: readonly Finding[],
): readonly FindingView[] {
  return tellFindings(findings, plan.job.units, language).map(
    ({ severity, part, at, message, fix, source, changes }, i) => ({
      severity,
      label: severityWord(severity, language),
      part: part ?? '',
      at,
      names: findings[i]?.where.names ?? [],
      changes: changes.flatMap((c) => {
        const value = 'found' in c ? c.found : c.words[0];
        return value === undefined ? [] : [{ path: c.path, value }];
      }),
      message,
      fix,
      source,
    }),
  );
}

/** A part or the object as the files' own picture. */
export function pictureOf({ job, parts, assembly }: JobPlan, name: string | null): string | null {
  const part = parts.find((p) => p.name === name);
  if (part !== undefined) return toSvg(partPicture(part.name, part));
  return assembly === null ? null : toSvg(assemblyPicture(job.name, assembly));
}

function partView(plan: PartPlan): PartView {
  const { family, quantity, mass, flat, sheet, params } = plan;
  return {
    ...quickView(plan),
    family: family.name,
    quantity,
    mass,
    area: flat.area,
    sizes: family.derived(params, sheet).map((d) => ({ name: d.name, value: d.value })),
    params,
  };
}

function flatView(name: string, flat: FlatPattern): FlatView {
  const blank = explainBlank(flat).map(
    ({ total, terms }): BlankView => ({
      total,
      terms: terms.map((t) => ({
        id: t.kind === 'leg' ? t.panel : t.bend.id,
        kind: t.kind,
        length: t.length,
      })),
    }),
  ) as [BlankView, BlankView];
  return {
    svg: toSvg(flatDrawing(flat, name, [name])),
    size: flat.blank.max,
    blank,
    bends: flat.bends.map((b) => ({
      id: b.id,
      line: b.line,
      zone: [b.tangents[0][0], b.tangents[0][1], b.tangents[1][1], b.tangents[1][0]],
      angle: b.angle,
      direction: b.direction,
      insideRadius: b.insideRadius,
      allowance: b.terms.allowance,
      deduction: b.terms.deduction,
    })),
    panels: flat.panels.map((p) => ({ id: p.id, shape: p.shape, spans: spansOf(flat, p) })),
  };
}

const matrixOf = ({ x, y, z, origin }: Pose): readonly number[] => [...x, 0, ...y, 0, ...z, 0, ...origin, 1];
