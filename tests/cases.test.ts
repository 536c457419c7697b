// Jobs and files that broke something once, as the campaign found and shrank them, or as somebody wrote them down.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { endureDeep } from './campaign/deep.js';
import { endure } from './campaign/endure.js';
import { endureLean } from './campaign/lean.js';
import { answered } from './campaign/texts.js';
import type { Trial } from './campaign/trials.js';

interface Case {
  readonly kind: 'job' | 'text' | 'trial';
  /** What it broke. */
  readonly found: string;
  readonly data: unknown;
}

const folder = new URL('cases/', import.meta.url);
const cases = readdirSync(folder).map(
  (file) => [file, JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Case] as const,
);

test('there are cases', () => {
  expect(cases.length).toBeGreaterThan(3);
});

test.each(cases)('%s: made, or refused by name', async (_, { kind, data }) => {
  if (kind === 'text') expect([0, 1, 2]).toContain(await answered(data as string));
  else if (kind === 'trial') {
    expect(endureLean(data as Trial)).toHaveProperty('made');
    await endureDeep(data as Trial, null);
  } else expect(endure(data)).toHaveProperty('made');
});
