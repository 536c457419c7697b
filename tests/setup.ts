import fc from 'fast-check';
import { afterEach, expect, vi } from 'vitest';

/** One seed for all property tests; a failure prints it. Others and more runs are tried with TINWRIGHT_SEED and _RUNS. */
const seed = Number(process.env.TINWRIGHT_SEED ?? 20261125);
fc.configureGlobal({ seed, numRuns: Number(process.env.TINWRIGHT_RUNS ?? 40) });

// stray output fails a test
const spies = (['log', 'warn', 'error', 'info'] as const).map((name) =>
  vi.spyOn(console, name).mockImplementation(() => undefined),
);

afterEach(() => {
  for (const spy of spies) {
    expect(spy.mock.calls, `console.${spy.getMockName()} was called`).toEqual([]);
    spy.mockClear();
  }
});
