import { type PartPlan, planJob, readJob, refit, sizesOf, verifyForm } from '@tinwright/core';
import { describe, expect, test } from 'vitest';

const INCH = 25.4;
const T = 0.85344; // 22 gauge galvanised
const R = 0.04 * INCH;
const K = 0.42;
/** What two legs grow by at a square bend with K = 0.42, mm: 2 (R + T) − π/2 (R + K T). */
const GROWS = 2 * (R + T) - (Math.PI / 2) * (R + K * T);

const CHANNEL = {
  units: 'in',
  stock: { material: 'galvanised-steel', gauge: 22 },
  bending: { rule: 'nominal', forms: { rule: 'k-factor', k: K }, insideRadius: 0.04 },
  parts: [
    {
      name: 'body',
      family: 'hemmed-channel',
      length: 12,
      width: 7,
      height: 2,
      hem: { type: 'closed', length: 0.75 },
      endTabs: { length: 0.75 },
    },
    {
      name: 'end',
      family: 'gusset-end',
      quantity: 2,
      width: { of: 'body.seatWidth', less: 0.025 },
      shoulderHeight: 2,
      height: 4.5,
      crownWidth: 3,
      cornerNip: 'auto',
    },
  ],
};
const planned = (job: object) => planJob(readJob(job as never));
const body = (job: object): PartPlan => planned(job).parts[0] as PartPlan;
const sizeOf = ({ family, params, sheet }: PartPlan, name: string) =>
  sizesOf(family, params, sheet).find((s) => s.name === name)?.value;

describe('a channel laid out 7 in wide without compensation', () => {
  test('its lines stand at nominal sizes, and it forms as much wider as two bends grow', () => {
    const { flat, formed } = body(CHANNEL);
    expect(flat.blank.max[1]).toBeCloseTo(12.5 * INCH, 6);
    expect(flat.bends.every((b) => b.terms.allowance === 0 && b.terms.deduction === 0)).toBe(true);
    const side = flat.bends.find((b) => b.id === 'south');
    expect(side?.line[0][1]).toBeCloseTo(2.75 * INCH, 6);
    expect(formed.size[1]).toBeCloseTo(7 * INCH + GROWS, 6);
  });

  test('its metal is as long as the pattern: the bend takes what the legs are shortened by', () => {
    const { formed, flat } = body({ ...CHANNEL, parts: [{ ...CHANNEL.parts[0], hem: { type: 'none' } }] });
    const leg = (id: string) => {
      const ys = formed.panels.find((p) => p.id === id)?.shape.map((p) => p[1]) ?? [];
      return Math.max(...ys) - Math.min(...ys);
    };
    const zones = flat.bends.filter((b) => ['north', 'south'].includes(b.id)).map((b) => b.zone);
    const sum = leg('north') + leg('base') + leg('south') + (zones[0] as number) + (zones[1] as number);
    expect(zones[0]).toBeCloseTo((Math.PI / 2) * (R + K * T), 9);
    expect(sum).toBeCloseTo(flat.blank.max[1], 6);
  });

  test('what follows it follows what will be formed', () => {
    const plan = planned(CHANNEL);
    const [channel, end] = plan.parts as [PartPlan, PartPlan];
    const inside = 7 * INCH + GROWS - 2 * T;
    expect(sizeOf(channel, 'insideWidth')).toBeCloseTo(inside, 6);
    expect(sizeOf(channel, 'width')).toBeCloseTo(7 * INCH + GROWS, 6);
    expect((end.params as { width: number }).width).toBeCloseTo(
      (sizeOf(channel, 'seatWidth') ?? 0) - 0.025 * INCH,
      6,
    );
  });

  test('the end fits the formed channel, and refit moves it by what was measured of that', () => {
    const joints = [{ name: 'west', from: 'body.west', to: 'end-1.rim', by: 'spot-weld' }];
    const job = { ...CHANNEL, joints };
    const { assembly } = planned(job);
    const formed = sizeOf(body(job), 'insideWidth') as number;
    expect(assembly?.fits[0]?.gap).toBeLessThan(0.2);
    expect(assembly?.fits[0]?.found).toBeLessThan(1);
    const { changes } = refit(job as never, {
      measured: { 'body.insideWidth': (formed - 0.5) / INCH },
      made: [],
    });
    const cut = changes.find((c) => c.part === 'end' && c.dimension === 'width');
    expect((cut?.after ?? 0) - (cut?.before ?? 0)).toBeCloseTo(-0.5, 6);
  });

  test('nothing of it passes through anything', () => {
    expect(verifyForm(body(CHANNEL).formed, [])).toEqual([]);
  });
});

test('without a word the metal forms by its own K, as the handbook gives it', () => {
  const { sheet } = body({ ...CHANNEL, bending: { rule: 'nominal', insideRadius: 0.04 } });
  const bend = { thickness: T, insideRadius: R, angle: 90 };
  // Machinery's Handbook 31st ed. p. 1421, soft steel: 0.64 T + 1.57 R
  expect(sheet.rule.forms?.(bend).allowance).toBeCloseTo(0.64 * T + (Math.PI / 2) * R, 6);
});

test.each([
  ['din-6935', undefined],
  [{ rule: 'handbook', group: 'hard' }, undefined],
  [{ rule: 'linear', perRadius: 0.5, perThickness: 1.5 }, undefined],
  ['handbook', 'bending.forms'],
  [{ rule: 'k-factor', k: 7 }, 'bending.forms.k'],
])('the metal may form by %j', (forms, refused) => {
  const job = { ...CHANNEL, bending: { ...CHANNEL.bending, forms } };
  if (refused === undefined) expect(body(job).formed.size[1]).toBeGreaterThan(7 * INCH);
  else expect(() => readJob(job as never)).toThrow();
});
