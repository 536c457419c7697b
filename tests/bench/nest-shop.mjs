// What a nest is worth to a shop: the example's parts in seven sizes, six objects of each, on sheets of 2 x 1 m, 5 mm
// apart: metres of sheet used, by the search, by bottom-left in order of area alone, and by the same search over the
// rectangles of the blanks.
import { planJob, readJob } from '@tinwright/core';
import { corner } from '@tinwright/core/internal';
import { findNest, NO_TRIM, QUARTER_TURNS, verifyNest } from '@tinwright/cutting';
import { carrierData } from './carrier.mjs';

// length, width, height of the body, mm
const SIZES = [
  [400, 200, 55],
  [300, 160, 50],
  [340, 180, 55],
  [360, 220, 60],
  [440, 200, 60],
  [480, 240, 65],
  [520, 260, 70],
];
const OBJECTS = 6;
const FULL = { name: 'full', origin: 'sheet', x: 2000, y: 1000, outline: null, count: 20, price: null };

function partsOf([length, width, height]) {
  const data = carrierData();
  const [body, end, ...others] = data.parts;
  const parts = [{ ...body, length, width, height }, { ...end, shoulderHeight: height - 2 }, ...others];
  return planJob(readJob({ ...data, parts })).parts.map((p) => ({
    part: `${p.name}-${length}`,
    material: p.material.name,
    thickness: p.sheet.thickness,
    outline: p.flat.outline,
    holes: p.flat.holes,
    quantity: p.quantity * OBJECTS,
    grain: null,
    blank: p.flat.blank.max,
  }));
}

const boxed = ({ blank: [x, y], ...part }) => ({
  ...part,
  outline: [corner(0, 0), corner(x, 0), corner(x, y), corner(0, y)],
  holes: [],
});

function used(parts, moves) {
  const [{ material, thickness }] = parts;
  const rack = {
    sheets: [{ ...FULL, material, thickness, grain: null, trim: NO_TRIM }],
    kerf: 1.5,
    leastOffcut: { x: 100, y: 100 },
  };
  const nest = findNest({ parts, rack, spacing: 5, edge: 5, turns: QUARTER_TURNS }, { seeds: [1], moves });
  const [flaw] = verifyNest(nest, parts);
  if (flaw !== undefined || nest.missing.length > 0) throw new Error(flaw?.code ?? 'pieces are missing');
  return { sheets: nest.sheets.length, metres: nest.sheets.reduce((sum, s) => sum + s.usedTo, 0) / 1000 };
}

/** @param moves of one piece, for each search */
export function nestForShop(moves) {
  const parts = SIZES.flatMap(partsOf);
  const say = ({ sheets, metres }) => `${metres.toFixed(2)} m of ${sheets} sheets`;
  return [
    `example in seven sizes, ${OBJECTS} of each, ${parts.reduce((n, p) => n + p.quantity, 0)} parts on 2 x 1 m, ${moves} moves:`,
    `true shapes ${say(used(parts, moves))}; bottom-left by area ${say(used(parts, 0))}; rectangles of the blanks ${say(used(parts.map(boxed), moves))}`,
  ].join(' ');
}
