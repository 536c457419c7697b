import type { CuttingFindings, LeftWhy, OnSheet } from '@tinwright/cutting';
import type { Tellings, Tongue } from './telling.js';

const WHY: Readonly<Record<LeftWhy, string>> = {
  'too-large': 'larger than every sheet of its metal',
  'no-metal': 'no sheet of its metal in the rack',
  'stock-short': 'no room was left on the stock',
  grain: 'too large for the sheets along the grain it asks for',
  shear: 'too long or too thick for the shear',
  'sheet-long': 'the sheet is longer both ways than the shear',
};

const REMEDY: Readonly<Record<LeftWhy, string>> = {
  'too-large': 'add a sheet that it fits on, or make it in two',
  'no-metal': 'add a sheet of it to the rack',
  'stock-short': 'add sheets to the rack',
  grain: 'leave its grain out, or add a sheet rolled the other way',
  shear: 'cut it on a table, or have it cut elsewhere',
  'sheet-long': 'have the sheet cut in two elsewhere and give the halves in the rack',
};

const NO_COMMON = {
  kerf: 'the kerf is 0, and the table would cut beside the line',
  'by-hand': 'outlines are cut by hand',
  edges: 'no straight edges lie far enough along each other',
} as const;

const COMMON_REMEDY = {
  kerf: 'give the width of the cut',
  'by-hand': 'say cutBy: table, or leave common cuts out',
  edges: 'ask for turns by quarters and a spacing no larger than the kerf, or leave common cuts out',
} as const;

const place = ({ sheet, piece, on, places }: OnSheet, t: Tongue): string =>
  `${piece} on ${sheet} at ${t.size(on[0])}, ${t.size(on[1])}${places > 1 ? ` and ${places - 1} more` : ''}`;

/** What is found on sheets, in English. */
export const ENGLISH_CUTTING: Tellings<CuttingFindings> = {
  'edge-under-kerf': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: an edge of ${t.size(value)} is shorter than the cut of ${t.size(limit)} is wide, its corners come out round`,
    remedy: () => 'file it square where it matters',
  },
  'slot-closes': {
    message: ({ limit, ...at }, t) =>
      `${place(at, t)}: narrower than the cut of ${t.size(limit)}, the path leaves it out`,
    aim: ({ limit }, t) => `make it wider than ${t.least(limit)}`,
    remedy: () => 'saw or nibble it by hand',
  },
  'hole-closes': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: a hole of ${t.size(value)} is not cut, the cut is ${t.size(limit)} wide`,
    remedy: () => 'drill it; --small-holes mark marks its centre',
  },
  'lead-short': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: the lead-in is ${t.size(value)} long instead of ${t.size(limit)}`,
    remedy: () => 'leave more spacing, or ask for shorter lead-ins',
  },
  'lead-none': {
    message: (at, t) => `${place(at, t)}: no room for a lead-in, the cut starts on its line`,
    remedy: () => 'leave more spacing, or ask for shorter lead-ins',
  },
  'common-cut': {
    message: ({ value, ...at }, t) =>
      `${place(at, t)}: ${t.size(value)} of its edge are cut with a neighbour's, and have the slanting side of that cut; parts come loose beside cuts still to be made`,
    remedy: () =>
      'see that no loose part stands up in the way of the torch; leave common cuts out where edges must be square',
  },
  'ties-few': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: ${value} of ${limit} micro-joints, what is cut for two parts at once leaves no room for more`,
    remedy: () => 'hold the part otherwise, or leave common cuts out',
  },
  'common-cut-none': {
    message: ({ why }) => `no cut is made for two parts at once: ${NO_COMMON[why]}`,
    remedy: ({ why }) => COMMON_REMEDY[why],
  },
  'kerf-zero': {
    message: () =>
      'the kerf is 0: paths run on the drawn lines, and parts come out smaller by the width of the cut unless the table makes up for it',
    remedy: () => 'give the width of the cut, unless the controller knows it',
  },
  'left-out': {
    message: ({ count, why, kg, sheets, of }, t) =>
      `${count} without a sheet: ${WHY[why]}${
        of === null
          ? ''
          : why === 'stock-short'
            ? `; ${t.number(kg, 3)} kg of parts are missing, by area alone ${t.number(sheets, 2)} of a sheet ${of.name}`
            : `; nearest is ${of.name}, ${t.most(of.x)} x ${t.most(of.y)} usable`
      }`,
    remedy: ({ why }) => REMEDY[why],
  },
};
