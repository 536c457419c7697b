import { type Finding, remarkOf, type Severity } from '@tinwright/core';
import { COMMON_PRACTICE, sortFindings } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const finding = (part: string | null, severity: Severity, code = 'any'): Finding => ({
  part,
  ...remarkOf(code, severity, { values: {}, source: COMMON_PRACTICE }),
});

const brief = (findings: readonly Finding[]) => findings.map((f) => `${f.part ?? ''} ${f.severity}`.trim());

test('findings of two parts: in the order of the parts, worst first within a part', () => {
  const mixed = [
    finding('handle', 'note'),
    finding('body', 'note'),
    finding('handle', 'error'),
    finding('body', 'warning'),
    finding('body', 'error'),
  ];
  expect(brief(sortFindings(mixed, ['body', 'handle']))).toEqual([
    'body error',
    'body warning',
    'body note',
    'handle error',
    'handle note',
  ]);
});

test('a finding of the whole job: before those of any part', () => {
  const mixed = [finding('body', 'error'), finding(null, 'note')];
  expect(brief(sortFindings(mixed, ['body']))).toEqual(['note', 'body error']);
});

test('findings of the same part and weight: stay in their order', () => {
  const codes = ['c', 'a', 'b'];
  const sorted = sortFindings(
    codes.map((c) => finding('body', 'warning', c)),
    ['body'],
  );
  expect(sorted.map((f) => f.code)).toEqual(codes);
});

test('any list: nothing lost, nothing added, the argument left as it was', () => {
  const any = fc.record({
    part: fc.constantFrom('body', 'end', 'handle'),
    severity: fc.constantFrom<Severity>('note', 'warning', 'error'),
  });
  fc.assert(
    fc.property(fc.array(any, { maxLength: 20 }), (rows) => {
      const list = Object.freeze(rows.map((r, i) => finding(r.part, r.severity, String(i))));
      const sorted = sortFindings(list, ['end', 'handle', 'body']);
      expect(sorted.map((f) => f.code).toSorted()).toEqual(list.map((f) => f.code).toSorted());
      const weights = sorted.map(
        (f) =>
          ['end', 'handle', 'body'].indexOf(f.part ?? '') * 3 +
          ['error', 'warning', 'note'].indexOf(f.severity),
      );
      expect(weights).toEqual(weights.toSorted((a, b) => a - b));
    }),
  );
});

test('a finding is data: it crosses structuredClone', () => {
  const found = finding('body', 'error');
  expect(structuredClone(found)).toEqual(found);
});
