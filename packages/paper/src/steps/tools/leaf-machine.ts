import { radians } from '@tinwright/core/internal';
import type { BendStep, Brake } from '@tinwright/shop';
import { bentTo, LEAF_DEPTH, TOOL_DEPTH } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool, turned } from './tool.js';

const STOP_DEEP = 14; // mm of a rear stop that are drawn: its front
const STOP_HIGH = 6; // mm over the sheet that a stop of unknown height is drawn

/**
 * What is bent on a leaf brake, mm: `hem` is the height of a closed hem over the bed, `rear` how far back metal reaches
 * between the bed and a height over it.
 */
export interface LeafSheet {
  readonly thickness: number;
  readonly hem: number;
  readonly rear: (height: number) => number;
}

/** A leaf brake: the leaf turns with the sheet, its edge at the stop; to close a hem the fingers come down on it. */
export function leafMachine(brake: Brake, step: BendStep, sheet: LeafSheet): Machine {
  const { thickness, hem } = sheet;
  const closing = step.action === 'close';
  const leaf = (turn: number): Tool => ({
    name: 'leaf',
    outline: turned(rectangle(0, -LEAF_DEPTH, brake.leaf.width, 0), radians(turn)),
    mounted: false,
  });
  const bed: Tool = { name: 'bed', outline: rectangle(-brake.bed, -TOOL_DEPTH, 0, 0), mounted: false };
  const jaw = jawAt(brake, step.setBack ?? (brake.setBack[0] as number) * thickness);
  const still = [bed, ...rearStop(brake, step, sheet)];
  return {
    before: [...still, leaf(0), ...jaw(closing ? brake.opening : thickness)],
    after: [...still, leaf(closing ? 0 : bentTo(step)), ...jaw(closing ? hem : thickness)],
  };
}

/** What an edge lies against behind the fingers: what stands furthest back where the part is cut. */
function rearStop(
  { rearStopHeight }: Brake,
  { stopDistance, setBack }: BendStep,
  { thickness, rear }: LeafSheet,
): readonly Tool[] {
  if (stopDistance === null || setBack === null) return [];
  const high = rearStopHeight ?? thickness + STOP_HIGH;
  const front = -Math.max(setBack + stopDistance, rear(high));
  return [{ name: 'stop', outline: rectangle(front - STOP_DEEP, 0, front, high), mounted: false }];
}

/** Fingers and the beam they hang on, their underside at a height over the bed. */
function jawAt({ finger, clearHeight, beam }: Brake, setBack: number): (under: number) => readonly Tool[] {
  const { foot, upright, noseAngle } = finger;
  const rise = Math.min(upright * Math.tan(radians(noseAngle)), clearHeight);
  const [tip, front, heel] = [-setBack, -setBack - upright, -setBack - foot];
  return (under) => {
    const top = under + clearHeight;
    return [
      {
        name: 'fingers',
        outline: [
          [heel, under],
          [tip, under],
          [front, under + rise],
          [front, top],
          [heel, top],
        ],
        mounted: true,
      },
      {
        name: 'beam',
        outline: rectangle(-setBack - beam - TOOL_DEPTH, top, -setBack - beam, top + TOOL_DEPTH),
        mounted: false,
      },
    ];
  };
}
