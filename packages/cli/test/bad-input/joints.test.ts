import { describe, expect, test } from 'vitest';
import { carrierJob } from '../carrier.js';
import { refused } from '../place.js';

const EAST = '{ name: east, from: body.east, to: end-2.rim, by: spot-weld }';

/** The only problem of a carrier with its second joint, line 31, written otherwise. */
async function problem(east: string): Promise<string> {
  const problems = await refused(carrierJob([EAST, east]));
  expect(problems).toHaveLength(1);
  return problems[0] as string;
}

describe('a joint that names what is not there', () => {
  test.each([
    [
      'a part',
      '{ name: east, from: body.east, to: ent-2.rim, by: spot-weld }',
      '31:40: joints[1].to: there is no part "ent-2". Did you mean "end-2"? Known: body, end-1, end-2, handle.',
    ],
    [
      'a part at the first end',
      '{ name: east, from: bdoy.east, to: end-2.rim, by: spot-weld }',
      '31:25: joints[1].from: there is no part "bdoy". Did you mean "body"? Known: body, end-1, end-2, handle.',
    ],
    [
      'a site',
      '{ name: east, from: body.easst, to: end-2.rim, by: spot-weld }',
      '31:25: joints[1].from: body has no site "easst". Did you mean "east"? Known: west, east, floor, underside, base',
    ],
    [
      'a site of another family',
      '{ name: east, from: body.east, to: end-2.skirt, by: spot-weld }',
      '31:40: joints[1].to: end-2 has no site "skirt". Known: rim, crown, plate',
    ],
    [
      'one piece of two without its number',
      '{ name: east, from: body.east, to: end.rim, by: spot-weld }',
      '31:40: joints[1].to: there are 2 pieces of "end". Say which: end-1, end-2.',
    ],
  ])('%s', async (_, east, says) => {
    expect(await problem(east)).toContain(says);
  });

  test('a third piece of two', async () => {
    const says = await problem('{ name: east, from: body.east, to: end-3.rim, by: spot-weld }');
    expect(says).toMatch(/^31:40: joints\[1\]\.to: "end-3" given, there are 2 pieces of "end"\. /);
    expect(says).toContain('Raise its quantity');
  });
});

describe('a joint that cannot be', () => {
  test('of a site with itself', async () => {
    const problems = await refused(
      carrierJob([EAST, '{ name: east, from: body.east, to: body.east, by: spot-weld }']),
    );
    expect(problems[0]).toMatch(/^31:5: joints\[1\]: body\.east is joined to itself\./);
  });

  test('that claims a site another one has', async () => {
    expect(await problem('{ name: east, from: body.east, to: end-1.rim, by: spot-weld }')).toBe(
      '31:5: joints[1]: end-1.rim is taken by the joint "west". Give every joint a site of its own.',
    );
  });

  test('with the name of another one', async () => {
    expect(await problem('{ name: west, from: body.east, to: end-2.rim, by: spot-weld }')).toMatch(
      /^31:13: joints\[1\]\.name: the name "west" is taken by joint 1\./,
    );
  });
});

describe('quantities that do not match the joints', () => {
  test('one end for two joints: every joint that names a number is told', async () => {
    const problems = await refused(carrierJob(['    quantity: 2\n', '']));
    expect(problems).toHaveLength(4);
    for (const p of problems) expect(p).toContain('there is one piece of "end", called just that');
    expect(problems.map((p) => p.split(':')[0])).toEqual(['29', '30', '31', '32']); // a line less above
  });

  test('two channels for joints that name one', async () => {
    const problems = await refused(carrierJob(['length: 320', 'length: 320\n    quantity: 2']));
    expect(problems).toHaveLength(2);
    for (const p of problems) expect(p).toContain('there are 2 pieces of "body". Say which: body-1, body-2.');
  });
});

describe('how it is fastened', () => {
  test.each([
    ['a kind there is not', 'by: solder', /^31:55: joints\[1\]\.by: "solder" given, one of spot-weld, /],
    [
      'a misspelt value',
      'by: { spot-weld: { cuont: 5 } }',
      /^31:70: joints\[1\]\.by\.spot-weld\.cuont: unknown key "cuont"\. Did you mean "count"\?/,
    ],
    [
      'half a weld',
      'by: { spot-weld: { count: 2.5 } }',
      /^31:77: joints\[1\]\.by\.spot-weld\.count: 2\.5 given, a whole number allowed/,
    ],
    [
      'a rivet there is not',
      'by: { blind-rivet: { diameter: 3.6 } }',
      /^31:82: joints\[1\]\.by\.blind-rivet\.diameter: 3\.6 mm given; there are 3\/32 in, 2\.4 mm, /,
    ],
    [
      'two kinds',
      'by: { spot-weld: {}, screw: {} }',
      /^31:55: joints\[1\]\.by: 2 ways of fastening given, one allowed/,
    ],
  ])('%s', async (_, by, says) => {
    const [first] = await refused(
      carrierJob([EAST, `{ name: east, from: body.east, to: end-2.rim, ${by} }`]),
    );
    expect(first).toMatch(says);
  });
});
