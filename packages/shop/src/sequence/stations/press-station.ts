import { lazy, radians } from '@tinwright/core/internal';
import { wholeAtFirst } from '../../machines/at-first.js';
import type { Die, Press, Profile } from '../../machines/shop.js';
import { bendForce, FORCE_CONSTANTS, forceTensile, leastVFlange } from '../../metal/press-force.js';
import { type DieChoice, diesFor, LEAST_OPENING, mostAngle, usableDies } from '../../tools/press-setting.js';
import { type PressTools, pressTools, type Tooling } from '../../tools/press-tools.js';
import { bySide } from '../part/by-side.js';
import { setRadius, subtree, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import { type LineFrame, lineLength, spanOf } from '../part/line.js';
import type { LineBook, PartAtLine } from '../part/line-stands.js';
import { type Mask, union } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { tipsBack } from '../part/tips-back.js';
import { benchOf, type StandingLump } from './bench.js';
import { betweenHorns } from './horn-room.js';
import type { LeafBlank } from './leaf-work.js';
import { mountBook } from './mount-book.js';
import { closingClause, flatClause, overMiddle, type PressPart, pressClause } from './press-clause.js';
import { type Off, OPEN_TABLE, type TakingOff, takingOff } from './press-off.js';
import { AT_LINE, seenFromTip, tipOf } from './press-tip.js';
import { prospectBook } from './prospect.js';
import type { Mounting, Obstacle, Prospect, Station, Stretch } from './station.js';
import { bareBy, type Interval, stretchesFor } from './stretches.js';

/** A part and what it is made of, for a press. */
export interface PressWork extends LeafBlank {
  readonly work: Work;
  readonly lineAt: LineBook;
  readonly press: Press;
  readonly profile: Profile;
  /** Dies that are asked for. */
  readonly dies: DieChoice;
}

/** A press brake with one punch and one die at work on a part. */
export function pressStation(given: PressWork, tooling: Tooling): Station {
  const { work, lineAt, press } = given;
  const { thickness } = work.tree;
  const tools = {
    near: lazy(() => pressTools(press, tooling, thickness, given.margin)),
    bare: lazy(() => pressTools(press, tooling, thickness, 0)),
  };
  const lineOf = bySide(work.operations, (operation, held) =>
    pressLine({ ...given, ...tooling, tools, operation, line: lineAt(operation, held) }),
  );
  return {
    name: 'press',
    id: `press ${tooling.punch.name} / ${tooling.die.name}${tooling.horns === null ? '' : ' between horns'}`,
    rack: tooling.punch.lengths,
    wholeAtFirst: wholeAtFirst('press'),
    balance: press.length,
    gaps: press.gaps,
    tooling,
    limits: (operation, held) => lineOf(operation, held).limits,
    swings: (operation, held) => lineOf(operation, held).carried,
    mount: (operation, held, done) => lineOf(operation, held).mount(done),
    prospect: (operation, held, done) => lineOf(operation, held).prospect(done),
  };
}

interface PressLine {
  /** What lies behind the punch has to be carried. */
  readonly carried: boolean;
  readonly limits: Obstacle | null;
  readonly mount: (done: Mask) => Mounting;
  readonly prospect: (done: Mask) => Prospect | null;
}

interface Given extends PressWork, Tooling {
  /** Its tools with the margin that is kept from them, and without. */
  readonly tools: { readonly near: () => PressTools; readonly bare: () => PressTools };
  readonly operation: LineStroke;
  readonly line: PartAtLine;
}

function pressLine(given: Given): PressLine {
  const { work, press, die, operation, line, margin } = given;
  const { frame } = line;
  const { tree } = work;
  const limits = limitsOf(given, frame);
  const carried = operation.action !== 'close' && tipsBack(work, frame);
  const refuse = (obstacle: Obstacle | null): Mounting => ({
    operation,
    held: frame.held,
    obstacle,
    stretches: [],
    putIn: null,
    takeOff: null,
    swings: carried,
  });
  if (limits !== null) {
    const mounting = refuse(limits);
    return { carried, limits, mount: () => mounting, prospect: () => null };
  }
  const tools = given.tools.near();
  const closing = operation.action === 'close';
  const half = radians(setFor(given) / 2);
  const stroke = {
    tools,
    half,
    opening: die.opening,
    thickness: tree.thickness,
    margin,
    ends: spanOf(frame.spans),
    bare: press.gaps.end,
  };
  const tip =
    operation.action === 'close'
      ? AT_LINE
      : tipOf(tree, frame, bendOf(given), operation.action, throughOf(given));
  const bench = lazy(() =>
    benchOf<PressPart>(
      work,
      line,
      closing ? operation.panels.flatMap((p) => subtree(tree, p)) : [],
      ({ section, corners, y }, moves, flat) => {
        if (closing) return closingClause(section, y, flat, tools, tree.thickness, margin);
        const solid = {
          seen: seenFromTip(section, moves, { ...tip, over: 0 }, tree.thickness),
          bent: seenFromTip(section, moves, tip, tree.thickness),
          y,
          past: overMiddle(corners, moves, tip),
          moves,
        };
        return flat ? flatClause(solid, stroke) : pressClause(solid, stroke);
      },
      (s) => (s.flat && s.lump.kind === 'panel') || (!closing && off.hooked(s)),
    ),
  );
  const off = takingOff(given.tools.bare, {
    tip,
    half,
    thickness: tree.thickness,
    horns: given.horns,
  });
  const seen = () => union(bench().seen(), operation.mask);
  return {
    carried,
    limits,
    mount: mountBook(seen, (done) =>
      judge(given, frame, bench().at(done), { refuse, way: closing ? () => OPEN_TABLE : off.way }),
    ),
    prospect: prospectBook(bench, frame.spans, press.gaps, press.length),
  };
}

const throughOf = ({ operation, work }: Pick<Given, 'operation' | 'work'>): number =>
  operation.action === 'fold' ? work.tree.fold.angle : Math.abs(operation.angle);

const bendOf = ({ operation, work }: Pick<Given, 'operation' | 'work'>): TreeBend =>
  (work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend }).bend;

/** Bent through over the die, degrees, so that what is wanted is left: by springback, and some to be free for more. */
function setFor(given: PressWork & { readonly operation: LineStroke }): number {
  const through = throughOf(given);
  if (given.operation.action !== 'bend') return through;
  const { factor } = given.springback(bendOf(given).insideRadius);
  return Math.max(through / factor, through + given.press.overbend);
}

/** The place of a die among those that can be used for an operation: 0 for those that are taken first, and to close a hem. */
export function dieRank(given: PressWork, operation: LineStroke, die: Die): number {
  const { press, work } = given;
  if (operation.action === 'close' || operation.action === 'roll') return 0;
  const { thickness } = work.tree;
  const bent = { thickness, insideRadius: setRadius(work.tree, bendOf({ work, operation })) };
  const through = setFor({ ...given, operation });
  return diesFor(press, bent, through).includes(die) ? 0 : 1 + usableDies(press, bent, through).indexOf(die);
}

/** What no order changes: angle, length, force. */
function limitsOf(given: Given, frame: LineFrame): Obstacle | null {
  const { press, punch, die, dies, material, profile, operation, work } = given;
  const { action, panels } = operation;
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  // the wall lies on the table, fold up
  if (action === 'close' && frame.held === 'child') return { code: 'opening', panel: panels[0] as number };
  const length = lineLength(frame);
  if (length > press.length) return { code: 'length', panel: -1, value: length, limit: press.length };
  if (action === 'close') return null;
  const through = setFor(given);
  const most = mostAngle(punch, die);
  if (through > most + 1e-9) return { code: 'angle', panel: -1, value: through, limit: most };
  const least = LEAST_OPENING * work.tree.thickness;
  if (die.opening < least - 1e-9) return { code: 'die', panel: -1, value: die.opening, limit: least };
  if (dies === 'near' && dieRank(given, operation, die) > 0) return { code: 'die', panel: -1 };
  const force = bendForce(
    FORCE_CONSTANTS[profile].value,
    forceTensile(material),
    length,
    work.tree.thickness,
    die.opening,
  );
  return force > press.force ? { code: 'force', panel: -1, value: force, limit: press.force } : null;
}

type Room = ReturnType<typeof stretchesFor>;

interface Answers {
  readonly refuse: (obstacle: Obstacle | null) => Mounting;
  readonly way: TakingOff['way'];
}

/** 1, 2 … up to a number. */
const steps = (most: number) => Array.from({ length: Math.floor(most) }, (_, i) => i + 1);

const standsIn = ({ from, to }: Stretch): Interval => [from, to];

function judge(
  given: Given,
  frame: LineFrame,
  standing: readonly StandingLump<PressPart>[],
  { refuse, way }: Answers,
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
  const room = (more: readonly Interval[]) =>
    stretchesFor(frame.spans, [...taken, ...more], given.press.gaps, given.press.length);
  const free = room([]);
  if ('stretches' in free) return takenOff(given, standing, free.stretches, { refuse, way, room });
  const [from, to] = free.bare;
  const owner = standing.find((s) =>
    s.clauses.some((c) => c.takes !== null && c.takes[0] <= to && c.takes[1] >= from),
  );
  const tool = owner?.clauses.find((c) => c.takes !== null)?.by ?? 'punch';
  return refuse({
    code: tool,
    panel: owner?.lump.panel ?? -1,
    ...bareBy(free.bare, frame.spans, given.press.gaps.end),
  });
}

/** Tools where there is room for them, as far as the part comes off them. */
function takenOff(
  { press, horns }: Given,
  standing: readonly StandingLump<PressPart>[],
  stretches: readonly Stretch[],
  { refuse, way, room }: Answers & { readonly room: (more: readonly Interval[]) => Room },
): Mounting {
  const mountedIn = (where: readonly Stretch[], { obstacle, putIn, takeOff }: Off): Mounting => {
    if (obstacle !== null) return refuse(obstacle);
    const left = horns === null ? where : betweenHorns(where, horns, press.length);
    return { ...refuse(null), putIn, takeOff, stretches: left };
  };
  const first = way(standing, stretches.map(standsIn));
  if (first.obstacle === null || horns === null) return mountedIn(stretches, first);
  // between shorter feet it may come off one end first: as long as they may be, once the shortest do
  const [only] = stretches as [Stretch];
  const shorter = steps(stretches.length === 1 ? press.gaps.end : 0).flatMap((by) => {
    const less = room([
      [only.from - 1, only.from + by],
      [only.to - by, only.to + 1],
    ]);
    return 'bare' in less ? [] : [less.stretches];
  });
  const goes = (s: readonly Stretch[]) => way(standing, s.map(standsIn)).obstacle === null;
  const found = goes(shorter.at(-1) ?? stretches) ? shorter.find(goes) : undefined;
  return found === undefined ? refuse(first.obstacle) : mountedIn(found, way(standing, found.map(standsIn)));
}
