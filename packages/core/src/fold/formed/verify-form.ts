import { dot3, place3, sub3 } from '../draft/space.js';
import type { Asked } from '../draft/tree.js';
import type { Flaw } from '../flat/verify-flat.js';
import { measuredSize } from './extent.js';
import type { Formed, FormedBend } from './formed.js';
import { type Lump, lumpDepth, lumpsOf } from './lump.js';
import { boxDistance } from './prism.js';

const NEAR = 1e-6; // mm
const SIZE = 1e-9; // mm, a size asked for may be off

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

function size(formed: Formed, { name, value, ...measured }: Asked): readonly Flaw[] {
  const found = measuredSize(formed, measured);
  if (Math.abs(found - value) <= SIZE * Math.max(1, Math.abs(value))) return [];
  return [
    {
      code: 'form-size',
      size: name,
      message: (say) => `${name} comes out at ${say.size(found)}, ${say.size(value)} asked`,
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

/** Panels through each other, through bent material they do not hang on, and bends through each other. */
function clashes(formed: Formed): readonly Flaw[] {
  const lumps = lumpsOf(formed);
  const [flat, round] = [lumps.filter((l) => l.bend === null), lumps.filter((l) => l.bend !== null)];
  const strange = ([b, p]: Pair) => p.id !== b.id && p.id !== b.bend?.parent;
  return [...near(flat, flat), ...near(round, flat).filter(strange), ...near(round, round)].flatMap(clash);
}

type Pair = readonly [Lump, Lump];

/** Pairs whose boxes overlap, of two lists or within one. */
function near(a: readonly Lump[], b: readonly Lump[]): readonly Pair[] {
  const pairs: Pair[] = [];
  a.forEach((p, i) => {
    for (const q of a === b ? b.slice(i + 1) : b) if (boxDistance(p, q) < 0) pairs.push([p, q]);
  });
  return pairs;
}

const BEND_CLASH = 1e-3; // mm; bends are held against each other in flat strips

function clash([a, b]: Pair): readonly Flaw[] {
  const depth = lumpDepth(a, b);
  const most = b.bend === null ? NEAR : BEND_CLASH;
  return depth <= most
    ? []
    : [{ code: 'form-clash', message: (say) => `${through(a, b)}, ${say.least(depth)} deep` }];
}

function through(a: Lump, b: Lump): string {
  if (a.bend === null) return `panels ${a.id} and ${b.id} pass through each other`;
  if (b.bend === null) return `panel ${b.id} passes through the bend ${a.id}`;
  return `bends ${a.id} and ${b.id} pass through each other`;
}
