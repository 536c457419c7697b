// The written files, folded again by an independent routine on manifold-3d, come out as the manifest says.
import {
  FAMILIES,
  type FlatPattern,
  JobError,
  jobReader,
  type PartPlan,
  type Point,
  planJob,
} from '@tinwright/core';
import { loopArea } from '@tinwright/core/internal';
import { jobFiles } from '@tinwright/files';
import { bendings, paramsOf, sheets } from '@tinwright/testing';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { WrittenPart } from './kit/bend-zones.js';
import { foldFiles } from './kit/fold-files.js';

const read = jobReader(); // keeps the schemas that it builds

interface Written extends WrittenPart {
  readonly formed: { readonly x: number; readonly y: number; readonly z: number };
  readonly files: { readonly dxf: string };
}

/** Make a job in memory and fold every part of it from its files. */
async function refold(data: object, dxf: 'r2000' | 'r12'): Promise<void> {
  const plan = planJob(read(data));
  const files = new Map(jobFiles(plan, { dxf }).map((f) => [f.path, String(f.content)]));
  const manifest = JSON.parse(files.get('job.json') ?? '') as { parts: Written[] };
  for (const [i, part] of manifest.parts.entries()) {
    const folded = await foldFiles(part, files.get(part.files.dxf) ?? '');
    const what = `${folded.size} ${folded.shared} ${folded.volume} ${JSON.stringify(data)}`;
    expect(folded.shared, what).toBeLessThan(1e-3);
    const { x, y, z } = part.formed;
    for (const [k, v] of [x, y, z].entries()) expect(folded.size[k], what).toBeCloseTo(v, 1.5);
    const { flat, formed: solid } = plan.parts[i] as PartPlan;
    // round reliefs bite out of panels and bends; the formed volume counts those as whole
    const formed = solid.volume - bitten(flat) * part.thickness;
    // strips keep the flat length of a bend, so they hold less or more metal than the true ring
    const stretch = flat.bends.reduce((s, b) => {
      const ring = ((b.angle * Math.PI) / 180) * (b.insideRadius + part.thickness / 2);
      return (
        s +
        (b.zone - ring) *
          Math.hypot(b.line[1][0] - b.line[0][0], b.line[1][1] - b.line[0][1]) *
          part.thickness
      );
    }, formed);
    expect(folded.volume / stretch, what).toBeCloseTo(1, 2);
  }
}

/** Area of panels and bend zones that the outline leaves out, mm². */
function bitten({ panels, bends, outline }: FlatPattern): number {
  const area = (shape: readonly Point[]) => Math.abs(loopArea(shape.map((at) => ({ at, bulge: 0 }))));
  const zones = bends.map(({ tangents: [[a, b], [c, d]] }) => area([a, b, d, c]));
  return [...panels.map((p) => area(p.shape)), ...zones].reduce((x, y) => x + y, 0) - loopArea(outline);
}

const stock = { material: 'mild-steel', thickness: 1 };

for (const family of FAMILIES)
  test.each([
    ['r2000', 'under every rule', bendings],
    ['r12', 'under one', bendings.slice(0, 1)], // `.ci/run` takes them all
  ] as const)(`${family.name}: the example folds back from its %s file %s`, async (dxf, _, rules) => {
    for (const bending of rules)
      await refold(
        {
          units: 'mm',
          stock,
          bending,
          parts: [{ name: 'part', family: family.name, ...family.describe.example }],
        },
        dxf,
      );
  });

for (const family of FAMILIES)
  test(`${family.name}: random parts fold back from their files`, async () => {
    const makeable = fc.tuple(paramsOf(family), sheets).map(([params, job]) => ({
      units: 'mm',
      ...job,
      parts: [{ name: 'part', family: family.name, ...params }],
    }));
    await fc.assert(
      fc.asyncProperty(makeable, async (data) => {
        try {
          planJob(read(data));
        } catch (error) {
          if (error instanceof JobError) fc.pre(false);
          throw error;
        }
        await refold(data, 'r2000');
      }),
      { numRuns: Number(process.env.TINWRIGHT_RUNS ?? 6) },
    );
  });

// beside a roll as wide as this the wall's end is not where its slope would begin
test.each([
  { type: 'closed', length: 6 },
  { type: 'open', length: 8, gap: 2, side: 'down' },
  { type: 'return', height: 12 },
])('a scoop with a wired lip and %j on the slopes of its sides folds back', async (finish) => {
  const lip = { type: 'wire', diameter: 18 };
  const edges = ['south', 'north'].map((panel) => ({ ...finish, panel, edge: 'lip' }));
  const scoop = { name: 'part', family: 'scoop', length: 380, width: 130, height: 120, slope: 190 };
  await refold({ units: 'mm', stock, bending: bendings[0], parts: [{ ...scoop, lip, edges }] }, 'r2000');
});
