import { bracket, makePart, readJob, refit } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { BODY, carrier, codesOf, problemsOf, T } from '../carrier.js';

describe('one mistake is one problem', () => {
  test.each([
    ['in a joint', carrier({ joints: { west: { clearance: -1 } } })],
    ['in how a joint is fastened', carrier({ joints: { west: { by: 'solder' } } })],
    ['in a measured size', carrier({ head: { measured: { 'end.height': 'high' } } })],
    ['in the name of a measured size', carrier({ head: { measured: { 'body.insideWidht': 157 } } })],
  ])('%s: nothing is told of the parts that follow', (_, job) => {
    const found = problemsOf(() => readJob(job));
    expect(found).toHaveLength(1);
    expect(['joints', 'measured']).toContain(found[0]?.path[0]);
  });
});

test('a measure that is a list: told in words of the trade', () => {
  const [found] = problemsOf(() => readJob(carrier({ head: { measured: [] } })));
  expect(found?.message).toBe('a list given, a group of keys and values allowed');
});

test('less than is there: the lengths of the job are told, not what came of them', () => {
  const [found] = problemsOf(() => readJob(carrier({ end: { width: { of: 'body.seatWidth', less: 500 } } })));
  expect(found?.message).toMatch(/^body\.seatWidth is [\d.]+ mm, less 500 mm leaves no length$/);
});

test('welds that stand too close stay so when the part they are cut in is made', () => {
  const by = { 'spot-weld': { count: 7 } };
  const job = carrier({ joints: { 'grip-west': { by }, 'grip-east': { by } } });
  const { before, after } = refit(job, { measured: { 'end.height': 140 }, made: [] });
  expect(codesOf(before)).toContain('pitch-close');
  const close = after.findings.filter((f) => f.code === 'pitch-close');
  expect(close).not.toEqual([]);
  for (const f of close) expect(spoken(f).fix).toMatch(/^its places are cut already/); // not to be spread anew
});

test('a crown narrower than the handle on it: its tabs run off, and that is told', () => {
  const found = refit(carrier(), { measured: { 'end.crownWidth': 25 }, made: [] }).after;
  expect(codesOf(found)).toContain('joint-overhang');
});

test('a part to be cut keeps its marks when another one no longer reaches it', () => {
  // the handle has a span of its own; a channel 8 mm short does not change it, so it need not be cut anew
  const span = BODY.length - 4 * T - 0.2;
  const { changed } = refit(carrier({ handle: { span } }), {
    measured: { 'body.insideLength': BODY.length - 2 * T - 8 },
    made: [],
  });
  expect(changed.map((p) => p.name)).toEqual([]);
});

test('a size that is missing is told with what it is, in a job and without one', () => {
  const stock = { material: 'mild-steel', thickness: 1 } as const;
  const part = { width: 60, base: 40, leg: 50, holes: { diameter: 5 } };
  const data = { units: 'mm', stock, parts: [{ name: 'angle', family: 'bracket', ...part }] };
  const fix =
    'Give a length such as 12.5 or "15 1/2 in": from the free end of a leg to the middle of its holes';
  for (const work of [() => readJob(data as unknown), () => makePart(bracket, part as never, stock)])
    expect(problemsOf(work)).toMatchObject([{ code: 'value-missing', message: 'missing', fix }]);
});
