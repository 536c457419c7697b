// Plans that were spoiled have to fail in the replay: it shares nothing with the planner, so what it lets pass counts.

import { type BendStep, DEFAULT_SHOP, planSequence, verifySequence } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { planned, shopWith } from './shops.js';

const box = planned({ family: 'open-box', length: 200, width: 120, height: 50 });
const shop = shopWith();
const good = planSequence(box, shop).steps;
const hemmed = planned({
  family: 'hemmed-channel',
  length: 300,
  width: 150,
  height: 45,
  hem: { type: 'closed', length: 12 },
  endTabs: { length: 15 },
});
const carrier = planSequence(hemmed, DEFAULT_SHOP).steps;

const flaw = (steps: readonly BendStep[], part = box, where = shop) =>
  verifySequence(part.flat, steps, where).map((f) => `${f.step}: ${f.message}`)[0] ?? '';
const changed = (steps: readonly BendStep[], at: number, change: Partial<BendStep>) =>
  steps.map((s, i) => (i === at ? { ...s, ...change } : s));

test('the plans themselves pass', () => {
  expect(flaw(good)).toBe('');
  expect(flaw(carrier, hemmed, DEFAULT_SHOP)).toBe('');
});

describe('order', () => {
  test('a bend left out', () => {
    expect(flaw(good.slice(0, -1))).toMatch(/never bent/);
  });

  test('a bend done twice', () => {
    expect(flaw([...good, good[0] as BendStep])).toMatch(/is done already/);
  });

  test('a bend there is none of', () => {
    expect(flaw(changed(good, 0, { bends: ['lid'] }))).toMatch(/no bend lid/);
  });

  test('a hem closed before it is folded', () => {
    const at = carrier.findIndex((s) => s.action === 'close');
    const swapped = [
      ...carrier.slice(0, at - 1),
      carrier[at] as BendStep,
      carrier[at - 1] as BendStep,
      ...carrier.slice(at + 1),
    ];
    expect(flaw(swapped, hemmed, DEFAULT_SHOP)).toMatch(/is flat already/);
  });

  test('sides before tabs: the tabs stand where the leaf has to turn, or the sides where the fingers do', () => {
    const is = (name: string) => (s: BendStep) => s.bends.includes(name);
    const sides = carrier.filter((s) => is('north')(s) || is('south')(s));
    const rest = carrier.filter((s) => !sides.includes(s));
    const tabs = rest.filter((s) => s.action === 'bend');
    const before = rest.filter((s) => s.action !== 'bend');
    // tabs of one stroke do not lie in one line any more once the sides are up
    expect(flaw([...before, ...sides, ...tabs], hemmed, DEFAULT_SHOP)).not.toBe('');
  });
});

describe('tools', () => {
  const last = good.length - 1;

  test('fingers the rack does not have', () => {
    const tools = [{ pieces: [60], from: 30, gap: 0, bare: [30, 30] as const }];
    expect(flaw(changed(good, last, { tools }))).not.toBe('');
  });

  test('fingers under a wall that is up', () => {
    expect(flaw(changed(good, last, { tools: null }))).toMatch(/runs .* into the finger/);
  });

  test('too much of the line left bare', () => {
    const [group] = good[last]?.tools ?? [];
    const pieces = group?.pieces.slice(1) ?? [];
    expect(
      flaw(changed(good, last, { tools: [{ ...(group as NonNullable<typeof group>), pieces }] })),
    ).not.toBe('');
  });

  test('fingers moved along the line into the wall beside it', () => {
    const [group] = good[last]?.tools ?? [];
    const moved = { ...(group as NonNullable<typeof group>), from: (group?.from ?? 0) + 15 };
    expect(flaw(changed(good, last, { tools: [moved] }))).not.toBe('');
  });
});

describe('machine', () => {
  test('walls that run into the beam of a lower brake', () => {
    const low = shopWith({ clearHeight: 45 });
    expect(flaw(good, box, low)).toMatch(/into the beam/);
  });

  test('a brake that is not there', () => {
    expect(flaw(good, box, { ...shop, brake: null })).toBe('1: there is no brake in the shop');
  });

  test('the other side of the line held: what swings is in the way', () => {
    const at = good.length - 1;
    const turned = changed(good, at, { held: good[at]?.bends[0] ?? '', heldSide: 'child' });
    expect(flaw(turned)).not.toBe('');
  });
});
