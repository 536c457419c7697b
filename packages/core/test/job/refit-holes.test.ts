import {
  FAMILIES,
  type FastenerEnd,
  type JobPlan,
  jobReader,
  type PartPlan,
  type Placed,
  type Point,
  planJob,
  type RefitAsk,
  refit,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { compose3, dot3, length3, place3, scale3, sub3 } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { carrier } from '../carrier.js';

const RIVET = { by: { 'blind-rivet': { diameter: 3.2, count: 2 } } };
const SCREW = { by: { screw: { diameter: 3.5, count: 2 } } };
const SHEET = {
  units: 'mm',
  stock: { material: 'aluminium-5052-h32', thickness: 1 },
  bending: { rule: 'k-factor', insideRadius: 1.2 },
} as const;

const COVER = {
  ...SHEET,
  parts: [
    { name: 'base', family: 'open-box', length: 160, width: 120, height: 30 },
    {
      name: 'cover',
      family: 'cover',
      length: { of: 'base.length' },
      width: { of: 'base.width' },
      height: 60,
      overlap: { of: 'base.height' },
      clearance: 0.4,
      corner: 'open',
    },
  ],
  joints: [
    { name: 'west', from: 'cover.west', to: 'base.west-out', ...SCREW },
    { name: 'east', from: 'cover.east', to: 'base.east-out', ...SCREW },
  ],
};

const fitted = (job: object, measured: RefitAsk['measured']) =>
  refit(job, { measured, made: [] }, undefined, { hardware });
const partOf = ({ parts }: JobPlan, name: string) => parts.find((p) => p.name === name) as PartPlan;

/** Distances of a panel's marks from the middle of its flat edge, least first. */
function fromMiddle(plan: PartPlan, panel: string): readonly number[] {
  const { outline, marks } = plan.part.panels.find(
    (p) => p.id === panel,
  ) as PartPlan['part']['panels'][number];
  const along = outline.map((e) => e.from[0]);
  const middle = (Math.min(...along) + Math.max(...along)) / 2;
  return marks.map((m) => m.at[0] - middle).toSorted((a, b) => a - b);
}

/** How far two holes of a fastener miss each other as they are cut, along the first face: parts stand where the plan has them. */
function missOf({ parts, assembly }: JobPlan): number {
  const holeOf = ({ piece, panel, at }: FastenerEnd) => {
    const { part, pose } = (assembly?.placed ?? []).find((p) => p.piece === piece) as Placed;
    const named = <P extends { readonly id: string }>(panels: readonly P[]) =>
      panels.find((p) => p.id === panel) as P;
    const cut = parts.find((p) => p.name === part.name)?.part.panels ?? [];
    const [was, is] = [named(cut), named(part.part.panels)].map(({ outline }) =>
      middleOf(outline.map((e) => e.from)),
    );
    const stands = compose3(pose, named(part.formed.panels).pose);
    const [x, y] = ([0, 1] as const).map((k) => at[k] - (was as Point)[k] + (is as Point)[k]) as [
      number,
      number,
    ];
    return { at: place3(stands, [x, y, 0]), normal: stands.z };
  };
  const misses = assembly?.fasteners.map(({ on }) => {
    const [a, b] = on.map(holeOf) as [ReturnType<typeof holeOf>, ReturnType<typeof holeOf>];
    const off = sub3(a.at, b.at);
    return length3(sub3(off, scale3(a.normal, dot3(off, a.normal))));
  });
  return Math.max(...(misses ?? [Number.NaN]));
}

function middleOf(points: readonly Point[]): Point {
  const middle = (k: 0 | 1) =>
    (Math.min(...points.map((p) => p[k])) + Math.max(...points.map((p) => p[k]))) / 2;
  return [middle(0), middle(1)];
}

describe('a base that came out 1 mm narrow, its cover still to be cut', () => {
  const found = fitted(COVER, { 'base.outsideWidth': 119 });

  test('the finished base keeps its pattern', () => {
    const [was, is] = [found.before, found.after].map((p) => partOf(p, 'base').flat);
    expect(is).toEqual(was);
  });

  test('holes of both walls are as far from the middle as those cut in the base, to both sides', () => {
    for (const panel of ['west', 'east']) {
      const cut = fromMiddle(partOf(found.before, 'base'), panel);
      expect(cut[0]).toBeCloseTo(-(cut[1] as number), 9);
      const cover = fromMiddle(partOf(found.after, 'cover'), panel);
      expect(cover).toHaveLength(2);
      expect(cover).toEqual(cut.map((at) => expect.closeTo(at, 9)));
    }
  });

  test('how far they may lie from there is told, half of what is missing', () => {
    const told = found.after.findings.filter((f) => f.code === 'fastener-doubt');
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ severity: 'note', value: expect.closeTo(0.5, 9), limit: 0.1 });
    expect(spoken(told[0])?.message).toContain('and they may lie 0.5 mm from there');
  });

  test('as found the marks lie about the middle too', () => {
    const { part, stands } = partOf(found.after, 'base');
    const marks = (p: typeof part) => p.panels.find((q) => q.id === 'west')?.marks.map((m) => m.at[0]) ?? [];
    expect(marks(stands.part)).toEqual(marks(part).map((x) => expect.closeTo(x - 0.5, 9)));
  });

  test('within 0.2 mm nothing is said of it', () => {
    const near = fitted(COVER, { 'base.outsideWidth': 119.85 });
    expect(near.after.findings.map((f) => f.code)).not.toContain('fastener-doubt');
  });
});

test('holes of bought parts stay where they were cut, told from either end', () => {
  const hardware = [
    {
      name: 'nut',
      type: 'rivet-nut',
      on: 'base.underside',
      at: [{ west: 15 }, { east: 15 }],
      hole: 9,
      length: 14,
    },
  ];
  const found = fitted({ ...COVER, hardware }, { 'base.outsideLength': 158 });
  const [was, is] = [found.before, found.after].map((p) => partOf(p, 'base').flat.marks);
  expect(was?.filter((m) => m.kind === 'rivet-nut')).toHaveLength(2);
  expect(is).toEqual(was?.map((m) => ({ ...m, at: m.at.map((v) => expect.closeTo(v, 9)) })));
  const stood = (p: JobPlan) => p.assembly?.bought.map((b) => b.pose.origin[0]) ?? [];
  expect(stood(found.before)).toEqual([15, 145].map((x) => expect.closeTo(x, 9)));
  expect(stood(found.after)).toEqual([14, 144].map((x) => expect.closeTo(x, 9)));
});

describe('ends that follow a body, both made before either was measured', () => {
  const rivets = Object.fromEntries(['west', 'east', 'grip-west', 'grip-east'].map((name) => [name, RIVET]));
  const job = carrier({ joints: rivets });
  const measured = { 'body.insideWidth': 157, 'end.width': 155.1 };

  test('the handle is riveted where it was to be: in the middle, told to a refit or by the job', () => {
    const plans = [fitted(job, measured).after, planJob(jobReader(FAMILIES, {})({ ...job, measured }))];
    for (const plan of plans) {
      const was = partOf(fitted(job, {}).before, 'handle').flat.marks;
      const is = partOf(plan, 'handle').flat.marks;
      expect(is.map((m) => m.at)).toEqual(was.map((m) => m.at.map((v) => expect.closeTo(v, 9))));
    }
  });
});

describe('a hinge between a half box that came out 0.7 mm low and its other half', () => {
  const half = { family: 'hinged-box', hem: { type: 'closed', length: 12 }, corner: 'open' };
  const holes = { diameter: 4.2, count: 3, edge: 12 };
  const hinged = {
    ...SHEET,
    parts: [
      { name: 'body', length: 300, width: 200, height: 60, ...half },
      { name: 'lid', length: { of: 'body.length' }, width: { of: 'body.width' }, height: 60, ...half },
    ],
    joints: [{ name: 'shut', from: 'body.rim', to: 'lid.rim', by: 'none' }],
    hardware: [
      {
        name: 'hinge',
        type: 'hinge',
        on: 'body.north-out',
        and: 'lid.north-out',
        length: 90,
        leaf: 34,
        knuckle: 7,
        thickness: 1.2,
        holes,
      },
    ],
  };
  const found = fitted(hinged, { 'body.height': 59.3 });

  test('the finished half keeps its holes, also in the plan with the measure in the job', () => {
    const was = partOf(found.before, 'body').flat;
    expect(was.marks.length).toBeGreaterThanOrEqual(holes.count);
    expect(partOf(found.after, 'body').flat).toEqual(was);
    const read = jobReader(FAMILIES, { hardware })({ ...hinged, measured: { 'body.height': 59.3 } });
    expect(partOf(planJob(read), 'body').flat).toEqual(was);
  });

  test('how far they may lie from the hinge is told: it stands where the edges meet', () => {
    const told = found.after.findings.filter((f) => f.code === 'fastener-doubt');
    expect(told).toHaveLength(1);
    expect(told[0]?.value).toBeCloseTo(0.35, 9);
  });
});

describe('a divider riveted to two walls of a box that came out 1 mm short', () => {
  const box = (at: number): object => ({
    ...SHEET,
    parts: [
      { name: 'box', family: 'open-box', length: 300, width: 200, height: 60 },
      {
        name: 'divider',
        family: 'divider',
        length: { of: 'box.insideWidth', less: 0.4 },
        height: 50,
        tabs: { length: 20 },
      },
    ],
    joints: [
      { name: 'south', from: 'box.south', to: 'divider.west', at, edge: 'west', ...RIVET },
      { name: 'north', from: 'box.north', to: 'divider.east', at, edge: 'west', ...RIVET },
    ],
  });
  test.each([100, 150, 220])(
    'it stands where it was to stand, %d mm along: no joint is open, no hole off',
    (at) => {
      const found = fitted(box(at), { 'box.insideLength': 299 });
      const codes = (p: JobPlan) => p.findings.map((f) => f.code);
      expect(codes(found.after).filter((c) => c !== 'fastener-doubt')).toEqual(codes(found.before));
      expect(missOf(found.before)).toBeLessThan(1e-9);
      expect(missOf(found.after)).toBeLessThan(1e-9);
    },
  );
});
