// Parts to plan bends for, generated from a seed: strips, boxes with lips and hems, and plates of many sides with
// walls of two or three bends. 4 to 60 steps.

import { FAMILIES, planJob, readJob } from '@tinwright/core';
import {
  corners,
  defineFamily,
  flange,
  hem,
  panel as panelOf,
  polygon,
  rectangle,
  square,
  value,
} from '@tinwright/core/family';

/** Numbers in [0, 1) from a seed. */
export function randomFrom(seed) {
  let s = seed >>> 0;
  return () => {
    s = (s + 0x6d2b79f5) >>> 0;
    let t = Math.imul(s ^ (s >>> 15), 1 | s);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const SIDE = 60; // mm

/** A plate of many sides, a wall on each, lips on some walls and lips on some of those. */
const bowl = defineFamily({
  name: 'bowl',
  values: {
    sides: value.count('', 3, 40),
    lips: value.count('', 0, 40),
    rims: value.count('', 0, 40),
    seed: value.count('', 0, 1_000_000),
  },
  build: ({ sides, lips, rims, seed }) => {
    const random = randomFrom(seed);
    const radius = SIDE / (2 * Math.sin(Math.PI / sides));
    const corners = Array.from({ length: sides }, (_, i) => {
      const turn = ((2 * i - 1) * Math.PI) / sides - Math.PI / 2;
      return [radius * Math.cos(turn), radius * Math.sin(turn)];
    });
    const numbers = corners.map((_, i) => i);
    const angles = numbers.map(() => 15 + 15 * Math.floor(random() * 3));
    return [
      panelOf(
        'base',
        polygon(
          corners,
          numbers.map((i) => `side-${i}`),
        ),
      ),
      ...numbers.map((i) =>
        flange(`wall-${i}`, ['base', `side-${i}`], {
          height: 25 + Math.floor(random() * 15),
          angle: angles[i],
          inset: [7, 7],
        }),
      ),
      ...numbers.slice(0, lips).map((i) =>
        flange(`lip-${i}`, [`wall-${i}`, 'far'], {
          height: 18 + Math.floor(random() * 4),
          angle: 45,
          inset: [4, 4],
        }),
      ),
      ...numbers
        .slice(0, rims)
        .map((i) => flange(`rim-${i}`, [`lip-${i}`, 'far'], { height: 8, angle: -30, inset: [1, 1] })),
    ];
  },
  describe: {
    title: 'bowl',
    summary: '',
    example: { sides: 6, lips: 2, rims: 0, seed: 1 },
  },
});

/** A tray whose walls turn outwards to a rim, the rim down again, and a hem at the end: four sides of one to four bends. */
const tray = defineFamily({
  name: 'rimmed-tray',
  values: { levels: value.list('', value.count('', 1, 4), [4, 4]), seed: value.count('', 0, 1_000_000) },
  build: ({ levels, seed }) => {
    const random = randomFrom(seed);
    const [length, width] = [240 + 20 * Math.floor(random() * 8), 160 + 20 * Math.floor(random() * 5)];
    const sides = ['north', 'south', 'east', 'west'];
    return [
      panelOf('base', rectangle(length, width)),
      ...sides.map((s) => flange(s, ['base', s], { height: 30 + Math.floor(random() * 20) })),
      corners(['base'], square(0.5)),
      ...sides.flatMap((s, i) => {
        const outwards = [
          flange(`rim-${s}`, [s, 'far'], { height: 20, angle: -90, inset: [1, 1] }),
          flange(`turn-${s}`, [`rim-${s}`, 'far'], { height: 12, angle: -90, inset: [1, 1] }),
          hem(`hem-${s}`, [`turn-${s}`, 'far'], { type: 'closed', length: 6, inset: [1, 1] }, 'down'),
        ];
        return outwards.slice(0, levels[i] - 1);
      }),
    ];
  },
  describe: {
    title: 'tray',
    summary: '',
    example: { levels: [1, 1, 1, 1], seed: 1 },
  },
});

const TRAYS = [
  [1, 1, 1, 1],
  [2, 2, 1, 1],
  [2, 2, 2, 2],
  [3, 3, 1, 1],
  [3, 3, 2, 2],
  [3, 3, 3, 3],
  [4, 4, 1, 1],
  [4, 4, 2, 2],
  [4, 4, 3, 3],
];

const strip = (random, bends) => ({
  family: 'bent-strip',
  width: 80,
  legs: Array.from({ length: bends + 1 }, () => 30 + Math.floor(random() * 30)),
  angles: Array.from(
    { length: bends },
    () => (random() < 0.8 ? 1 : -1) * (10 + 5 * Math.floor(random() * 4)),
  ),
});

const box = (random, kind) => ({
  family: 'open-box',
  length: 200 + 20 * Math.floor(random() * 8),
  width: 140 + 20 * Math.floor(random() * 5),
  height: 30 + 5 * Math.floor(random() * 6),
  ...(kind % 3 === 0 ? { flangeReturn: 6 + Math.floor(random() * 6) } : {}),
  ...(kind % 3 === 1 ? { hem: { type: 'closed', length: 8 } } : {}),
  ...(kind % 3 === 2 ? { corner: 'tabbed' } : {}),
});

/** Sides, lips and rims of bowls from 5 to 60 steps. */
const BOWLS = [
  [5, 0, 0],
  [6, 0, 0],
  [6, 3, 0],
  [5, 5, 0],
  [8, 2, 0],
  [6, 6, 0],
  [8, 5, 0],
  [9, 8, 0],
  [12, 8, 0],
  [14, 12, 0],
  [18, 16, 0],
  [20, 20, 5],
  [22, 20, 10],
  [20, 20, 20],
];

/** The parts of the set: forty, named, in order of their steps. */
export function bendParts(seed = 20_240) {
  const random = randomFrom(seed);
  const parts = [
    ...Array.from({ length: 8 }, (_, i) => strip(random, 4 + i)),
    ...Array.from({ length: 9 }, (_, i) => box(random, i)),
    ...TRAYS.map((levels) => ({ family: 'rimmed-tray', levels, seed: Math.floor(random() * 1e6) })),
    ...BOWLS.map(([sides, lips, rims]) => ({
      family: 'bowl',
      sides,
      lips,
      rims,
      seed: Math.floor(random() * 1e6),
    })),
  ];
  const job = readJob(
    {
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      parts: parts.map((p, i) => ({ name: `part-${i + 1}`, ...p })),
    },
    [...FAMILIES, bowl, tray],
  );
  return planJob(job).parts;
}
