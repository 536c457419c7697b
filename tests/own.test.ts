// What is one's own is passed in, and nobody else gets it: material, bend rule, checks, writer, layers and their colours.
import {
  type BendInput,
  type Check,
  cite,
  FAMILIES,
  job,
  jobReader,
  MATERIALS,
  type Material,
  makePart,
  openBox,
  planJob,
  RULE_KINDS,
  readJob,
  remarkOf,
  revivePlan,
  timesThickness,
} from '@tinwright/core';
import { type FastenerAsk, type FastenerKind, fastenerKind, ruleKind } from '@tinwright/core/family';
import {
  DRAWING_WRITERS,
  type Drawing,
  jobFiles,
  partDxf,
  partSvg,
  TABLE_STYLE,
  toMakerModel,
  type Writer,
} from '@tinwright/files';
import { makingOf, packetFiles } from '@tinwright/paper';
import { DEFAULT_SHOP, planShop, type ShopCheck } from '@tinwright/shop';
import { tellFindings } from '@tinwright/words';
import { describe, expect, test } from 'vitest';

const STEEL = MATERIALS[0] as Material;
const TERNE: Material = {
  ...STEEL,
  name: 'terne-plate',
  title: 'lead-free terne plate',
  k: 0.4,
  kSource: 'measured in the garden workshop',
  leastRadius: timesThickness(0.5, 'the mill'),
};
const HALF = ruleKind({
  name: 'half-way',
  summary: 'the neutral axis half way through the sheet',
  constants: {},
  make: () => ({
    name: 'half-way',
    title: 'half way',
    source: 'of one’s own',
    compensates: true,
    terms: ({ thickness: t, insideRadius: r, angle }) => {
      const allowance = (Math.PI / 180) * angle * (r + t / 2);
      const setback = angle <= 90 ? Math.tan((angle * Math.PI) / 360) * (r + t) : r + t;
      return { allowance, setback, deduction: 2 * setback - allowance, working: [], source: 'half way' };
    },
  }),
});
const BOX = { name: 'box', family: 'open-box', length: 120, width: 80, height: 30 } as const;
const DATA = {
  units: 'mm',
  stock: { material: 'terne-plate', thickness: 0.8 },
  bending: { rule: 'half-way', insideRadius: 1 },
  parts: [BOX],
} as unknown;
const own = { materials: [TERNE], rules: [HALF] };

describe('material and bend rule', () => {
  test('a job names them where they are passed in, and nowhere else', () => {
    const [box] = planJob(jobReader(undefined, own)(DATA)).parts;
    expect(box?.material.title).toBe('lead-free terne plate');
    expect(box?.flat.bends[0]?.terms.allowance).toBeCloseTo((Math.PI / 2) * 1.4, 12);
    expect(readJob(DATA, undefined, own).parts).toHaveLength(1);
    expect(() => readJob(DATA)).toThrow(/terne-plate/);
    expect(MATERIALS).not.toContain(TERNE);
    expect(RULE_KINDS.map((k) => k.name)).not.toContain('half-way');
  });

  test('a plan with them crosses to a worker', () => {
    const plan = planJob(readJob(DATA, undefined, own));
    expect(structuredClone(plan).parts[0]?.flat).toEqual(plan.parts[0]?.flat);
  });

  test('a name that is taken is refused', () => {
    expect(() => jobReader(undefined, { materials: [STEEL] })).toThrow(RangeError);
  });
});

describe('numbers that no metal has', () => {
  test.each([
    ['density', undefined, 'density undefined given, more than 0 to 25000 kg/m³ allowed'],
    ['density', Number.NaN, 'density NaN given'],
    ['density', 0, 'density 0 given'],
    ['density', -1, 'density -1 given'],
    ['density', '7850', 'density 7850 given'],
    ['k', 1.5, 'k 1.5 given, more than 0 to 1 allowed'],
    ['yield', Infinity, 'yield Infinity given'],
    ['modulus', Number.NaN, 'modulus NaN given'],
  ])('%s %s of a material', (key, value, says) => {
    const materials = [{ ...TERNE, [key]: value } as Material];
    expect(() => jobReader(undefined, { materials })).toThrow(`material "terne-plate": ${says}`);
  });

  test.each(['allowance', 'setback', 'deduction'] as const)('%s by a bend rule', (key) => {
    for (const value of [Number.NaN, Infinity, undefined]) {
      const make = (...given: Parameters<typeof HALF.make>) => {
        const rule = HALF.make(...given);
        return { ...rule, terms: (bend: BendInput) => ({ ...rule.terms(bend), [key]: value as number }) };
      };
      const reader = jobReader(undefined, { materials: [TERNE], rules: [{ ...HALF, make }] });
      expect(() => planJob(reader(DATA))).toThrow(
        `bending: ${key} by rule "half-way": ${value} given, -100000 mm to 100000 mm allowed. Mend the code of the rule.`,
      );
    }
  });
});

/** A pin that is driven through both sheets and spread. */
const PIN_KIND: FastenerKind<FastenerAsk & { readonly diameter: number }, 'drive-pin'> = {
  name: 'drive-pin',
  facts: {
    hole: 'through',
    heat: 'none',
    rivet: 'none',
    tools: ['drill', 'hammer', 'eyes'],
    words: { one: 'drive pin', more: 'drive pins', trial: ['Drive one pin into two strips and pull.'] },
  },
  options: (k) => ({ diameter: k.instead(k.size({ min: 2, max: 6 }), '4 mm') }),
  needs: (stack, { diameter }) => ({
    edge: 2 * diameter,
    edgeSource: [cite('tried in the garden')],
    pitch: 4 * diameter,
    pitchSource: [cite('tried in the garden')],
    usualPitch: 8 * diameter,
    bend: diameter + 1,
    bendSource: [cite('tried in the garden')],
    holes: stack.map(() => diameter + 0.1),
  }),
  remarks: () => [],
};
const PIN = fastenerKind(PIN_KIND);

describe('a fastener', () => {
  const strip = { family: 'bent-strip', width: 60, legs: [40, 40], angles: [90] };
  const by = { 'drive-pin': { count: 2, diameter: 3 } };
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [
      { name: 'rail', ...strip },
      { name: 'batten', ...strip },
    ],
    joints: [{ name: 'back', from: 'rail.leg-1-back', to: 'batten.leg-1-back', by }],
  } as unknown;
  const read = () => readJob(data, FAMILIES, { fasteners: [PIN] });

  test('a job names it with its own values, and its holes are cut', () => {
    const { assembly } = planJob(read());
    expect(assembly?.fasteners.length).toBeGreaterThan(1);
    expect(assembly?.fasteners.flatMap((f) => f.on.map((e) => e.hole))).toContain(3.1);
    expect(assembly?.fasteners.every((f) => f.kind === 'drive-pin')).toBe(true);
    expect(() => readJob(data)).toThrow(/drive-pin/);
  });

  test.each([
    ['pitch', Number.NaN, 'pitch that a drive-pin needs: NaN given, 0 mm to'],
    ['edge', -1, 'edge that a drive-pin needs: -1 mm given, 0 mm to'],
    ['bend', undefined, 'bend that a drive-pin needs: undefined given'],
    ['holes', [3, 1e-6], 'hole that a drive-pin needs: 0.000001 mm given, 0.01 mm to'],
  ])('%s it cannot need: refused', (key, value, says) => {
    const { needs } = PIN;
    const odd = fastenerKind({
      ...PIN_KIND,
      needs: (...place) => ({ ...needs(...(place as [never, never, never])), [key]: value }),
    });
    expect(() => planJob(readJob(data, FAMILIES, { fasteners: [odd] }))).toThrow(says);
  });

  test('operations lay out its tools, and a packet has its words and its source', async () => {
    const plan = planJob(read());
    const { operations } = makingOf(plan, DEFAULT_SHOP);
    const first = operations.list.find((o) => o.kind === 'fasten-first');
    expect(first?.tools).toEqual(['drill', 'hammer', 'eyes', 'square']);
    const paper = { paper: 'A4', dims: 'mm' } as const;
    const { files } = await packetFiles(plan, makingOf(plan, DEFAULT_SHOP), paper, ['html']);
    const text = String(files[0]?.content);
    for (const words of [
      'Try one drive pin',
      'The other drive pins',
      'tried in the garden',
      'Drill the missing',
    ])
      expect(text.replaceAll(/<[^>]*>|\s+/g, ' ').replaceAll(/ +/g, ' ')).toContain(words);
  });

  test('a plan with it crosses, and needs its code again where it is told', () => {
    const crossed = structuredClone(planJob(read()));
    expect(() => planShop(crossed, DEFAULT_SHOP)).toThrow(/fastener "drive-pin" came as data/);
    expect(revivePlan(crossed, { fasteners: [PIN] }).assembly?.fasteners.length).toBeGreaterThan(1);
  });
});

const plan = job({ units: 'mm', stock: { material: 'mild-steel', thickness: 1 } })
  .part('box', openBox, { length: 120, width: 80, height: 30 })
  .plan();

const small: Check = ({ flat }) => {
  const message = `small: ${flat.blank.max[0].toFixed(0)} mm`;
  const words = { message, source: 'the garden', fix: 'Make it larger' };
  return [{ ...remarkOf('garden-small', 'warning', { values: {}, source: [cite('the garden')] }), words }];
};

describe('checks', () => {
  test('one of one’s own adds its findings, in its own words', () => {
    const found = planJob(plan.job, { checks: [small] }).findings;
    expect(tellFindings(found, 'mm', 'en').map((f) => f.message)).toContainEqual(
      expect.stringMatching(/^small: \d+ mm$/),
    );
    expect(planJob(plan.job).findings.map((f) => f.code)).not.toContain('garden-small');
  });

  test('one of a shop sees the part as the shop makes it', () => {
    const check: ShopCheck = {
      code: 'garden-shop',
      remarks: (_, shop) => [
        { ...remarkOf('garden-shop', 'note', { values: { shop: shop.name }, source: [cite('the garden')] }) },
      ],
      changes: () => [],
    };
    const [strip] = [
      makePart(openBox, { length: 60, width: 40, height: 15 }, { material: 'mild-steel', thickness: 1 }),
    ];
    const one = { ...plan, parts: [strip as NonNullable<typeof strip>] };
    const { findings } = planShop(one, DEFAULT_SHOP, { checks: [check] });
    expect(findings.map((f) => f.code)).toContain('garden-shop');
  });
});

describe('layers, colours and writers', () => {
  const drawing: Drawing = {
    title: 'engraved',
    layers: [{ name: 'ENGRAVE', shapes: [{ kind: 'line', from: [0, 0], to: [10, 5] }] }],
    box: { min: [0, 0], max: [10, 5] },
    paints: { ENGRAVE: { colour: '#123456', number: 33, width: 0.5 } },
  };

  test.each(DRAWING_WRITERS.map((w) => [w.format, w] as const))(
    'a layer of one’s own is written as %s',
    (_, { write }) => {
      const text = String(write(drawing));
      expect(text).toContain('ENGRAVE');
      expect(text).toMatch(/#123456|\n *62\r\n *33\r\n/);
      expect(String(write({ ...drawing, paints: {} }))).toContain('ENGRAVE');
    },
  );

  test('a makerjs model has it too', () => {
    expect(Object.keys(toMakerModel(drawing).models ?? {})).toEqual(['ENGRAVE']);
  });

  test.each([
    [{ layers: [{ ...drawing.layers[0], name: 'no/slash' }] }, /no\/slash/],
    [{ paints: { ENGRAVE: { colour: 'red' } } }, /"red" given/],
    [{ paints: { ENGRAVE: { number: 300 } } }, /300 given, 1 to 255/],
    [{ paints: { ENGRAVE: { width: 0 } } }, /width 0 given/],
  ])('a name or colour that cannot be is refused: %j', (change, words) => {
    for (const { write } of DRAWING_WRITERS)
      expect(() => write({ ...drawing, ...change } as Drawing)).toThrow(words);
  });

  test('colours of cut files are passed in with the style of the table', () => {
    const [box] = plan.parts;
    const style = { ...TABLE_STYLE, paints: { CUT: { colour: '#ff0000', number: 1 } } };
    expect(partSvg(box as NonNullable<typeof box>, style)).toContain('stroke="#ff0000"');
    expect(partDxf(box as NonNullable<typeof box>, style)).toMatch(
      /\n *2\r\nCUT\r\n *70\r\n *0\r\n *62\r\n *1\r\n/,
    );
    expect(partSvg(box as NonNullable<typeof box>)).not.toContain('#ff0000');
  });

  const count: Writer<Drawing> = {
    format: 'count',
    words: 'a count',
    extension: 'txt',
    mediaType: 'text/plain',
    write: ({ layers }) => layers.map((l) => `${l.name} ${l.shapes.length}\n`).join(''),
  };

  test('a writer of one’s own writes every part beside the others, and the manifest knows it', () => {
    const files = jobFiles(plan, { dxf: 'r2000', writers: [count] });
    expect(files.find((f) => f.path === 'parts/box.txt')?.content).toMatch(/^CUT \d+$/m);
    expect(String(files.at(-1)?.content)).toContain('parts/box.txt');
    expect(() => jobFiles(plan, { dxf: 'r2000', writers: [{ ...count, extension: 'dxf' }] })).toThrow(
      RangeError,
    );
  });
});
