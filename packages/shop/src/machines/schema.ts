import { MATERIAL_NAMES, MM_PER_INCH } from '@tinwright/core';
import { type Gives, type ParamKit, strictGroup } from '@tinwright/core/family';
import {
  numberAbove,
  numberBetween,
  ownMaterialsSchema,
  sheetRowsSchema,
  textLine,
  textName,
} from '@tinwright/core/internal';
import * as z from 'zod/mini';
import { ASSUMED } from './assumed.js';

const MOST_SECONDS = 36_000;
const MOST_BRAKES = 6;

type Group = ReturnType<typeof strictGroup>;

const text = (k: ParamKit): Gives<string> => k.or(textLine(), '');

const capacity = (k: ParamKit) =>
  k.list(
    strictGroup({ material: k.oneOf(MATERIAL_NAMES), thickness: k.size({ max: 10 }) }) as Gives<unknown>,
    1,
    MATERIAL_NAMES.length,
  );

/** A pair of lengths. */
const pair = (k: ParamKit) => k.list(k.size({ min: 0 }), 2, 2);

const section = (k: ParamKit) => k.list(k.list(signed(k), 2, 2), 3, 40);

/** A coordinate: a length that may be negative. */
function signed(k: ParamKit): Gives<number> {
  const factor = k.unit === 'mm' ? 1 : MM_PER_INCH;
  return z.pipe(
    numberBetween(-2000, 2000),
    z.transform((v) => v * factor),
  ) as Gives<number>;
}

function brake(k: ParamKit): Group {
  const { finger, leaf, gaps, ...usual } = ASSUMED.brake;
  return strictGroup({
    name: text(k),
    length: k.size(),
    capacity: capacity(k),
    fingers: k.list(k.size({ max: 3000 }), 1, 24),
    finger: k.or(
      strictGroup({
        foot: k.or(k.size({ max: 300 }), finger.foot),
        upright: k.or(k.size({ max: 300 }), finger.upright),
        noseAngle: k.or(numberBetween(20, 85, ' deg'), finger.noseAngle),
        noseRadius: k.or(k.size({ min: 0, max: 20 }), finger.noseRadius),
      }) as Gives<unknown>,
      finger,
    ),
    clearHeight: k.or(k.size({ max: 1000 }), usual.clearHeight),
    beam: k.or(k.size({ min: 0, max: 500 }), usual.beam),
    opening: k.or(k.size({ max: 500 }), usual.opening),
    leaf: k.or(
      strictGroup({
        width: k.or(k.size({ max: 500 }), leaf.width),
        stop: k.or(numberBetween(60, 180, ' deg'), leaf.stop),
      }) as Gives<unknown>,
      leaf,
    ),
    bed: k.or(k.size({ max: 2000 }), usual.bed),
    setBack: k.or(k.list(numberBetween(0, 10), 2, 2), usual.setBack),
    lowestFlange: k.or(k.size({ max: 100 }), usual.lowestFlange),
    hold: k.or(k.size({ min: 0, max: 100 }), usual.hold),
    ratedFlange: k.or(k.size({ max: 300 }), usual.ratedFlange),
    gaps: gapsOf(k, gaps),
    overbend: k.or(numberBetween(0, 20, ' deg'), usual.overbend),
    rearStop: k.maybe(k.size()),
    rearStopHeight: k.maybe(k.size({ max: 500 })),
  });
}

const gapsOf = (k: ParamKit, usual: { readonly end: number; readonly inner: number }) =>
  k.or(
    strictGroup({
      end: k.or(k.size({ min: 0, max: 100 }), usual.end),
      inner: k.or(k.size({ min: 0, max: 100 }), usual.inner),
    }) as Gives<unknown>,
    usual,
  );

function press(k: ParamKit): Group {
  const usual = ASSUMED.press;
  const tool = { name: textName(), section: section(k) };
  return strictGroup({
    name: text(k),
    length: k.size(),
    force: numberAbove(0, 10_000, ' kN'),
    punches: k.list(
      strictGroup({
        ...tool,
        angle: numberBetween(20, 120, ' deg'),
        radius: k.size({ min: 0, max: 50 }),
        lengths: k.list(k.size(), 1, 24),
        horns: k.maybe(
          strictGroup({
            widths: pair(k),
            reach: k.size({ max: 300 }),
            foot: k.size({ max: 300 }),
            height: k.size({ max: 1000 }),
          }) as Gives<unknown>,
        ),
      }) as Gives<unknown>,
      1,
      20,
    ),
    dies: k.list(
      strictGroup({
        ...tool,
        opening: k.size({ max: 200 }),
        angle: numberBetween(20, 120, ' deg'),
        sectioned: k.or(z.boolean() as unknown as Gives<boolean>, true),
      }) as Gives<unknown>,
      1,
      30,
    ),
    ram: k.or(
      strictGroup({ half: k.size({ max: 500 }), height: k.size({ max: 1000 }) }) as Gives<unknown>,
      usual.ram,
    ),
    bed: k.or(strictGroup({ half: k.size({ max: 1000 }) }) as Gives<unknown>, usual.bed),
    backGauge: k.or(
      strictGroup({
        least: k.size({ min: 0 }),
        most: k.size(),
        finger: k.or(gaugeFinger(k) as Gives<unknown>, usual.backGauge.finger),
      }) as Gives<unknown>,
      usual.backGauge,
    ),
    gaps: gapsOf(k, usual.gaps),
    overbend: k.or(numberBetween(0, 20, ' deg'), usual.overbend),
  });
}

function gaugeFinger(k: ParamKit): Group {
  const { over, under, length, width } = ASSUMED.press.backGauge.finger;
  return strictGroup({
    over: k.or(k.size({ max: 200 }), over),
    under: k.or(k.size({ min: 0, max: 200 }), under),
    length: k.or(k.size({ max: 1000 }), length),
    width: k.or(k.size({ max: 500 }), width),
  });
}

const seconds = (value: number): Gives<number> =>
  z.pipe(
    z.optional(numberBetween(0, MOST_SECONDS, ' s')),
    z.transform((v) => v ?? value),
  ) as Gives<number>;

/** Schema of a shop file. */
export function shopSchema(k: ParamKit): Gives<unknown> {
  const costs = Object.fromEntries(Object.entries(ASSUMED.costs).map(([key, v]) => [key, seconds(v)]));
  return strictGroup({
    units: z.enum(['mm', 'in']),
    name: text(k),
    note: text(k),
    profile: k.or(k.oneOf(['strict', 'usual']), 'strict'),
    cutBy: k.maybe(k.oneOf(['hand', 'table'])),
    brake: k.maybe(brake(k) as Gives<unknown>),
    brakes: k.or(k.list(brake(k) as Gives<unknown>, 0, MOST_BRAKES), []),
    press: k.maybe(press(k) as Gives<unknown>),
    vise: k.maybe(
      strictGroup({
        name: text(k),
        jaws: k.size({ max: 1000 }),
        depth: k.or(k.size({ max: 300 }), ASSUMED.vise.depth),
        grip: k.or(k.size({ max: 100 }), ASSUMED.vise.grip),
        bar: k.or(k.size({ max: 200 }), ASSUMED.vise.bar),
        jaw: k.or(k.size({ max: 500 }), ASSUMED.vise.jaw),
        bench: k.or(k.size({ max: 1000 }), ASSUMED.vise.bench),
        capacity: capacity(k),
      }) as Gives<unknown>,
    ),
    handSeamer: k.maybe(
      strictGroup({
        name: text(k),
        width: k.size({ max: 300 }),
        depth: k.size({ max: 150 }),
        jaw: k.or(k.size({ max: 50 }), ASSUMED.handSeamer.jaw),
        capacity: capacity(k),
      }) as Gives<unknown>,
    ),
    formerBlock: k.maybe(
      strictGroup({
        name: text(k),
        length: k.size({ max: 2000 }),
        width: k.or(k.size({ max: 500 }), ASSUMED.formerBlock.width),
        height: k.or(k.size({ max: 500 }), ASSUMED.formerBlock.height),
        capacity: capacity(k),
      }) as Gives<unknown>,
    ),
    shear: k.maybe(
      strictGroup({
        name: text(k),
        length: k.size(),
        capacity: capacity(k),
        rearStop: k.maybe(k.size()),
      }) as Gives<unknown>,
    ),
    spotWelder: k.maybe(
      strictGroup({
        name: text(k),
        throat: k.size({ max: 3000 }),
        electrode: k.size({ max: 50 }),
        thickness: pair(k),
      }) as Gives<unknown>,
    ),
    riveter: k.maybe(
      strictGroup({
        name: text(k),
        diameters: k.list(k.size({ max: 10 }), 1, 20),
        nose: k.or(k.size({ max: 50 }), ASSUMED.riveter.nose),
      }) as Gives<unknown>,
    ),
    table: k.maybe(
      strictGroup({
        name: text(k),
        process: k.oneOf(['laser', 'plasma']),
        length: k.size(),
        width: k.size(),
        kerf: k.size({ min: 0, max: 10 }),
        smallestHole: k.size({ max: 100 }),
      }) as Gives<unknown>,
    ),
    sheets: k.or(sheetRowsSchema(k, 'loose'), []),
    costs: k.or(strictGroup(costs) as Gives<unknown>, ASSUMED.costs),
    rates: k.or(
      strictGroup({
        stroke: seconds(ASSUMED.rates.stroke),
        setting: seconds(ASSUMED.rates.setting),
        speed: k.or(k.size({ max: 100_000 }), ASSUMED.rates.speed),
        pierce: seconds(ASSUMED.rates.pierce),
        fastener: seconds(ASSUMED.rates.fastener),
      }) as Gives<unknown>,
      ASSUMED.rates,
    ),
    margin: k.or(
      strictGroup({
        least: k.or(k.size({ min: 0, max: 20 }), ASSUMED.margin.least),
        share: k.or(numberBetween(0, 0.05), ASSUMED.margin.share),
      }) as Gives<unknown>,
      ASSUMED.margin,
    ),
    materials: k.maybe(ownMaterialsSchema(k) as Gives<unknown>),
    strips: k.or(k.list(strip(k) as Gives<unknown>, 0, 500), []),
  });
}

function strip(k: ParamKit): Group {
  return strictGroup({
    name: textName(),
    material: k.oneOf(k.materials),
    thickness: k.size({ max: 10 }),
    insideRadius: k.size({ min: 0, max: 100 }),
    k: numberAbove(0, 1),
    kError: k.or(numberBetween(0, 1), 0),
    springback: k.maybe(numberBetween(-10, 45, ' deg')),
    springbackError: k.or(numberBetween(0, 45, ' deg'), 0),
    strips: k.or(k.count(1, 1000), 1),
  });
}
