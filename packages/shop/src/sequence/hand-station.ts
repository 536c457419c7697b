import { type Material, place3 } from '@tinwright/core';
import { thicknessLimit } from '../machines/capacity.js';
import type { Vise } from '../machines/shop.js';
import { stageOf } from './bench.js';
import type { TreePanel } from './fold-tree.js';
import { bendsTo, type Held, lineFrame, poseInMachine } from './line.js';
import { lumpsOf } from './lumps.js';
import type { Mask } from './mask.js';
import type { Operation, Work } from './operations.js';
import type { Mounting, Obstacle, Station } from './station.js';

/**
 * Bends made by hand in a vise: what is held has to go between the jaws, flat and alone; the free side swings in the
 * air. Common practice, no source.
 */
export function viseStation(work: Work, vise: Vise, material: Material): Station {
  const limits = (operation: Operation, held: Held): Obstacle | null =>
    viseLimits(work, vise, material, operation, held);
  return {
    name: 'vise',
    id: 'vise',
    rack: [],
    gaps: { end: 0, inner: 0 },
    limits,
    mount: (operation, held, done) => ({
      operation,
      held,
      obstacle: limits(operation, held) ?? heldAlone(work, vise, operation, held, done),
      stretches: [],
      hooked: false,
      swings: false,
    }),
  };
}

function viseLimits(
  work: Work,
  vise: Vise,
  material: Material,
  operation: Operation,
  held: Held,
): Obstacle | null {
  if (operation.action === 'roll') return { code: 'angle', panel: operation.panels[0] as number };
  const { spans } = lineFrame(work, operation, held);
  const length = Math.max(...spans.map((s) => s[1])) - Math.min(...spans.map((s) => s[0]));
  if (length > vise.jaws) return { code: 'jaws', panel: -1, value: length, limit: vise.jaws };
  const { thickness } = thicknessLimit(vise.capacity, material);
  const own = work.tree.thickness;
  return own > thickness * 1.001 ? { code: 'capacity', panel: -1, value: own, limit: thickness } : null;
}

/** Nothing that stands off the held sheet may be between the jaws. */
function heldAlone(work: Work, vise: Vise, operation: Operation, held: Held, done: Mask): Obstacle | null {
  const frame = lineFrame(work, operation, held);
  const stage = stageOf(work, done);
  for (const lump of lumpsOf(work.tree)) {
    if (frame.moves[lump.panel] === true || lump.kind === 'bend') continue;
    const flat = bendsTo(work, frame, lump).every((p) => stage(p) === 'flat');
    const pose = poseInMachine(work, frame, lump, stage);
    const { panel } = work.tree.panels[lump.panel] as TreePanel;
    const deep = Math.max(...panel.shape.map((e) => -place3(pose, [...e.from, 0])[0]));
    const near = Math.min(...panel.shape.map((e) => -place3(pose, [...e.from, 0])[0]));
    if (flat && deep > vise.depth) return { code: 'jaws', panel: lump.panel, value: deep, limit: vise.depth };
    if (!flat && near < vise.depth) return { code: 'jaws', panel: lump.panel };
  }
  return null;
}

/** What is always done by hand: an edge rolled round a wire, with pliers, hammer and setting-down tools. */
export function handStation(): Station {
  const only = ({ action, panels }: Operation): Obstacle | null =>
    action === 'roll' ? null : { code: 'angle', panel: panels[0] as number };
  return {
    name: 'hand',
    id: 'hand',
    rack: [],
    gaps: { end: 0, inner: 0 },
    limits: only,
    mount: (operation, held): Mounting => ({
      operation,
      held,
      obstacle: held === 'parent' ? only(operation) : { code: 'angle', panel: operation.panels[0] as number },
      stretches: [],
      hooked: false,
      swings: false,
    }),
  };
}
