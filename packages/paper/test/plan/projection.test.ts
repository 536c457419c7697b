import type { PartPlan } from '@tinwright/core';
import type { Words } from '@tinwright/paper';
import { partPlan } from '@tinwright/paper';
import { expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { planned } from '../../../files/test/samples.js';

const part = planned([{ name: 'tray', family: 'open-box', length: 160, width: 100, height: 30 }])
  .parts[0] as PartPlan;

/** Captions of the three views by their words, where they stand on the sheet. */
function views(paper: string, dims: 'mm' | 'in') {
  const { pages } = partPlan('', part, { paper, dims });
  expect(pages.flatMap(pageFlaws)).toEqual([]);
  const words = pages.flatMap((p) =>
    p.blocks.flatMap((b) => b.items.filter((i): i is Words => i.kind === 'words')),
  );
  const at = (text: string) => (words.find((w) => w.text === text) as Words).at;
  return { top: at('top'), front: at('front'), side: at('left side') };
}

test.each(['A4', 'A3'])(
  'on %s views stand in first angle: top below the front, left side to its right (ISO 5456-2)',
  (paper) => {
    const { top, front, side } = views(paper, 'mm');
    expect(top[1]).toBeLessThan(front[1]);
    expect(side[0]).toBeGreaterThan(front[0]);
  },
);

test.each(['letter', 'tabloid'])(
  'on %s they stand in third angle: top above the front, left side to its left',
  (paper) => {
    const { top, front, side } = views(paper, 'in');
    expect(top[1]).toBeGreaterThan(front[1]);
    expect(side[0]).toBeLessThan(front[0]);
  },
);
