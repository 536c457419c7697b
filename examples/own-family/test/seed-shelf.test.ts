import { deepEqual, equal, ok, throws } from 'node:assert/strict';
import { test } from 'node:test';
import { bentStrip, job, makePart, openBox } from '@tinwright/core';
import { partDxf } from '@tinwright/files';
import { familyContract, verifyPlan } from '@tinwright/testing';
import seedShelf from '../src/index.js';

const STOCK = { material: 'galvanised-steel', thickness: 0.8 } as const;
const SIZES = seedShelf.describe.example;

familyContract(seedShelf, test, { runs: 60 });

test('the shelf of the example is a sound part and is written as a cut file', () => {
  const shelf = makePart(seedShelf, SIZES, STOCK);
  deepEqual(verifyPlan(shelf), []);
  deepEqual(
    shelf.flat.bends.map((b) => b.id),
    ['floor', 'lip', 'hem'],
  );
  ok(partDxf(shelf).includes('BEND-UP'));
});

test('a lip higher than the back is refused, with the size that works', () => {
  throws(() => makePart(seedShelf, { ...SIZES, lip: 200 }, STOCK), /lip: 200 mm given.*Use 110 mm or less/);
});

test('a box follows the inside of the shelf, and a rail is fastened behind it', () => {
  const plan = job({ units: 'mm', stock: STOCK })
    .part('shelf', seedShelf, { ...SIZES, hem: { type: 'none' } })
    .part('box', openBox, { length: 100, width: { of: 'shelf.insideDepth', less: 2 }, height: 40 })
    .part('rail', bentStrip, { width: 200, legs: [40, 20], angles: [90] })
    .joint({ from: 'shelf.back', to: 'rail.leg-1-back', by: 'blind-rivet' })
    .plan();
  equal(plan.parts[1]?.part.asked.find((a) => a.name === 'width')?.value, 60 - 2 * 0.8 - 2);
  ok((plan.assembly?.fasteners.length ?? 0) >= 2);
  equal(plan.assembly?.fits[0]?.joint, 'joint-1');
});
