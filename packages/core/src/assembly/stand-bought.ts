import { fail, within } from '../errors/problem.js';
import { homePose, type Pose, sub3 } from '../fold/draft/space.js';
import { boxOfPieces } from '../fold/formed/extent.js';
import type { Formed, FormedPanel } from '../fold/formed/formed.js';
import { bodyOf, type HardwareBlock } from '../hardware/body.js';
import type { Bought, HardwareSpec } from './bought.js';
import { boughtNames } from './bought.js';
import { faceAt, faceFrame, lineFrame } from './bought-frame.js';
import type { StandingFace } from './overlap.js';
import type { Placed } from './types.js';

/** Bought parts of one row, and the faces they stand on. */
export interface StandingRow {
  readonly bought: readonly Bought[];
  readonly faces: readonly StandingFace[];
}

/**
 * Stand bought parts on pieces that stand already.
 * @throws JobError for faces that are none, and lines longer than the edges that meet there
 */
export function standBought(spec: HardwareSpec, placed: readonly Placed[]): StandingRow {
  return within(spec.path, () => {
    const faces = ([spec.on, ...(spec.and === null ? [] : [spec.and])] as const).map((end, i) =>
      faceAt(end, placed, [i === 0 ? 'on' : 'and']),
    );
    const [first] = faces as [StandingFace];
    const sheet = first.placed.part.formed.thickness;
    const body = bodyOf(spec.params, sheet);
    if (body.along === 0 && spec.and !== null)
      fail('hardware-one', ['and'], `a ${spec.params.type} stands on one face`, 'Leave and: out');
    const names = boughtNames(spec);
    const formed = formedOf(body.blocks);
    const { part } = first.placed;
    const bare = { ...part.part, panels: [], rootHoles: [], asked: [], sites: [] };
    const asPart = { ...part, name: spec.name, quantity: names.length, formed, made: false, drawn: bare };
    const bought = spec.at.map((at, i): Bought => {
      const frame =
        body.along > 0
          ? lineFrame(faces, [body, spec.params.type], at, i)
          : faceFrame(first, at, spec.turn, i);
      return {
        piece: names[i] as string,
        part: { ...asPart, part: bare },
        pose: frame,
        type: spec.params.type,
        spec,
        body,
        holds: faces.map((f) => f.placed),
      };
    });
    return { bought, faces };
  });
}

/** The solids of a body as panels of their own thickness. */
function formedOf(blocks: readonly HardwareBlock[]): Formed {
  const panels = blocks.map(({ id, shape, axis, low, high }): FormedPanel => {
    const pose: Pose =
      axis === 'z'
        ? homePose([0, 0, low])
        : { origin: [low, 0, 0], x: [0, 1, 0], y: [0, 0, 1], z: [1, 0, 0] };
    return { id, pose, shape, edges: shape.map(() => ''), holes: [], cutouts: [], thickness: high - low };
  });
  const box = boxOfPieces(panels, [], 0);
  return { thickness: 0, panels, bends: [], box, size: sub3(box.max, box.min), volume: 0 };
}
