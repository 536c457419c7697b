import type { Page } from '@tinwright/paper';
import { pageSvg } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { expect, test } from 'vitest';
import { letter } from '../../src/page/letter.js';

const face = typeface();
const words = letter(face, 'a < b', [30, 40], { height: 2.5 });
const page: Page = {
  title: 'Plan of "tray"',
  width: 210,
  height: 297,
  blocks: [
    {
      alt: 'the pattern',
      items: [
        {
          kind: 'stroke',
          pen: 'wide',
          points: [
            [10, 20],
            [110, 20],
            [110, 95],
          ],
          closed: true,
        },
        {
          kind: 'stroke',
          pen: 'centre',
          points: [
            [10, 20],
            [110, 20],
          ],
        },
        { kind: 'ring', pen: 'faint', centre: [50, 97], radius: 3 },
        {
          kind: 'fill',
          points: [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
        },
        words,
        letter(face, '12', [60, 70], { height: 2.5, turn: 90, bold: true }),
      ],
    },
  ],
};
const svg = pageSvg(page, 'en');

test('a page is as large as its paper, with title, language and words for the picture', () => {
  expect(svg).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
  expect(svg).toContain('xml:lang="en"');
  expect(svg).toContain('<title>Plan of &quot;tray&quot;</title>');
  expect(svg).toContain('<g role="img" aria-label="the pattern">');
});

test('tones are greys, black goes without saying', () => {
  const [points] = [
    [
      [0, 0],
      [1, 0],
      [0, 1],
    ],
  ] as const;
  const toned = (tone: 'grey' | 'white') =>
    pageSvg({ ...page, blocks: [{ alt: null, items: [{ kind: 'fill', tone, points }] }] }, 'en');
  expect(toned('grey')).toContain('Z" fill="#dedede"/>');
  expect(toned('white')).toContain('Z" fill="#ffffff"/>');
  expect(svg).toContain('<path d="M0 297L1 297L0 296Z"/>');
});

test('y points down from the upper edge', () => {
  expect(svg).toContain('<path d="M10 277L110 277L110 202Z"');
  expect(svg).toContain('<circle cx="50" cy="200" r="3"');
});

test('wide lines are 0.35 mm, narrow ones 0.18 mm, dash-dotted ones have dashes, all black or grey', () => {
  expect(svg).toContain('stroke="#000" stroke-width="0.35"/>');
  expect(svg).toContain('stroke-width="0.18" stroke-dasharray="4.3 0.54 0.1 0.54"');
  expect([...svg.matchAll(/stroke="(#\w+)"/g)].map(([, c]) => c)).toEqual(['#000', '#000', '#8c8c8c']);
});

test('text is as long as it was laid out, whatever font is there', () => {
  expect(svg).toContain(`textLength="${Math.round(words.width * 1e6) / 1e6}"`);
  expect(svg).toContain('>a &lt; b</text>');
  expect(svg).toContain('rotate(-90)');
  expect(svg).toContain('font-weight="bold"');
});
