import type { Problem } from '@tinwright/core';
import { readJob, sizesOf } from '@tinwright/core';
import { withValue } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { splitName } from '../../src/job/sizes.js';
import { BODY, type Changes, carrier, problemsOf, R, T } from '../carrier.js';

const INCH = 25.4;
const SEAT = BODY.width - 2 * (T + R);

/** A parameter of a part as it was read, mm. */
function read(changes: Changes, part: string, name: string): unknown {
  const found = readJob(carrier(changes)).parts.find((p) => p.name === part);
  return name
    .split('.')
    .reduce<unknown>((v, key) => (v as Readonly<Record<string, unknown>>)[key], found?.params);
}

const width = (value: unknown) => read({ end: { width: value } }, 'end', 'width');

describe('a size that follows another part', () => {
  test('as it is, by less, by more', () => {
    expect(width({ of: 'body.seatWidth' })).toBeCloseTo(SEAT, 9);
    expect(width({ of: 'body.seatWidth', less: 0.3 })).toBeCloseTo(SEAT - 0.3, 9);
    expect(width({ of: 'body.seatWidth', plus: 0.3 })).toBeCloseTo(SEAT + 0.3, 9);
  });

  test('by a length with a unit of its own', () => {
    expect(width({ of: 'body.seatWidth', less: '1/64 in' })).toBeCloseTo(SEAT - INCH / 64, 9);
    expect(width({ of: 'body.seatWidth', plus: '0.5 mm' })).toBeCloseTo(SEAT + 0.5, 9);
  });

  test('in a job in inches, less is in inches', () => {
    const head = { units: 'in', stock: { material: 'mild-steel', thickness: '1 mm' } };
    const bending = { rule: 'k-factor', k: 0.42, insideRadius: '1 mm' };
    const body = { length: 14, width: 7, height: 2, hem: { type: 'none' }, endTabs: { length: 0.75 } };
    const end = {
      width: { of: 'body.insideWidth', less: 1 / 64 },
      shoulderHeight: 1.9,
      height: 5,
      crownWidth: 2.5,
    };
    const handle = { span: 13, width: 1.5, sideDepth: 0.5, hem: { type: 'none' }, tabs: { length: 1 } };
    const found = read({ head: { ...head, bending }, body, end, handle }, 'end', 'width');
    expect(found).toBeCloseTo(7 * INCH - 2 - INCH / 64, 9);
  });

  test('a plain parameter of the other part, and a size inside a group', () => {
    expect(read({ handle: { width: { of: 'end.crownWidth', less: 16 } } }, 'handle', 'width')).toBeCloseTo(
      44,
      9,
    );
    const tabs = { length: { of: 'end.crownWidth', less: 30 } };
    expect(read({ handle: { tabs } }, 'handle', 'tabs.length')).toBeCloseTo(30, 9);
  });

  test('a size inside a group of the other part', () => {
    expect(read({ end: { width: { of: 'body.hem.length', plus: 140 } } }, 'end', 'width')).toBeCloseTo(
      152,
      9,
    );
  });

  test('a part may follow one that follows', () => {
    const handle = { width: { of: 'end.width', less: 100 } };
    expect(read({ handle }, 'handle', 'width')).toBeCloseTo(SEAT - 0.4 - 100, 9);
  });

  test('a length in a list', () => {
    const job = carrier();
    const batten = {
      name: 'batten',
      family: 'bent-strip',
      width: 20,
      legs: [{ of: 'body.height', less: 10 }, 30],
      angles: [90],
    };
    const parts = readJob({ ...job, parts: [...job.parts, batten] }).parts;
    expect(parts.at(-1)?.params).toMatchObject({ legs: [BODY.height - 10, 30] });
  });

  test('the stock of a part may follow too', () => {
    const stock = { material: 'mild-steel', thickness: { of: 'body.height', less: BODY.height - 1.5 } };
    const end = readJob(carrier({ end: { stock } })).parts.find((p) => p.name === 'end');
    expect(end?.sheet.thickness).toBeCloseTo(1.5, 9);
  });
});

describe('sizes that are published', () => {
  const sizes = (name: string) => {
    const part = readJob(carrier()).parts.find((p) => p.name === name);
    return new Map(
      part === undefined ? [] : sizesOf(part.family, part.params, part.sheet).map((s) => [s.name, s.value]),
    );
  };

  test('a channel: inside sizes are outside ones less the sheet', () => {
    const body = sizes('body');
    expect(body.get('insideLength')).toBeCloseTo(BODY.length - 2 * T, 9);
    expect(body.get('insideWidth')).toBeCloseTo(BODY.width - 2 * T, 9);
    expect(body.get('insideHeight')).toBeCloseTo(BODY.height - T, 9);
    expect(body.get('rimHeight')).toBeCloseTo(BODY.height, 9);
    expect(body.get('width')).toBe(BODY.width);
  });

  test('a channel without end tabs is as long inside as outside', () => {
    const job = { ...carrier({ body: { endTabs: undefined } }), joints: [] };
    const [body] = readJob(job).parts;
    const length =
      body && sizesOf(body.family, body.params, body.sheet).find((s) => s.name === 'insideLength');
    expect(length?.value).toBe(BODY.length);
  });

  test('each says which parameter it grows with, and grows so by one to one', () => {
    for (const name of ['body', 'end', 'handle']) {
      const part = readJob(carrier()).parts.find((p) => p.name === name);
      if (part === undefined) throw new Error(`no ${name}`);
      const sizesAt = (params: unknown) => sizesOf(part.family, params, part.sheet);
      for (const { name: size, value, follows } of sizesAt(part.params)) {
        const at = follows.split('.');
        const before = at.reduce<unknown>((v, k) => (v as Readonly<Record<string, unknown>>)[k], part.params);
        const grown = sizesAt(withValue(part.params, at, (before as number) + 1));
        expect(grown.find((s) => s.name === size)?.value, size).toBeCloseTo(value + 1, 9);
      }
    }
  });
});

describe('what cannot be followed', () => {
  const first = (changes: Changes): Problem => {
    const [problem] = problemsOf(() => readJob(carrier(changes)));
    return problem as Problem;
  };

  test('a part that is not there: the nearest is named', () => {
    const found = first({ end: { width: { of: 'bdoy.seatWidth' } } });
    expect(found).toMatchObject({ code: 'part-unknown', path: ['parts', 1, 'width', 'of'], part: 'end' });
    expect(found.fix).toContain('Did you mean "body"?');
  });

  test('a size the part does not have: the nearest is named, with all there are', () => {
    const found = first({ end: { width: { of: 'body.seatWidht' } } });
    expect(found).toMatchObject({ code: 'size-unknown', message: 'body has no size "seatWidht"' });
    expect(found.fix).toMatch(
      /^Did you mean "seatWidth"\? Known: insideLength, .*height, hem\.length, endTabs/,
    );
  });

  test('a part that stands later: which to put first', () => {
    const found = first({ body: { width: { of: 'handle.width', plus: 100 } }, handle: { span: 300 } });
    expect(found).toMatchObject({
      code: 'follow-later',
      path: ['parts', 0, 'width', 'of'],
      message: 'body follows handle, which stands after it',
      fix: 'Put handle first',
    });
  });

  test('two parts that follow each other: the ring is named', () => {
    const found = first({ body: { width: { of: 'end.width' } } });
    expect(found).toMatchObject({ code: 'follow-ring' });
    expect(found.message).toBe('sizes follow each other in a ring: body, end, body');
  });

  test('three parts in a ring are named in the order they follow', () => {
    const found = first({
      body: { width: { of: 'handle.span' } },
      end: { width: { of: 'body.width' } },
      handle: { span: { of: 'end.width' } },
    });
    expect(found.message).toBe('sizes follow each other in a ring: body, handle, end, body');
  });

  test('a part that follows itself', () => {
    const found = first({ end: { width: { of: 'end.height' } } });
    expect(found).toMatchObject({ code: 'follow-ring', message: 'end would follow itself' });
  });

  test('a piece instead of a part: the part is named', () => {
    const found = first({ handle: { width: { of: 'end-1.crownWidth' } } });
    expect(found.fix).toContain('Did you mean "end"?');
  });

  test.each([
    ['no dot', { of: 'body' }, 'size-name', '"body" given'],
    ['a number', { of: 5 }, 'size-name', 'no name given'],
    ['less and plus', { of: 'body.seatWidth', less: 1, plus: 1 }, 'follow-both', 'less and plus given'],
    ['a misspelt key', { of: 'body.seatWidth', les: 1 }, 'key-unknown', 'unknown key "les"'],
    ['a factor', { of: 'body.seatWidth', times: 2 }, 'key-unknown', 'unknown key "times"'],
    ['a word for less', { of: 'body.seatWidth', less: 'much' }, 'value-type', '"much" is not a length'],
    ['nothing for less', { of: 'body.seatWidth', less: null }, 'value-type', 'no length given'],
  ])('%s', (_, value, code, message) => {
    const found = first({ end: { width: value } });
    expect(found.code).toBe(code);
    expect(found.message).toContain(message);
  });

  test('less than is there: no length is left', () => {
    for (const less of [SEAT, SEAT + 1, 5000])
      expect(first({ end: { width: { of: 'body.seatWidth', less } } })).toMatchObject({
        code: 'value-range',
        path: ['parts', 1, 'width'],
      });
  });

  test('a part that follows one with a mistake: only the mistake is told', () => {
    const found = problemsOf(() => readJob(carrier({ body: { width: -3 } })));
    expect(found).toMatchObject([{ code: 'value-range', part: 'body' }]);
  });

  test('what is no length follows nothing: told as it was written', () => {
    const found = first({ end: { quantity: { of: 'body.seatWidth' } } });
    expect(found).toMatchObject({ path: ['parts', 1, 'quantity'] });
    expect(found.message).toBe('a group of keys and values given, a number allowed');
  });
});

test.each([
  ['body.insideWidth', ['body', 'insideWidth']],
  ['end-1.rim', ['end-1', 'rim']],
  ['a.b.c', ['a', 'b.c']],
  ['body', null],
  ['body.', null],
  ['.rim', null],
  ['', null],
  [7, null],
])('%j splits in %j', (text, parts) => {
  expect(splitName(text)).toEqual(parts);
});
