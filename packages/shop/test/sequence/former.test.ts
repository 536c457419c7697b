// A wall closed over a block on the bench, where bars find no room between the walls at its ends.
import { sayIn } from '@tinwright/core/internal';
import {
  type BendStep,
  DEFAULT_SHOP,
  type Mend,
  planSequence,
  type Shop,
  verifySequence,
} from '@tinwright/shop';
import { type Language, mendWords, plainPrint, tellStep } from '@tinwright/words';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';

const capacity = [{ material: 'mild-steel', thickness: 1.5 }];
const formerBlock = { name: 'oak block', length: 300, width: 40, height: 100, capacity };
const HANDS: Shop = { ...DEFAULT_SHOP, brake: null };
const WITH: Shop = { ...HANDS, formerBlock };
const tray = (height: number) => planned({ family: 'open-box', length: 200, width: 150, height });

function plan(part: ReturnType<typeof planned>, shop: Shop) {
  const { status, steps } = planSequence(part, shop);
  if (status !== 'infeasible') expect(verifySequence(part.flat, steps, shop)).toEqual([]);
  return { status, steps };
}

describe('a tray of 200 x 150 without a brake', () => {
  test('bars of a vise take no wall so deep, nor a base so deep between walls: it cannot be closed', () => {
    expect(plan(tray(80), HANDS).status).toBe('infeasible');
  });

  test('a block is told as what would help, and with it the tray is bent', () => {
    const { mends } = planSequence(tray(80), HANDS);
    const block = mends.find((m) => m.parameter === 'formerBlock.height');
    expect(block).toMatchObject({ of: 'machine', given: null, found: 80, bound: 'tried' });
    const own = { ...formerBlock, length: 200, height: 80 };
    expect(plan(tray(80), { ...HANDS, formerBlock: own }).status).not.toBe('infeasible');
    const said = (language: Language) => mendWords(block as Mend, sayIn('mm'), language);
    expect(said('en')).toBe('a former block 80 mm high, sawn to the bends');
    expect(said('de')).toBe('ein Formklotz von 80 mm Höhe, auf die Kantungen gesägt');
  });

  test('over a block it is: walls at whose ends others stand, no more than that', () => {
    const { steps } = plan(tray(80), WITH);
    expect(steps).toHaveLength(4);
    const over = steps.filter((s) => s.clamp === 'former');
    expect(over.map((s) => [s.machine, s.machineName, s.held])).toEqual([
      ['hand', 'oak block', 'base'],
      ['hand', 'oak block', 'base'],
    ]);
    expect(steps.slice(-2)).toEqual(over);
  });

  // the batten lies over the sheet of 1: over a block of 78 it is 79 high, over one of 80 it is 81
  test.each([
    [78, false],
    [80, true],
  ])('walls of 80, a batten over a block of %d: %s', (height, goes) => {
    const shop = { ...WITH, formerBlock: { ...formerBlock, height } };
    expect(plan(tray(80), shop).status !== 'infeasible').toBe(goes);
  });

  test.each([
    [149, false],
    [150, true],
  ])('a block of %d for a line of 150', (length, goes) => {
    const lines = tray(80).flat.bends.map(({ line: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1]));
    const shop = {
      ...WITH,
      formerBlock: { ...formerBlock, length: length - 150 + Math.ceil(Math.min(...lines)) },
    };
    expect(plan(tray(80), shop).status !== 'infeasible').toBe(goes);
  });

  test('thicker sheet than it is made for is not', () => {
    const thin = {
      ...WITH,
      formerBlock: { ...formerBlock, capacity: [{ material: 'mild-steel', thickness: 0.8 }] },
    };
    expect(plan(tray(80), thin).status).toBe('infeasible');
  });

  test('hands are told where the block stands, and how long it is', () => {
    const { steps } = plan(tray(80), WITH);
    const last = steps.at(-1) as BendStep;
    const told = (language: 'en' | 'de') => tellStep(last, language, plainPrint(sayIn('mm')));
    expect(told('en').how.join(' ')).toMatch(
      /set the former block on it inside the part, its face along the line/,
    );
    expect(told('de').how.join(' ')).toMatch(/den Formklotz innen daraufstellen, seine Stirn an der Linie/);
    expect(told('en').settings.find((s) => s.name === 'block')?.text).toMatch(
      /^\d+(\.\d+)? mm long, sawn to the bend$/,
    );
  });
});

test('where bars do, nobody saws a block', () => {
  const { steps } = plan(planned({ family: 'bent-strip', width: 80, legs: [40, 50], angles: [90] }), WITH);
  expect(steps.map((s) => s.clamp)).toEqual([null]);
});
