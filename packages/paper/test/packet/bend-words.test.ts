import { makingOf } from '@tinwright/paper';
import { type BendStep, type Brake, DEFAULT_SHOP, type Shop } from '@tinwright/shop';
import { type Language, tellBend } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { planned } from '../../../files/test/samples.js';
import { bendPrint } from '../../src/bend-print.js';
import { dimsOf } from '../../src/page/dims.js';
import { PRESS } from '../steps/cases.js';

const WITH_STOP: Shop = { ...DEFAULT_SHOP, brake: { ...(DEFAULT_SHOP.brake as Brake), rearStop: 600 } };

const plan = planned([
  { name: 'lid', family: 'bent-strip', width: 80, legs: [40, 30, 40], angles: [90, -69] },
]);
const [part] = plan.parts as [(typeof plan.parts)[number]];

/** What operations say of bending the part in a shop. */
function said(shop: Shop, change: Partial<BendStep> = {}, language: Language = 'en', dims: DimsName = 'mm') {
  const found = makingOf(plan, shop).operations.list.flatMap((o) =>
    o.kind === 'bend' && o.bend.step !== null ? [o.bend] : [],
  );
  expect(found.length).toBeGreaterThan(0);
  return found
    .map((work) => ({ ...work, step: { ...(work.step as BendStep), ...change } }))
    .map((work) => tellBend(work, language, bendPrint(part, dimsOf(dims))))
    .map(({ how, settings, after }) =>
      [...how, ...settings.map(({ label, text }) => `${label} ${text}.`), ...after].join(' '),
    );
}

describe('on a press', () => {
  test('the sheet is pushed against the back gauge and held by hand, nothing is held under it', () => {
    for (const text of said(PRESS)) {
      expect(text).toMatch(/the (?:edge|outside) of \S+ against the back gauge, .*Hold the sheet by hand/);
      expect(text).not.toContain('finger');
    }
    for (const text of said(PRESS, {}, 'de'))
      expect(text).toMatch(/mit der (?:Kante|Außenseite) von \S+ am Anschlag, dann pressen/);
  });

  test('without an edge for the gauge the line goes under the punch', () => {
    const [step] = makingOf(plan, PRESS).sequences.get('lid')?.steps ?? [];
    const press = step?.press === undefined || step.press === null ? null : { ...step.press, gauge: null };
    for (const text of said(PRESS, { press })) {
      expect(text).toMatch(/on the die with the line under the punch/);
      expect(text).toContain('back gauge none');
    }
  });
});

describe('in the vise', () => {
  const vised = (language: Language) =>
    said(PRESS, { machine: 'vise', machineName: 'vise', press: null, tools: null }, language);

  test('only a bend of 90° is checked with the square', () => {
    const square = (text: string) => / 90°/.test(text);
    const told = (['en', 'de'] as const).flatMap(vised);
    expect(new Set(told.map(square)).size).toBe(2);
    for (const text of told)
      expect(text).toMatch(
        square(text)
          ? /Check with the square|Mit dem Winkel prüfen/
          : /Check with a protractor or a template|Mit Winkelmesser oder Lehre prüfen/,
      );
  });

  test('it says that no machine of the shop bends it, whatever machines there are', () => {
    for (const text of vised('en')) {
      expect(text).toContain('No machine of the shop bends it there: by hand.');
      expect(text).not.toContain('brake');
    }
  });
});

describe.each(['mm', 'in', '1/16'] as const)('sizes of the machine in %s', (dims) => {
  const texts = [
    ...said(WITH_STOP, { tools: [{ pieces: [50, 25], from: 1, gap: 2, bare: [0, 0] }] }, 'en', dims),
    ...said(PRESS, {}, 'en', dims),
  ].join(' ');
  const unit = dims === 'mm' ? 'mm' : 'in';

  test.each(['sight line', 'rear stop', 'set-back', 'beginning', 'back gauge', 'inside radius'])(
    '%s has its unit',
    (what) => {
      const sizes = [...texts.matchAll(new RegExp(`${what} \\d[\\d./]*(?: \\d+/\\d+)?( \\w+)?`, 'g'))];
      expect(sizes.length).toBeGreaterThan(0);
      for (const [all, after] of sizes) expect(after, all).toBe(` ${unit}`);
    },
  );
});

// the lid's lines are 80 mm long
test.each([
  [[50, 25], 1, 'beginning 1 mm inside the left end of the bend.', 'beginnt 1 mm innerhalb des linken Endes'],
  [[50, 25], 4, 'ending 1 mm inside the right end of the bend.', 'endet 1 mm innerhalb des rechten Endes'],
  [[50, 25], 5, 'ending at the right end of the bend.', 'endet am rechten Ende der Kantung'],
  [[50, 25], 2.5, '2.5 mm of the bend left free at either end.', 'an beiden Enden der Kantung 2.5 mm frei'],
  [[50, 50], -10, '10 mm past either end of the bend.', 'an beiden Enden 10 mm über die Kantung hinaus'],
  [[50, 30], 0, 'just as long as the bend.', 'genau so lang wie die Kantung'],
  [
    [300, 50],
    -275,
    'ending 5 mm inside the right end of the bend, standing out past the left end.',
    'endet 5 mm innerhalb des rechten Endes der Kantung, steht über das linke Ende hinaus',
  ],
  [
    [100, 50],
    -2,
    'beginning 2 mm past the left end of the bend, standing out past the right end.',
    'beginnt 2 mm außerhalb des linken Endes der Kantung, steht über das rechte Ende hinaus',
  ],
] as const)(
  'where %j from %d mm on stands is told from the end of the bend that is nearer',
  (pieces, from, ...told) => {
    const tools = [{ pieces, from, gap: 0, bare: [0, 0] as const }];
    const [english, german] = told;
    const row = `fingers ${pieces.join(' + ')} mm from the left, ${english}`;
    expect(said(DEFAULT_SHOP, { tools })[0]).toContain(row);
    expect(said(DEFAULT_SHOP, { tools }, 'de')[0]).toContain(german);
  },
);

test('a rear stop is told of a brake that has one only', () => {
  expect(said(WITH_STOP).join(' ')).toContain('rear stop');
  expect(said(DEFAULT_SHOP).join(' ')).not.toContain('rear stop');
});

describe.each([
  ['along', 'Slide the part in along the line', 'längs der Linie einschieben'],
  ['tilted', 'hook its rear wall in', 'hintere Wand unter die Segmente einhängen'],
  ['with-fingers', 'Loosen the fingers', 'Die Segmente lösen'],
] as const)('a part that comes under the jaw %s', (putIn, english, german) => {
  test('is told so, and no other way', () => {
    const ways = ['Slide the part in', 'hook its rear wall', 'Loosen the fingers'];
    for (const text of said(DEFAULT_SHOP, { putIn, takeOff: 'straight' })) {
      expect(text).toContain(english);
      expect(ways.filter((w) => text.includes(w))).toHaveLength(1);
    }
    for (const text of said(DEFAULT_SHOP, { putIn, takeOff: 'straight' }, 'de'))
      expect(text).toContain(german);
  });
});

test('a sheet that is held in front of a punch is held there only where enough of it is in front', () => {
  const [told] = makingOf(plan, PRESS).operations.list.flatMap((o) => (o.kind === 'bend' ? [o.bend] : []));
  const press = told?.step?.press;
  if (press == null) throw new Error('it is bent on a press');
  const texts = (tipsBack: boolean, language: Language) =>
    said(PRESS, { press: { ...press, tipsBack } }, language).join(' ');
  expect(texts(false, 'en')).toContain('Hold the sheet by hand in front');
  expect(texts(true, 'en')).not.toContain('by hand in front');
  expect(texts(true, 'en')).toContain('what lies behind them carried');
  expect(texts(true, 'de')).toContain('was dahinter liegt, tragen lassen');
});

test('an open hem is closed over a strip as thick as its gap, in whatever closes it', () => {
  const stroke = {
    action: 'close',
    bends: ['hem'],
    direction: 'up',
    insideRadius: 0.75,
    angle: 180,
  } as const;
  const [step] = (makingOf(plan, DEFAULT_SHOP).sequences.get('lid')?.steps ?? []) as [BendStep];
  const print = { ...bendPrint(part, dimsOf('mm')), bend: (id: string) => id };
  const told = (hem: 'open' | 'closed' | 'teardrop', machine: BendStep['machine']) =>
    tellBend({ ...stroke, hem, step: { ...step, machine, action: 'close' } }, 'en', print);
  for (const machine of ['brake', 'press', 'vise', 'hand'] as const) {
    expect(told('open', machine).action).toBe('close hem, an open hem, over a strip');
    expect(told('open', machine).how.join(' ')).toContain('a strip 1.5 mm thick');
    expect(told('closed', machine).how.join(' ')).not.toContain('strip');
    expect(told('teardrop', machine).how.join(' ')).toContain('leave the fold round');
  }
});

describe('a radius the machine does not make as drawn', () => {
  const [T, R, OPEN] = [1, 1.3, 2.5]; // mm, and the furthest that the brake opens its set-back, in thicknesses
  const strip = { name: 'strip', family: 'bent-strip', width: 150, legs: [30, 60] };
  const radiusOf = (angle: number, language: Language): readonly string[] => {
    const bent = planned([{ ...strip, angles: [angle] }], {
      stock: { material: 'mild-steel', thickness: T },
      bending: { rule: 'k-factor', insideRadius: R },
    });
    const brake: Brake = { ...(DEFAULT_SHOP.brake as Brake), setBack: [1.5, OPEN] };
    const [own] = bent.parts as [(typeof bent.parts)[number]];
    return makingOf(bent, { ...DEFAULT_SHOP, brake }).operations.list.flatMap((o) =>
      o.kind === 'bend'
        ? tellBend(o.bend, language, bendPrint(own, dimsOf('mm')))
            .settings.filter(({ name }) => name === 'radius')
            .map(({ text }) => text)
        : [],
    );
  };

  test('is told beside the one drawn: R = s / tan(A/2) - T, derived from a rigid leaf', () => {
    const made = (OPEN * T) / Math.tan(Math.PI / 3) - T; // 120 degrees; 2.3 / tan would be asked for
    expect(made).toBeCloseTo(0.443, 3);
    expect(radiusOf(120, 'en')).toEqual(['about 0.44 mm, 1.3 mm drawn']);
    expect(radiusOf(120, 'de')).toEqual(['etwa 0.44 mm, gezeichnet 1.3 mm']);
  });

  test('stands alone where the set-back makes it', () => {
    expect(radiusOf(90, 'en')).toEqual(['1.3 mm']);
  });
});
