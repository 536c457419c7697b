import { fail, JobError, type Wording } from '../errors/problem.js';
import type { Loop } from '../plane/loop.js';
import type { Point } from '../plane/point.js';
import { keyholeLoop, placeLoop, roundedRectangle, slotLoop } from '../plane/shapes.js';
import { ofDrawing } from './of-drawing.js';
import { type OutlinePoint, outlineLoops } from './outline-loops.js';
import type { CutoutParams } from './params.js';

const MOST_SLOTS = 500; // of one field

/**
 * The openings of a shape about the origin, counter-clockwise. mm
 * @throws JobError for sizes that make no such shape, by the name of the size
 */
export function shapeLoops(c: CutoutParams): readonly Loop[] {
  switch (c.type) {
    case 'round':
      return [slotLoop(c.diameter, c.diameter)];
    case 'slot':
    case 'finger':
      if (c.length < c.width) return small('length', 'a slot is no shorter than it is wide');
      return [slotLoop(c.length, c.width)];
    case 'rectangle':
      if (c.radius > Math.min(c.length, c.width) / 2)
        return small('radius', 'its corners would run into each other');
      return [roundedRectangle(c.length, c.width, c.radius)];
    case 'keyhole':
      if (c.width >= c.diameter) return small('width', 'the slot of a keyhole is narrower than its round');
      if (c.length <= c.diameter / 2) return small('length', 'the slot would end within the round');
      return [keyholeLoop(c.diameter, c.length, c.width)];
    case 'label':
      if (c.slot > c.width) return small('slot', 'each slot is longer than it is wide');
      return [-1, 1].map((side) => upright(slotLoop(c.width, c.slot), (side * (c.length + c.slot)) / 2));
    case 'outline':
      if (c.loops === null)
        return fail('value-missing', ['loops'], 'no outline', 'Give cut: with a .svg or .dxf file, or loops');
      return c.cut === null ? outlineLoops(c.loops, c.length) : drawnLoops(c.cut, c.loops, c.length);
    case 'louvre':
      if (c.height > c.width * STEEPEST)
        return small(
          'height',
          (say) => `a flap ${say.size(c.width)} wide reaches ${say.most(c.width * STEEPEST)}`,
        );
      return [louvreLoop(c)];
    case 'vent':
      return ventLoops(c);
  }
}

const STEEPEST = 0.9; // of its width a flap stands off: more and it is bent up square; common practice, no source

/** The cut round a flap, open in the south where it is bent. */
function louvreLoop({ length, width, slot }: Extract<CutoutParams, { type: 'louvre' }>): Loop {
  const [x, y] = [length / 2, width / 2];
  const corners: readonly Point[] = [
    [-x - slot, -y],
    [-x, -y],
    [-x, y],
    [x, y],
    [x, -y],
    [x + slot, -y],
    [x + slot, y + slot],
    [-x - slot, y + slot],
  ];
  return corners.map((at) => ({ at, bulge: 0 }));
}

function ventLoops({ length, width, slot, web }: Extract<CutoutParams, { type: 'vent' }>): readonly Loop[] {
  if (slot > width) return small('slot', 'the field is narrower than one slot');
  if (slot > length) return small('length', 'a slot is no shorter than it is wide');
  const count = Math.floor((width + web) / (slot + web) + 1e-9);
  if (count > MOST_SLOTS) return small('web', `that makes ${count} slots, ${MOST_SLOTS} allowed`);
  const pitch = count === 1 ? 0 : (width - slot) / (count - 1);
  return Array.from({ length: count }, (_, i) =>
    moved(slotLoop(length, slot), [0, (i - (count - 1) / 2) * pitch]),
  );
}

const moved = (loop: Loop, origin: readonly [number, number]): Loop =>
  placeLoop({ origin, x: [1, 0], y: [0, 1] }, loop);

const upright = (loop: Loop, x: number): Loop => placeLoop({ origin: [x, 0], x: [0, 1], y: [-1, 0] }, loop);

/** Told with the size given. */
function small(name: string, why: Wording): never {
  return fail('size-impossible', [name], why);
}

/** Outlines that were read from a file: what is wrong with them is. */
function drawnLoops(file: string, loops: readonly (readonly OutlinePoint[])[], length: number | null) {
  try {
    return outlineLoops(loops, length);
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(ofDrawing(file, error.refusals));
  }
}
