import type { CoreFindings } from '@tinwright/core';
import type { Tellings } from './telling.js';

const CUT = 'its places are cut already: mind it when the part is made again';
const RIVET_IT = 'rivet it, or take nearer thicknesses';

/** What the core finds, in English. */
export const ENGLISH_CORE: Tellings<CoreFindings> = {
  'radius-small': {
    message: ({ value, limit, names, material, thickness }, t) =>
      `inside radius ${t.size(value)} at ${names.join(', ')}, ${t.least(limit)} is the least for ${t.material(material)} ${t.size(thickness)} thick`,
    aim: ({ limit }, t) =>
      `bend to ${t.least(limit)} inside, or try one on an offcut across the rolling direction`,
  },
  'no-compensation': {
    message: ({ value }, t) =>
      `laid out at nominal sizes: finished sizes come out larger, by up to ${t.size(value)} a bend`,
    aim: () => 'use another bending rule where sizes matter',
  },
  'edge-short': {
    message: ({ value, limit, count }, t) =>
      count === 1
        ? `an edge of ${t.size(value)} is shorter than the ${t.size(limit)} a table cuts sharp`
        : `${count} edges are shorter than the ${t.size(limit)} a table cuts sharp, the shortest ${t.size(value)}`,
    aim: () => 'file them square where it matters, or make gaps, slots and steps there larger',
  },
  'measured-far': {
    message: ({ size, measured, computed, value }, t) =>
      `${size} measured at ${t.size(measured)}, computed ${t.size(computed)}: ${t.size(value)} apart`,
    aim: () => 'measure again; if it is right, check stock and bends',
  },
  'piece-loose': {
    message: ({ piece, more }) =>
      more === 0
        ? `${piece} is joined to nothing`
        : `${piece} and ${more} more ${more === 1 ? 'piece' : 'pieces'} of it are joined to nothing`,
    aim: () => 'give it a joint, or lower the quantity',
  },
  'pieces-differ': {
    message: ({ quantity }) =>
      `its ${quantity} pieces are fastened in different places; their one pattern carries the marks of all`,
    aim: () => 'ask for the same count at each, or make them parts of their own',
  },
  'loop-open': {
    message: ({ ends: [a, b], tilt, into, gap, aside, limit }, t) => {
      const wrong = [
        ...(tilt === null ? [] : [`the parts stand at ${t.number(tilt, 2)}° to each other`]),
        ...(into === null ? [] : [`the parts run ${t.size(into)} into each other`]),
        ...(gap === null ? [] : [`a gap of ${t.size(gap)} stays open, ${t.most(limit)} at most`]),
        ...(aside === null ? [] : [`the seats lie ${t.size(aside)} beside each other`]),
      ];
      return `the joints do not close: between ${a} and ${b} ${wrong.join(' and ')}`;
    },
    aim: ({ tilt, ends: [a, b] }, t) =>
      tilt === null
        ? 'change a size of the part by that much, or let it follow the other part'
        : tilt > 135
          ? `join at the other face of ${a} or of ${b}, or bend one of the parts the other way`
          : `change an angle of one of the parts by ${t.number(tilt, 2)}°, or join them at other sites`,
  },
  'joint-empty': {
    message: ({ ends: [a, b], value, limit }, t) =>
      value === 0
        ? `the faces of ${a} and ${b} do not lie over each other, so nothing can be fastened`
        : `${t.size(value)} stay open between ${a} and ${b}, ${t.most(limit)} at most: a bend is in the way`,
    aim: ({ value }) =>
      value === 0
        ? 'check the sizes and the shift that bring them together'
        : 'change the size of one of them, so that it stays clear of the bend',
  },
  'joint-overhang': {
    message: ({ panel, piece, over, value }, t) =>
      `${panel} of ${piece} stands ${t.size(value)} past the edge of ${over}`,
    aim: ({ over }) => `make it narrower, or ${over} wider there, or round its corners`,
  },
  'overlap-narrow': {
    message: ({ faces: [a, b], value, limit, toBend, bend }, t) =>
      `${a} over ${b} is narrow: ${t.size(value)} to edges and ${t.size(toBend)} to bends can be kept, ${t.size(limit)} and ${t.size(bend)} wanted`,
    aim: ({ more }, t) =>
      more === null ? CUT : `make them overlap by ${t.least(more)} more, or take a smaller fastener`,
  },
  'joint-turns': {
    message: ({ faces: [a, b] }) => `${a} hangs on ${b} by one fastener only, and can turn about it`,
    aim: ({ faces: [a, b], more }, t) =>
      more === null
        ? 'ask for 2'
        : `make ${a} and ${b} lie over each other by ${t.least(more)} more: two then fit`,
  },
  'pitch-close': {
    message: ({ count, value, limit }, t) =>
      `two of its ${count} fasteners stand ${t.size(value)} apart, ${t.least(limit)} at least`,
    aim: ({ most }) => (most === null ? CUT : most === 1 ? 'ask for one only' : `ask for ${most} at most`),
  },
  'fastener-left-out': {
    message: ({ value, pitch }, t) =>
      `${value} of its fasteners left out: another goes through the same sheet less than ${t.least(pitch)} from there`,
    aim: () => 'ask for a count or a pitch of your own, or leave it so',
  },
  'hole-crowded': {
    message: ({ parts, value }) =>
      `holes without room on ${parts.join(', ')}, too near to an edge or another hole: ${value}; marked, not cut`,
    aim: () => 'drill through the other part, or ask for the same count at each piece',
  },
  'drill-after-bending': {
    message: ({ value, limit }, t) =>
      `holes of a joint of the part with itself might miss each other by ${t.size(value)} once it is bent, where ${t.most(limit)} is allowed; those of the second sheet are marked, not cut`,
    aim: () => 'drill them through the first sheet after bending, or bend test strips for a surer rule',
  },
  'fastener-lost': {
    message: ({ made, other, value }) =>
      `${made} is made, and ${value} of its fastening places no longer land on ${other}`,
    aim: ({ made, other }) => `change the sizes of ${other}, or make ${made} again`,
  },
  'fastener-apart': {
    message: ({ pieces: [a, b], value }, t) =>
      `${a} and ${b} are both made, and their fastening places lie ${t.size(value)} apart`,
    aim: ({ pieces: [, b] }) => `make ${b} again, or drill new places through both`,
  },
  'fastener-doubt': {
    message: ({ made, value }, t) =>
      `holes of ${made.join(' and ')} are taken to lie about the middle of what was measured: at which end it is short or long is not known, and they may lie ${t.size(value)} from there`,
    aim: ({ made }) =>
      `measure from an end of ${made.join(' and ')} to one of its holes before the other part is cut, or drill that through it`,
  },
  'fit-tight': {
    message: ({ between: [a, b], value, limit }, t) =>
      `${t.size(value)} between ${t.spot(a)} and ${t.spot(b)}, ${t.size(limit)} asked for`,
    aim: ({ value, limit }, t) => `give it ${t.least(limit - value)} more, or ask for less clearance`,
  },
  'fastener-in-way': {
    message: ({ piece, count, value }, t) =>
      `${count === 1 ? 'the head or tail of a fastener stands' : `heads or tails of ${count} fasteners stand`} in the way of ${piece}, whichever way round, by ${t.size(value)}`,
    aim: ({ piece }) => `give ${piece} more room there, or set the fasteners elsewhere`,
  },
  clash: {
    message: ({ between: [a, b], value }, t) =>
      `${t.spot(a)} and ${t.spot(b)} are in the same place, ${t.size(value)} deep`,
    aim: ({ between: [a, b], by, made }, t) =>
      made.length === 0
        ? `stand ${b.piece} or ${a.piece} elsewhere`
        : `make ${made.join(' or ')} smaller there by ${t.least(by)}${made.length === 1 ? `, or stand ${made[0] === b.piece ? a.piece : b.piece} elsewhere` : ''}`,
  },
  'hinge-swing': {
    message: ({ hinge, between: [a, b], value, limit }, t) =>
      `opens to ${t.number(value, 1)}° on ${hinge}, ${t.number(limit, 1)}° asked for: ${t.spot(a)} then meets ${t.spot(b)}`,
    aim: ({ value }, t) => `give opens: ${t.number(value, 1)} or less, or move what is in its way`,
  },
  'weld-zinc': {
    message: ({ weld }) =>
      weld === 'spot-weld'
        ? 'galvanised sheet: spot welds in it give off zinc fume and want more current and pressure'
        : 'galvanised sheet: plug welds in it give off zinc fume',
    aim: ({ weld }) =>
      weld === 'spot-weld'
        ? 'extract at the weld and try settings on offcuts, or rivet it'
        : 'strip the zinc round the hole and extract at the weld, or rivet it',
  },
  'weld-ratio': {
    message: ({ thin, thick }, t) =>
      `sheets of ${t.size(thin)} and ${t.size(thick)} in one weld, 3 to 1 at most`,
    aim: () => RIVET_IT,
  },
  'weld-thickness': {
    message: ({ value, least, most }, t) =>
      `a sheet of ${t.size(value)} to spot-weld, ${t.least(least)} to ${t.most(most)} is usual`,
    aim: () => RIVET_IT,
  },
  'weld-stack': {
    message: ({ value }, t) => `a stack of ${t.size(value)}, four times the thinnest sheet at most`,
    aim: () => RIVET_IT,
  },
  'weld-schedule': {
    message: ({ material }, t) => `${t.material(material)}: the schedules here are for low-carbon steel`,
    aim: ({ weldable }) => (weldable ? "take the welder maker's schedule for this metal" : 'rivet it'),
  },
  'weld-layers': {
    message: ({ value, limit }) =>
      `${value} sheets lie on each other at a weld, ${limit} are meant (a hem or a tab in the stack?)`,
    aim: () => 'move the weld off the hem, or notch the hem',
  },
  'weld-throat': {
    message: ({ value, limit }, t) =>
      `the arms reach ${t.size(limit)} over the work, the weld furthest in needs ${t.size(value)}`,
    aim: () => 'weld before the parts in the way are on, or rivet it',
  },
  'rivet-grip': {
    message: ({ rivet, value, grips }, t) =>
      `a ${rivet} rivet through ${t.size(value)}, its lengths hold ${grips.map(([a, b]) => `${t.least(a)} to ${t.most(b)}`).join(' and ')}`,
    aim: ({ take }) =>
      take === null
        ? 'no rivet listed here holds it: take thinner sheets, or another fastening'
        : `take a ${take} rivet, which holds it`,
  },
  'rivet-thin': {
    message: ({ rivet, limit }, t) =>
      `a ${rivet} rivet in a sheet of ${t.size(limit)}, no thinner than the thickest sheet`,
    aim: ({ limit }, t) => `take a rivet of ${t.least(limit)} or more`,
  },
  'rivet-layers': {
    message: ({ value, limit }) => `${value} sheets lie on each other at a rivet, ${limit} are drilled`,
    aim: () => 'move the rivet off the hem or tab',
  },
};
