import type { ShopFindings } from '@tinwright/shop';
import { englishReason } from '../reasons/english.js';
import { englishMend } from '../reasons/english-mend.js';
import { fewMends } from '../reasons/few-mends.js';
import type { Tellings } from './telling.js';

/** What a shop finds, in English. */
export const ENGLISH_SHOP: Tellings<ShopFindings> = {
  'blank-large': {
    message: ({ x, y, value, limit }, t) =>
      `a blank of ${t.size(x)} by ${t.size(y)} fits no sheet in the rack: ${t.size(value)}, ${t.most(limit)} at most`,
    aim: ({ limit }, t) => `keep the blank within ${t.most(limit)} that way`,
    remedy: () => 'join it from two parts',
  },
  'cut-large': {
    message: ({ value, limit, machine }, t) =>
      `the blank is ${t.size(value)} long, the ${machine} takes ${t.most(limit)}`,
    aim: ({ limit }, t) => `keep the blank within ${t.most(limit)}`,
    remedy: () => 'cut it with snips or hand shears',
  },
  'sheet-thick': {
    message: ({ value, limit, machine, material }, t) =>
      `${t.material(material)} of ${t.size(value)}, the ${machine} takes ${t.most(limit)}`,
    aim: ({ limit }, t) => `take sheet of ${t.most(limit)} or thinner`,
  },
  'leg-short': {
    message: ({ value, limit, names: [panel] }, t) =>
      `${panel} is ${t.size(value)} long outside, ${t.least(limit)} at least for the radius of its bend`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} or longer`,
    remedy: () => 'bend it with a smaller radius',
  },
  'flange-low': {
    message: ({ value, limit, panel, names: [name] }, t) =>
      `${name} is ${t.size(value)} high on a panel of ${t.size(panel)}, which sags while it is bent: ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} or higher`,
    remedy: () => 'hold the panel up while it is bent',
  },
  'radius-made': {
    message: ({ value, names: [bend], asked, made, longer, machine }, t) =>
      `${bend} asks for ${t.size(asked)} inside, the ${machine} makes ${t.size(made)}: its legs come out ${t.size(value)} ${longer > 0 ? 'longer' : 'shorter'} together`,
    aim: ({ asked, made, least }, t) =>
      made < least - 1e-6
        ? `bend it over tools that make ${t.least(Math.max(asked, least))}; this metal needs ${t.least(least)} or more`
        : `lay it out with insideRadius ${t.size(made)}`,
  },
  'radius-strict': {
    message: ({ value, limit, names, material, thickness }, t) =>
      `inside radius ${t.size(value)} at ${names.join(', ')}; the stricter of two sources asks for ${t.least(limit)} in ${t.material(material)} ${t.size(thickness)} thick`,
    aim: ({ limit }, t) => `bend to ${t.least(limit)} inside, or try one on an offcut first`,
  },
  'hem-tight': {
    message: ({ value, limit, names: [hem], material, thickness }, t) =>
      `${hem} is folded to ${t.size(value)} inside, ${t.material(material)} ${t.size(thickness)} thick takes ${t.least(limit)}: it may crack`,
    aim: ({ limit }, t) => `take an open hem with a gap of ${t.least(2 * limit)} or more`,
    remedy: () => 'try one on an offcut',
  },
  'hem-short': {
    message: ({ value, limit, names: [hem] }, t) =>
      `${hem} is ${t.size(value)} wide over its fold, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} or wider`,
  },
  'hem-near-bend': {
    message: ({ value, limit, names }, t) =>
      `${t.size(value)} of wall between the folds ${names.join(' and ')}, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `leave ${t.least(limit)} between them`,
  },
  'offset-small': {
    message: ({ value, limit, names: [panel] }, t) =>
      `${panel} steps over by ${t.size(value)}; up to ${t.most(limit)} takes an offset die, not two bends`,
    aim: ({ limit }, t) => `step over by more than ${t.least(limit)}`,
    remedy: () => 'press it in an offset die',
  },
  'corner-gap': {
    message: ({ value, limit, names }, t) =>
      `${t.size(value)} left between ${names.join(' and ')} once formed, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `leave ${t.least(limit)} there`,
    remedy: () => 'file the edges back before bending',
  },
  'relief-shallow': {
    message: ({ value, limit, corners, names }, t) =>
      `the cut at ${corners} corner${corners === 1 ? '' : 's'} of ${names.join(', ')} ends ${value < 0.01 ? 'at' : `${t.size(value)} past`} the tangent lines of the bends that meet there; ${t.least(limit)} past them keeps the metal from puckering`,
    remedy: ({ drill }, t) => `drill a hole of ${t.size(drill)} there before cutting`,
  },
  'relief-narrow': {
    message: ({ value, limit, names: [bend] }, t) =>
      `the cut beside the end of the bend ${bend} is ${t.size(value)} wide, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `cut it ${t.least(limit)} wide`,
  },
  'hole-near-bend': {
    message: ({ value, limit, names: [panel], bend, diameter, of }, t) => {
      const kind = of === 'joint' ? "a fastener's hole" : 'a hole';
      const hole = diameter === null ? `a cut-out in ${panel}` : `${kind} of ${t.size(diameter)} in ${panel}`;
      const found = value > 0 ? `ends ${t.size(value)} from` : 'runs into';
      return `${hole} ${found} the bend ${bend}, ${t.least(limit)} at least`;
    },
    aim: ({ limit }, t) => `keep its edge ${t.least(limit)} from the bend`,
    remedy: ({ diameter }) => (diameter === null ? 'cut it after bending' : 'drill it after bending'),
  },
  'slot-near-bend': {
    message: ({ value, limit, names: [panel], bend }, t) =>
      `a slot in ${panel} beside ${bend} ends ${t.size(value)} from the bend, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `keep it ${t.least(limit)} from the bend`,
    remedy: () => 'cut it after bending',
  },
  'hole-small': {
    message: ({ value, limit, names: [panel], material }, t) =>
      `a hole of ${t.size(value)} in ${panel}, ${t.least(limit)} at least in ${t.material(material)} of this thickness`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} or larger`,
    remedy: () => 'drill it',
  },
  'hole-under-table': {
    message: ({ value, limit, names: [panel], table }, t) =>
      `the ${table} cuts holes of ${t.least(limit)} and larger, there is one of ${t.size(value)} in ${panel}`,
    aim: () => 'drill it by hand: leave it out of what the table cuts, its centre is on the plan',
  },
  'gap-under-kerf': {
    message: ({ value, limit, table }, t) =>
      `a gap of ${t.size(value)} in the outline, the kerf of the ${table} is ${t.least(limit)}`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} wide`,
    remedy: () => 'saw or snip it by hand',
  },
  'web-narrow': {
    message: ({ value, limit, names: [panel], beside }, t) =>
      `${t.size(Math.max(0, value))} of metal between ${beside === 'hole' ? `two holes in ${panel}` : `a hole in ${panel} and the edge`}, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `leave ${t.least(limit)} between them`,
  },
  'notch-narrow': {
    message: ({ value, limit }, t) => `a notch ${t.size(value)} wide, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} wide`,
    remedy: () => 'saw it by hand',
  },
  'notch-deep': {
    message: ({ value, deep, most }, t) =>
      `a notch ${t.size(value)} wide and ${t.size(deep)} deep: more than ${most} widths is hard to punch or snip`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} wide`,
    remedy: () => 'saw it by hand',
  },
  'tab-narrow': {
    message: ({ value, limit }, t) => `a strip of metal ${t.size(value)} wide, ${t.least(limit)} at least`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} wide`,
  },
  'tab-long': {
    message: ({ value, long, most }, t) =>
      `a tab ${t.size(value)} wide and ${t.size(long)} long: more than ${most} widths bends in handling`,
    aim: ({ limit }, t) => `make it ${t.least(limit)} wide`,
    remedy: () => 'leave it on the sheet until the last cut',
  },
  'weld-electrode': {
    message: ({ value, limit, names: [panel], bend }, t) =>
      `a spot weld in ${panel} is ${t.size(value)} from the bend ${bend}, ${t.least(limit)} at least for the electrode`,
    aim: ({ limit, electrode }, t) =>
      electrode === null
        ? `leave ${t.least(limit)} beside the bend`
        : `take electrodes of ${t.most(electrode)} or thinner`,
  },
  grain: {
    message: ({ value, names, axis, runs }, t) =>
      runs === 'across'
        ? `bends with an inside radius of ${t.size(value)}: they run across the rolling direction only with ${axis} of the blank along the long side of the sheet`
        : `${names.join(', ')}, with an inside radius of ${t.size(value)}, ${names.length === 1 ? 'runs' : 'run'} along the rolling direction whichever way the blank is laid: metal cracks sooner that way`,
    aim: ({ limit, axis, runs }, t) =>
      runs === 'across'
        ? `lay the blank with its ${axis} along the long side of the sheet`
        : `bend to ${t.least(limit)} inside, or try one along the rolling direction on an offcut`,
  },
  tolerance: {
    message: ({ expected }, t) =>
      `expect ${expected
        .map(({ on, size, deviation, angle }) =>
          on === 'bent'
            ? `±${t.size(deviation)} on the bent size of ${t.size(size)} and ±${angle}° on its angles`
            : `±${t.size(deviation)} on the cut length of ${t.size(size)}`,
        )
        .join(', ')}`,
    aim: () => 'where a size has to be closer, measure the first piece and correct the next',
  },
  'welder-missing': {
    message: () => 'spot welds, and the shop has no spot welder',
    aim: () => 'rivet it',
  },
  'welder-sheet': {
    message: ({ value, machine, least, most }, t) =>
      `a sheet of ${t.size(value)}, the ${machine} welds ${t.least(least)} to ${t.most(most)}`,
    aim: ({ least, most }, t) => `take sheet of ${t.least(least)} to ${t.most(most)}, or rivet it`,
  },
  'welder-throat': {
    message: ({ value, limit, machine }, t) =>
      `the weld furthest in is ${t.size(value)} from where the arms come in, the throat of the ${machine} is ${t.most(limit)}`,
    aim: () => 'weld before the parts in the way are on, or rivet it',
  },
  'riveter-missing': {
    message: () => 'blind rivets, and the shop has no rivet gun',
    aim: () => 'screw or weld it',
  },
  'riveter-size': {
    message: ({ value, machine, sets }, t) =>
      `rivets of ${t.size(value)}, the ${machine} sets ${sets.map(t.size).join(', ')}`,
    aim: ({ limit }, t) => `take rivets of ${t.size(limit)}`,
  },
  'strip-contradicts': {
    message: ({ value, k, opens, fit, ...f }, t) =>
      f.in === 'lengths'
        ? `contradicts the others: its deduction is ${t.size(value)} off (K = ${t.number(k, 3)} by itself)`
        : `contradicts the others: it would open by ${t.number(opens, 2)} deg at 90 deg, the fit by ${t.number(fit, 2)} deg`,
    aim: () => 'measure it again, or take it out of the file',
  },
  'strip-closes': {
    message: ({ value, set }, t) =>
      `left at ${t.number(value, 2)} deg, bent further than the ${t.number(set, 2)} deg it was set to; metal opens again`,
    aim: ({ value }, t) =>
      `give both as bent through from flat: a protractor that shows ${t.number(value, 2)} between the legs means ${t.number(180 - value, 2)}`,
  },
  'strip-narrow': {
    message: ({ value }, t) => `${t.size(value)} wide; a bend so short spreads at its ends as no part does`,
    aim: ({ limit }, t) => `bend a strip ${t.least(limit)} wide or more`,
  },
  'strip-few': {
    message: ({ value }) =>
      `${value} of the strips counted; the error is what the readings allow, scatter does not show yet`,
    aim: ({ limit }) => `bend and measure ${limit} strips or more`,
  },
  'die-narrow': {
    message: ({ value, limit, names: [bend], die, times }, t) =>
      `${bend} over ${die}: a V of ${t.size(value)} is ${t.number(times, 1)} times the sheet, ${t.least(limit)} at least as a rule: over less it marks the sheet, and the force is high`,
    aim: ({ usual }, t) => `bend it over a V of some ${t.size(usual)}, or try one on an offcut first`,
  },
  'die-wide': {
    message: ({ value, limit, names: [bend], die, times }, t) =>
      `${bend} over ${die}: a V of ${t.size(value)} is ${t.number(times, 1)} times the sheet, tables go to ${t.most(limit)}: the angle comes out less sure`,
    aim: ({ usual }, t) =>
      `bend an offcut first; where the radius may be smaller, a V of some ${t.size(usual)} is usual`,
  },
  'bend-order': {
    message: ({ shop, proved, reason }, t) =>
      `${proved ? 'no order of bends works' : 'no order of bends was found'} in ${shop ?? 'the shop'}${reason === null ? '' : `: ${englishReason(reason, t)}`}`,
    aim: ({ mends }, t) =>
      mends.length === 0
        ? 'no other size, tool or machine that was tried makes it possible: make it from more pieces, or with other bends'
        : fewMends(mends)
            .map((m) => englishMend(m, t))
            .join('; or '),
  },
};
