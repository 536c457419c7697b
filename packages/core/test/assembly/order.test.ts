import { compose3 } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { keepOffs } from '../../src/assembly/keep-off.js';
import { overlapsOf } from '../../src/assembly/overlap.js';
import { fieldOf } from '../../src/joining/layout.js';
import { carrier, codesOf, plan, T } from '../carrier.js';

const WIDTH = 155.6;
const SPAN = 315.8;

/** The carrier with its parts in this order, sizes given out. */
function ordered(names: readonly string[]) {
  const job = carrier({ end: { width: WIDTH }, handle: { span: SPAN } });
  const parts = names.map((n) => job.parts.find((p) => p.name === n) ?? {});
  return plan({ ...job, parts });
}

/** Where each piece's origin stands in the frame of the channel. */
function inChannel({ assembly }: ReturnType<typeof plan>) {
  const body = assembly?.placed.find((p) => p.piece === 'body')?.pose;
  return assembly?.placed
    .map(({ piece, pose }) => {
      const d = pose.origin.map((v, k) => v - (body?.origin[k] ?? 0));
      const along = (axis: readonly number[] = []) => d.reduce((s, v, k) => s + v * (axis[k] ?? 0), 0);
      return [piece, [body?.x, body?.y, body?.z].map((a) => along(a))] as const;
    })
    .toSorted(([a], [b]) => (a < b ? -1 : 1));
}

describe.each([
  ['ends first', ['end', 'body', 'handle']],
  ['handle first', ['handle', 'end', 'body']],
  ['channel last', ['end', 'handle', 'body']],
])('%s', (_, names) => {
  test('the object is the same, and nothing is to be noted', () => {
    const [usual, other] = [ordered(['body', 'end', 'handle']), ordered(names)];
    expect(codesOf(other)).toEqual(codesOf(usual));
    for (const [i, [piece, at]] of (inChannel(usual) ?? []).entries())
      expect(inChannel(other)?.[i]).toEqual([piece, at.map((v) => expect.closeTo(v, 6))]);
  });
});

test('a plate narrower by 1 mm stands off the bends of the tabs too when it stands first', () => {
  const job = carrier({ end: { width: 157, cornerNip: 6 }, handle: { span: 100 } });
  const turned = { ...job, parts: [job.parts[1], job.parts[0], job.parts[2]] };
  const gaps = (j: unknown) =>
    plan(j)
      .assembly?.seated.filter((s) => ['west', 'east'].includes(s.joint.name))
      .map((s) => s.gap);
  // R − √(R² − (R − c)²), R 1 mm, c 0.5 mm
  const wanted = 1 - Math.sqrt(1 - 0.25);
  expect(gaps(job)).toEqual([expect.closeTo(wanted, 6), expect.closeTo(wanted, 6)]);
  expect(gaps(turned)).toEqual([expect.closeTo(wanted, 6), expect.closeTo(wanted, 6)]);
});

test.each([[['north', 'south']], [['north']], [['south']]])(
  'end tabs on %j alone: both ends stand upright on the floor',
  (on) => {
    const { findings, assembly } = plan(carrier({ body: { endTabs: { length: 20, on } } }));
    for (const piece of ['end-1', 'end-2']) {
      const pose = assembly?.placed.find((p) => p.piece === piece)?.pose;
      expect(pose?.y[2]).toBeCloseTo(1, 9); // its y runs up
      expect(pose?.origin[2]).toBeCloseTo(2.2, 6);
    }
    expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
  },
);

describe('two objects in one job', () => {
  const one = carrier();
  const twin = (name: unknown) => (typeof name === 'string' ? `tray-${name}` : name);
  const parts = one.parts.map((p) => ({
    ...p,
    name: twin(p.name),
    ...(p.name === 'end' ? { width: 155.6 } : p.name === 'handle' ? { span: 315.8 } : {}),
  }));
  const joints = one.joints?.map((j) => ({ ...j, name: twin(j.name), from: twin(j.from), to: twin(j.to) }));
  const both = plan({
    ...one,
    parts: [...one.parts, ...parts],
    joints: [...(one.joints ?? []), ...(joints ?? [])],
  });

  test('the second one is fastened as well', () => {
    const { assembly } = plan(one);
    expect(both.assembly?.fasteners).toHaveLength(2 * (assembly?.fasteners.length ?? 0));
  });

  test('its pieces are not said to be joined to nothing', () => {
    expect(codesOf(both)).not.toContain('piece-loose');
  });

  test('it stands beside the first, clear of it, and is the same object', () => {
    const placed = both.assembly?.placed ?? [];
    const reach = (own: boolean) =>
      placed
        .filter((p) => p.piece.startsWith('tray-') !== own)
        .flatMap(({ part, pose }) => part.formed.panels.map((p) => compose3(pose, p.pose).origin[0]));
    expect(Math.min(...reach(false)) - Math.max(...reach(true))).toBeGreaterThan(40);
    const first = placed.find((p) => p.piece === 'body')?.pose.origin ?? [0, 0, 0];
    const second = placed.find((p) => p.piece === 'tray-body')?.pose.origin ?? [0, 0, 0];
    for (const p of placed.filter((q) => !q.piece.startsWith('tray-'))) {
      const twin = placed.find((q) => q.piece === `tray-${p.piece}`);
      expect(twin?.pose.origin.map((v, k) => v - (second[k] ?? 0))).toEqual(
        p.pose.origin.map((v, k) => expect.closeTo(v - (first[k] ?? 0), 9)),
      );
      expect(twin?.pose.x).toEqual(p.pose.x);
    }
    expect(both.findings).toEqual([]);
  });
});

test('rivets a hair apart on the two pieces of one part: told, not called a fault of the program', () => {
  const by = (count: number) => ({ by: { 'blind-rivet': { count } } });
  const job = carrier({
    body: { width: 200 },
    joints: { west: by(10), east: by(11), 'grip-west': by(2), 'grip-east': by(2) },
  });
  expect(codesOf(plan(job))).toContain('pieces-differ');
});

test('the tightest overlap of a joint is told, not the first', () => {
  // low shoulders: the slopes of the end leave less of the side tabs than of the base tab
  const job = carrier({ body: { endTabs: { length: 17.5 } }, end: { shoulderHeight: 8, height: 60 } });
  const { assembly, findings } = plan(job);
  const seated = assembly?.seated.find((s) => s.joint.name === 'west');
  if (seated?.joint.by == null) throw new Error('not fastened');
  const sheet = { part: '', thickness: T, material: seated.from.part.material };
  const needs = seated.joint.by.kind.needs([sheet, sheet], seated.joint.by.ask as never, 2);
  const shares = overlapsOf(seated).map((o) => fieldOf(o.shape, keepOffs(o, needs)).share);
  const [told] = findings.filter((f) => f.code === 'overlap-narrow' && spoken(f).message.includes('west'));
  expect(shares[0]).toBeGreaterThan(Math.min(...shares) + 0.1);
  expect(told?.value).toBeCloseTo(Math.min(...shares) * needs.edge, 3);
});

test.each([1.5, 2, 3])(
  'an automatic nip clears an inside radius of %d mm, hard against the sides',
  (insideRadius) => {
    const bending = { rule: 'k-factor', k: 0.42, insideRadius };
    const end = { width: { of: 'body.insideWidth' }, cornerNip: 'auto' };
    const body = { hem: { type: 'none' } };
    expect(codesOf(plan(carrier({ head: { bending }, body, end, handle: { span: 100 } })))).not.toContain(
      'clash',
    );
  },
);
