import { JobError } from '@tinwright/core';
import { makingOf, packetPages, SECTIONS } from '@tinwright/paper';
import { DEFAULT_SHOP, type Sequence, type Shop } from '@tinwright/shop';
import { LANGUAGES, materialName } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { plannedCarrier } from '../../../files/test/carrier.js';
import { planned } from '../../../files/test/samples.js';
import { dimsIn, dimsOf } from '../../src/page/dims.js';
import { A4, assumed, CARRIER, pagesOf, saidOn, sectionOf, wordsOf } from './packet.js';

const carrier = CARRIER;
const pages = pagesOf(carrier);

test('every section in its order, templates last; a short cut list shares the sheet of the cover', () => {
  const of = (list: typeof pages) =>
    list.map((p) => p.anchors?.filter((a) => a.level === 0).map((a) => a.name) ?? []);
  const others = SECTIONS.filter((s) => s !== 'cuts');
  expect(of(pages).flat()).toEqual(['cover', 'cuts', ...others]);
  expect(of(pages)).toContainEqual(['cover', 'cuts']);
});

test('what a carrier needs in the shop, without templates, are 13 sheets: letters of 2.5 mm, none on another', () => {
  const sections = SECTIONS.filter((s) => s !== 'templates');
  const sheets = pagesOf(carrier, { sections });
  expect(sheets.length).toBeLessThanOrEqual(13);
  expect(Math.min(...wordsOf(sheets).map((w) => w.height))).toBeGreaterThanOrEqual(2.5);
  expect(sheets.flatMap(pageFlaws)).toEqual([]);
});

test('the list of contents leads to every section and tells the page it starts on', () => {
  const links = wordsOf(sectionOf(pages, 'cover')).filter((w) => w.link !== undefined);
  const anchors = pages.flatMap((p, i) => p.anchors?.map((a) => [a.name, i + 1] as const) ?? []).slice(1);
  for (const [name, page] of anchors) {
    const own = links.filter((w) => w.link === name).map((w) => w.text.trim());
    expect(own, name).toHaveLength(2);
    expect(own[1], name).toBe(String(page));
  }
  expect(new Set(links.map((w) => w.link)).size).toBe(anchors.length);
});

test('every page has its number', () => {
  pages.forEach((page, i) => {
    expect(wordsOf([page]).map((w) => w.text)).toContain(`page ${i + 1} of ${pages.length}`);
  });
});

test('every picture says in words what it shows', () => {
  const alts = pages.flatMap((p) => p.blocks.flatMap((b) => b.alt ?? []));
  expect(alts).toContain(
    'The carrier put together, seen from above at a corner; its pieces: body, end-1, end-2, handle',
  );
  expect(alts).toContain('The carrier taken apart along its joints; crosses mark fasteners');
  expect(alts.filter((a) => a.startsWith('Flat pattern of'))).toHaveLength(3);
});

test('a plan and a template of every part', () => {
  const entries = pages.flatMap((p) => p.anchors?.filter((a) => a.level === 1).map((a) => a.title) ?? []);
  const of = (what: string) => ['body', 'end', 'handle'].map((p) => `${what} of ${p}`);
  expect(entries).toEqual([...of('Plan'), ...of('Template')]);
});

test('the parts list has letters of the picture, quantities, blanks and the mass of all', () => {
  const cover = saidOn(sectionOf(pages, 'cover'));
  expect(cover).toContain('B C end end with a gusset crown 2');
  const mass = carrier.parts.reduce((sum, p) => sum + p.mass * p.quantity, 0);
  expect(cover).toContain(`Altogether ${Number(mass.toFixed(3))} kg`);
});

test('sets multiply pieces and mass, not the sheets of plans', () => {
  const three = pagesOf(carrier, { sets: 3 });
  expect(saidOn(sectionOf(three, 'cover'))).toContain('B C end end with a gusset crown 6');
  expect(saidOn(sectionOf(three, 'cover'))).toContain('For 3 sets');
  expect(saidOn(sectionOf(three, 'operations'))).toContain('end: shear 6 blanks');
  expect(sectionOf(three, 'plans')).toHaveLength(sectionOf(pages, 'plans').length);
});

test('cautions and the sections asked for, in the order of the packet', () => {
  const some = pagesOf(carrier, { sections: ['inspection', 'cuts'] });
  const names = some.flatMap((p) => p.anchors?.map((a) => a.name) ?? []);
  expect(names).toEqual(['cover', 'cuts', 'cautions', 'inspection']);
});

describe('a shop', () => {
  const given = packetPages(carrier, makingOf(carrier, { ...DEFAULT_SHOP, name: 'garden shed' }), A4);

  test('that was not given is said to be assumed, and only then', () => {
    expect(saidOn(sectionOf(pages, 'operations'))).toContain('No shop was given. The machines are assumed');
    const said = saidOn(sectionOf(given, 'operations'));
    expect(said).toContain('For the machines of garden shed.');
    expect(said).not.toContain('assumed');
  });

  test('that was given puts sight lines and angles to set on the plans', () => {
    expect(saidOn(sectionOf(given, 'plans'))).toContain('sight line of B1');
    expect(saidOn(sectionOf(given, 'plans'))).toContain('set to');
    expect(saidOn(sectionOf(pages, 'plans'))).not.toContain('sight line');
  });

  test('the terms of a leaf brake are told where one bends', () => {
    const plan = planned([{ name: 'angle', family: 'bent-strip', width: 80, legs: [30, 40], angles: [90] }]);
    const told = (shop: Shop) =>
      saidOn(packetPages(plan, makingOf(plan, shop), { ...A4, sections: ['operations'] })).includes(
        'Set-back: how far',
      );
    expect(told(DEFAULT_SHOP)).toBe(true);
    expect(told({ ...DEFAULT_SHOP, brake: null })).toBe(false);
  });

  test('sight lines on the plan are those of the bend order', () => {
    const making = makingOf(carrier, DEFAULT_SHOP);
    const [body] = carrier.parts;
    const steps = making.sequences.get('body')?.steps ?? [];
    const north = steps.find((s) => s.bends.join() === 'north');
    const at = north?.sight?.[0]?.[0]?.[1] ?? 0;
    const row = wordsOf(sectionOf(packetPages(carrier, { ...making, assumed: false }, A4), 'plans')).filter(
      (w) => w.value !== undefined && Math.abs(w.value - at) < 1e-6,
    );
    expect(body?.flat.bends.some((b) => b.id === 'north')).toBe(true);
    expect(row.length).toBeGreaterThan(0);
  });
});

test('no page prints a load rating, and the question what it carries is refused with the reason', () => {
  const said = saidOn(pages);
  expect(said).toContain('How much does it carry? That is not answered here.');
  expect(said).not.toMatch(/\b\d+(\.\d+)? ?(kN|N|lbf|kg load)\b/);
});

test('a job without joints has no joints plan, and one that is asked for is refused', () => {
  const plan = planned([{ name: 'tray', family: 'open-box', length: 200, width: 120, height: 40 }]);
  const names = pagesOf(plan).flatMap((p) => p.anchors?.map((a) => a.name) ?? []);
  expect(names).not.toContain('joints');
  const asked = () => pagesOf(plan, { sections: ['joints'] });
  expect(asked).toThrow(JobError);
  expect(asked).toThrow(/no joints/);
});

test('a part without bends has neither bends nor a trial strip', () => {
  const plan = planned([
    { name: 'end', family: 'gusset-end', width: 100, shoulderHeight: 30, height: 80, crownWidth: 40 },
  ]);
  const said = saidOn(sectionOf(pagesOf(plan), 'operations'));
  expect(said).not.toContain('Bend a trial strip');
  expect(said).not.toContain('Bend order');
});

test('where no order of bends is found the trade’s usual one is given, and why is said', () => {
  const plan = planned([{ name: 'body', family: 'open-box', length: 240, width: 160, height: 120 }]);
  const said = saidOn(sectionOf(pagesOf(plan), 'operations'));
  expect(said).toContain('no order of bends was found for body');
  expect(said).toMatch(/It would go with |Nothing that was tried would help/);
  expect(said).toMatch(/runs into the beam over the fingers/);
  expect(said).toContain('body: bend B');
});

test('the same job gives the same pages', () => {
  expect(pagesOf(plannedCarrier())).toEqual(pages);
});

test('every kind of step has one picture beside what is to do; the same on another line or part refers to it', () => {
  const own = sectionOf(pages, 'operations');
  const said = saidOn(own);
  const alts = own.flatMap((p) => p.blocks.flatMap((b) => b.alt ?? [])).join();
  const pictured = (name: string) => {
    const { steps } = assumed(carrier).sequences.get(name) as Sequence;
    return steps.flatMap((_, i) => (alts.includes(`${name}, step ${i + 1} of ${steps.length}: `) ? [i] : []));
  };
  // the other hem, folded and closed, and the tabs at the other end
  expect(pictured('body')).toEqual([0, 1, 4, 6, 7]);
  // its hems are folded and closed as those of the body
  expect(pictured('handle')).toEqual([4, 5, 6]);
  expect(said).toMatch(/hem-north [\d.]+° up\. Clamp .* 4 times: so is operation \d+, \d+, \d+\./);
  expect(said).toMatch(/hem-south [\d.]+° up\. As operation \d+\. Towards you: near edge/);
});

test('a sheet names what stands on it, and the text of a step never parts from its picture', () => {
  for (const page of sectionOf(pages, 'operations')) {
    const first = page.blocks.find((b) => b.items.some((i) => i.kind === 'words'));
    expect(first?.alt?.includes(', step ') ?? false).toBe(false);
  }
  expect(saidOn(pages)).toContain('Parts and contents, Cut list');
});

test('what is done to every part alike is told once', () => {
  const said = saidOn(sectionOf(pages, 'operations'));
  expect(said.match(/Take the burr off/g)).toHaveLength(1);
  expect(said).toMatch(/end: deburr\. As operation \d+\./);
});

test('large print: no text is under 3.5 mm, pictures of steps and templates included', () => {
  const large = pagesOf(carrier, { lettering: 3.5, paper: 'A3' });
  expect(wordsOf(large).filter((w) => w.height < 3.5)).toEqual([]);
});

describe('the cover speaks of what is in the packet only', () => {
  const cover = (options: Parameters<typeof pagesOf>[1]) =>
    saidOn(sectionOf(pagesOf(carrier, options), 'cover'));

  test.each([
    ['cuts', [], ['operations', 'plan', 'template']],
    ['plans', ['A plan is for marking out'], ['operations one by one', 'template']],
    ['operations', ['operations one by one'], ['A plan is', 'which plan', 'template']],
    ['templates', ['A template is a pattern'], ['operations', 'plan']],
  ] as const)('only %s', (section, says, not) => {
    const said = cover({ sections: [section] });
    expect(said).toContain('Read the cautions first.');
    for (const text of says) expect(said).toContain(text);
    for (const text of not) expect(said).not.toMatch(new RegExp(`\\b${text}`));
  });

  test('worksheets', () => {
    const said = cover({ worksheet: true, sets: 3 });
    expect(said).toContain('A worksheet is a plan with sizes left out');
    expect(said).not.toMatch(/operations one by one|cut list|template/);
  });

  test('for a class the cover adds up blanks, metal, fasteners and minutes of all sets', () => {
    const said = cover({ sets: 12 });
    const pieces = carrier.parts.reduce((sum, p) => sum + p.quantity, 0);
    const welds = carrier.assembly?.fasteners.length ?? 0;
    const kg = carrier.parts.reduce(
      (sum, { flat, sheet, material, quantity }) =>
        sum + (quantity * flat.blank.max[0] * flat.blank.max[1] * sheet.thickness * material.density) / 1e9,
      0,
    );
    const seconds = [...assumed(carrier).sequences].reduce((sum, [name, s]) => {
      const { quantity = 0 } = carrier.parts.find((p) => p.name === name) ?? {};
      return sum + quantity * s.seconds;
    }, 0);
    expect(said).toContain(
      `For 12 sets together: ${12 * pieces} blanks, ${Number((12 * kg).toFixed(3))} kg of sheet`,
    );
    expect(said).toContain(`, ${12 * welds} spot welds, about ${Math.ceil((12 * seconds) / 60)} minutes`);
  });
});

describe.each(['en', 'de'] as const)('large print in fractions, %s', (language) => {
  const box = planned([
    {
      name: 'bin',
      family: 'open-box',
      quantity: 3,
      length: 400,
      width: 250,
      height: 80,
      hem: { type: 'closed', length: 10 },
    },
  ]);
  const large = pagesOf(box, { lettering: 3.5, dims: '1/16', language });

  test('no number is torn apart', () => {
    const words = wordsOf(large);
    const torn = words.filter((w, i) => {
      const next = words[i + 1];
      const below = next !== undefined && Math.abs(next.at[0] - w.at[0]) < 1e-6;
      return /\d\/$|^\/\d/.test(w.text) || (below && /(^|\s)\d+$/.test(w.text) && /^\d+\//.test(next.text));
    });
    expect(torn.map((w) => w.text)).toEqual([]);
    expect(words.filter((w) => /\d \d+\/16/.test(w.text)).length).toBeGreaterThan(15);
  });

  test('title blocks of plans tell the blank in full', () => {
    const [x = 0, y = 0] = box.parts[0]?.flat.blank.max ?? [];
    const { text, own } = dimsIn(dimsOf('1/16'), language);
    const said = saidOn(sectionOf(large, 'plans'));
    const { plans } = LANGUAGES[language];
    const stock = plans.stock(
      materialName({ name: box.parts[0]?.material.name ?? '' }, language),
      own('0.0394 in'),
      text(x),
      text(y),
      'in',
    );
    expect(said).toContain(stock);
    expect(said).not.toContain('…');
  });
});

test('the nose is told from the line that is marked: half a strip less the sight line’s offset, towards what is held', () => {
  const said = saidOn(sectionOf(pages, 'operations'));
  // K 0.42, R = T = 1: allowance 2.23, and set back by 2 the nose stands on the tangent line: 1.1 from the bend line
  expect(said).toContain('sight line: 1.1 mm from the bend line, towards base');
  // a hem folds round nothing: allowance 1.32, so 0.7
  expect(said).toMatch(/ight line: 0\.7 mm from the bend line, towards (north|south)/);
});

test('laid out at nominal sizes, the trial strip tells what the metal takes and that plans take nothing off', () => {
  const plan = planned([{ name: 'tray', family: 'open-box', length: 200, width: 120, height: 40 }], {
    bending: { rule: 'nominal' },
  });
  const said = saidOn(sectionOf(pagesOf(plan), 'operations'));
  const [, taken] = /The metal is expected to take ([\d.]+) mm; the plans take nothing off/.exec(said) ?? [];
  // two outside legs and one bend of 90° with R = T = 1 and K about 0.4: 2 (R + T) less π/2 (R + K T)
  expect(Number(taken)).toBeCloseTo(4 - (Math.PI / 2) * 1.4, 1);
  expect(said).not.toContain('The plans expect 0');
});
