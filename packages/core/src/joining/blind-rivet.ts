import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMMON_PRACTICE, cite } from '../errors/source.js';
import {
  extremes,
  type FastenerAsk,
  type FastenerEnds,
  type FastenerNeeds,
  type FastenerPlace,
  fastenerKind,
  type NamedFastenerKind,
  type StackSheet,
  stackThickness,
} from './fastener.js';
import { cutHole, holds, RIVET_RULES, RIVET_SIZES, type RivetSize, rivetSize } from './rivet-tables.js';

/** Values a joint may give for blind rivets. */
export interface BlindRivetAsk extends FastenerAsk {
  /** Nominal diameter, mm. */
  readonly diameter: number;
}

const HEAD_CLEARANCE = 1; // mm between a head and the start of a bend. Common practice, no source.
const sizeOf = ({ diameter }: BlindRivetAsk) => rivetSize(diameter) as RivetSize;

/** Least distances of blind rivets, the stricter source taken. */
function rivetNeeds(stack: readonly StackSheet[], ask: BlindRivetAsk): FastenerNeeds {
  const size = sizeOf(ask);
  const edge = RIVET_RULES.edge.reduce((a, b) => (b.factor > a.factor ? b : a));
  const other = RIVET_RULES.edge.find((r) => r !== edge);
  return {
    edge: edge.factor * size.diameter,
    edgeSource: [
      cite(edge.source, { rule: `${edge.factor} D`, basis: 'stricter' }),
      ...(other === undefined ? [] : [cite(other.source, { rule: `${other.factor} D` })]),
    ],
    pitch: RIVET_RULES.pitch.factor * size.diameter,
    pitchSource: [cite(RIVET_RULES.pitch.source, { rule: `${RIVET_RULES.pitch.factor} D` })],
    usualPitch: RIVET_RULES.usualPitch.factor * size.diameter,
    bend: size.head / 2 + HEAD_CLEARANCE,
    bendSource: [cite(null, { rule: '½ D(head) + #', size: 1, basis: 'common-practice' })],
    holes: stack.map(() => cutHole(size)),
  };
}

// Of the diameter, a protruding head and a set blind end; from memory, no source.
const HEAD_HEIGHT = 0.25;
const TAIL = { diameter: 1.5, height: 1 };

/** The head, and the end that is drawn up on the blind side. */
function rivetEnds(ask: BlindRivetAsk): FastenerEnds {
  const { diameter, head } = sizeOf(ask);
  return {
    head: { diameter: head, height: HEAD_HEIGHT * diameter },
    tail: { diameter: TAIL.diameter * diameter, height: TAIL.height * diameter },
  };
}

/** The nearest size that holds a stack and is no thinner than its thickest sheet. */
function gripTake({ diameter }: RivetSize, total: number, thick: number): string | null {
  const others = RIVET_SIZES.filter((r) => holds(r, total) && r.diameter >= thick - 1e-9);
  return others.length === 0 ? null : nearestTo(diameter, others, (r) => r.diameter).name;
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
    found.push(
      remark('rivet-grip', 'warning', {
        value: total,
        limit: nearestTo(total, size.grips.flat(), (b) => b),
        unit: 'mm',
        values: { rivet: size.name, grips: size.grips, take: gripTake(size, total, thick) },
        source: [cite(size.source)],
      }),
    );
  if (size.diameter < thick - 1e-9)
    found.push(
      remark('rivet-thin', 'warning', {
        value: size.diameter,
        limit: thick,
        unit: 'mm',
        values: { rivet: size.name },
        source: [cite('NAVEDTRA 14018')],
      }),
    );
  if (layers > stack.length)
    found.push(
      remark('rivet-layers', 'warning', {
        value: layers,
        limit: stack.length,
        values: {},
        source: COMMON_PRACTICE,
      }),
    );
  return found;
}

/** Blind rivets; holes are cut or drilled before assembly. */
export const blindRivet: NamedFastenerKind<'blind-rivet', BlindRivetAsk> = fastenerKind<
  'blind-rivet',
  BlindRivetAsk
>({
  name: 'blind-rivet',
  facts: { hole: 'through', heat: 'none', rivet: 'blind', tools: ['drill', 'file', 'rivet-gun', 'eyes'] },
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
  ends: rivetEnds,
  remarks,
});
