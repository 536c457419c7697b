// Random carriers, put together again from their written files by a routine of its own on manifold-3d.
import {
  type CoreFinding,
  JobError,
  type JobPlan,
  jobReader,
  planJob,
  type Refit,
  refit,
  sizesOf,
} from '@tinwright/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carriers, type Job } from './kit/carriers.js';
import { dropManifold } from './kit/fold-files.js';
import {
  type Lump,
  leastDistance,
  missOf,
  type StandingObject,
  sharedThickness,
  standFiles,
} from './kit/stand-files.js';

const read = jobReader(); // keeps the schemas that it builds
const RUNS = Number(process.env.TINWRIGHT_RUNS ?? 15);
const PATIENCE = 600_000 + 15_000 * RUNS; // ms; a busy machine fails no test

/** A job planned; a carrier that cannot be made is no matter here. */
function planned(job: Job): JobPlan {
  try {
    return planJob(read(job));
  } catch (error) {
    if (error instanceof JobError) fc.pre(false);
    throw error;
  }
}

/** Depth of every clash by its two pieces, as the findings name them. */
function clashesOf({ findings }: JobPlan): ReadonlyMap<string, number> {
  const clashes = (findings as readonly CoreFinding[]).filter((f) => f.code === 'clash');
  return new Map(
    clashes.map(({ values: { between }, value }) => [between.map((s) => s.piece).join(' '), value ?? 0]),
  );
}

/** Pairs of a joint's faces, which meet on purpose; `null` is the panel that stays put. */
function seatsOf(plan: JobPlan, joint: string): (u: Lump, v: Lump) => boolean {
  const seated = plan.assembly?.seated.find((s) => s.joint.name === joint);
  const faces = [seated?.from, seated?.to].map((placed, k) => {
    const first = placed?.part.part.panels[0]?.id;
    return seated?.sites[k]?.faces.map(({ panel }) => (panel === first ? null : panel)) ?? [];
  });
  const has = (k: number, l: Lump) =>
    faces[k]?.some((f) => f === l.panel && !(l.bend && f === null)) === true;
  return (u, v) => has(0, u) && has(1, v);
}

const seen = { fasteners: 0, clashes: 0, clear: 0, fits: 0 };

/** The marks of every fastener lie over each other, the sheets against each other. */
function marksMeet({ fasteners }: StandingObject): void {
  for (const f of fasteners) {
    const { aside, gap } = missOf(f);
    expect(aside, `${f.id} aside`).toBeLessThan(0.05);
    expect(gap, `${f.id} gap`).toBeGreaterThan(-0.02);
    expect(gap, `${f.id} gap`).toBeLessThan(0.5 + 0.02);
    seen.fasteners++;
  }
}

/** A clash between two pieces is reported where they share space, and only there. */
function clashesAgree(plan: JobPlan, { pieces }: StandingObject): void {
  const clashes = clashesOf(plan);
  for (const [i, a] of pieces.entries())
    for (const b of pieces.slice(i + 1)) {
      const pair = `${a.name} ${b.name}`;
      const thickness = sharedThickness(a, b);
      const depth = clashes.get(pair) ?? 0;
      // a hundredth of a millimetre is reported; the strips a bend is folded from stick out by two thousandths
      if (depth > 0) expect(thickness, pair).toBeGreaterThan(0);
      else expect(thickness, pair).toBeLessThan(0.03);
      seen[depth > 0 ? 'clashes' : 'clear']++;
    }
}

/** The clearance of every joint is the least distance between the two pieces away from the faces that meet. */
function clearancesAgree(plan: JobPlan, { pieces }: StandingObject): void {
  for (const { joint, found } of plan.assembly?.fits ?? []) {
    const seated = plan.assembly?.seated.find((s) => s.joint.name === joint);
    const [a, b] = [seated?.from, seated?.to].map((p) => pieces.find((q) => q.name === p?.piece));
    if (a === undefined || b === undefined) throw new Error(`${joint}: a piece was not written`);
    const least = leastDistance(a, b, Math.max(found, 0) + 0.5, seatsOf(plan, joint));
    expect(Math.abs(least - Math.max(found, 0)), `${joint} ${found} ${least}`).toBeLessThan(0.02);
    seen.fits++;
  }
}

test('random carriers: marks meet in space, clashes and clearances are those of the written files', {
  timeout: PATIENCE,
}, async () => {
  let stood = 0;
  await fc.assert(
    fc.asyncProperty(carriers, async (job) => {
      const plan = planned(job);
      const object = await standFiles(plan);
      expect(object.pieces.map((p) => p.name)).toEqual(plan.assembly?.placed.map((p) => p.piece));
      marksMeet(object);
      clashesAgree(plan, object);
      clearancesAgree(plan, object);
      if (++stood % 100 === 0) dropManifold();
    }),
    { numRuns: RUNS },
  );
  // the carriers were not all of one kind
  for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(RUNS / 10);
});

/** Where the pieces and fasteners stand in the frame of the channel, to a millionth of a millimetre. */
function inChannel({ assembly }: JobPlan): readonly string[] {
  const home = assembly?.placed.find((p) => p.piece === 'body')?.pose;
  if (home === undefined) throw new Error('the channel is not placed');
  const turned = (v: readonly number[]) =>
    [home.x, home.y, home.z].map((axis) => axis.reduce((s, a, k) => s + a * (v[k] as number), 0));
  const from = (p: readonly number[]) => turned(p.map((v, k) => v - (home.origin[k] as number)));
  const text = (v: readonly number[]) => v.map((x) => (Math.round(x * 1e6) / 1e6 + 0).toString()).join(' ');
  const pieces = assembly?.placed.map(({ piece, pose }) => {
    return [piece, from(pose.origin), turned(pose.x), turned(pose.y)]
      .map((v) => (typeof v === 'string' ? v : text(v)))
      .join(', ');
  });
  const fasteners = assembly?.fasteners.map((f) => `${f.joint}, ${text(from(f.at))}`);
  return [...(pieces ?? []), ...(fasteners ?? [])].toSorted();
}

test('random carriers: the order of the parts does not change the object', { timeout: PATIENCE }, () => {
  fc.assert(
    fc.property(carriers, fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), (job, order) => {
      const plan = planned(job);
      // sizes given out, since a part may only follow those before it
      const given = (name: string) => plan.parts.find((p) => p.name === name)?.params as Job;
      const parts = (job.parts as readonly Job[]).map((p) => ({
        ...p,
        ...(p.name === 'end' ? { width: given('end').width } : {}),
        ...(p.name === 'handle' ? { span: given('handle').span } : {}),
      }));
      const other = planned({ ...job, parts: order.map((i) => parts[i]) });
      expect(inChannel(other)).toEqual(inChannel(plan));
      const codes = (p: JobPlan) => p.findings.map((f) => f.code).toSorted();
      expect(codes(other)).toEqual(codes(plan));
    }),
    { numRuns: RUNS },
  );
});

/** Sizes of a carrier that can be measured with a rule, and by how much they are off, mm. */
const measures = fc.record({
  size: fc.constantFrom('body.insideWidth', 'body.insideLength', 'body.width', 'body.length', 'end.height'),
  off: fc.integer({ min: -150, max: 150 }).map((n) => n / 100),
});

function computed({ parts }: JobPlan, name: string): number {
  const [part, size] = name.split('.');
  const found = parts.find((p) => p.name === part);
  const known = found && sizesOf(found.family, found.params, found.sheet).find((s) => s.name === size);
  if (known === undefined) throw new Error(`no ${name}`);
  return known.value;
}

/** What is told of which part. */
const told = ({ findings }: JobPlan) =>
  findings
    // places that are cut already are not laid out again, so none is left out of them
    .filter((f) => f.code !== 'fastener-left-out')
    .map((f) => `${f.code} ${f.part}`);

/** Everything of a plan that is cut, placed, fastened or told. */
const whole = ({ parts, assembly, findings }: JobPlan) => ({
  flats: parts.map((p) => p.flat),
  poses: assembly?.placed.map((p) => p.pose),
  fasteners: assembly?.fasteners,
  fits: assembly?.fits,
  findings,
});

test('random carriers: a refit with the computed size changes nothing', { timeout: PATIENCE }, () => {
  fc.assert(
    fc.property(carriers, measures, (job, { size }) => {
      const plan = planned(job);
      const { changes, changed, after } = refit(job, {
        measured: { [size]: computed(plan, size) },
        made: [],
      });
      expect(changes).toEqual([]);
      expect(changed).toEqual([]);
      expect(told(after)).toEqual(told(plan));
    }),
    { numRuns: RUNS },
  );
});

test('random carriers: a refit to the sizes of a refit changes nothing more', { timeout: PATIENCE }, () => {
  let changing = 0;
  fc.assert(
    fc.property(carriers, measures, (job, { size, off }) => {
      const measured = { [size]: computed(planned(job), size) + off };
      const once = refitted(job, measured);
      const twice = refitted({ ...job, measured }, measured);
      expect(twice.changes).toEqual([]);
      expect(twice.changed).toEqual([]);
      expect(whole(twice.after)).toEqual(whole(once.after));
      if (once.changes.length > 0) changing++;
    }),
    { numRuns: RUNS },
  );
  expect(changing).toBeGreaterThan(RUNS / 2);
});

function refitted(job: Job, measured: Readonly<Record<string, number>>): Refit {
  try {
    return refit(job, { measured, made: [] });
  } catch (error) {
    if (error instanceof JobError) fc.pre(false);
    throw error;
  }
}

test.each([0.1, 0.3, 0.5])(
  'a handle %d mm too long: the clash is as deep as what it shares with the end is thick',
  async (over) => {
    const [sample] = fc.sample(carriers, { numRuns: 1, seed: 3 }) as [Job];
    const [body, end, handle] = sample.parts as [Job, Job, Job];
    const { thickness } = sample.stock as { thickness: number };
    const parts = [
      body,
      { ...end, width: { of: 'body.seatWidth', less: 0.4 } },
      { ...handle, span: { of: 'body.insideLength', less: 2 * thickness - over } },
    ];
    const plan = planned({ ...sample, parts });
    const { pieces } = await standFiles(plan);
    const named = (name: string) => {
      const found = pieces.find((p) => p.name === name);
      if (found === undefined) throw new Error(`no ${name}`);
      return found;
    };
    expect(clashesOf(plan).get('end-2 handle')).toBeCloseTo(over, 6);
    expect(sharedThickness(named('end-2'), named('handle'))).toBeCloseTo(over, 2);
    expect(clashesOf(plan).has('end-1 handle')).toBe(false);
  },
);

test.each([
  ['plug welds', 'plug-weld', 'plug-weld'],
  [
    'more rivets at one end than at the other',
    { 'blind-rivet': { count: 10 } },
    { 'blind-rivet': { count: 11 } },
  ],
  ['rivets side by side', { 'blind-rivet': { count: 60 } }, { 'blind-rivet': { count: 60 } }],
  ['rivets larger than the tabs', { 'blind-rivet': { diameter: 6.4 } }, { 'blind-rivet': { diameter: 6.4 } }],
])('%s: the marks on both sheets meet', async (_, west, east) => {
  const [job] = fc.sample(carriers, { numRuns: 1, seed: 1 }) as [Job & { joints: object[] }];
  const joints = job.joints.map((j, i) => ({ ...j, by: i % 2 === 0 ? west : east }));
  const before = seen.fasteners;
  marksMeet(await standFiles(planned({ ...job, joints })));
  expect(seen.fasteners).toBeGreaterThan(before + 4);
});
