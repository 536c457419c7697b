import { strToU8, zlibSync } from 'fflate';
import { expect, test } from 'vitest';
import { linked, linkOf } from '../../src/app/link.js';

const JOB = 'units: mm # für den Garten\n';
const packed = (bytes: Uint8Array) =>
  `#job=${Buffer.from(zlibSync(bytes)).toString('base64url').replace(/=+$/, '')}`;

test('a link carries the text of a job, letter for letter', () => {
  expect(linked(linkOf(JOB))).toEqual({ text: JOB });
  expect(linked(packed(strToU8(JOB)))).toEqual({ text: JOB });
});

test.each([
  ['nothing behind its name', '#job='],
  ['an empty text', linkOf('')],
  ['blanks alone', linkOf(' \n')],
])('%s is told as empty, not shown as a job', (_, fragment) => {
  expect(linked(fragment)).toEqual({ unread: 'emptyLink' });
});

test.each([
  ['bytes that are no UTF-8', packed(Uint8Array.from([0x75, 0xff, 0xfe, 0xc3]))],
  ['letters of no link', '#job=%00'],
  ['bytes that do not unpack', '#job=AAAABBBB'],
])('%s cannot be read', (_, fragment) => {
  expect(linked(fragment)).toEqual({ unread: 'badLink' });
});

test('a link that was cut short, wherever, is never read as a job', () => {
  const whole = linkOf(JOB.repeat(20));
  for (let end = '#job=A'.length; end < whole.length; end++)
    expect([end, linked(whole.slice(0, end))]).toEqual([end, { unread: 'badLink' }]);
});

test.each(['', '#', '#top', '#jobs=1'])('%j is no link to a job', (fragment) => {
  expect(linked(fragment)).toBeNull();
});
