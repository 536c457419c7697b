import { convexHull, type Material, type Point, radians, type Vec3 } from '@tinwright/core';
import type { Die, Press, Profile, Punch } from '../../machines/shop.js';
import { bendForce, FORCE_CONSTANTS, forceTensile, leastVFlange } from '../../metal/press-force.js';
import { contactAngle } from '../../sweep/contact.js';
import { meet } from '../../sweep/polygon.js';
import { type PressTools, pressTools } from '../../tools/press-tools.js';
import { subtree, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import { lazy } from '../part/lazy.js';
import { type Held, type LineFrame, lineFrame } from '../part/line.js';
import { type Mask, union } from '../part/mask.js';
import type { Operation, Work } from '../part/operations.js';
import { benchOf, type Clause, type Standing } from './bench.js';
import { marginFor } from './brake-station.js';
import { mountBook } from './mount-book.js';
import { prospectBook } from './prospect.js';
import type { Mounting, Obstacle, Prospect, Station } from './station.js';
import { type Interval, stretchesFor } from './stretches.js';

const OVER = 0.5; // mm of flat sheet that may reach over the middle of a die
const FLUSH = 0.05; // mm over the sheet that still count as on it
/** Uncovered stretches that still come out straight on a press brake, mm. Judgement. */
const GAPS = { end: 5, inner: 2 } as const;

/** A press brake with one punch and one die at work on a part. */
export function pressStation(
  work: Work,
  press: Press,
  tooling: { readonly punch: Punch; readonly die: Die },
  blank: { readonly material: Material; readonly longest: number },
  profile: Profile,
): Station {
  const lines = work.operations.flatMap((operation) =>
    (['parent', 'child'] as const).map((held) =>
      pressLine({ work, press, ...tooling, ...blank, profile, operation, held }),
    ),
  );
  const lineOf = ({ index }: Operation, held: Held) =>
    lines[2 * index + (held === 'parent' ? 0 : 1)] as PressLine;
  return {
    name: 'press',
    id: `press ${tooling.punch.name} / ${tooling.die.name}`,
    rack: tooling.punch.lengths,
    gaps: GAPS,
    limits: (operation, held) => lineOf(operation, held).limits,
    mount: (operation, held, done) => lineOf(operation, held).mount(done),
    prospect: (operation, held, done) => lineOf(operation, held).prospect(done),
  };
}

interface PressLine {
  readonly limits: Obstacle | null;
  readonly mount: (done: Mask) => Mounting;
  readonly prospect: (done: Mask) => Prospect | null;
}

interface Given {
  readonly work: Work;
  readonly press: Press;
  readonly punch: Punch;
  readonly die: Die;
  readonly material: Material;
  readonly longest: number;
  readonly profile: Profile;
  readonly operation: Operation;
  readonly held: Held;
}

type PressTool = 'ram' | 'die' | 'punch';

function pressLine(given: Given): PressLine {
  const { work, press, punch, die, operation, held, longest } = given;
  const { tree } = work;
  const frame = lineFrame(work, operation, held);
  const margin = marginFor({ longest });
  const tools = pressTools(press, punch, die, tree.thickness, margin);
  const closing = operation.action === 'close';
  const through = throughOf(given);
  const half = radians((through + (operation.action === 'bend' ? press.overbend : 0)) / 2);
  // the inside corner lies this far inside of the mould line
  const inset = closing ? 0 : tree.thickness * Math.tan(radians(through) / 2);
  const bench = lazy(() =>
    benchOf<PressTool>(
      work,
      frame,
      closing ? operation.panels.flatMap((p) => subtree(tree, p)) : [],
      (corners, moves, flat) =>
        closing
          ? closingClause(corners, flat, tools, tree.thickness, margin)
          : pressClause(
              seenFromTip(corners, moves, inset, tree.thickness),
              corners,
              { moves, flat },
              tools,
              half,
              margin,
            ),
      (s) => s.flat && s.lump.kind === 'panel',
    ),
  );
  const limits = limitsOf(given, frame);
  const refuse = (obstacle: Obstacle | null): Mounting => ({
    operation,
    held,
    obstacle,
    stretches: [],
    hooked: false,
    swings: false,
  });
  if (limits !== null) {
    const mounting = refuse(limits);
    return { limits, mount: () => mounting, prospect: () => null };
  }
  const seen = lazy(() => union(bench().seen, operation.mask));
  return {
    limits,
    mount: mountBook(seen, (done) => judge(given, frame, bench().at(done), refuse)),
    prospect: prospectBook(bench, frame.spans, GAPS, press.length),
  };
}

const throughOf = ({ operation, work }: Given): number =>
  operation.action === 'fold' ? work.tree.foldAngle : Math.abs(operation.angle);

/** Section of a solid as seen from the punch's point; the held side mirrored, so that both sides rise the same way. */
function seenFromTip(
  corners: readonly Vec3[],
  moves: boolean,
  inset: number,
  thickness: number,
): readonly Point[] {
  return convexHull(corners.map(([x, , z]): Point => [moves ? x - inset : -x - inset, z - thickness]));
}

/** Both sides rise by half the angle while the tools stand still. */
function pressClause(
  seen: readonly Point[],
  corners: readonly Vec3[],
  { moves, flat }: { readonly moves: boolean; readonly flat: boolean },
  tools: PressTools,
  half: number,
  margin: number,
): Clause<PressTool> {
  const ram = contactAngle(seen, tools.ram, half) <= half;
  const die = flat ? Math.min(...seen.map((p) => p[0])) < -OVER : tools.die.some((d) => meet(seen, d));
  if (die && tools.sectioned && !ram) return { stops: null, takes: extent(corners, margin), by: 'die' };
  if (flat) return { stops: die ? 'die' : ram ? 'ram' : null, takes: null };
  // what does not stand over the sheet meets the punch no sooner than the sheet
  if (Math.max(...seen.map((p) => p[1])) <= FLUSH)
    return { stops: die ? 'die' : ram ? 'ram' : null, takes: null };
  const punch = (moves ? tools.punch : tools.punchBehind).some((p) => contactAngle(seen, p, half) <= half);
  return {
    stops: die ? 'die' : ram ? 'ram' : null,
    takes: punch ? extent(corners, margin) : null,
    by: 'punch',
  };
}

function closingClause(
  corners: readonly Vec3[],
  flat: boolean,
  tools: PressTools,
  thickness: number,
  margin: number,
): Clause<PressTool> {
  if (flat) return { stops: null, takes: null };
  const seen = convexHull(corners.map(([x, , z]): Point => [x, z - thickness]));
  return { stops: null, takes: meet(seen, tools.bar) ? extent(corners, margin) : null };
}

function extent(corners: readonly Vec3[], margin: number): Interval {
  const ys = corners.map((c) => c[1]);
  return [Math.min(...ys) - margin, Math.max(...ys) + margin];
}

const lengthOf = ({ spans }: LineFrame) =>
  Math.max(...spans.map((s) => s[1])) - Math.min(...spans.map((s) => s[0]));

/** What no order changes: angle, length, force. */
function limitsOf(given: Given, frame: LineFrame): Obstacle | null {
  const { press, punch, die, material, profile, operation, work } = given;
  const { action, panels } = operation;
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  const length = lengthOf(frame);
  if (length > press.length) return { code: 'length', panel: -1, value: length, limit: press.length };
  if (action === 'close') return null;
  const through = throughOf(given) + (action === 'bend' ? press.overbend : 0);
  const most = 180 - Math.max(punch.angle, die.angle);
  if (through > most + 1e-9) return { code: 'angle', panel: -1, value: through, limit: most };
  const force = bendForce(
    FORCE_CONSTANTS[profile].value,
    forceTensile(material),
    length,
    work.tree.thickness,
    die.opening,
  );
  return force > press.force ? { code: 'force', panel: -1, value: force, limit: press.force } : null;
}

function judge(
  given: Given,
  frame: LineFrame,
  standing: readonly Standing<PressTool>[],
  refuse: (obstacle: Obstacle | null) => Mounting,
): Mounting {
  const { operation, die } = given;
  for (const { lump, clauses } of standing)
    for (const { stops } of clauses) if (stops !== null) return refuse({ code: stops, panel: lump.panel });
  const child = given.work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const least = operation.action === 'close' ? 0 : leastVFlange(die.opening, throughOf(given));
  const flat = standing.filter((s) => s.flat && s.lump.kind === 'panel');
  const sides = [
    { reach: Math.max(0, ...flat.filter((s) => s.moves).map((s) => s.x[1])), moves: true },
    { reach: Math.max(0, ...flat.filter((s) => !s.moves).map((s) => -s.x[0])), moves: false },
  ];
  const short = sides.find((s) => s.reach < least - 1e-9);
  if (short !== undefined) {
    const onChild = short.moves === (frame.held === 'parent');
    const panel = onChild ? (operation.panels[0] as number) : child.parent;
    return refuse({ code: 'flange-short', panel, value: short.reach, limit: least });
  }
  const taken = standing.flatMap((s) => s.clauses.flatMap((c) => (c.takes === null ? [] : [c.takes])));
  const free = stretchesFor(frame.spans, taken, GAPS, given.press.length);
  if ('stretches' in free) return { ...refuse(null), stretches: free.stretches };
  const [from, to] = free.bare;
  const owner = standing.find((s) =>
    s.clauses.some((c) => c.takes !== null && c.takes[0] <= to && c.takes[1] >= from),
  );
  const tool = owner?.clauses.find((c) => c.takes !== null)?.by ?? 'punch';
  return refuse({ code: tool, panel: owner?.lump.panel ?? -1, value: to - from, limit: GAPS.end });
}
