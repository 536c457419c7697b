// What the shared routine says of an object is put down to the routine only where the bodies themselves are right.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { FAMILIES, planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { jobFiles } from '@tinwright/files';
import { beforeAll, expect, test } from 'vitest';
import { parse } from 'yaml';
import { objectRemark } from './kit/refold-objects.js';
import type { FoldedManifest } from './kit/refold-parts.js';
import { type StandingObject, standWritten } from './kit/stand-files.js';

interface Placed {
  readonly assembly: { readonly placements: readonly { readonly name: string; matrix: number[] }[] };
}

const SHARED = 'box and divider-1 share 2.69 mm3';
const written = new Map<string, string>();
const manifest = () => JSON.parse(written.get('job.json') ?? '') as FoldedManifest & Placed;

/** The bench box put together, its first divider moved along y. mm */
function object(moved: number): Promise<StandingObject> {
  const placed = manifest();
  const divider = placed.assembly.placements.find((p) => p.name === 'divider-1');
  if (divider !== undefined) divider.matrix[13] = (divider.matrix[13] ?? 0) + moved;
  return standWritten((path) => (path === 'job.json' ? JSON.stringify(placed) : (written.get(path) ?? '')));
}

beforeAll(() => {
  const text = readFileSync(join(import.meta.dirname, '../examples/bench-box.yaml'), 'utf8');
  const plan = planJob(readJob(parse(text), FAMILIES, { hardware }));
  for (const f of jobFiles(plan, { dxf: 'r2000' })) written.set(f.path, String(f.content));
});

test('space shared by metal beside a bend is the routine’s own', async () => {
  expect(objectRemark(SHARED, manifest(), await object(0))).toContain('beside a bend');
});

test('space that bodies share in truth is never the routine’s own', async () => {
  expect(objectRemark(SHARED, manifest(), await object(-0.3))).toBeNull();
});

test('a gap of just the widest is, a wider one is not', async () => {
  const gap = 'fastener corners-1: gap between faces 0.500 mm';
  expect(objectRemark(gap, manifest(), await object(0))).toContain('rounding');
  const front = 'fastener fronts-1-9: gap between faces 0.900 mm';
  expect(objectRemark(front, manifest(), await object(0.9))).toBeNull();
});

test('an object without fasteners is told unless bought parts hold some', async () => {
  const bare = { ...manifest(), assembly: { fasteners: [] } };
  const remark = 'assembly without fasteners';
  expect(objectRemark(remark, bare, await object(0))).toBeNull();
  expect(objectRemark(remark, manifest(), await object(0))).toContain('bought');
});
