import { type JobPlan, planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, jobOperations, type Operation, planSequence, type Sequence } from '@tinwright/shop';
import { TOOLS, toolsOf } from '@tinwright/shop/internal';
import { describe, expect, test } from 'vitest';
import { pressShop, straight, vDie } from '../press-shop.js';

const job = (parts: readonly object[], joints: readonly object[] = []): JobPlan =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', k: 0.42 },
      parts,
      joints,
    } as unknown),
  );

const carrier = (by: unknown = 'spot-weld'): JobPlan =>
  job(
    [
      {
        name: 'body',
        family: 'hemmed-channel',
        length: 320,
        width: 160,
        height: 50,
        hem: { type: 'closed', length: 12 },
        endTabs: { length: 20 },
      },
      {
        name: 'end',
        family: 'gusset-end',
        quantity: 2,
        width: { of: 'body.seatWidth', less: 0.4 },
        shoulderHeight: 48,
        height: 140,
        crownWidth: 60,
      },
      {
        name: 'handle',
        family: 'handle',
        span: { of: 'body.insideLength', less: 2.2 },
        width: 40,
        sideDepth: 14,
        tabs: { length: 28 },
      },
    ],
    [
      { name: 'west', from: 'body.west', to: 'end-1.rim', by },
      { name: 'east', from: 'body.east', to: 'end-2.rim', by },
      { name: 'grip-west', from: 'end-1.crown', to: 'handle.west', by },
      { name: 'grip-east', from: 'end-2.crown', to: 'handle.east', by },
    ],
  );

const NONE: ReadonlyMap<string, Sequence> = new Map();
const listOf = (plan: JobPlan, sequences = NONE) => jobOperations(plan, sequences).list;
const said = (list: readonly Operation[]) =>
  list.map((o) => (o.part === null ? o.kind : `${o.kind} ${o.part}`));
const once = (list: readonly string[]) => list.filter((s, i) => s !== list[i - 1]);

test.each([
  ['brake', DEFAULT_SHOP, ['brake']],
  ['press', pressShop([straight(10)], [vDie(8, 10)]), ['press']],
  ['vise', { ...DEFAULT_SHOP, brake: null }, ['vise', 'mallet']],
] as const)('a trial strip is bent with the machine of the order, %s', (_, shop, machine) => {
  const plan = job([{ name: 'angle', family: 'bent-strip', width: 80, legs: [30, 40], angles: [90] }]);
  const [part] = plan.parts as [JobPlan['parts'][number]];
  const list = listOf(plan, new Map([['angle', planSequence(part, shop)]]));
  expect(list[0]).toMatchObject({
    kind: 'trial-bend',
    tools: ['rule', 'caliper', ...machine, 'protractor', 'square'],
  });
});

describe('the carrier', () => {
  test('is made from blanks to inspection in the order of the trade', () => {
    expect(once(said(listOf(carrier())))).toEqual([
      'trial-bend',
      'shear body',
      'deburr body',
      'mark body',
      'cut-out body',
      'bend body',
      'check body',
      'measure end',
      'shear end',
      'deburr end',
      'mark end',
      'cut-out end',
      'check end',
      'trial-joint',
      'place',
      'fasten-first',
      'fasten-rest',
      'measure handle',
      'shear handle',
      'deburr handle',
      'mark handle',
      'cut-out handle',
      'bend handle',
      'check handle',
      'place',
      'fasten-first',
      'fasten-rest',
      'finish',
      'inspect',
    ]);
  });

  test('ends are cut to what is measured between the sides, by the name refit knows it by', () => {
    const plan = carrier();
    const measure = listOf(plan).find((o) => o.kind === 'measure' && o.part === 'end');
    // 160 over the sides, a sheet of 1 each
    expect(measure).toMatchObject({
      size: 'body.insideWidth',
      own: 'end.width',
      between: null,
      planned: 158,
    });
  });

  test('the handle waits for the distance between the ends', () => {
    const measure = listOf(carrier()).find((o) => o.kind === 'measure' && o.part === 'handle');
    expect(measure).toMatchObject({ size: null, own: 'handle.span', between: ['end-1', 'end-2'] });
    // 320 between the outside faces of the tabs, tabs and ends of 1 each
    expect((measure as { planned: number }).planned).toBeCloseTo(316, 6);
  });

  test('bends follow the order found for the shop, else the usual one, and it is said which', () => {
    const plan = carrier();
    const sequences = new Map(plan.parts.map((p) => [p.name, planSequence(p, DEFAULT_SHOP)]));
    const found = jobOperations(plan, sequences);
    expect(found.orders).toEqual({ body: 'found', handle: 'found' });
    const steps = found.list.flatMap((o) =>
      o.kind === 'bend' && o.part === 'body' ? [o.bend.bends.join()] : [],
    );
    expect(steps).toEqual(sequences.get('body')?.steps.map((s) => s.bends.join()));
    expect(jobOperations(plan, NONE).orders).toEqual({ body: 'usual', handle: 'usual' });
  });

  test('an order that was not found is no order', () => {
    const plan = carrier();
    const failed = {
      ...planSequence(plan.parts[0] as never, DEFAULT_SHOP),
      status: 'infeasible' as const,
      steps: [],
    };
    const { orders, list } = jobOperations(plan, new Map([['body', failed]]));
    expect(orders.body).toBe('usual');
    expect(list.filter((o) => o.kind === 'bend' && o.part === 'body').length).toBeGreaterThan(4);
  });

  test('the welder is tried once, before the first weld', () => {
    const list = said(listOf(carrier()));
    expect(list.filter((o) => o === 'trial-joint')).toHaveLength(1);
    expect(list.indexOf('trial-joint')).toBeLessThan(list.indexOf('fasten-first'));
  });

  test('tools are those of the operations, in the order they are laid out', () => {
    const welded = toolsOf(listOf(carrier()));
    expect(welded).toContain('spot-welder');
    expect(welded).not.toContain('rivet-gun');
    expect(welded).not.toContain('drill');
    expect(toolsOf(listOf(carrier({ 'blind-rivet': { diameter: 3.2 } })))).toContain('rivet-gun');
    expect([...welded]).toEqual(TOOLS.filter((t) => welded.includes(t)));
  });
});

describe('holes', () => {
  const rivets = listOf(carrier({ 'blind-rivet': { diameter: 3.2 } }));
  const drilling = (part: string) => rivets.find((o) => o.kind === 'drill' && o.part === part);

  test('are drilled while the sheet is flat', () => {
    const order = said(rivets);
    expect(order.indexOf('drill body')).toBeGreaterThan(order.indexOf('mark body'));
    expect(order.indexOf('drill body')).toBeLessThan(order.indexOf('bend body'));
  });

  test('all of them in the part a joint goes from, the middle one of each row in the other', () => {
    const plan = carrier({ 'blind-rivet': { diameter: 3.2 } });
    const count = plan.parts[0]?.flat.marks.length;
    expect(drilling('body')).toMatchObject({ holes: [{ count, purpose: 'blind-rivet', firstOnly: false }] });
    const end = drilling('end') as { holes: readonly { firstOnly: boolean }[] };
    expect(end.holes.map((h) => h.firstOnly).toSorted()).toEqual([false, true]); // crowns from it, rim to it
  });

  test('a hole of the part itself is drilled too, at its size', () => {
    const plan = job([
      {
        name: 'end',
        family: 'tote-end',
        width: 200,
        shoulderHeight: 100,
        height: 200,
        crownWidth: 80,
        tabs: { length: 16 },
        bar: { diameter: 26, below: 30 },
      },
    ]);
    const drill = listOf(plan).find((o) => o.kind === 'drill') as { holes: readonly { diameter: number }[] };
    expect(drill.holes).toHaveLength(1);
    expect(drill.holes[0]?.diameter).toBeCloseTo(26, 9);
  });
});

test('what only stands in place is set last, without tools to fasten', () => {
  const plan = job(
    [
      { name: 'box', family: 'open-box', length: 200, width: 120, height: 50 },
      { name: 'lid', family: 'lid', length: 200, width: 120, depth: 20 },
    ],
    [{ name: 'cover', from: 'box.rim', to: 'lid.skirt', by: 'none' }],
  );
  const list = listOf(plan);
  expect(said(list).slice(-3)).toEqual(['place', 'finish', 'inspect']);
  expect(list.at(-3)?.tools).toEqual(['gloves']);
  expect(said(list)).not.toContain('fasten-first');
});

test('a part alone has no joints, and a flat one no bends', () => {
  const plan = job([
    { name: 'end', family: 'gusset-end', width: 100, shoulderHeight: 30, height: 80, crownWidth: 40 },
  ]);
  expect(said(listOf(plan))).toEqual([
    'shear end',
    'deburr end',
    'mark end',
    'cut-out end',
    'finish',
    'inspect',
  ]);
  expect(jobOperations(plan, NONE).orders).toEqual({});
});

test('a strip as sheared is not cut out', () => {
  const plan = job([{ name: 'strip', family: 'bent-strip', width: 40, legs: [30, 60], angles: [90] }]);
  expect(said(listOf(plan))).not.toContain('cut-out strip');
});

describe('what follows a size of another part is measured before it is cut', () => {
  const { list } = jobOperations(
    planJob(
      readJob({
        units: 'mm',
        stock: { material: 'mild-steel', thickness: 0.8 },
        parts: [
          { name: 'box', family: 'open-box', length: 300, width: 200, height: 90 },
          { name: 'cross', family: 'divider', length: { of: 'box.insideWidth', less: 0.4 }, height: 70 },
          { name: 'loose', family: 'divider', length: { of: 'box.insideWidth', less: 3 }, height: 70 },
          { name: 'lid', family: 'lid', length: { of: 'box.length' }, width: { of: 'box.width' }, depth: 20 },
        ],
      } as never),
    ),
    new Map(),
  );
  const of = (part: string) => list.filter((o) => o.kind === 'measure' && o.part === part);

  test('a divider and a lid wait until the box stands', () => {
    const at = (part: string, kind: string) => list.findIndex((o) => o.part === part && o.kind === kind);
    for (const part of ['cross', 'lid']) {
      expect(at(part, 'measure')).toBeGreaterThan(at('box', 'check'));
      expect(at(part, 'measure')).toBeLessThan(at(part, 'shear'));
    }
    expect(of('cross')).toMatchObject([{ size: 'box.insideWidth', own: 'cross.length', planned: 198.4 }]);
    expect(of('lid').map((o) => (o as { size: string }).size)).toEqual(['box.length', 'box.width']);
  });

  test('where the play is less than bends may be off, the step says so', () => {
    // ISO 2768-1 class m: 0.5 mm over 120 to 400
    expect(of('cross')[0]?.reasons).toContain('play-small');
    expect(of('loose')[0]?.reasons).not.toContain('play-small');
  });
});

test('a box waits for no lid that follows its sizes: nothing is measured before the box, the lid is measured for', () => {
  const box = { name: 'box', family: 'open-box', length: 300, width: 200, height: 80 };
  const lid = {
    name: 'lid',
    family: 'lid',
    length: { of: 'box.outsideLength' },
    width: { of: 'box.outsideWidth' },
    depth: 25,
  };
  const list = said(listOf(job([box, lid], [{ name: 'top', from: 'box.rim', to: 'lid.skirt', by: 'none' }])));
  expect(list).not.toContain('measure box');
  expect(list).toContain('measure lid');
  expect(list.indexOf('measure lid')).toBeGreaterThan(list.indexOf('check box'));
  expect(list.at(-3)).toBe('place');
});
