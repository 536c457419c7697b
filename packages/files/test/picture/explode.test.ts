import type { Assembly, Vec3 } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { explode } from '../../src/picture/explode.js';
import { objectOf, plannedCarrier } from '../carrier.js';
import { planned } from '../samples.js';

const near = (v: Vec3) => v.map((c) => expect.closeTo(c, 6));

describe('a carrier taken apart by 100 mm', () => {
  const moves = explode(objectOf(plannedCarrier()), 100);

  test('every piece has a move, the channel stays', () => {
    expect([...moves.keys()].toSorted()).toEqual(['body', 'end-1', 'end-2', 'handle']);
    expect(moves.get('body')).toEqual([0, 0, 0]);
  });

  test('the ends move off the faces of their tabs, into the channel', () => {
    expect(moves.get('end-1')).toEqual(near([100, 0, 0]));
    expect(moves.get('end-2')).toEqual(near([-100, 0, 0]));
  });

  test('the handle, held from both sides, moves up', () => {
    expect(moves.get('handle')).toEqual(near([0, 0, 100]));
  });
});

/** Strips seated in each other, joined in this order. */
function strips(joints: readonly (readonly [string, string])[]): Assembly {
  const names = ['a', 'b', 'c', 'd'];
  return objectOf(
    planned(
      names.map((name) => ({ name, family: 'bent-strip', width: 40, legs: [30, 50], angles: [90] })),
      {
        joints: joints.map(([from, to], i) => ({
          name: `j${i}`,
          from: `${from}.leg-2`,
          to: `${to}.leg-2-back`,
          by: 'none',
        })),
      },
    ),
  );
}

describe('a chain', () => {
  test('each piece moves a step further than the one it hangs on, the same way', () => {
    const moves = explode(
      strips([
        ['a', 'b'],
        ['b', 'c'],
        ['c', 'd'],
      ]),
      10,
    );
    const lengths = ['a', 'b', 'c', 'd'].map((n) => Math.hypot(...(moves.get(n) as Vec3)));
    for (const [i, l] of lengths.entries()) expect(l).toBeCloseTo(10 * i, 6);
  });

  test('the order of the joints does not matter', () => {
    const [one, other] = [
      [
        ['a', 'b'],
        ['b', 'c'],
        ['c', 'd'],
      ],
      [
        ['c', 'd'],
        ['a', 'b'],
        ['b', 'c'],
      ],
    ] as const;
    expect([...explode(strips(one), 10)].toSorted()).toEqual([...explode(strips(other), 10)].toSorted());
  });

  test('twice the step, twice the moves', () => {
    const object = objectOf(plannedCarrier());
    for (const [piece, move] of explode(object, 50))
      expect(explode(object, 100).get(piece)).toEqual(near([2 * move[0], 2 * move[1], 2 * move[2]]));
  });
});
