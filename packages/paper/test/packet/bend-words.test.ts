import { makingOf } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { type BendStep, DEFAULT_SHOP, type Shop } from '@tinwright/shop';
import { LANGUAGES, type Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { planned } from '../../../files/test/samples.js';
import { bendFacts } from '../../src/packet/bend-facts.js';
import type { PacketKit } from '../../src/packet/kit.js';
import { dimsOf } from '../../src/plan/dims.js';
import { PRESS } from '../steps/cases.js';

const plan = planned([
  { name: 'lid', family: 'bent-strip', width: 80, legs: [40, 30, 40], angles: [90, -69] },
]);
const [part] = plan.parts as [(typeof plan.parts)[number]];

/** What operations say of bending the part in a shop. */
function said(shop: Shop, change: Partial<BendStep> = {}, language: Language = 'en', dims: DimsName = 'mm') {
  const { packet: words, plans, steps } = LANGUAGES[language];
  const kit: PacketKit = {
    plan,
    sets: 1,
    dims: dimsOf(dims),
    language,
    words,
    plans,
    steps,
    setting: { face: typeface(), height: 2.5 },
  };
  const found = makingOf(plan, shop).operations.list.flatMap((o) =>
    o.kind === 'bend' && o.bend.step !== null ? [o.bend] : [],
  );
  expect(found.length).toBeGreaterThan(0);
  return found
    .map((work) => ({ ...work, step: { ...(work.step as BendStep), ...change } }))
    .map((work) => words.operations.bend(bendFacts(part, work, false, kit), kit.dims.unit).lines.join(' '));
}

describe('on a press', () => {
  test('the sheet is pushed against the back gauge and held by hand, nothing is held under it', () => {
    for (const text of said(PRESS)) {
      expect(text).toMatch(/Push \S+ against the back gauge, .*Hold the sheet by hand/);
      expect(text).not.toContain('under the');
    }
    for (const text of said(PRESS, {}, 'de')) expect(text).toContain('an den Anschlag schieben');
  });

  test('without an edge for the gauge the line goes under the punch', () => {
    const [step] = makingOf(plan, PRESS).sequences.get('lid')?.steps ?? [];
    const press = step?.press === undefined || step.press === null ? null : { ...step.press, gauge: null };
    for (const text of said(PRESS, { press })) {
      expect(text).toMatch(/on the die with line B\d under the punch/);
      expect(text).not.toContain('gauge');
    }
  });
});

describe('in the vise', () => {
  const vised = (language: Language) => said(PRESS, { machine: 'vise', press: null }, language);

  test('only a bend of 90° is checked with the square', () => {
    const [square, other] = vised('en');
    expect(square).toContain('check with the square');
    expect(other).toContain('check with a protractor or a template');
    expect(vised('de').map((t) => /mit (dem Winkel|Winkelmesser oder Lehre) prüfen/.exec(t)?.[1])).toEqual([
      'dem Winkel',
      'Winkelmesser oder Lehre',
    ]);
  });

  test('it says that no machine of the shop bends it, whatever machines there are', () => {
    for (const text of vised('en')) {
      expect(text).toContain('By hand in a vise: no machine of the shop bends it there.');
      expect(text).not.toContain('brake');
    }
  });
});

describe.each(['mm', 'in', '1/16'] as const)('sizes of the machine in %s', (dims) => {
  const texts = [
    ...said(DEFAULT_SHOP, { tools: [{ pieces: [50, 25], from: 3, gap: 2, bare: [0, 0] }] }, 'en', dims),
    ...said(PRESS, {}, 'en', dims),
  ].join(' ');
  const unit = dims === 'mm' ? 'mm' : 'in';

  test.each(['Edge of the nose', 'rear stop', 'set back', 'Fingers', 'back gauge'])(
    '%s has its unit',
    (what) => {
      const sizes = [...texts.matchAll(new RegExp(`${what} \\d[\\d./]*(?: \\d+/\\d+)?( \\w+)?`, 'g'))];
      expect(sizes.length).toBeGreaterThan(0);
      for (const [all, after] of sizes) expect(after, all).toBe(` ${unit}`);
    },
  );
});
