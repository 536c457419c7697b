import { FAMILIES, JobError, jobReader, MATERIALS, planJob } from '@tinwright/core';
import { jobContext, readShop } from '@tinwright/shop';
import { expect, test } from 'vitest';

const metal = {
  name: 'bin-steel',
  like: 'mild-steel',
  k: 0.4,
  leastRadius: [{ thickness: 1, radius: 1.5 }],
};
const shopWith = (...materials: readonly object[]) =>
  readShop({
    units: 'mm',
    materials,
    strips: [{ name: 's', material: 'bin-steel', thickness: 1, insideRadius: 2, k: 0.41 }],
  });
const job = {
  units: 'mm',
  stock: { material: 'bin-steel', thickness: 1 },
  bending: { rule: 'k-factor', insideRadius: 1 },
  parts: [{ name: 'tray', family: 'open-box', length: 300, width: 200, height: 50 }],
};

test("a material of the shop's own is that of its jobs and its strips; what it leaves out comes from the one it is like", () => {
  const shop = shopWith(metal);
  const read = jobReader(FAMILIES);
  const { parts, findings } = planJob(read(job, jobContext(shop)));
  const steel = MATERIALS.find((m) => m.name === 'mild-steel');
  expect(parts[0]?.material.density).toBe(steel?.density);
  expect(parts[0]?.material.source).toContain('as mild-steel, since bin-steel leaves it out');
  expect(parts[0]?.material.kSource).toBe('given in the shop file');
  const [small] = findings.filter((f) => f.code === 'radius-small');
  expect([small?.value, small?.limit]).toEqual([1, 1.5]);
  const strip = planJob(read({ ...job, bending: { rule: 'test-strip', insideRadius: 2 } }, jobContext(shop)));
  expect(strip.parts[0]?.sheet.rule.title).toContain('s');
});

test('a job in another shop does not know it, and one of its own by that name is refused', () => {
  const read = jobReader(FAMILIES);
  expect(() => read(job)).toThrow(/"bin-steel" given/);
  const own = { ...job, materials: [{ name: 'bin-steel', like: 'copper' }] };
  expect(() => read(own, jobContext(shopWith(metal)))).toThrow(/there is a material "bin-steel" already/);
  expect(planJob(read(own)).parts[0]?.material.density).toBe(
    MATERIALS.find((m) => m.name === 'copper')?.density,
  );
});

test('a row that cannot be read is told at its place in the shop file', () => {
  const wrong = (() => {
    try {
      shopWith({ ...metal, like: 'mild-stel' });
    } catch (error) {
      return error;
    }
    return null;
  })();
  expect(wrong).toBeInstanceOf(JobError);
  expect((wrong as JobError).problems[0]).toMatchObject({ path: ['materials', 0, 'like'] });
  expect(String((wrong as JobError).message)).toContain('Did you mean "mild-steel"?');
});
