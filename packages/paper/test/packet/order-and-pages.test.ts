import type { JobPlan } from '@tinwright/core';
import { makingOf, type Page, packetPages, stepDrawings } from '@tinwright/paper';
import { type BendStep, DEFAULT_SHOP, type Sequence, type Shop } from '@tinwright/shop';
import { type Language, stepLine } from '@tinwright/words';
import { describe, expect, test } from 'vitest';
import { planned } from '../../../files/test/samples.js';
import { bendPrint } from '../../src/bend-print.js';
import { dimsIn, dimsOf } from '../../src/page/dims.js';
import { PRESS } from '../steps/cases.js';
import { A4, saidOn, sectionOf } from './packet.js';

const BLOCK = {
  name: 'former block',
  length: 200,
  width: 40,
  height: 60,
  capacity: [{ material: 'mild-steel' as const, thickness: 1.5 }],
};
const box = { name: 'box', family: 'open-box', length: 160, width: 120, height: 40 };
const hemmed = (hem: object): JobPlan => planned([{ ...box, hems: { north: hem } }]);

const CASES: readonly (readonly [string, JobPlan, Shop])[] = [
  ['a closed hem on a brake', hemmed({ type: 'closed', length: 10 }), DEFAULT_SHOP],
  ['an open hem on a brake', hemmed({ type: 'open', length: 12, gap: 1.5 }), DEFAULT_SHOP],
  ['a closed hem by hand', hemmed({ type: 'closed', length: 10 }), { ...DEFAULT_SHOP, brake: null }],
  ['a box on a press', planned([box]), PRESS],
  [
    'a channel over a block',
    planned([{ name: 'channel', family: 'bent-strip', width: 90, legs: [40, 60, 40], angles: [90, 90] }]),
    { ...DEFAULT_SHOP, brake: null, vise: null, formerBlock: BLOCK },
  ],
  [
    'a wired pan',
    planned([
      {
        name: 'pan',
        family: 'flared-pan',
        bottom: { length: 160, width: 100 },
        depth: 40,
        flare: 15,
        edge: { type: 'wire', diameter: 3 },
      },
    ]),
    DEFAULT_SHOP,
  ],
];

/** Told in a sentence in a packet, where a part is bent. */
const IN_WORDS = { en: /^(held|in the jaws|angle): /, de: /^(gehalten|in der Zange|Winkel): / };
const AS_BEFORE = / (As operation|Wie Arbeitsgang) \d/;

/** What a packet says of every operation of bending a part, from its title on. */
function operationsOf(said: string, part: string, titles: readonly string[]): readonly string[] {
  let at = 0;
  return titles.map((title) => {
    at = said.indexOf(`${part}: ${title}.`, at);
    expect(at, title).toBeGreaterThan(0);
    return said.slice(at, said.indexOf(`${part}: `, at + part.length + 2));
  });
}

describe.each(['en', 'de'] as const)('what an order prints of a step (%s)', (language: Language) => {
  describe.each(CASES)('%s', (_, plan, shop) => {
    const making = makingOf(plan, shop);
    const [part] = plan.parts as [(typeof plan.parts)[number]];
    const sequence = making.sequences.get(part.name) as Sequence;
    const print = bendPrint(part, dimsIn(dimsOf('mm'), language), shop.units);
    const told = sequence.steps.map((step) => stepLine(step, language, print).split('; '));

    test('is on its page, label and value beside each other', () => {
      const pages = stepDrawings(part, sequence, shop, { language });
      expect(pages.length).toBeGreaterThan(0);
      told.forEach((clauses, i) => {
        const page = saidOn([pages[i] as Page]).toLowerCase();
        for (const clause of clauses) expect(page).toContain(clause.replace(': ', ' ').toLowerCase());
      });
    });

    test('is in its operation of a packet', () => {
      const said = saidOn(sectionOf(packetPages(plan, making, { ...A4, language }), 'operations'));
      const titles = told.map(([action]) => action as string);
      const own = operationsOf(said, part.name, titles).map((text, i) => ({
        text,
        step: sequence.steps[i] as BendStep,
        clauses: told[i] as string[],
      }));
      const first = own.filter(({ text }) => !AS_BEFORE.test(text));
      expect(first.length).toBeGreaterThan(0);
      for (const { text, step, clauses } of first) {
        const bent = step.action === 'bend' || step.action === 'fold';
        for (const clause of clauses.filter((c) => !(bent && IN_WORDS[language].test(c))))
          expect(text.toLowerCase()).toContain(clause.toLowerCase());
        for (const panel of bent ? step.gripped : []) expect(text).toContain(panel);
      }
    });
  });
});
