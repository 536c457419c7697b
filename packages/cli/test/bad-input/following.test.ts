import { describe, expect, test } from 'vitest';
import { carrierJob } from '../carrier.js';
import { refused } from '../place.js';

const WIDTH = 'width: { of: body.seatWidth, less: 0.4 }';

describe('the width of an end, line 19, that follows', () => {
  test.each([
    [
      'a part that is not there',
      'width: { of: bdoy.seatWidth, less: 0.4 }',
      '19:18: part "end": width.of: there is no part "bdoy". Did you mean "body"? Known: body.',
    ],
    [
      'a size the part does not have',
      'width: { of: body.seatWidht, less: 0.4 }',
      /^19:18: part "end": width\.of: body has no size "seatWidht"\. Did you mean "seatWidth"\? Known: insideLength, /,
    ],
    [
      'no size at all',
      'width: { of: body, less: 0.4 }',
      '19:18: part "end": width.of: "body" given. Write part.size, such as body.insideWidth.',
    ],
    [
      'a size of itself',
      'width: { of: end.height, less: 0.4 }',
      '19:18: part "end": width.of: end would follow itself. Follow a part that stands before it.',
    ],
    [
      'less and plus',
      'width: { of: body.seatWidth, less: 0.4, plus: 1 }',
      '19:12: part "end": width: less and plus given. Give one of the two.',
    ],
    [
      'a factor',
      'width: { of: body.seatWidth, times: 2 }',
      '19:34: part "end": width.times: unknown key "times". Known: of, less, plus.',
    ],
    [
      'less a word',
      'width: { of: body.seatWidth, less: much }',
      /^19:40: part "end": width\.less: "much" is not a length/,
    ],
  ])('%s', async (_, width, says) => {
    const problems = await refused(carrierJob([WIDTH, width]));
    expect(problems).toHaveLength(1);
    if (typeof says === 'string') expect(problems[0]).toBe(says);
    else expect(problems[0]).toMatch(says);
  });
});

describe('the order of parts', () => {
  test('a part that stands later: which to put first', async () => {
    const [first] = await refused(
      carrierJob(
        ['height: 50', 'height: { of: handle.width, plus: 10 }'],
        ['{ of: body.insideLength, less: 2.2 }', '315.8'],
      ),
    );
    expect(first).toBe(
      '13:19: part "body": height.of: body follows handle, which stands after it. Put handle first.',
    );
  });

  test('a ring is named, with the part it starts at', async () => {
    const [first] = await refused(carrierJob(['width: 160', 'width: { of: end.width, plus: 4 }']));
    expect(first).toBe(
      '12:18: part "body": width.of: sizes follow each other in a ring: body, end, body. Give one of them a length of its own.',
    );
  });
});
