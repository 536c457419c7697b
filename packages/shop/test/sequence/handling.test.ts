// How a part is moved from one bend to the next, and that it is the edge the page names that comes to the operator then.
import { expect, test } from 'vitest';
import { handlingOf } from '../../src/sequence/answer/stroke.js';

type Lying = NonNullable<Parameters<typeof handlingOf>[0]>;
const lying = (faceUp: Lying['faceUp'], heading: number, station: Lying['station'] = 'brake'): Lying => ({
  station,
  faceUp,
  heading,
});
const before = lying('marked', 270);

test('one movement where one does it', () => {
  expect(handlingOf(null, before)).toEqual({ over: null, round: null });
  expect(handlingOf(before, lying('marked', 90))).toEqual({ over: null, round: 180 });
  expect(handlingOf(before, lying('unmarked', 270))).toEqual({ over: 'sidewise', round: null });
  expect(handlingOf(before, lying('unmarked', 90))).toEqual({ over: 'end-for-end', round: null });
  expect(handlingOf(before, lying('unmarked', 90, 'vise'))).toEqual({ over: 'end-for-end', round: null });
});

test('over and a quarter round: turned the way that brings the edge there, seen on the face that is up', () => {
  // marked face up, the edge on the right comes near when turned clockwise; face down it lies on the left
  expect(handlingOf(before, lying('marked', 0))).toEqual({ over: null, round: -90 });
  expect(handlingOf(before, lying('unmarked', 0))).toEqual({ over: 'sidewise', round: 90 });
  expect(handlingOf(before, lying('unmarked', 180))).toEqual({ over: 'sidewise', round: -90 });
});
