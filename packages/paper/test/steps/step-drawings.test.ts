import type { Page, Words } from '@tinwright/paper';
import { pagesPdf, stepDrawings, stepFiles } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import type { BendStep } from '@tinwright/shop';
import { LANGUAGES } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { CASES, type Case } from './cases.js';

/** mm, of the table at the right of a page and its margin. */
const TABLE = 83;
const wordsOf = (page: Page): readonly Words[] =>
  page.blocks.flatMap((b) => b.items.filter((i): i is Words => i.kind === 'words'));
const textsOf = (page: Page) => wordsOf(page).map((w) => w.text);
const said = (page: Page) => textsOf(page).join(' ');
const caseOf = (name: string): Case => CASES.find((c) => c.name === name) as Case;
const pagesOf = ({ part, sequence, shop }: Case) => stepDrawings(part, sequence, shop);

/** Which way the marked face looks; work by hand round a wire turns as it goes. */
function faceOf({ machine, action, faceUp }: BendStep): string {
  if (action === 'roll') return '';
  const [up, down] = machine === 'vise' ? ['away from you', 'towards you'] : ['up', 'down'];
  return `marked face ${faceUp === 'marked' ? up : down}`;
}

describe.each(CASES)('$name', (one) => {
  const pages = pagesOf(one);
  const { steps } = one.sequence;

  test('a page for every operation', () => {
    expect(one.sequence.status).toBe('optimal');
    expect(pages).toHaveLength(steps.length);
    expect(pages.length).toBeGreaterThan(0);
  });

  test('no text on another, on a line or off the paper', () => {
    for (const page of pages) expect([page.title, ...pageFlaws(page)]).toEqual([page.title]);
  });

  test('every page says what is bent, what is held, which face is up, what to set, and a caution', () => {
    steps.forEach((step, i) => {
      const page = pages[i] as Page;
      const texts = said(page);
      for (const id of [...step.bends, ...step.gripped]) expect(texts).toContain(id);
      expect(texts).toContain(`step ${i + 1} of ${steps.length}`);
      expect(texts).toMatch(/, at (its edge|their edges) to /);
      expect(texts).toContain(faceOf(step));
      expect(texts).toContain('Caution: ');
      if (step.machine === 'brake' && step.action !== 'close') {
        expect(texts).toContain(`set-back ${Math.round(10 * (step.setBack ?? 0)) / 10} mm`);
        expect(texts).toContain(`stop at ${step.setAngle}°`);
        expect(texts).toContain('sight line');
      }
      if (step.press !== null)
        for (const text of [
          step.press.punch,
          `V ${step.press.opening} mm`,
          `${Number(step.press.force.toFixed(1))} kN`,
          'back gauge',
        ])
          expect(texts).toContain(text);
      expect(texts.includes('hook its rear wall')).toBe(step.putIn === 'tilted');
    });
  });

  test('the held panel is named with what holds it, in both cross-sections and where it lies', () => {
    steps.forEach((step, i) => {
      const labels = textsOf(pages[i] as Page).filter((t) => `${t} `.startsWith(`${step.held}: `));
      // stages of a rolled edge show that alone
      expect([step.bends, labels.length]).toEqual([step.bends, step.action === 'roll' ? 1 : 3]);
    });
  });

  test.each(['en', 'de'] as const)('every tool that is drawn is named, or numbered (%s)', (language) => {
    const { part, sequence, shop } = one;
    const names = Object.values(LANGUAGES[language].steps.tools);
    stepDrawings(part, sequence, shop, { language }).forEach((page, i) => {
      const { action, tools } = steps[i] as BendStep;
      if (action === 'roll') return; // stages of it show no tools
      const grey = page.blocks.flatMap((b) => b.items.filter((t) => t.kind === 'fill' && t.tone === 'grey'));
      const row = (tools ?? []).flatMap((g) => g.pieces);
      const told = textsOf(page).filter((t) => names.includes(t) || /^[1-9]$/.test(t));
      expect(told.length, page.title).toBeGreaterThanOrEqual(grey.length - row.length);
    });
  });

  test('what turns is drawn in bold, the rest is not', () => {
    for (const page of pages) {
      const pens = page.blocks.flatMap((b) => b.items.flatMap((i) => (i.kind === 'stroke' ? [i.pen] : [])));
      expect(pens).toContain('bold');
      expect(pens).toContain('wide');
    }
  });

  test('the same part gives the same pages', () => {
    expect(pagesOf(one)).toEqual(pages);
  });
});

test('fingers stand from the left as the operator sees it: a tab already up at his left keeps them off it', () => {
  const one = caseOf('tote end');
  const { steps } = one.sequence;
  // south near him and the marked face up, west is at his left
  const i = steps.findIndex((s) => s.bends.includes('tab-south'));
  const up = steps.slice(0, i).flatMap((s) => s.bends);
  expect(steps[i]?.faceUp).toBe('marked');
  expect(up).toEqual(['tab-west']);
  const texts = said(pagesOf(one)[i] as Page);
  // the stretch is bounded there, so that is the end it is told from
  expect(texts).toMatch(/from the left, (beginning|[\d.]+ mm of the bend left free)/);
});

test('where each finger stands along the bend is drawn, its numbers those of its edges', () => {
  const one = caseOf('tote end');
  const pages = pagesOf(one);
  let drawn = 0;
  one.sequence.steps.forEach(({ tools, length }, i) => {
    const page = pages[i] as Page;
    const caption = wordsOf(page).find((w) => w.text.startsWith('Fingers from the front'));
    expect(caption === undefined, page.title).toBe(tools === null);
    if (tools === null || caption === undefined) return;
    drawn += 1;
    const fromRight = caption.text.includes('from the right end');
    const [{ pieces, from, gap }] = tools as [(typeof tools)[number]];
    const edges = [0, length, from];
    let at = from;
    for (const wide of pieces) {
      at += wide;
      edges.push(at, at + gap);
    }
    const told = edges.slice(0, -1).map((x) => (fromRight ? length - x : x).toFixed(3));
    const under = wordsOf(page).filter(
      (w) => w.value !== undefined && w.at[1] < caption.at[1] && w.at[0] < page.width - TABLE,
    );
    const numbers = under.map((w) => (w.value as number).toFixed(3));
    // widths stand in the fingers, edges under them
    expect(new Set(numbers)).toEqual(new Set([...told, ...pieces.map((p) => p.toFixed(3))]));
  });
  expect(drawn).toBeGreaterThan(0);
});

test('sizes in inches where asked, short ones to a finer step: 2 mm are 5/64 in', () => {
  const { part, sequence, shop } = caseOf('tote end');
  const [page] = stepDrawings(part, sequence, shop, { dims: '1/16' });
  expect(said(page as Page)).toContain('set-back 5/64 in');
});

test('at the gauge is what lies against it: a line set by eye, or gauged at a panel behind, has its own on the die', () => {
  const { part, sequence, shop } = caseOf('step on a press');
  const [first] = sequence.steps as [BendStep];
  const byEye = { ...first, touches: null, press: first.press && { ...first.press, gauge: null } };
  const behind = { ...first, touches: first.touches && { ...first.touches, panel: 'leg-behind' } };
  const shown = (step: BendStep) =>
    textsOf(stepDrawings(part, { ...sequence, steps: [step] }, shop)[0] as Page)
      .filter((t) => t.startsWith(`${step.held}: `))
      .map((t) => t.replace(/.*: /, ''));
  expect(new Set(shown(first))).toEqual(new Set(['at the gauge']));
  expect(new Set(shown(byEye))).toEqual(new Set(['on the die']));
  expect(new Set(shown(behind))).toEqual(new Set(['on the die']));
});

test('files are numbered by operation', () => {
  const { part, sequence, shop } = caseOf('carrier body');
  const files = stepFiles(part, sequence, shop);
  expect(files.map((f) => f.path)).toEqual(
    sequence.steps.map((_, i) => `steps/body-${String(i + 1).padStart(2, '0')}.svg`),
  );
  for (const { content } of files) expect(content).toContain('<svg ');
});

test('a part that cannot be bent has no pictures', () => {
  const { part, sequence, shop } = caseOf('tote end');
  expect(stepDrawings(part, { ...sequence, status: 'infeasible', steps: [] }, shop)).toEqual([]);
});

test('pages become a PDF with tones and black text after them', async () => {
  const pages = pagesOf(caseOf('tote end'));
  const bytes = await pagesPdf(pages, { title: 'steps', language: 'en', face: typeface() });
  expect(Buffer.from(bytes).toString('latin1').slice(0, 5)).toBe('%PDF-');
});

describe('a press in words', () => {
  const one = caseOf('step on a press');
  const renamed = (die: string) => ({
    ...one,
    sequence: {
      ...one.sequence,
      steps: one.sequence.steps.map((s) => ({ ...s, press: s.press === null ? null : { ...s.press, die } })),
    },
  });

  test('a die named after its opening is told once, another with both', () => {
    const { opening } = one.sequence.steps[0]?.press ?? { opening: Number.NaN };
    for (const name of [`V${opening}`, `V ${opening}`]) {
      const texts = textsOf(pagesOf(renamed(name))[0] as Page);
      expect(texts).toContain(`V ${opening} mm`);
      expect(texts).not.toContain(name);
    }
    expect(said(pagesOf(renamed('long die'))[0] as Page)).toContain(`long die, V ${opening} mm`);
  });

  test('the angle is measured with the load off', () => {
    for (const page of pagesOf(one)) expect(said(page)).toContain('with the load off');
  });
});

test('a wired edge is drawn in three stages, none smaller than it is', () => {
  const one = caseOf('wired pan');
  const rolled = pagesOf(one).filter((_, i) => one.sequence.steps[i]?.action === 'roll');
  expect(rolled).toHaveLength(4);
  for (const page of rolled)
    for (const stage of [/1 Turn the edge up, \d+:1$/, /2 Lay the wire in, \d+:1$/, /3 Close it, \d+:1$/])
      expect(textsOf(page)).toContainEqual(expect.stringMatching(stage));
});
