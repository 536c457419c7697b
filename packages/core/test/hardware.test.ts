import { FAMILIES, JobError, jobReader, planJob } from '@tinwright/core';
import { hardware as tools } from '@tinwright/core/hardware';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const read = jobReader(FAMILIES, { hardware: tools }); // keeps the schemas that it builds

const half = { family: 'hinged-box', length: 300, width: 200, height: 80, corner: 'open' } as const;
const shut = { name: 'shut', from: 'body.rim', to: 'lid.rim', by: 'none' } as const;
const hinge = {
  name: 'hinge',
  type: 'hinge',
  on: 'body.north-out',
  and: 'lid.north-out',
  length: 60,
  leaf: 25,
  knuckle: 6,
  holes: { diameter: 4.2, count: 2, edge: 10 },
} as const;

function box(hardware: readonly object[], more: object = {}) {
  return {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [
      { name: 'body', ...half },
      { name: 'lid', ...half },
    ],
    joints: [shut],
    hardware,
    ...more,
  };
}

const planned = (data: object) => planJob(read(data));

function problems(data: object) {
  try {
    planned(data);
  } catch (error) {
    if (error instanceof JobError) return error.problems;
    throw error;
  }
  return [];
}

test('a hinge: its pin lies where the rims meet, each leaf has its holes in its part', () => {
  const { assembly, parts, findings } = planned(
    box([{ ...hinge, at: [{ west: 60 }, { east: 60 }], by: { 'blind-rivet': { diameter: 4 } } }]),
  );
  expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
  const pins = assembly?.bought.map((b) => b.pose.origin) ?? [];
  expect(pins.map((p) => p.map((v) => Math.round(v * 1e6) / 1e6))).toEqual([
    [60, 200, 80],
    [240, 200, 80],
  ]);
  const holes = parts.map((p) => p.formed.panels.find((f) => f.id === 'north')?.holes ?? []);
  expect(holes.map((h) => h.length)).toEqual([4, 4]);
  // row in the middle between knuckle and edge of the leaf: (3 + 25) / 2 below the rim at 80
  for (const h of holes.flat()) {
    expect(h.at[1]).toBeCloseTo(80 - 14, 6);
    expect(h.diameter).toBeCloseTo(4.15, 6);
  }
  expect(holes[0]?.map((h) => Math.round(h.at[0])).toSorted((a, b) => a - b)).toEqual([40, 80, 220, 260]);
});

test('holes are held against the wall of their own piece: a lid higher than the body takes its hinges', () => {
  const [body, lid] = [
    { name: 'body', ...half, height: 50 },
    { name: 'lid', ...half, height: 62 },
  ];
  const row = { ...hinge, at: [{ west: 60 }], by: { 'blind-rivet': { diameter: 4 } } };
  expect(problems(box([row], { parts: [body, lid] }))).toEqual([]);
  expect(problems(box([row], { parts: [body, { ...lid, height: 12 }] }))).toMatchObject([
    { code: 'hardware-off', message: expect.stringContaining('of lid') },
  ]);
});

test('what bought parts are refused for is said in the unit of the job', () => {
  const parts = ['body', 'lid'].map((name) => ({
    name,
    family: 'hinged-box',
    length: 12,
    width: 8,
    height: 4,
  }));
  const units = { units: 'in', stock: { material: 'mild-steel', gauge: 22 }, parts };
  const [long] = problems(
    box(
      [
        {
          ...hinge,
          length: 14,
          leaf: 1,
          knuckle: 0.2,
          holes: { diameter: 0.17, count: 2, edge: 0.4 },
          at: [{ west: 6 }],
        },
      ],
      units,
    ),
  );
  expect(`${long?.message} ${long?.fix}`).toMatch(/14 in long given/);
  expect(`${long?.message} ${long?.fix}`).not.toMatch(/ mm/);
});

test('a lid swings through its angle by bodies: free at 95 degrees, stopped by a handle on the back wall', () => {
  const grip = { name: 'grip', type: 'handle', on: 'body.north-out', span: 90, hole: 5, reach: 40 };
  expect(planned(box([hinge])).findings).toEqual([]);
  const { findings } = planned(box([{ ...hinge, at: { west: 50 }, opens: 180 }, grip]));
  const [found] = findings.filter((f) => f.code === 'hinge-swing');
  expect(found?.limit).toBe(180);
  // seen along the pin, 3 off the wall: the handle's outer corner is 35 below it and 50 - 3 off it, the lid's back 3 inside
  const [below, off] = [35, 47];
  const turn = Math.atan2(below, off) + Math.acos(-3 / Math.hypot(below, off));
  expect(found?.value).toBeCloseTo((turn * 180) / Math.PI, 0);
});

test.each([
  ['longer than the edge', [{ ...hinge, length: 320 }], ['hardware', 0, 'length'], 'Use 300 mm or less'],
  ['past the end', [{ ...hinge, at: [{ west: 20 }] }], ['hardware', 0, 'at', 0], 'Move it 10 mm or more'],
  ['without its second part', [{ ...hinge, and: undefined }], ['hardware', 0], 'Give and:'],
  [
    'on faces of two planes',
    [{ ...hinge, and: 'lid.east-out' }],
    ['hardware', 0, 'and'],
    'beside each other',
  ],
  [
    'that joins, both leaves on one piece',
    [{ ...hinge, and: 'body.south-out' }],
    ['hardware', 0, 'and'],
    'each of two pieces',
  ],
  [
    'that stands on one face, with a second',
    [{ name: 'g', type: 'handle', on: 'body.east-out', and: 'lid.east-out', span: 80, hole: 5 }],
    ['hardware', 0, 'and'],
    'Leave and: out',
  ],
  [
    'on a site without a face',
    [{ ...hinge, on: 'body.rim' }],
    ['hardware', 0, 'on'],
    'Known: north, north-out',
  ],
  ['on a site that is none', [{ ...hinge, on: 'body.nort-out' }], ['hardware', 0, 'on'], '"north-out"'],
  ['on a piece that is none', [{ ...hinge, on: 'bdy.north-out' }], ['hardware', 0, 'on'], '"body"'],
  [
    'from an edge that is none',
    [{ ...hinge, at: { wets: 9 } }],
    ['hardware', 0, 'at', 0, 'from', 'wets'],
    '"west"',
  ],
  ['with the name of a part', [{ ...hinge, name: 'lid' }], ['hardware', 0, 'name'], 'name of its own'],
  [
    'with rivets wider than its holes',
    [{ ...hinge, by: { 'blind-rivet': { diameter: 4.8 } } }],
    ['hardware', 0, 'by'],
    'larger holes',
  ],
  [
    'with a hole over the edge',
    [{ name: 'm', type: 'rivet-nut', on: 'body.base', at: { west: 3 }, hole: 9, length: 14 }],
    ['hardware', 0, 'at', 0],
    'Move it',
  ],
])('a bought part %s is named with what would work', (_, hardware, path, fix) => {
  const [problem] = problems(box(hardware));
  expect(problem?.path).toEqual(path);
  expect(`${problem?.message} ${problem?.fix}`).toContain(fix);
});

test('what a rivet nut, a magnet and casters take part in: holes where they stand, clashes with other parts', () => {
  const casters = {
    name: 'wheel',
    type: 'caster',
    on: 'body.underside',
    at: ['west', 'east'].flatMap((x) => ['south', 'north'].map((y) => ({ [x]: 40, [y]: 40 }))),
    length: 50,
    width: 40,
    height: 60,
    wheel: { diameter: 40, width: 15 },
    holes: { diameter: 5.2, along: 36, across: 26 },
  };
  const { assembly, parts } = planned(box([casters], { joints: [shut] }));
  expect(assembly?.bought.map((b) => b.piece)).toEqual(['wheel-1', 'wheel-2', 'wheel-3', 'wheel-4']);
  expect(parts[0]?.formed.panels[0]?.holes).toHaveLength(16);
  const lowest = Math.min(
    ...(assembly?.bought ?? []).map((b) => b.pose.origin[2] - b.part.formed.box.max[2]),
  );
  expect(Math.abs(lowest + 60)).toBeLessThan(1); // twelve corners stand for the round of the wheel
  const nut = { name: 'nut', type: 'rivet-nut', on: 'body.north-out', hole: 9, length: 14 };
  const in_ = { name: 'm', type: 'magnet', on: 'body.north', diameter: 40, height: 5 };
  const clash = planned(box([nut, in_])).findings.filter((f) => f.code === 'clash');
  expect(clash).toHaveLength(1);
  expect(planned(box([nut])).findings).toEqual([]);
});

const mm = (least: number, most: number) => fc.integer({ min: least, max: most });
const holes = fc.record({ diameter: mm(3, 6), count: mm(1, 4) });
const randomPart = fc.oneof(
  fc.record({
    type: fc.constant('handle'),
    span: mm(30, 250),
    hole: mm(3, 8),
    turn: fc.constantFrom(0, 90, 30),
  }),
  fc.record({ type: fc.constant('rivet-nut'), hole: mm(5, 14), length: mm(8, 20) }),
  fc.record({ type: fc.constant('magnet'), diameter: mm(10, 60), height: mm(2, 8), hole: mm(3, 6) }),
  fc.record({ type: fc.constant('hinge'), length: mm(20, 320), leaf: mm(10, 70), knuckle: mm(4, 9), holes }),
  fc.record({ type: fc.constant('hasp'), width: mm(20, 60), strap: mm(15, 60), staple: mm(15, 60), holes }),
);
const face = fc.constantFrom('north-out', 'south-out', 'east-out', 'base', 'north');
const place = fc.record({ west: mm(0, 320), east: mm(0, 320), near: mm(0, 90) }, { requiredKeys: [] });

test('random bought parts: every hole they want is cut in a sound pattern, or they are refused with what would work', () => {
  fc.assert(
    fc.property(randomPart, face, place, ({ type, ...sizes }, site, at) => {
      const two = type === 'hinge' || type === 'hasp';
      const row = {
        name: 'x',
        type,
        on: `body.${site}`,
        at,
        ...sizes,
        ...(two ? { and: `lid.${site}` } : {}),
      };
      try {
        const { assembly, parts, findings } = planned(box([row]));
        const cut = parts.flatMap((p) => p.flat.holes).length;
        const crowded = findings
          .filter((f) => f.code === 'hole-crowded')
          .reduce((n, f) => n + (f.value ?? 0), 0);
        expect(cut + crowded).toBe(assembly?.fasteners.length);
      } catch (error) {
        if (!(error instanceof JobError)) throw error;
        for (const { fix, path } of error.problems) {
          expect(path[0]).toBe('hardware');
          expect(fix).not.toBe('');
        }
      }
    }),
    { numRuns: Number(process.env.TINWRIGHT_RUNS ?? 20) },
  );
});

test.each([
  ['a part of its name', [{ ...hinge, name: 'lid' }], {}, 'the name "lid" is taken'],
  [
    'a part with the name of one of its pieces',
    [{ ...hinge, name: 'foot', at: [{ west: 60 }, { east: 60 }] }],
    {
      parts: [
        { name: 'body', ...half },
        { name: 'lid', ...half },
        { name: 'foot-2', ...half },
      ],
    },
    'the name "foot" is taken by "foot-2", as one of its 2 pieces would be called',
  ],
  [
    'a piece of a part with its name',
    [{ ...hinge, name: 'foot-2' }],
    {
      parts: [
        { name: 'body', ...half },
        { name: 'lid', ...half },
        { name: 'foot', ...half, quantity: 2 },
      ],
    },
    'the name "foot-2" is taken by piece 2 of 2 of "foot"',
  ],
])('bought: %s is refused', (_, hardware, more, message) => {
  expect(problems(box(hardware, more)).map((p) => p.message)).toContain(message);
});

test('holes that are not round: slots turned with their part and square ones are cut, and no rivet goes through them', () => {
  const caster = {
    name: 'caster',
    type: 'caster',
    on: 'body.underside',
    at: { west: 80, south: 70 },
    turn: 30,
    length: 60,
    width: 50,
    height: 72,
    wheel: { diameter: 50, width: 20 },
    holes: { diameter: 6.5, along: 40, across: 30, slot: 12 },
  };
  const pull = { name: 'pull', type: 'handle', on: 'body.east-out', span: 90, hole: 6.2, shape: 'square' };
  const parts = [{ name: 'body', ...half }];
  const plain = planned(box([], { parts, joints: [] })).parts[0];
  const made = planned(box([caster, pull], { parts, joints: [] })).parts[0];
  const slot = 5.5 * 6.5 + (Math.PI * 6.5 ** 2) / 4;
  expect((plain?.flat.area ?? 0) - (made?.flat.area ?? 0)).toBeCloseTo(4 * slot + 2 * 6.2 ** 2, 6);
  const [first] = made?.part.panels[0]?.cutouts ?? [];
  const [a, b] = [first?.loop[0]?.at ?? [0, 0], first?.loop[1]?.at ?? [0, 0]];
  const turned = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  expect(turned).toBeCloseTo(150, 6); // 30 degrees seen from below, from above the other way round
  const close = { ...caster, holes: { ...caster.holes, along: 8 } };
  const crowded = planned(box([close], { parts, joints: [] }));
  expect(crowded.parts[0]?.part.panels[0]?.cutouts).toHaveLength(2); // of each pair that would run into another, one
  expect(crowded.findings.map((f) => f.code)).toContain('hole-crowded');
  const riveted = box([{ ...pull, by: 'blind-rivet' }], { parts, joints: [] });
  expect(problems(riveted).map((p) => p.message)).toEqual(['a blind-rivet goes through round holes']);
});
