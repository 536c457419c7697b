import { FAMILIES, type FlatPattern, type JobPlan, jobReader, kFactor, planJob } from '@tinwright/core';
import { asked, flange, fold, hole, mark, panel, rectangle } from '@tinwright/core/family';
import { unfold } from '@tinwright/core/internal';

const read = jobReader(); // keeps the schemas that it builds

const STOCK = { material: 'galvanised-steel', thickness: 1 };
const BENDING = { rule: 'k-factor', k: 0.42, insideRadius: 1 };

/** A job of these parts in 1 mm galvanised steel, read and planned as the command does it. */
export function planned(parts: readonly object[], head: object = {}): JobPlan {
  return planJob(read({ units: 'mm', stock: STOCK, bending: BENDING, ...head, parts }));
}

/** A part to write, with what it is called in test titles. */
export interface Sample {
  readonly name: string;
  readonly flat: FlatPattern;
}

const EXTRA = [
  {
    name: 'tray-with-round-reliefs',
    family: 'open-box',
    length: 120,
    width: 80,
    height: 30,
    corner: 'lap',
    relief: 'hole',
  },
  {
    name: 'carrier-with-round-reliefs',
    family: 'hemmed-channel',
    length: 200,
    width: 150,
    height: 60,
    hem: { type: 'closed', length: 10 },
    endTabs: { length: 15, notch: 'relief' },
  },
];

/** Two drilled holes, a mark, a flange up and one down: everything a pattern can hold. */
export function drilledPlate(): FlatPattern {
  const sheet = { thickness: 1, insideRadius: 1, rule: kFactor(0.42) };
  return unfold(
    fold(
      sheet,
      panel('base', rectangle(60, 40)),
      hole('base', { at: [15, 20], diameter: 10 }),
      hole('base', { at: [45, 10], diameter: 4.2 }),
      mark('base', { kind: 'spot-weld', at: [40, 30], joint: 'seed-rail' }),
      flange('lip', ['base', 'east'], { height: 15 }),
      flange('foot', ['base', 'west'], { height: 15, angle: -90 }),
      asked('width', 40, 'y'),
    ),
  );
}

/** Every family's example, two parts with arcs in their outline, and the drilled plate. */
export function samples(): readonly Sample[] {
  const examples = FAMILIES.map((f) => ({ name: f.name, family: f.name, ...f.describe.example }));
  const plan = planned([...examples, ...EXTRA]);
  return [
    ...plan.parts.map(({ name, flat }) => ({ name, flat })),
    { name: 'drilled-plate', flat: drilledPlate() },
  ];
}
