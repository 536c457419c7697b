import type { Material } from '@tinwright/core';
import { lazy, radians } from '@tinwright/core/internal';
import type { Die, Press, Profile, Punch } from '../../machines/shop.js';
import { bendForce, FORCE_CONSTANTS, forceTensile, leastVFlange } from '../../metal/press-force.js';
import { diesFor, mostAngle } from '../../tools/press-setting.js';
import { pressTools } from '../../tools/press-tools.js';
import { setRadius, subtree, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import { type HeldSide, type LineFrame, lineLength } from '../part/line.js';
import type { LineBook, LumpStand, PartAtLine } from '../part/line-stands.js';
import { type Mask, union } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { benchOf, type StandingLump } from './bench.js';
import type { LeafBlank } from './leaf-work.js';
import { mountBook } from './mount-book.js';
import { comesOff, hooks, risen } from './press-access.js';
import { closingClause, flatClause, overMiddle, type PressPart, pressClause } from './press-clause.js';
import { AT_LINE, seenFromTip, tipOf } from './press-tip.js';
import { prospectBook } from './prospect.js';
import type { Mounting, Obstacle, Prospect, Station } from './station.js';
import { bareBy, type Interval, stretchesFor } from './stretches.js';

/** A press brake with one punch and one die at work on a part. */
export function pressStation(
  work: Work,
  lineAt: LineBook,
  press: Press,
  tooling: { readonly punch: Punch; readonly die: Die },
  blank: LeafBlank,
  profile: Profile,
): Station {
  const lines = work.operations.flatMap((operation) =>
    (['parent', 'child'] as const).map((held) =>
      pressLine({ work, press, ...tooling, ...blank, profile, operation, line: lineAt(operation, held) }),
    ),
  );
  const lineOf = ({ index }: LineStroke, held: HeldSide) =>
    lines[2 * index + (held === 'parent' ? 0 : 1)] as PressLine;
  return {
    name: 'press',
    id: `press ${tooling.punch.name} / ${tooling.die.name}`,
    rack: tooling.punch.lengths,
    balance: press.length,
    gaps: press.gaps,
    limits: (operation, held) => lineOf(operation, held).limits,
    swings: () => false,
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
  readonly margin: number;
  readonly springback: LeafBlank['springback'];
  readonly profile: Profile;
  readonly operation: LineStroke;
  readonly line: PartAtLine;
}

function pressLine(given: Given): PressLine {
  const { work, press, punch, die, operation, line, margin } = given;
  const { frame } = line;
  const { tree } = work;
  const tools = pressTools(press, punch, die, tree.thickness, margin);
  const closing = operation.action === 'close';
  const half = radians(setFor(given) / 2);
  const stroke = { tools, half, opening: die.opening, thickness: tree.thickness, margin };
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
      (s) => (s.flat && s.lump.kind === 'panel') || (!closing && hooked(s)),
    ),
  );
  const bare = lazy(() => pressTools(press, punch, die, tree.thickness, 0));
  const posed = (s: LumpStand, rise: number) =>
    s.solids.map(({ section, y }) => ({
      section: risen(
        seenFromTip(section, s.moves, rise === 0 ? { ...tip, over: 0 } : tip, tree.thickness),
        s.moves,
        rise,
      ),
      y,
    }));
  const hooked = (s: LumpStand) => [0, half].some((h) => posed(s, h).some((p) => hooks(p.section, bare())));
  const off = (standing: readonly LumpStand[], stands: readonly Interval[]): Obstacle | null => {
    if (closing) return null;
    const rise = [0, half].find(
      (h) =>
        !comesOff(
          standing.flatMap((s) => posed(s, h)),
          bare(),
          stands,
        ),
    );
    if (rise === undefined) return null;
    const held = standing.find(hooked);
    return { code: rise === 0 ? 'put-in' : 'take-off', panel: held?.lump.panel ?? -1 };
  };
  const limits = limitsOf(given, frame);
  const refuse = (obstacle: Obstacle | null): Mounting => ({
    operation,
    held: frame.held,
    obstacle,
    stretches: [],
    putIn: null,
    takeOff: null,
    swings: false,
  });
  if (limits !== null) {
    const mounting = refuse(limits);
    return { limits, mount: () => mounting, prospect: () => null };
  }
  const seen = lazy(() => union(bench().seen, operation.mask));
  return {
    limits,
    mount: mountBook(seen, (done) => judge(given, frame, bench().at(done), { refuse, off })),
    prospect: prospectBook(bench, frame.spans, press.gaps, press.length),
  };
}

const throughOf = ({ operation, work }: Given): number =>
  operation.action === 'fold' ? work.tree.fold.angle : Math.abs(operation.angle);

const bendOf = ({ operation, work }: Given): TreeBend =>
  (work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend }).bend;

/** Bent through over the die, degrees, so that what is wanted is left: by springback, and some to be free for more. */
function setFor(given: Given): number {
  const through = throughOf(given);
  if (given.operation.action !== 'bend') return through;
  const { factor } = given.springback(bendOf(given).insideRadius);
  return Math.max(through / factor, through + given.press.overbend);
}

/** What no order changes: angle, length, force. */
function limitsOf(given: Given, frame: LineFrame): Obstacle | null {
  const { press, punch, die, material, profile, operation, work } = given;
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
  const { thickness } = work.tree;
  const insideRadius = setRadius(work.tree, bendOf(given));
  const usual = diesFor(press, { thickness, insideRadius }, through);
  if (!usual.includes(die)) return { code: 'die', panel: -1 };
  const force = bendForce(
    FORCE_CONSTANTS[profile].value,
    forceTensile(material),
    length,
    work.tree.thickness,
    die.opening,
  );
  return force > press.force ? { code: 'force', panel: -1, value: force, limit: press.force } : null;
}

interface Answers {
  readonly refuse: (obstacle: Obstacle | null) => Mounting;
  /** What keeps the part on the punch, or from under it. */
  readonly off: (standing: readonly LumpStand[], stands: readonly Interval[]) => Obstacle | null;
}

function judge(
  given: Given,
  frame: LineFrame,
  standing: readonly StandingLump<PressPart>[],
  { refuse, off }: Answers,
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
  const free = stretchesFor(frame.spans, taken, given.press.gaps, given.press.length);
  if ('stretches' in free) {
    const { stretches } = free;
    const kept = off(
      standing,
      stretches.map((s): Interval => [s.from, s.to]),
    );
    return { ...refuse(kept), stretches: kept === null ? stretches : [] };
  }
  const [from, to] = free.bare;
  const owner = standing.find((s) =>
    s.clauses.some((c) => c.takes !== null && c.takes[0] <= to && c.takes[1] >= from),
  );
  const tool = owner?.clauses.find((c) => c.takes !== null)?.by ?? 'punch';
  return refuse({
    code: tool,
    panel: owner?.lump.panel ?? -1,
    ...bareBy(to - from, given.press.gaps.end),
  });
}
