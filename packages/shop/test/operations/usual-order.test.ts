import { usualOrder } from '@tinwright/shop/internal';
import { expect, test } from 'vitest';
import { planned } from '../shops.js';

const said = (part: object) =>
  usualOrder(planned(part)).map(({ action, bends }) => `${action} ${bends.join('+')}`);

test('hems are folded and closed first, then short walls, then long ones', () => {
  const box = {
    family: 'open-box',
    length: 200,
    width: 100,
    height: 40,
    hem: { type: 'closed', length: 10 },
  };
  const order = said(box);
  expect(order.slice(0, 8).every((o) => /^(fold|close) .*hem-/.test(o))).toBe(true);
  expect(order.filter((o) => o.startsWith('fold'))).toHaveLength(4);
  expect(order).toHaveLength(12);
  expect(order.slice(8, 10).toSorted()).toEqual(['bend east', 'bend west']);
});

test('what hangs on a wall is bent before the wall', () => {
  const order = said({ family: 'open-box', length: 200, width: 100, height: 40, flangeReturn: 12 });
  const first = (end: RegExp) => order.findIndex((o) => end.test(o));
  expect(first(/return/)).toBeLessThan(first(/bend (north|south|east|west)$/));
  expect(order.slice(0, 4).every((o) => o.includes('return'))).toBe(true);
});

test('tabs on one line are bent in one stroke', () => {
  const channel = { family: 'hemmed-channel', length: 300, width: 100, height: 40, endTabs: { length: 15 } };
  expect(said(channel)).toContain('bend tab-west+tab-north-west+tab-south-west');
});

test('a wired edge is rolled, a strip is bent one line after the other, a flat part not at all', () => {
  const pan = {
    family: 'flared-pan',
    bottom: { length: 150, width: 100 },
    depth: 40,
    flare: 10,
    edge: { type: 'wire', diameter: 3 },
  };
  expect(said(pan).filter((o) => o.startsWith('roll'))).toHaveLength(4);
  expect(said({ family: 'bent-strip', width: 40, legs: [30, 60, 30], angles: [90, -90] })).toHaveLength(2);
  expect(said({ family: 'gusset-end', width: 100, shoulderHeight: 30, height: 80, crownWidth: 40 })).toEqual(
    [],
  );
});

test('every bend once, whatever the part', () => {
  const part = planned({ family: 'open-box', length: 200, width: 100, height: 40, corner: 'tabbed' });
  const bends = usualOrder(part).flatMap((w) => w.bends);
  expect(bends.toSorted()).toEqual(part.flat.bends.map((b) => b.id).toSorted());
});
