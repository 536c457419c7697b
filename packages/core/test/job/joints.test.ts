import { readJob } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { carrier, problemsOf } from '../carrier.js';

const first = (joints: readonly unknown[]) => problemsOf(() => readJob({ ...carrier(), joints }))[0];
const joint = (change: object) => ({
  name: 'west',
  from: 'body.west',
  to: 'end-1.rim',
  by: 'spot-weld',
  ...change,
});

test('a joint that says the least gets every default', () => {
  const [read] = readJob({ ...carrier(), joints: [joint({})] }).joints;
  expect(read).toMatchObject({
    name: 'west',
    from: { piece: 'body', site: 'west' },
    to: { piece: 'end-1', site: 'rim' },
    shift: { across: 0, up: 0 },
    clearance: 0.2, // common practice, no source
    path: ['joints', 0],
  });
  expect(read?.by?.kind.name).toBe('spot-weld');
  expect(read?.by?.ask).toMatchObject({ count: null, pitch: null });
});

test('lengths of a joint are read in the unit of the job', () => {
  const job = carrier({ joints: { west: { clearance: '0.5 mm', shift: { up: '-1/8 in', across: 2 } } } });
  const [read] = readJob(job).joints;
  expect(read?.clearance).toBe(0.5);
  expect(read?.shift).toEqual({ up: expect.closeTo(-25.4 / 8, 9), across: 2 });
});

describe('an end that names no site', () => {
  test.each([
    ['a part alone', 'body', '"body" given; write part.site'],
    ['a site alone', '.west', '".west" given; write part.site'],
    ['nothing', '', '"" given; write part.site'],
    ['a number', 7, '7 given, text allowed'],
    ['left out', undefined, 'missing'],
  ])('%s', (_, from, says) => {
    const found = first([joint({ from })]);
    expect(found?.path).toEqual(['joints', 0, 'from']);
    expect(found?.message).toContain(says);
  });
});

describe('what a joint cannot say', () => {
  test.each([
    ['a misspelt key', { form: 'body.west' }, 'unknown key "form"'],
    ['a negative clearance', { clearance: -0.1 }, '-0.1'],
    ['a clearance of 21 mm', { clearance: 21 }, '21 mm given, 0 mm to 20 mm allowed'],
    ['a shift that is no length', { shift: { up: 'high' } }, '"high" is not a length'],
    ['a shift with a misspelt key', { shift: { upp: 3 } }, 'unknown key "upp"'],
    ['a pitch of nothing', { by: { 'spot-weld': { pitch: 0 } } }, '0 mm given'],
    ['a name with a dot', { name: 'a.b' }, '"a.b" given; letters, digits, - and _ allowed'],
  ])('%s', (_, change, says) => {
    expect(first([joint(change)])?.message).toContain(says);
  });

  test('a misspelt key is met with the nearest one', () => {
    expect(first([joint({ clearence: 0.3 })])?.fix).toContain('Did you mean "clearance"?');
  });

  test('no fastening at all has to be said', () => {
    expect(first([joint({ by: undefined })])).toMatchObject({
      code: 'value-missing',
      path: ['joints', 0, 'by'],
    });
    expect(readJob({ ...carrier(), joints: [joint({ by: 'none' })] }).joints[0]?.by).toBeNull();
  });
});

test('two joints of one name: the second is told, with the place of the first', () => {
  const found = first([joint({}), joint({ from: 'body.east', to: 'end-2.rim' })]);
  expect(found).toMatchObject({ code: 'name-twice', path: ['joints', 1, 'name'] });
  expect(found?.message).toBe('the name "west" is taken by joint 1');
});

test('more than 500 joints are refused', () => {
  const many = Array.from({ length: 501 }, (_, i) => joint({ name: `j${i}` }));
  expect(first(many)?.message).toBe('501 in the list, 0 to 500 allowed');
});

test.each([[null], [5], ['west'], [{}]])('joints that are %j: a list is asked for', (joints) => {
  const [found] = problemsOf(() => readJob({ ...carrier(), joints }));
  expect(found?.path).toEqual(['joints']);
  expect(found?.message).toContain('a list allowed');
});
