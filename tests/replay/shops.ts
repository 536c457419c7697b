// Seven shops that parts are planned in.
import { DEFAULT_SHOP, EXAMPLE_PRESS, type Shop } from '@tinwright/shop';

const brake = DEFAULT_SHOP.brake as NonNullable<Shop['brake']>;

const capacity = brake.capacity;
const handSeamer = { name: 'hand seamer', width: 90, depth: 30, jaw: 8, capacity };

export const SHOPS: Readonly<Record<string, Shop>> = {
  school: DEFAULT_SHOP,
  garden: {
    ...DEFAULT_SHOP,
    name: 'deep feet, a leaf without bars, a rear stop, a seamer, no vise',
    brake: {
      ...brake,
      finger: { foot: 60, upright: 35, noseAngle: 45, noseRadius: 0.5 },
      clearHeight: 75,
      beam: 35,
      leaf: { width: 20, stop: 120 },
      fingers: [25, 50, 75, 100, 125, 150, 175, 200],
      gaps: { end: 10, inner: 6 },
      rearStop: 400,
      rearStopHeight: 15,
    },
    vise: null,
    handSeamer,
  },
  pair: {
    ...DEFAULT_SHOP,
    name: 'a straight brake and a short one with fingers',
    brake: { ...brake, name: 'straight brake', fingers: [1000], leaf: { width: 40, stop: 120 } },
    brakes: [
      {
        ...brake,
        name: 'short brake',
        length: 400,
        fingers: [25, 30, 40, 50, 75, 100, 150],
        clearHeight: 60,
        setBack: [1, 2],
        gaps: { end: 10, inner: 6 },
      },
    ],
    vise: null,
  },
  press: { ...DEFAULT_SHOP, name: 'press only', brake: null, vise: null, press: EXAMPLE_PRESS },
  ends: {
    ...DEFAULT_SHOP,
    name: 'press with horns',
    brake: null,
    vise: null,
    press: {
      ...EXAMPLE_PRESS,
      punches: EXAMPLE_PRESS.punches.map((p) => ({
        ...p,
        horns: { widths: [55, 60], reach: 25, foot: 12, height: 90 },
      })),
    },
  },
  both: { ...DEFAULT_SHOP, name: 'brake, press, vise', press: EXAMPLE_PRESS, handSeamer },
  bench: {
    ...DEFAULT_SHOP,
    name: 'vise and seamer, a block, and a straight jaw',
    formerBlock: { name: 'former block', length: 400, width: 40, height: 60, capacity },
    brake: { ...brake, fingers: [1000] },
    handSeamer,
  },
};
