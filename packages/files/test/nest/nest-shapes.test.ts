import { CUT_STYLE, findNest, QUARTER_TURNS, readRack, verifyCuts, verifyNest } from '@tinwright/cutting';
import { cutNest, nestFiles, nestShapes, TABLE_STYLE } from '@tinwright/files';
import { expect, test } from 'vitest';
import { planned } from '../samples.js';

const { parts: plans } = planned([
  {
    ...{ name: 'angle', family: 'bracket', width: 60, base: 40, leg: 50, quantity: 3 },
    holes: { diameter: 5, count: 2, inset: 15 },
  },
]);
const rack = readRack({
  units: 'mm',
  kerf: 1.5,
  sheets: [{ name: 'full', material: 'galvanised-steel', thickness: 1, size: [500, 300] }],
});

test('planned parts are nested and cut by the kerf of the rack, unless a style says another', () => {
  const { parts, flats } = nestShapes(plans);
  expect(parts).toMatchObject([{ part: 'angle', material: 'galvanised-steel', thickness: 1, quantity: 3 }]);
  expect(parts[0]?.holes).toHaveLength(4);
  const ask = { parts, rack, spacing: 5, edge: 5, turns: QUARTER_TURNS };
  const nest = findNest(ask, { seeds: [1], moves: 50 });
  expect(verifyNest(nest, parts)).toEqual([]);
  const cut = cutNest(nest, parts);
  const [sheet] = nest.sheets;
  const [own] = cut.cuts;
  if (sheet === undefined || own === undefined) throw new Error('no sheet');
  expect(verifyCuts(sheet, parts, own.contours, 1.5)).toEqual([]);
  expect(own.contours.every((c) => c.leadIn !== null)).toBe(true);
  expect(nestFiles(cut, flats).map((f) => f.path)).toEqual([
    'nests/full-1.dxf',
    'nests/full-1.svg',
    'nest.json',
  ]);
  const along = cutNest(nest, parts, { ...CUT_STYLE, lead: 'none' });
  expect(along.cuts[0]?.contours.map((c) => c.leadIn)).toEqual(own.contours.map(() => null));
});

test('holes that a table only punches are none of the shape', () => {
  const { parts, flats } = nestShapes(plans, { ...TABLE_STYLE, leastHole: 6 });
  expect(parts[0]?.holes).toEqual([]);
  expect(flats[0]?.punched).toHaveLength(4);
});
