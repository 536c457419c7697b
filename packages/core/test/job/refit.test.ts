import { type Refit, type RefitAsk, type RefitChange, refit } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { BODY, type Changes, carrier, END, HANDLE, plan as planned, problemsOf, R, T } from '../carrier.js';

const INSIDE = BODY.width - 2 * T;
const LENGTH = BODY.length - 2 * T;

const refitted = (
  measured: RefitAsk['measured'],
  made: readonly string[] = [],
  changes: Changes = {},
): Refit => refit(carrier(changes), { measured, made });

const names = ({ changed }: Refit) => changed.map((p) => p.name);
const row = ({ changes }: Refit, part: string, dimension: string): RefitChange | undefined =>
  changes.find((c) => c.part === part && c.dimension === dimension);

describe('a channel that came out 0.3 mm narrow', () => {
  const found = refitted({ 'body.insideWidth': INSIDE - 0.3 });

  test('the size that was measured is told as measured, from the computed one', () => {
    const change = row(found, 'body', 'insideWidth');
    expect(change).toMatchObject({ before: expect.closeTo(INSIDE, 9), measured: true });
    expect(change?.after).toBeCloseTo(INSIDE - 0.3, 9);
  });

  test('the ends follow: width and blank, by as much', () => {
    for (const dimension of ['width', 'blank x']) {
      const change = row(found, 'end', dimension);
      expect(change?.measured).toBe(false);
      expect(change?.before).toBeCloseTo(END.width, 9);
      expect(change?.after).toBeCloseTo(END.width - 0.3, 9);
    }
  });

  test('nothing else changes its size', () => {
    expect(new Set(found.changes.map((c) => c.part))).toEqual(new Set(['body', 'end']));
    expect(found.changes.map((c) => c.dimension)).not.toContain('height');
  });

  test('the ends are to be cut anew; the channel is not, and keeps its pattern', () => {
    expect(names(found)).toEqual(['end']);
    const [before, after] = [found.before, found.after].map((p) => p.parts[0]?.flat);
    expect(after?.outline).toEqual(before?.outline);
    expect(after?.marks).toEqual(before?.marks);
  });

  test('every weld still has its mark on both parts', () => {
    const { assembly, parts } = found.after;
    expect(assembly?.fasteners).toHaveLength(found.before.assembly?.fasteners.length ?? 0);
    const count = (name: string) => parts.find((p) => p.name === name)?.flat.marks.length;
    expect(count('body')).toBe(assembly?.fasteners.filter((f) => ['west', 'east'].includes(f.joint)).length);
  });
});

test('a channel that came out long: the handle follows, the ends do not', () => {
  const found = refitted({ 'body.insideLength': LENGTH + 0.8 });
  expect(names(found)).toEqual(['handle']);
  expect(row(found, 'handle', 'span')?.after).toBeCloseTo(HANDLE.span + 0.8, 9);
  expect(found.changes.some((c) => c.part === 'end')).toBe(false);
});

test('the size as computed: nothing changes', () => {
  const found = refitted({ 'body.insideWidth': INSIDE });
  expect(found.changes).toEqual([]);
  expect(found.changed).toEqual([]);
  expect(found.after.findings).toEqual([]);
});

test('a size measured before and again, now otherwise: the change starts from the first measure', () => {
  const job = carrier({ head: { measured: { 'body.insideWidth': INSIDE - 0.3 } } });
  const found = refit(job, { measured: { 'body.insideWidth': INSIDE - 0.5 }, made: [] });
  expect(row(found, 'body', 'insideWidth')?.before).toBeCloseTo(INSIDE - 0.3, 9);
  expect(row(found, 'end', 'width')?.after).toBeCloseTo(END.width - 0.5, 9);
});

test('a measure of another size is added to those of the job', () => {
  const job = carrier({ head: { measured: { 'body.insideWidth': INSIDE - 0.3 } } });
  const found = refit(job, { measured: { 'body.insideLength': LENGTH - 0.4 }, made: [] });
  expect(row(found, 'handle', 'span')?.after).toBeCloseTo(HANDLE.span - 0.4, 9);
  expect(found.changes.some((c) => c.part === 'end')).toBe(false); // it followed the first measure already
  expect(found.after.parts[1]?.params).toMatchObject({ width: expect.closeTo(END.width - 0.3, 9) });
});

describe('parts that are made', () => {
  test('they keep size and pattern whatever the job now says of them', () => {
    const found = refitted({ 'body.insideWidth': INSIDE - 0.3 }, ['end']);
    expect(names(found)).toEqual([]);
    const [before, after] = [found.before, found.after].map((p) => p.parts[1]);
    expect(after?.params).toEqual(before?.params);
    expect(after?.flat.outline).toEqual(before?.flat.outline);
    expect(after?.flat.marks).toEqual(before?.flat.marks);
    expect(found.changes.every((c) => c.part === 'body')).toBe(true);
  });

  test('one that is made and follows nothing changes nothing', () => {
    const [free, held] = [
      refitted({ 'body.insideWidth': INSIDE - 0.3 }),
      refitted({ 'body.insideWidth': INSIDE - 0.3 }, ['body']),
    ];
    expect(held.changes).toEqual(free.changes);
    expect(names(held)).toEqual(names(free));
  });

  test('a made handle on a channel that came out 0.8 mm short: it no longer drops in, by how much', () => {
    const found = refitted({ 'body.insideLength': LENGTH - 0.8 }, ['handle']);
    const loop = found.after.findings.find((f) => f.code === 'loop-open');
    // it was 0.2 mm shorter than there was room for
    expect(loop?.severity).toBe('error');
    expect(loop?.value).toBeCloseTo(0.6, 6);
    expect(names(found)).toEqual([]);
  });

  test('a part that is not in the job: the nearest is named', () => {
    const [found] = problemsOf(() => refitted({ 'body.insideWidth': INSIDE }, ['ends']));
    expect(found).toMatchObject({
      code: 'part-unknown',
      message: 'there is no part "ends" that could be made',
    });
    expect(found?.fix).toContain('Did you mean "end"?');
  });
});

describe('a change that can no longer be met', () => {
  test('the tabs of a made handle run off the crown: how many places are lost', () => {
    // tall ends, whose crowns follow the channel's length: 50 mm shorter, 10 mm of crown are left
    const end = {
      height: 400,
      crownWidth: { of: 'body.insideLength', less: LENGTH - END.crownWidth },
    };
    const found = refitted({ 'body.insideLength': LENGTH - 50 }, ['handle'], { end });
    const [lost, ...more] = found.after.findings.filter((f) => f.code === 'fastener-lost');
    expect(more).toEqual([]);
    expect(lost).toMatchObject({ severity: 'error', value: 2 });
    expect(spoken(lost)?.message).toContain(
      'handle is made, and 2 of its fastening places no longer land on end-1',
    );
    expect(found.before.findings.map((f) => f.code)).not.toContain('fastener-lost');
  });

  test('two made parts whose holes lie more than 0.3 mm apart', () => {
    // common practice, no source: what two holes may lie apart and still take a rivet
    const rivets = { by: { 'blind-rivet': { diameter: 3.2 } } };
    const joints = { 'grip-west': rivets, 'grip-east': rivets };
    const apart = (height: number) =>
      refitted({ 'end.height': height }, ['handle', 'body'], { joints }).after.findings.filter(
        (f) => f.code === 'fastener-apart',
      );
    // the crown came down by 1 mm with the handle on it, the holes below it by half of that
    expect(apart(END.height - 1).map((f) => f.value)).toEqual([
      expect.closeTo(0.5, 6),
      expect.closeTo(0.5, 6),
    ]);
    expect(apart(END.height - 0.5)).toEqual([]);
    const welded = refitted({ 'end.height': END.height - 1 }, ['handle', 'body']);
    expect(welded.after.findings.map((f) => f.code)).not.toContain('fastener-apart');
  });

  test('distances that are no longer kept are told', () => {
    const found = refitted({ 'body.insideWidth': INSIDE - 1 });
    const narrow = found.after.findings.filter((f) => f.code === 'overlap-narrow');
    expect(narrow.length).toBeGreaterThan(0);
    for (const { value, limit } of narrow) expect(value).toBeLessThan(limit ?? 0);
  });
});

test('a job without joints is refitted too', () => {
  const found = refit(
    { ...carrier(), joints: [] },
    { measured: { 'body.insideWidth': INSIDE - 0.3 }, made: [] },
  );
  expect(names(found)).toEqual(['end']);
  expect(found.after.assembly).toBeNull();
});

test('what is given stays as it was', () => {
  const job = carrier();
  const copy = structuredClone(job);
  refit(job, { measured: { 'body.insideWidth': INSIDE - 0.3 }, made: ['handle'] });
  expect(job).toEqual(copy);
});

test('the plan after is the plan of the job with the measure in it', () => {
  const measured = { 'body.insideWidth': INSIDE - 0.3 };
  const found = refitted(measured);
  const plan = planned(carrier({ head: { measured } }));
  expect(found.after.parts.map((p) => p.flat)).toEqual(plan.parts.map((p) => p.flat));
  expect(found.after.findings).toEqual(plan.findings);
});

test('radius and thickness of the carrier are those the sums here are made with', () => {
  const [body] = refitted({}).before.parts;
  expect([body?.sheet.thickness, body?.sheet.insideRadius]).toEqual([T, R]);
});
