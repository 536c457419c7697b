import { type Material, place3 } from '@tinwright/core';
import { thicknessLimit } from '../../machines/capacity.js';
import type { Vise } from '../../machines/shop.js';
import type { TreePanel } from '../part/fold-tree.js';
import { bendsTo, type Held, type LineFrame, lineFrame, poseInMachine } from '../part/line.js';
import { lumpsOf } from '../part/lumps.js';
import { both, keyOf, type Mask, maskOf } from '../part/mask.js';
import type { Operation, Work } from '../part/operations.js';
import { stageOf } from '../part/stage.js';
import { OPEN } from './prospect.js';
import type { Mounting, Obstacle, Station } from './station.js';

/**
 * Bends made by hand in a vise: what is held has to go between the jaws, flat and alone; the free side swings in the
 * air. Common practice, no source.
 */
export function viseStation(work: Work, vise: Vise, material: Material): Station {
  const lines = work.operations.flatMap((operation) =>
    (['parent', 'child'] as const).map((held) => viseLine(work, vise, material, operation, held)),
  );
  const lineOf = ({ index }: Operation, held: Held) =>
    lines[2 * index + (held === 'parent' ? 0 : 1)] as ViseLine;
  return {
    name: 'vise',
    id: 'vise',
    rack: [],
    gaps: { end: 0, inner: 0 },
    limits: (operation, held) => lineOf(operation, held).limits,
    prospect: (operation, held) => (lineOf(operation, held).limits === null ? OPEN : null),
    mount: (operation, held, done) => {
      const { limits, alone } = lineOf(operation, held);
      const obstacle = limits ?? alone(done);
      return { operation, held, obstacle, stretches: [], putIn: null, takeOff: null, swings: false };
    },
  };
}

/** A line in the jaws, one side held. */
interface ViseLine {
  /** What no order changes. */
  readonly limits: Obstacle | null;
  /** What stands off the held sheet between the jaws in a state. */
  readonly alone: (done: Mask) => Obstacle | null;
}

function viseLine(work: Work, vise: Vise, material: Material, operation: Operation, held: Held): ViseLine {
  const frame = lineFrame(work, operation, held);
  const lumps = lumpsOf(work.tree)
    .filter((l) => frame.moves[l.panel] !== true && l.kind === 'panel')
    .map((lump) => ({ lump, bends: bendsTo(work, frame, lump) }));
  const moving = lumps.flatMap((l) => l.bends);
  const seen = maskOf(work.steps.filter((s) => moving.includes(s.panel)).map((s) => s.index));
  const known = new Map<number | string, Obstacle | null>();
  const look = (done: Mask): Obstacle | null => {
    const stage = stageOf(work, done);
    for (const { lump, bends } of lumps) {
      const { panel } = work.tree.panels[lump.panel] as TreePanel;
      const pose = poseInMachine(work, frame, lump, stage);
      const depths = panel.shape.map((e) => -place3(pose, [...e.from, 0])[0]);
      const flat = bends.every((p) => stage(p) === 'flat');
      const deep = Math.max(...depths);
      if (flat && deep > vise.depth)
        return { code: 'jaws', panel: lump.panel, value: deep, limit: vise.depth };
      if (!flat && Math.min(...depths) < vise.grip) return { code: 'jaws', panel: lump.panel };
    }
    return null;
  };
  return {
    limits: viseLimits(work, vise, material, operation, frame),
    alone: (done) => {
      const key = keyOf(both(done, seen));
      const before = known.get(key);
      const obstacle = before === undefined ? look(done) : before;
      known.set(key, obstacle);
      return obstacle;
    },
  };
}

const MOST = 95; // degrees: past square the sheet lies on the bar; judgement

function viseLimits(
  { tree }: Work,
  vise: Vise,
  material: Material,
  { action, panels, angle }: Operation,
  { spans }: LineFrame,
): Obstacle | null {
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  const through = Math.abs(angle);
  if (action === 'bend' && through > MOST) return { code: 'angle', panel: -1, value: through, limit: MOST };
  const length = Math.max(...spans.map((s) => s[1])) - Math.min(...spans.map((s) => s[0]));
  if (length > vise.jaws) return { code: 'jaws', panel: -1, value: length, limit: vise.jaws };
  const { thickness } = thicknessLimit(vise.capacity, material);
  const own = tree.thickness;
  return own > thickness * 1.001 ? { code: 'capacity', panel: -1, value: own, limit: thickness } : null;
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
    prospect: (operation, held) => (held === 'parent' && only(operation) === null ? OPEN : null),
    mount: (operation, held): Mounting => ({
      operation,
      held,
      obstacle: held === 'parent' ? only(operation) : { code: 'angle', panel: operation.panels[0] as number },
      stretches: [],
      putIn: null,
      takeOff: null,
      swings: false,
    }),
  };
}
