// Parts a setter knows: each is planned in a process of its own, so that its time and memory are its own.

import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, planSequence, verifySequence } from '@tinwright/shop';

/** A brake of 36 in. */
const SHOP = { ...DEFAULT_SHOP, brake: { ...DEFAULT_SHOP.brake, length: 914 } };

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

/** Names and parts, and the steps up to which a plan has to be proved. */
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

const [, file, name] = process.argv;
if (file?.endsWith('sequence-cases.mjs') && name !== undefined) {
  const job = readJob({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
    parts: [{ name: 'part', ...CASES[name] }],
  });
  const [part] = planJob(job).parts;
  const start = performance.now();
  const cpu = process.cpuUsage();
  const { status, seconds, gap, steps } = planSequence(part, SHOP);
  const { user, system } = process.cpuUsage(cpu);
  const flaws = verifySequence(part.flat, steps, SHOP).length;
  const megabytes = process.resourceUsage().maxRSS / 1000;
  const ms = performance.now() - start;
  process.stdout.write(
    JSON.stringify({ name, status, seconds, gap, ms, cpu: (user + system) / 1000, megabytes, flaws }),
  );
}
