import { type JobPlan, planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';

const job = (lid: object, box: object = {}): JobPlan =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1.2 },
      parts: [
        { name: 'box', family: 'open-box', length: 200, width: 120, height: 60, corner: 'lap', ...box },
        { name: 'lid', family: 'lid', depth: 20, ...lid },
      ],
      joints: [{ name: 'cover', from: 'box.rim', to: 'lid.skirt', by: 'none' }],
    } as unknown),
  );

test('a lid that goes over keeps its play on every side and lies on the rim', () => {
  const { assembly, findings } = job({
    length: { of: 'box.length' },
    width: { of: 'box.width' },
    clearance: 2,
  });
  const placed = assembly?.placed.find((p) => p.piece === 'lid');
  // the plate lies with its inside on the rim at 60, its outside 1 higher, turned over
  expect(placed?.pose.z).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9), expect.closeTo(-1, 9)]);
  expect(placed?.pose.origin[2]).toBeCloseTo(61, 9);
  // between walls and skirts 2 mm; nearer is the bend of 1.2 inside, at 2 - 1.2 from the square rim
  expect(assembly?.fits[0]?.found).toBeCloseTo(0.8, 6);
  expect(findings.filter((f) => f.code === 'clash')).toEqual([]);
});

test('left to itself the play clears the inside of the bend by 0.3 mm', () => {
  const { assembly } = job({ length: { of: 'box.length' }, width: { of: 'box.width' } });
  expect(assembly?.fits[0]?.found).toBeCloseTo(0.3, 6);
});

test('a lid with less play than the bend takes rides up on the bend: how far off the rim is told', () => {
  const found = job({ length: { of: 'box.length' }, width: { of: 'box.width' }, clearance: 0.2 });
  // the square rim, 0.2 mm off the skirt, meets a circle of 1.2 mm about a point 1.2 off plate and skirt
  const off = 1.2 - Math.sqrt(1.2 ** 2 - (1.2 - 0.2) ** 2);
  expect(found.assembly?.seated[0]?.gap).toBeCloseTo(off, 6);
  const [told] = found.findings.filter((f) => f.code === 'joint-empty');
  expect(told).toMatchObject({ severity: 'warning', value: expect.closeTo(off, 6), limit: 0.5 });
  expect(spoken(told)?.message).toContain('0.54 mm stay open between box.rim and lid.skirt');
  expect(found.findings.map((f) => f.code)).not.toContain('clash');
});

test('a lid that drops in hangs by its ledge on the rim, its skirt inside the walls', () => {
  const { assembly, parts, findings } = job({
    fit: 'inside',
    length: { of: 'box.insideLength' },
    width: { of: 'box.insideWidth' },
    clearance: 1.5,
    ledge: 6,
  });
  const lid = parts.find((p) => p.name === 'lid');
  // plate: opening 198 less the play, plus both ledges
  expect(lid?.formed.size[0]).toBeCloseTo(198 - 3 + 12, 9);
  expect(lid?.formed.size[2]).toBeCloseTo(20, 9);
  // the ledge is two sheets thick, so the top of the plate lies 2 above the rim at 60
  expect(assembly?.placed.find((p) => p.piece === 'lid')?.pose.origin[2]).toBeCloseTo(62, 9);
  expect(findings.filter((f) => f.code === 'clash')).toEqual([]);
});
