// The bin too deep for the default shop: what is in the way, and that what would change it does.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type PartPlan, planJob, readJob } from '@tinwright/core';
import { sayIn, withValue } from '@tinwright/core/internal';
import { DEFAULT_SHOP, planSequence } from '@tinwright/shop';
import { mendWords, reasonWords } from '@tinwright/words';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const text = (file: string) => readFileSync(fileURLToPath(new URL(`../${file}`, import.meta.url)), 'utf8');
const bin = parse(text('examples/deep-bin.yaml')) as object;
const planned = (data: unknown) => planSequence(planJob(readJob(data)).parts[0] as PartPlan, DEFAULT_SHOP);
const say = sayIn('mm');

const deep = planned(bin);

test('the walls run into the beam of the brake, by what the README says', () => {
  expect(deep.status).toBe('infeasible');
  const reasons = deep.reasons.map((r) => reasonWords(r, say));
  const [, by] = /run into the beam over the fingers, by ([\d.]+ mm)/.exec(text('README.md')) ?? [];
  expect(reasons.filter((r) => r.endsWith(`runs into the beam over the fingers, by ${by}`))).not.toEqual([]);
});

test('the height that would do is the one the README and the example name, and with it the bin can be bent', () => {
  const mend = deep.mends.find((m) => m.parameter === 'height');
  expect(mend).toBeDefined();
  const height = Number(mend?.found);
  const told = mend === undefined ? '' : mendWords(mend, say);
  expect(text('README.md')).toContain(`a ${told}`);
  expect(text('examples/deep-bin.yaml')).toContain(`With a height of ${height} `);
  expect(planned(withValue(bin, ['parts', 0, 'height'], height)).status).toBe('optimal');
  expect(planned(withValue(bin, ['parts', 0, 'height'], height + 1)).status).toBe('infeasible');
});

test('the tote can be bent as it is', () => {
  for (const part of planJob(readJob(parse(text('examples/tool-tote.yaml')))).parts)
    expect(planSequence(part, DEFAULT_SHOP).status, part.name).toBe('optimal');
});
