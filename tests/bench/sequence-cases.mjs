// Parts that bend orders are measured with, and the shops they are bent in.

import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { bendParts } from '../kit/bend-parts.mjs';

/** A brake of 36 in. */
const KNOWN_SHOP = { ...DEFAULT_SHOP, brake: { ...DEFAULT_SHOP.brake, length: 914 } };

const many = (count, of) => Array.from({ length: count }, (_, i) => of(i));
const strip = (angles, legs, width = 300) => ({
  family: 'bent-strip',
  width,
  legs: many(angles.length + 1, legs),
  angles,
});
const zigzag = (n) =>
  strip(
    many(n, (i) => (i % 2 === 0 ? 45 : -45)),
    () => 130,
  );
const curve = (n, angle) =>
  strip(
    many(n, () => angle),
    () => 130,
  );
const box = { family: 'open-box', length: 240, width: 180, height: 40 };

/** Parts a setter knows. */
export const CASES = {
  'zigzag 12': zigzag(12),
  'zigzag 20': zigzag(20),
  'zigzag 40': zigzag(40),
  'zigzag 60': zigzag(60),
  'curve 20': curve(20, 7.5),
  'curve 40': curve(40, 3.75),
  'curve 60': curve(60, 2.5),
  'stair 12': strip(
    many(12, (i) => (i % 2 === 0 ? 90 : -90)),
    () => 130,
  ),
  'comb 12': strip(
    many(12, (i) => (i % 4 < 2 ? 90 : -90)),
    (i) => (i % 2 === 0 ? 140 : 150),
  ),
  'crank 4': strip([60, -60, -60, 60], (i) => (i === 2 ? 200 : 140)),
  'box with returns': { ...box, flangeReturn: 8 },
  'box with hems': { ...box, hem: { type: 'closed', length: 8 } },
};

const rise = (half) => half / Math.tan((85 * Math.PI) / 360);
const PRESS = {
  name: 'press brake',
  length: 1500,
  force: 400,
  punches: [
    {
      name: 'straight',
      angle: 85,
      radius: 0.8,
      horns: null,
      lengths: [10, 15, 20, 25, 30, 40, 50, 100, 100, 200, 200, 300],
      section: [
        [0, 0],
        [10, rise(10)],
        [10, 150],
        [-10, 150],
        [-10, rise(10)],
      ],
    },
  ],
  dies: [
    {
      name: 'V8',
      sectioned: true,
      opening: 8,
      angle: 85,
      section: [
        [-8, 0],
        [-4, 0],
        [0, -rise(4)],
        [4, 0],
        [8, 0],
        [8, -80],
        [-8, -80],
      ],
    },
  ],
  ram: { half: 25, height: 150 },
  bed: { half: 30 },
  backGauge: { least: 8, most: 600, finger: { over: 8, under: 6, length: 60, width: 30 } },
  gaps: { end: 5, inner: 2 },
  overbend: 3,
};
const PARTS_SHOP = {
  ...DEFAULT_SHOP,
  brake: { ...DEFAULT_SHOP.brake, length: 2000 },
  press: PRESS,
  vise: null,
};

/** Names of all that are measured: of the set that is generated from a seed, then those a setter knows. */
export const namesFor = (seed) => [...bendParts(seed).map((p) => p.name), ...Object.keys(CASES)];

/** A part by its name, with its shop. */
export function caseFor(name, seed) {
  if (CASES[name] === undefined)
    return { part: bendParts(seed).find((p) => p.name === name), shop: PARTS_SHOP };
  const job = readJob({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
    parts: [{ name: 'part', ...CASES[name] }],
  });
  return { part: planJob(job).parts[0], shop: KNOWN_SHOP };
}
