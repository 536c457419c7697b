// Cross-sections of the part against the tools, by clipper2-ts: what is drawn touches, and never runs into anything.
import type { Point } from '@tinwright/core';
import {
  areaPathsD,
  EndType,
  FillRule,
  inflatePathsD,
  intersectD,
  JoinType,
  type PathD,
  type PathsD,
  unionD,
} from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { joined } from '../../src/steps/joined.js';
import { moves, type Scene, sceneAt } from '../../src/steps/scene.js';
import { CASES } from './cases.js';

const DIGITS = 6;
const CONTACT = 0.03; // mm two outlines that touch may share: bends are drawn in strips

const path = (outline: readonly Point[]): PathD => outline.map(([x, y]) => ({ x, y }));
const union = (outlines: readonly (readonly Point[])[]): PathsD =>
  unionD(outlines.map(path), [], FillRule.NonZero, DIGITS);
const grown = (paths: PathsD, by: number): PathsD =>
  inflatePathsD(paths, by, JoinType.Miter, EndType.Polygon, 2, DIGITS);
const shared = (a: PathsD, b: PathsD): number => areaPathsD(intersectD(a, b, FillRule.NonZero, DIGITS));

const scenes = CASES.flatMap(({ name, part, sequence, shop }) =>
  sequence.steps.map((step, i) => ({
    title: `${name} ${i + 1}: ${step.action} ${step.bends.join(' ')} (${step.machine})`,
    scene: sceneAt(part, sequence, i, shop),
  })),
);

test('every kind of machine and of operation is among the cases', () => {
  const kinds = new Set(scenes.map((s) => `${s.scene.step.machine} ${s.scene.step.action}`));
  expect([...kinds].toSorted()).toEqual([
    'brake bend',
    'brake close',
    'brake fold',
    'hand bend',
    'hand close',
    'hand fold',
    'hand roll',
    'press bend',
    'vise bend',
  ]);
});

describe.each(scenes)('$title', ({ scene }) => {
  test.each(['before', 'after'] as const)('%s: the part is nowhere in the tools', (when) => {
    const metal = union(scene.cuts[when].map((c) => c.outline));
    expect(areaPathsD(metal)).toBeGreaterThan(1);
    for (const tool of scene.machine?.[when] ?? [])
      expect([tool.name, shared(metal, grown([path(tool.outline)], -CONTACT))]).toEqual([tool.name, 0]);
  });

  test('what holds or bends it is drawn', () => {
    const { step, machine } = scene;
    const names = { former: 'block', bench: 'bench', seamer: 'jaw' } as const;
    if (step.clamp === null || step.action === 'close' || step.action === 'roll') return;
    expect(machine?.before.map((t) => t.name)).toContain(names[step.clamp]);
  });

  test('what an edge lies against is drawn, its front where it is set', () => {
    const { step, machine } = scene;
    const set =
      step.press?.gauge ?? (step.stopDistance === null ? null : step.stopDistance + (step.setBack ?? 0));
    const stop = machine?.before.find((t) => t.name === 'gauge' || t.name === 'stop');
    expect(stop === undefined).toBe(set === null);
    if (stop === undefined || set === null) return;
    const front = -Math.max(...stop.outline.map((p) => p[0]));
    // metal that stands further back elsewhere along the line is what it touches
    expect(front).toBeGreaterThan(set - 1e-6);
    const behind = Math.min(...scene.cuts.before.flatMap((c) => c.outline.map((p) => p[0])));
    expect(front).toBeLessThan(Math.max(set, -behind) + 1e-6);
  });

  test('after the stroke the free side lies against what bent it', () => {
    const { step, machine } = scene;
    const byHand = step.machine === 'vise' || (step.machine === 'hand' && step.action !== 'close');
    if (machine === null || byHand) return expect(['vise', 'hand']).toContain(step.machine);
    const free = union(own(scene, true));
    const pushed = step.action === 'close' ? ['fingers', 'bar', 'jaw', 'mallet'] : ['leaf', 'die'];
    const touch = machine.after
      .filter((t) => pushed.includes(t.name))
      .map((t) => shared(free, grown([path(t.outline)], CONTACT)));
    expect(Math.max(...touch)).toBeGreaterThan(0);
  });

  test.each(['before', 'after'] as const)(
    '%s: joined outlines hold the same area as their pieces',
    (when) => {
      const pieces = scene.cuts[when].map((c) => c.outline);
      const loops = joined(pieces);
      expect(areaPathsD(loops.map(path))).toBeCloseTo(areaPathsD(union(pieces)), 3);
    },
  );
});

const own = (scene: Scene, moving: boolean) =>
  scene.cuts.after.filter((c) => moves(scene, c.kind, c.id) === moving).map((c) => c.outline);
