import type { FlatBend, PartPlan } from '@tinwright/core';
import type { BendStep, BendWork } from '@tinwright/shop';
import type { BendFacts } from '@tinwright/words/internal';
import { bendNumber } from '../plan/features.js';
import type { PacketKit } from './kit.js';

/**
 * A bend of a part with its sizes as they are printed.
 * @param pictured a picture tells fingers and set-back
 */
export function bendFacts(
  { name, flat }: PartPlan,
  work: BendWork,
  pictured: boolean,
  { dims, plans }: PacketKit,
): BendFacts {
  const own = work.bends.map((id) => flat.bends.findIndex((b) => b.id === id));
  const [first] = own.map((i) => flat.bends[i]) as [FlatBend];
  // a hem is folded as far as the machine goes before it is pressed flat
  const angle = work.action === 'fold' ? (work.step?.angle ?? null) : first.angle;
  return {
    part: name,
    numbers: own.map(bendNumber).join(' '),
    panels: work.bends.join(', '),
    direction: first.direction === 'up' ? plans.up : plans.down,
    angle: angle === null ? '' : dims.angle(work.action === 'fold' ? Math.round(angle) : angle),
    square: angle !== null && Math.abs(angle - 90) < 1e-6,
    action: work.action,
    hem: first.hem,
    radius: dims.fine(first.insideRadius),
    several: own.length > 1,
    machine:
      work.step === null
        ? null
        : machineFacts(work.step, first, pictured, (mm) => `${dims.text(mm)} ${dims.unit}`, dims.angle),
  };
}

type FingerFacts = NonNullable<NonNullable<BendFacts['machine']>['fingers']>;

const LEAST_GAP = 0.05; // mm, less is side by side
const TOWARDS = ['right', 'top', 'left', 'bottom'] as const;

function machineFacts(
  step: BendStep,
  bend: FlatBend,
  pictured: boolean,
  size: (mm: number) => string,
  angle: (degrees: number) => string,
): BendFacts['machine'] {
  const quarter = step.heading / 90;
  const towards =
    Math.abs(quarter - Math.round(quarter)) < 1e-6 ? TOWARDS[((Math.round(quarter) % 4) + 4) % 4] : null;
  return {
    name: step.machine,
    clamp: step.clamp,
    held: step.held,
    face: step.faceUp,
    towards: towards ?? null,
    set: step.setAngle === null ? null : angle(step.setAngle),
    nose: noseOf(step, bend, size),
    stop: step.stopDistance === null ? null : size(step.stopDistance),
    fingers: pictured ? null : fingersOf(step, size),
    hooked: step.hooked,
    setBack: pictured || step.setBack === null ? null : size(step.setBack),
    press:
      step.press === null
        ? null
        : {
            punch: step.press.punch,
            die: step.press.die,
            gauge: step.press.gauge === null ? null : size(step.press.gauge),
          },
  };
}

const ON = 0.05; // mm beside a line that is on it

/** Where the edge of the nose stands beside the bend line, which lies in the middle between the tangent lines. */
function noseOf(
  { sightOffset }: BendStep,
  { zone }: FlatBend,
  size: (mm: number) => string,
): NonNullable<BendFacts['machine']>['nose'] {
  if (sightOffset === null) return null;
  const off = zone / 2 - sightOffset; // towards the side that is held
  return { off: Math.abs(off) < ON ? null : size(Math.abs(off)), side: off > 0 ? 'held' : 'bent' };
}

/** Groups of fingers: widths side by side, where the first starts, and the gap between two. */
const fingersOf = ({ tools }: BendStep, size: (mm: number) => string): FingerFacts | null =>
  tools === null
    ? null
    : tools.map((g) => ({
        pieces: g.pieces.map(size).join(' + '),
        from: size(g.from),
        gap: g.pieces.length > 1 && g.gap > LEAST_GAP ? size(g.gap) : null,
      }));
