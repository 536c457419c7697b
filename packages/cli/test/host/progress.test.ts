import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { progressOn } from '../../src/host/progress.js';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A stream that keeps what is written to it. */
function stream(isTTY: boolean) {
  const written: string[] = [];
  const write = (text: string) => written.push(text);
  const on = {
    isTTY,
    columns: 80,
    write,
    cursorTo: () => true,
    clearLine: () => true,
    moveCursor: () => true,
  };
  return { written, on: on as unknown as NodeJS.WriteStream };
}

test('a line every ten seconds, with what is left', async () => {
  const { written, on } = stream(false);
  const bar = await progressOn(on, 'files', 40);
  bar.to(5);
  vi.advanceTimersByTime(9_900);
  expect(written).toEqual([]);
  vi.advanceTimersByTime(100);
  bar.to(10);
  expect(written).toEqual(['files: 5 of 40, 0.5 a second, 70 s left\n']);
  vi.advanceTimersByTime(10_000);
  expect(written.slice(1)).toEqual(['files: 10 of 40, 0.5 a second, 60 s left\n']);
  bar.end();
  vi.advanceTimersByTime(60_000);
  expect(written).toHaveLength(2);
});

test('one piece that takes long is told too', async () => {
  const { written, on } = stream(false);
  const bar = await progressOn(on, 'bend orders', 1);
  vi.advanceTimersByTime(20_000);
  bar.end();
  expect(written).toEqual(['bend orders: 0 of 1, 10 s so far\n', 'bend orders: 0 of 1, 20 s so far\n']);
});

test('on a terminal a bar, from the first second on', async () => {
  const { written, on } = stream(true);
  const bar = await progressOn(on, 'pages', 7);
  bar.to(3);
  vi.advanceTimersByTime(900);
  expect(written).toEqual([]);
  vi.advanceTimersByTime(200);
  bar.to(4);
  bar.end();
  expect(written.join('')).toMatch(/pages .*3 of 7/);
});

test('what is done before that leaves a terminal as it was', async () => {
  const { written, on } = stream(true);
  const bar = await progressOn(on, 'pages', 7);
  bar.to(7);
  bar.end();
  expect(written).toEqual([]);
});
