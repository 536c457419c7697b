import { radians } from '@tinwright/core/internal';
import type { BendStep, Brake } from '@tinwright/shop';
import { bentTo, LEAF_DEPTH, TOOL_DEPTH } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool, turned } from './tool.js';

/** What is bent on a leaf brake, mm: `hem` is the height of a closed hem over the bed. */
export interface LeafSheet {
  readonly thickness: number;
  readonly hem: number;
}

/** A leaf brake: the leaf turns with the sheet; to close a hem the fingers come down on it. */
export function leafMachine(brake: Brake, step: BendStep, { thickness, hem }: LeafSheet): Machine {
  const closing = step.action === 'close';
  const leaf = (turn: number): Tool => ({
    name: 'leaf',
    outline: turned(rectangle(0, -LEAF_DEPTH, brake.leaf.width, 0), radians(turn)),
    mounted: false,
  });
  const bed: Tool = { name: 'bed', outline: rectangle(-brake.bed, -TOOL_DEPTH, 0, 0), mounted: false };
  const jaw = jawAt(brake, step.setBack ?? (brake.setBack[0] as number) * thickness);
  return {
    before: [bed, leaf(0), ...jaw(closing ? brake.opening : thickness)],
    after: [bed, leaf(closing ? 0 : bentTo(step)), ...jaw(closing ? hem : thickness)],
  };
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
