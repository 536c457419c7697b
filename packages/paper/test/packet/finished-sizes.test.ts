import { FAMILIES, JobError, jobReader, planJob } from '@tinwright/core';
import { paramsOf, sheets } from '@tinwright/testing';
import { measuredLabel } from '@tinwright/words/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

/** Names by which a part that can be made asks for its finished sizes. */
function askedOf(part: object): readonly string[] {
  try {
    const { parts } = planJob(read({ units: 'mm', parts: [{ name: 'part', ...part }] }), {
      verify: 'none',
    });
    return parts.flatMap((p) => p.part.asked.map((a) => a.name));
  } catch (error) {
    if (error instanceof JobError) return [];
    throw error;
  }
}

test.each(FAMILIES.map((f) => [f.name, f] as const))(
  '%s: every finished size that is measured has words of its own in both languages',
  (_, family) => {
    const stock = { stock: { material: 'mild-steel', thickness: 1 } };
    const asked = new Set(askedOf({ family: family.name, ...stock, ...family.describe.example }));
    for (const [params, sheet] of fc.sample(fc.tuple(paramsOf(family), sheets), { seed: 12, numRuns: 6 }))
      for (const name of askedOf({ family: family.name, ...sheet, ...params })) asked.add(name);
    expect(asked.size).toBeGreaterThan(0);
    for (const language of ['en', 'de'] as const)
      expect(new Set([...asked].map((name) => measuredLabel(family, name, language))).size).toBe(asked.size);
    for (const name of asked)
      for (const language of ['en', 'de'] as const) {
        const words = measuredLabel(family, name, language);
        expect(words === name && !/^[a-z]+$/.test(name), `${name}: ${words}`).toBe(false);
        expect(words).not.toMatch(/[.+[\]]|[a-z][A-Z]/);
      }
  },
);
