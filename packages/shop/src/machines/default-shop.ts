import { frozen } from '@tinwright/core/internal';
import { USUAL_MARGIN, USUAL_RATES } from './assumed.js';
import { DEFAULT_COSTS } from './costs.js';
import type { Shop } from './shop.js';

/**
 * A modest school workshop, invented: used where no shop file is given, and a pattern to measure one's own by.
 * Sections and gaps of the brake are guesses within usual ranges (judgement, no source).
 */
export const DEFAULT_SHOP: Shop = frozen({
  name: 'school workshop (invented)',
  note: 'measure your own machines; every figure here is a guess within the usual range',
  units: 'mm',
  profile: 'strict',
  cutBy: null,
  brake: {
    name: 'finger brake',
    length: 1000,
    capacity: [
      { material: 'mild-steel', thickness: 1.5 },
      { material: 'stainless-304', thickness: 0.9 },
      { material: 'aluminium-5052-h32', thickness: 2 },
    ],
    fingers: [25, 30, 35, 40, 45, 50, 75, 100, 150, 200, 250],
    finger: { foot: 36, upright: 22, noseAngle: 45, noseRadius: 0.5 },
    clearHeight: 100,
    beam: 22,
    opening: 32,
    leaf: { width: 100, stop: 135 },
    bed: 120,
    setBack: [1, 2.5],
    lowestFlange: 6,
    hold: 6,
    ratedFlange: 25.4,
    gaps: { end: 20, inner: 6 },
    overbend: 3,
    rearStop: null,
    rearStopHeight: null,
  },
  brakes: [],
  press: null,
  vise: {
    name: 'bench vise with folding bars',
    jaws: 450,
    depth: 60,
    grip: 12,
    bar: 25,
    jaw: 35,
    bench: 120,
    capacity: [
      { material: 'mild-steel', thickness: 1.5 },
      { material: 'stainless-304', thickness: 1 },
      { material: 'aluminium-5052-h32', thickness: 2 },
    ],
  },
  handSeamer: null,
  formerBlock: null,
  shear: {
    name: 'foot shear',
    length: 1000,
    capacity: [
      { material: 'mild-steel', thickness: 1.5 },
      { material: 'stainless-304', thickness: 1 },
      { material: 'aluminium-5052-h32', thickness: 2 },
    ],
    rearStop: 600,
  },
  spotWelder: { name: 'spot welder', throat: 250, electrode: 16, thickness: [0.5, 1.5] },
  riveter: { name: 'rivet gun', diameters: [2.4, 3.2, 4, 4.8], nose: 20 },
  table: { name: 'plasma table', process: 'plasma', length: 1250, width: 1250, kerf: 1.3, smallestHole: 6 },
  sheets: [
    [2000, 1000],
    [1000, 1000],
  ],
  stock: [],
  costs: DEFAULT_COSTS,
  rates: USUAL_RATES,
  margin: USUAL_MARGIN,
  materials: [],
  strips: [],
  assumed: [],
});
