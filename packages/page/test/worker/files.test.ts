import { planJob, readJob } from '@tinwright/core';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { filesFor } from '../../src/worker/files.js';

const DATA = {
  units: 'mm',
  stock: { material: 'mild-steel', thickness: 1 },
  parts: [{ name: 'rail', family: 'bent-strip', width: 60, legs: [40, 8], angles: [90] }],
} as const;

test.each([
  ['en', / up\b| down\b/i],
  ['de', / hoch\b| nach oben\b| auf\b/i],
] as const)('the list of all files is told in the language of the page: %s', async (language, words) => {
  const asked = { data: DATA, text: 'units: mm\n', what: 'all', part: 'rail', language };
  const [zip] = await filesFor(planJob(readJob(DATA)), asked);
  const list = JSON.parse(strFromU8(unzipSync(zip?.content as Uint8Array)['job.json'] as Uint8Array));
  const [{ sequence }] = list.parts as readonly [{ sequence: { operations: { note: string }[] } }];
  expect(sequence.operations.map((s) => s.note).join()).toMatch(words);
});
