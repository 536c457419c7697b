import { boxOfPieces, measuredBox } from './extent.js';
import type { Formed, FormedBend } from './formed.js';
import { boxDistance, panelPrisms } from './prism.js';
import { overlapDepth } from './prism-overlap.js';
import { shellDepth, shellStrips } from './shell.js';
import { dot3, place3, sub3 } from './space.js';
import type { Asked } from './tree.js';
import type { Flaw } from './verify-flat.js';

const NEAR = 1e-6; // mm
const SIZE = 1e-9; // mm, a size asked for may be off
const AXES = { x: 0, y: 1, z: 2 } as const;

/**
 * Check a formed part: every size asked for is there (when the bend rule compensates), every bend starts on its
 * parent and ends on its flange, and no two panels pass through each other. Empty when all holds.
 */
export function verifyForm(formed: Formed, asked: readonly Asked[]): readonly Flaw[] {
  return [
    ...asked.flatMap((a) => size(formed, a)),
    ...formed.bends.flatMap((b) => joins(formed, b)),
    ...clashes(formed),
  ];
}

function size(formed: Formed, { name, value, axis, over }: Asked): readonly Flaw[] {
  const box = measuredBox(formed, over);
  const found = box.max[AXES[axis]] - box.min[AXES[axis]];
  if (Math.abs(found - value) <= SIZE * Math.max(1, Math.abs(value))) return [];
  return [
    {
      code: 'form-size',
      message: `${name} comes out at ${found.toFixed(6)} mm, ${value.toFixed(6)} mm asked`,
    },
  ];
}

/** At turn 0 the outer and inner face of a bend lie on its parent's faces, at the full turn on its flange's. */
function joins(formed: Formed, b: FormedBend): readonly Flaw[] {
  return (
    [
      [0, b.parent],
      [b.sweep, b.id],
    ] as const
  ).flatMap(([phi, id]) => {
    const pose = formed.panels.find((p) => p.id === id)?.pose;
    const heights = [b.insideRadius, b.outsideRadius].map((r) => {
      const at = place3(b.frame, [0, r * Math.cos(phi), r * Math.sin(phi)]);
      return pose === undefined ? Number.NaN : dot3(sub3(at, pose.origin), pose.z);
    });
    const [low, high] = heights.toSorted((x, y) => x - y) as [number, number];
    const fits = Math.abs(low) < NEAR && Math.abs(high - formed.thickness) < NEAR;
    return fits ? [] : [{ code: 'form-join', message: `bend ${b.id} does not join panel ${id}` }];
  });
}

/** Panels through each other, and panels through bent material they do not hang on. */
function clashes(formed: Formed): readonly Flaw[] {
  const solids = formed.panels.map((p) => ({ id: p.id, prisms: panelPrisms(p, formed.thickness) }));
  const panels = solids.flatMap((a, i) =>
    solids.slice(i + 1).flatMap((b) => {
      const depth = deepest(a.prisms.flatMap((p) => b.prisms.map((q) => overlapDepth(p, q))));
      return depth <= NEAR ? [] : [through(`panels ${a.id} and ${b.id} pass through each other`, depth)];
    }),
  );
  const bends = formed.bends.flatMap((bend) => {
    const strangers = solids.filter(({ id }) => id !== bend.id && id !== bend.parent);
    return strangers.flatMap(({ id, prisms }) => {
      const depth = deepest(prisms.map((p) => shellDepth(p, bend)));
      return depth <= NEAR ? [] : [through(`panel ${id} passes through the bend ${bend.id}`, depth)];
    });
  });
  return [...panels, ...bends, ...bendsThroughBends(formed)];
}

const BEND_CLASH = 1e-3; // mm; bends are held against each other in flat strips

function bendsThroughBends({ bends, thickness }: Formed): readonly Flaw[] {
  const boxed = bends.map((bend) => ({ bend, box: boxOfPieces([], [bend], thickness) }));
  return boxed.flatMap((a, i) =>
    boxed.slice(i + 1).flatMap((b) => {
      if (boxDistance(a.box, b.box) >= -BEND_CLASH) return [];
      const [p, q] = [shellStrips(a.bend), shellStrips(b.bend)];
      const depth = deepest(p.flatMap((u) => q.map((v) => overlapDepth(u, v))));
      return depth <= BEND_CLASH
        ? []
        : [through(`bends ${a.bend.id} and ${b.bend.id} pass through each other`, depth)];
    }),
  );
}

const deepest = (depths: readonly number[]) => depths.reduce((a, b) => Math.max(a, b), 0);

function through(what: string, depth: number): Flaw {
  return { code: 'form-clash', message: (say) => `${what}, ${say.least(depth)} deep` };
}
