import { lazy, radians } from '@tinwright/core/internal';
import { wholeAtFirst } from '../../machines/at-first.js';
import { thicknessLimit } from '../../machines/capacity.js';
import type { Brake } from '../../machines/shop.js';
import { leastFlange, leastHold } from '../../tools/leaf-setting.js';
import { type LeafTools, leafTools } from '../../tools/leaf-tools.js';
import { bySide } from '../part/by-side.js';
import { subtree, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import { lineLength } from '../part/line.js';
import type { LineBook, PartAtLine } from '../part/line-stands.js';
import { type Mask, union } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { type AccessBook, accessBook } from './access.js';
import { benchOf, type StandingLump } from './bench.js';
import { closeClause, type LeafTool, leafClause } from './leaf-clause.js';
import { judgeLeaf } from './leaf-judge.js';
import type { LeafLineSetup } from './leaf-setup.js';
import { type LeafBlank, leafWork } from './leaf-work.js';
import { mountBook } from './mount-book.js';
import { prospectBook } from './prospect.js';
import type { Mounting, Obstacle, Prospect, Station } from './station.js';

/** A leaf brake at work on a part: what every mounting of every operation runs into, kept once computed. */
export function brakeStation(
  work: Work,
  lineAt: LineBook,
  id: string,
  brake: Brake,
  blank: LeafBlank,
): Station {
  const access = accessBooks(brake, work.tree.thickness);
  const lineOf = bySide(work.operations, (operation, held) =>
    leafLine({ work, brake, blank, operation, access, line: lineAt(operation, held) }),
  );
  return {
    name: 'brake',
    id,
    rack: brake.fingers,
    wholeAtFirst: wholeAtFirst('brake'),
    balance: null,
    tooling: null,
    gaps: brake.gaps,
    limits: (operation, held) => lineOf(operation, held).limits,
    swings: (operation, held) => operation.action !== 'close' && lineAt(operation, held).frame.swings,
    mount: (operation, held, done) => lineOf(operation, held).mount(done),
    prospect: (operation, held, done) => lineOf(operation, held).prospect(done),
  };
}

/** One line on the leaf brake, one side held. */
interface LeafLine {
  readonly limits: Obstacle | null;
  readonly mount: (done: Mask) => Mounting;
  readonly prospect: (done: Mask) => Prospect | null;
}

/** A book of ways for every set-back. */
function accessBooks(brake: Brake, thickness: number): (setBack: number) => AccessBook {
  const known = new Map<number, AccessBook>();
  return (setBack) => {
    const book = known.get(setBack) ?? accessBook(brake, leafTools(brake, thickness, setBack), thickness);
    known.set(setBack, book);
    return book;
  };
}

interface LeafLineInput {
  readonly work: Work;
  readonly brake: Brake;
  readonly blank: LeafBlank;
  readonly operation: LineStroke;
  readonly line: PartAtLine;
  readonly access: (setBack: number) => AccessBook;
}

function leafLine({ work, brake, blank, operation, line, access }: LeafLineInput): LeafLine {
  const { tree } = work;
  const { thickness } = tree;
  const { frame } = line;
  const { held } = frame;
  const child = tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const leaf = leafWork(tree, operation, brake, blank.springback);
  const bent = { thickness, insideRadius: leaf.insideRadius, length: lineLength(frame) };
  const setup: LeafLineSetup = {
    brake,
    operation,
    frame,
    child,
    thickness,
    leaf,
    least: {
      flange: leastFlange(brake, blank.material, bent, leaf.setBack),
      hold: leastHold(brake, leaf.setBack),
    },
    access: access(leaf.setBack),
  };
  const limits = limitsOf(setup, blank);
  if (limits !== null) {
    const mounting = {
      operation,
      held,
      obstacle: limits,
      stretches: [],
      putIn: null,
      takeOff: null,
      swings: frame.swings,
    };
    return { limits, mount: () => mounting, prospect: () => null };
  }
  const bench = lazy(() =>
    operation.action === 'close'
      ? closingBench(work, line, setup, blank)
      : bendingBench(work, line, setup, blank),
  );
  const seen = () => union(bench().seen(), operation.mask);
  return {
    limits,
    mount: mountBook(seen, (done) => judgeLeaf(setup, bench().at(done))),
    prospect: prospectBook(bench, frame.spans, brake.gaps, brake.length),
  };
}

const toolsFor = ({ brake, thickness, leaf }: LeafLineSetup, margin: number): LeafTools =>
  leafTools(brake, thickness, leaf.setBack, margin);

function bendingBench(work: Work, line: PartAtLine, setup: LeafLineSetup, { margin }: LeafBlank) {
  const { brake, leaf } = setup;
  const tools = toolsFor(setup, margin);
  const high = isHigh(brake);
  const turns = { set: radians(leaf.set), free: radians(leaf.free) };
  return benchOf<LeafTool>(
    work,
    line,
    [],
    (solid, moves, flat) => leafClause(solid, moves, flat, tools, turns, margin),
    // the round of a hem on the free side rises with it
    (s) =>
      high(s) ||
      (s.lump.kind === 'panel'
        ? s.flat || s.moves
        : s.moves && work.tree.panels[s.lump.panel]?.bend?.hem != null),
  );
}

/** True for what does not go level under the lifted jaw. */
const isHigh =
  ({ opening }: Brake) =>
  ({ top, bottom }: StandingLump) =>
    top > opening || bottom < 0;

function closingBench(work: Work, line: PartAtLine, setup: LeafLineSetup, { margin }: LeafBlank) {
  const { brake, operation, leaf } = setup;
  const high = isHigh(brake);
  const tools = toolsFor(setup, margin);
  // the folded hem under the jaw with its whole width, the sheet running out behind
  const shift = -leaf.setBack;
  return benchOf<LeafTool>(
    work,
    line,
    // the hem that is closed is meant to be under the jaw
    operation.panels.flatMap((p) => subtree(work.tree, p)),
    (solid, _, flat) => closeClause(solid, shift, flat, tools, margin),
    (s) => (s.flat ? s.lump.kind === 'panel' : !s.moves && high(s)),
  );
}

/** What no order changes: angle, length, thickness. The angle that is set counts, not the one that is left. */
function limitsOf(
  { brake, operation, frame, leaf, thickness }: LeafLineSetup,
  { material }: LeafBlank,
): Obstacle | null {
  const { action, panels } = operation;
  if (action === 'roll') return { code: 'angle', panel: panels[0] as number };
  // a hem goes under the jaw on its wall, fold to the front
  if (action === 'close' && frame.held === 'child') return { code: 'opening', panel: panels[0] as number };
  if (action === 'bend' && leaf.set > leaf.most + 1e-9)
    return { code: 'angle', panel: -1, value: leaf.set, limit: leaf.most };
  const length = lineLength(frame);
  if (length > brake.length) return { code: 'length', panel: -1, value: length, limit: brake.length };
  const limit = thicknessLimit(brake.capacity, material).thickness;
  return thickness > limit * 1.001 ? { code: 'capacity', panel: -1, value: thickness, limit } : null;
}
