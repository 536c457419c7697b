import { expect, test } from 'vitest';
import { isSealed, sealOf } from '../src/seal.js';
import { openTask, sealTask } from '../src/task.js';

const TASK = {
  needs: { program: 'tinwright 1', families: ['open-box'], modules: [] },
  common: { data: { units: 'mm' } },
  rows: [{ number: 1 }],
};
const KEY = 'a secret of this shop alone';

test('a task is opened by who has its key, under its own name, unchanged', () => {
  const sealed = sealTask(KEY, 'run-1', TASK);
  expect(openTask(KEY, 'run-1', sealed)).toEqual(TASK);
  expect(openTask(KEY, 'run-2', sealed)).toBeNull();
  expect(openTask(null, 'run-1', sealed)).toBeNull();
  expect(openTask(`${KEY}.`, 'run-1', sealed)).toBeNull();
  expect(openTask(KEY, 'run-1', { ...sealed, text: sealed.text.replace('mm', 'in') })).toBeNull();
});

test('without a key a seal still tells what was damaged', () => {
  const sealed = sealTask(null, 'run-1', TASK);
  expect(openTask(null, 'run-1', sealed)).toEqual(TASK);
  expect(openTask(null, 'run-1', { ...sealed, text: `${sealed.text} ` })).toBeNull();
});

test.each([null, undefined, 5, 'text', {}, { text: 5, seal: 5 }, { text: '{}', seal: {} }])(
  '%j is no task',
  (data) => {
    expect(openTask(null, 'run-1', data)).toBeNull();
  },
);

test.each([
  '',
  'null',
  '{',
  '{}',
  '{"needs":{"program":1}}',
  '{"needs":{"program":"a","families":[1],"modules":[]},"rows":[]}',
])('a sealed text that is no task, %j, is none', (text) => {
  expect(openTask(null, 'a', { text, seal: sealOf(null, 'task a', text) })).toBeNull();
});

test('a name and what follows cannot be read as another name', () => {
  expect(isSealed(KEY, 'task 1', '1x', sealOf(KEY, 'task 11', 'x'))).toBe(false);
});
