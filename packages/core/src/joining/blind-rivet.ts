import type { Remark } from '../errors/finding.js';
import {
  type AnyFastenerKind,
  extremes,
  type FastenerAsk,
  type FastenerNeeds,
  type FastenerPlace,
  fastenerKind,
  type StackSheet,
  stackThickness,
} from './fastener.js';
import { holds, RIVET_RULES, RIVET_SIZES, type RivetSize, rivetSize } from './rivet-tables.js';

/** Values a joint may give for blind rivets. */
export interface BlindRivetAsk extends FastenerAsk {
  /** Nominal diameter, mm. */
  readonly diameter: number;
}

const HEAD_CLEARANCE = 1; // mm between a head and the start of a bend. Common practice, no source.
const sizeOf = ({ diameter }: BlindRivetAsk) => rivetSize(diameter) as RivetSize;

/** Least distances of blind rivets, the stricter source taken. */
export function rivetNeeds(stack: readonly StackSheet[], ask: BlindRivetAsk): FastenerNeeds {
  const size = sizeOf(ask);
  const edge = RIVET_RULES.edge.reduce((a, b) => (b.factor > a.factor ? b : a));
  const other = RIVET_RULES.edge.find((r) => r !== edge);
  return {
    edge: edge.factor * size.diameter,
    edgeSource: `${edge.factor} D by ${edge.source}, ${other?.factor} D by ${other?.source}; the stricter taken`,
    pitch: RIVET_RULES.pitch.factor * size.diameter,
    pitchSource: `${RIVET_RULES.pitch.factor} D by ${RIVET_RULES.pitch.source}`,
    usualPitch: RIVET_RULES.usualPitch.factor * size.diameter,
    bend: size.head / 2 + HEAD_CLEARANCE,
    bendSource: (say) =>
      `half the head (${say.size(size.head)}) and ${say.size(HEAD_CLEARANCE)}, common practice, no source`,
    holes: stack.map(() => size.hole[0]),
  };
}

/** The nearest size that holds a stack and is no thinner than its thickest sheet. */
function gripFix({ diameter }: RivetSize, total: number, thick: number): string {
  const others = RIVET_SIZES.filter((r) => holds(r, total) && r.diameter >= thick - 1e-9);
  if (others.length === 0) return 'no rivet listed here holds it: take thinner sheets, or another fastening';
  return `take a ${nearestTo(diameter, others, (r) => r.diameter).name} rivet, which holds it`;
}

const nearestTo = <T>(wanted: number, list: readonly T[], of: (one: T) => number): T =>
  list.reduce((a, b) => (Math.abs(of(b) - wanted) < Math.abs(of(a) - wanted) ? b : a));

function remarks(
  stack: readonly StackSheet[],
  ask: BlindRivetAsk,
  { layers }: FastenerPlace,
): readonly Remark[] {
  const size = sizeOf(ask);
  const total = stackThickness(stack);
  const [, thick] = extremes(stack);
  const found: Remark[] = [];
  if (!holds(size, total))
    found.push({
      code: 'rivet-grip',
      severity: 'warning',
      value: total,
      limit: nearestTo(total, size.grips.flat(), (b) => b),
      unit: 'mm',
      message: (say) =>
        `a ${size.name} rivet through ${say.size(total)}, its lengths hold ${size.grips.map(([a, b]) => `${say.least(a)} to ${say.most(b)}`).join(' and ')}`,
      source: size.source,
      fix: gripFix(size, total, thick),
    });
  if (size.diameter < thick - 1e-9)
    found.push({
      code: 'rivet-thin',
      severity: 'warning',
      value: size.diameter,
      limit: thick,
      unit: 'mm',
      message: (say) =>
        `a ${size.name} rivet in a sheet of ${say.size(thick)}, no thinner than the thickest sheet`,
      source: 'NAVEDTRA 14018',
      fix: (say) => `take a rivet of ${say.least(thick)} or more`,
    });
  if (layers > stack.length)
    found.push({
      code: 'rivet-layers',
      severity: 'warning',
      value: layers,
      limit: stack.length,
      unit: '',
      message: `${layers} sheets lie on each other at a rivet, ${stack.length} are drilled`,
      source: 'common practice, no source',
      fix: 'move the rivet off the hem or tab',
    });
  return found;
}

/** Blind rivets; holes are cut or drilled before assembly. */
export const blindRivet: AnyFastenerKind = fastenerKind<BlindRivetAsk>({
  name: 'blind-rivet',
  options: (k) => ({
    diameter: k.instead(
      k.sizeOf(
        (d) => rivetSize(d) !== null,
        () => RIVET_SIZES.map((r) => r.name).join(', '),
      ),
      '3.2 mm',
    ),
  }),
  needs: rivetNeeds,
  remarks,
});
