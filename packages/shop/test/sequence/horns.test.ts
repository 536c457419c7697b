// End pieces of a punch cut back over their feet: flanges turned in at the ends of a bend find room there.
import { sayIn } from '@tinwright/core/internal';
import { type Horns, planSequence, readShop, verifySequence } from '@tinwright/shop';
import { mendWords, plainPrint, tellStep } from '@tinwright/words';
import { describe, expect, test, vi } from 'vitest';
import { comesOffEndFirst } from '../../src/sequence/stations/end-first.js';
import { rectangle } from '../../src/sweep/polygon.js';
import { pressTools } from '../../src/tools/press-tools.js';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 });

const HORNS: Horns = { widths: [50, 55], reach: 25, foot: 12, height: 90 };
const V6 = vDie(6, 8);
const punch = { ...straight(6), lengths: [10, 15, 20, 40, 50, 100, 150] };
const shop = (horns: Horns | null) => pressShop([{ ...punch, horns }], [V6]);
const tray = planned({ family: 'open-box', length: 200, width: 160, height: 40, flangeReturn: 8 });

describe('a tray whose returns are turned in', () => {
  const { steps } = planSequence(tray, shop(HORNS));
  const between = steps.filter((s) => s.press?.horns !== null);

  test('is bent between horns, one at either end', () => {
    const pieces = between.map((s) => s.tools?.flatMap((g) => g.pieces) ?? []);
    expect(pieces.length).toBeGreaterThan(0);
    for (const p of pieces) expect([p[0], p.at(-1)]).toEqual([50, 55]);
    expect(verifySequence(tray.flat, steps, shop(HORNS))).toEqual([]);
  });

  test('comes off one end first, and is told so', () => {
    const last = steps.at(-1) as (typeof steps)[number];
    expect([last.putIn, last.takeOff]).toEqual(['end-first', 'end-first']);
    const { settings, after } = tellStep(last, 'en', plainPrint(sayIn('mm')));
    const said = Object.fromEntries(settings.map((s) => [s.name, s.text]));
    expect(said.punch).toContain('between its horns');
    expect(said.tools).toMatch(/^50 \(horn\) \+ .* \+ 55 mm \(horn\)/);
    expect(after.join()).toContain('past the foot of its horn');
    expect(tellStep(last, 'de', plainPrint(sayIn('mm'))).after.join()).toContain('Fuß seines Horns');
  });

  test('runs into the same punch where it is not cut back', () => {
    const whole = steps.map((s) => s.press && { ...s, press: { ...s.press, horns: null } });
    const [flaw] = verifySequence(tray.flat, whole as typeof steps, shop({ ...HORNS, reach: 1 }));
    expect(flaw?.message).toMatch(/into the punch|not that many pieces/);
  });

  test('cannot be bent without, and is told that horns would do', () => {
    const { status, mends } = planSequence(tray, shop(null));
    expect(status).toBe('infeasible');
    const horns = mends.find((m) => m.parameter === 'press.punches.horns');
    expect(horns?.found).toBe(30);
    if (horns !== undefined)
      expect(mendWords(horns, sayIn('mm'))).toBe(
        'a punch with a pair of horns, their feet standing out 30 mm',
      );
  });
});

/**
 * A wall at either end of a line `inside` long, with a return of 10 that is turned in 40 above the sheet; the foot stands
 * from 3 to 193. Turned about the left foot by a, the right return is at 190 cos a + 40 sin a as it passes the right one.
 */
const lets = (reach: number, inside: number) => {
  const tools = pressTools(
    { bed: { half: 30 }, ram: { half: 30, height: 150 } },
    { punch, die: V6, horns: { ...HORNS, reach, foot: 12, height: 140 } },
    1,
    0,
  );
  const at = (from: number, to: number, low: number, high: number) => ({
    section: rectangle(-20, low, 20, high),
    y: [from, to] as const,
    flat: false,
  });
  const parts = [
    at(-1, 0, 0, 40),
    at(0, 10, 39, 40),
    at(inside, inside + 1, 0, 40),
    at(inside - 10, inside, 39, 40),
  ];
  return comesOffEndFirst(parts, tools, [3, 193]);
};

describe('one end first', () => {
  test('goes where the end that is let down passes its foot and the other leans under its horn', () => {
    expect(lets(25, 200)).toBe(true);
  });
  test('does not go where the foot is as long as the inside', () => {
    expect(lets(25, 196)).toBe(false);
  });
  test('nor where the horn reaches out less than the return leans in: 10 cos a + 40 sin a, some 18', () => {
    expect(lets(12, 200)).toBe(false);
  });
});

describe('what no horn can be', () => {
  const text = (horns: object) => ({
    units: 'mm',
    press: {
      name: 'press',
      length: 500,
      force: 200,
      punches: [{ ...punch, horns }],
      dies: [V6],
    },
  });
  test.each([
    [{ ...HORNS, widths: [20, 55] }, 'widths'],
    [{ ...HORNS, widths: [300, 300] }, 'widths'],
    [{ ...HORNS, foot: 90 }, 'height'],
  ])('%j', (horns, where) => {
    expect(() => readShop(text(horns))).toThrow(where);
  });
  test('a pair is read as it is given', () => {
    expect(readShop(text(HORNS)).press?.punches[0]?.horns).toEqual(HORNS);
  });
});
