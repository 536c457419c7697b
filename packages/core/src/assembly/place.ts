import type { Unsaid } from '../errors/finding.js';
import { suggestion } from '../errors/nearest.js';
import { JobError, type Problem, type Say } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { HOME } from '../fold/space.js';
import { stand } from '../fold/stand.js';
import type { Site } from '../fold/tree.js';
import { plainNumber } from '../units/format.js';
import { mate, misfit, siteFrame } from './site-frame.js';
import { standOff } from './stand-off.js';
import {
  type AssemblyPart,
  type JointEnd,
  type JointSpec,
  type Placed,
  pieceNames,
  type Seated,
} from './types.js';

/** Pieces in their places, the joints between them, and the pieces that no joint reaches. */
export interface Placement {
  readonly placed: readonly Placed[];
  readonly seated: readonly Seated[];
  readonly loose: readonly string[];
  /** Joints between pieces that stand already and miss each other; nothing is fastened there. */
  readonly open: readonly Unsaid[];
}

/** Widest gap a fastener can draw together, mm. Common practice, no source. */
export const WIDEST_GAP = 0.5;
const ASIDE = 0.1; // mm a closing joint may miss on the face
const RUN_IN = 1e-3; // mm
const TILT = 0.05; // degrees

/**
 * Place every piece from its joints: the first part stays at home, each joint brings the next piece to its site.
 * A joint between two pieces that stand already has to fit; one that does not is a finding with the misfit.
 * @throws JobError for unknown pieces and sites, and sites claimed twice
 */
export function placePieces(parts: readonly AssemblyPart[], joints: readonly JointSpec[]): Placement {
  const problems = [...joints.flatMap((j) => endProblems(parts, j)), ...claimedTwice(joints)];
  if (problems.length > 0) throw new JobError(problems);
  const pieces = parts.flatMap((part) => pieceNames(part).map((piece) => ({ piece, part })));
  const first = pieces.find(({ piece }) =>
    joints.some((j) => j.from.piece === piece || j.to.piece === piece),
  );
  const placed = new Map<string, Placed>();
  if (first !== undefined) placed.set(first.piece, { ...first, pose: HOME });
  const seated: Seated[] = [];
  const misses: Unsaid[] = [];
  for (let open = [...joints]; open.length > 0; ) {
    const next = open.find((j) => placed.has(j.from.piece) || placed.has(j.to.piece));
    if (next === undefined) break;
    open = open.filter((j) => j !== next);
    const done = seat(next, pieces, placed);
    if ('code' in done) misses.push(done);
    else seated.push(done);
  }
  const order = (s: Seated) => joints.indexOf(s.joint);
  return {
    placed: pieces.flatMap(({ piece }) => placed.get(piece) ?? []),
    seated: seated.toSorted((a, b) => order(a) - order(b)),
    loose: pieces.map((p) => p.piece).filter((p) => !placed.has(p)),
    open: misses,
  };
}

type Piece = Pick<Placed, 'piece' | 'part'>;

function seat(joint: JointSpec, pieces: readonly Piece[], placed: Map<string, Placed>): Seated | Unsaid {
  const find = ({ piece }: JointEnd) => pieces.find((p) => p.piece === piece) as Piece;
  const forward = placed.has(joint.from.piece);
  const [host, guest] = forward ? [joint.from, joint.to] : [joint.to, joint.from];
  const at = placed.get(host.piece) as Placed;
  const [hostSite, guestSite] = [siteOf(at.part, host), siteOf(find(guest).part, guest)];
  const stands = placed.get(guest.piece);
  const sign = forward ? 1 : -1;
  const lift = dropIn(hostSite, guestSite);
  // seen from the other part, right is left
  const move = { up: joint.shift.up * sign + lift, across: joint.shift.across };
  const frame = siteFrame(at.part.formed, hostSite, at.pose);
  const gap = stands === undefined ? undefined : closed(joint, frame, stands, guestSite, move);
  if (typeof gap === 'object') return gap;
  const { part } = find(guest);
  const flat = mate(frame, siteFrame(part.formed, guestSite, HOME), { ...move, out: 0 });
  const off =
    gap ?? standOff(stand(at.part.formed, at.pose), hostSite, stand(part.formed, flat), frame.normal);
  const there: Placed = stands ?? {
    piece: guest.piece,
    part,
    pose: mate(frame, siteFrame(part.formed, guestSite, HOME), { ...move, out: off }),
  };
  placed.set(guest.piece, there);
  const sites: readonly [Site, Site] = forward ? [hostSite, guestSite] : [guestSite, hostSite];
  return { joint, from: forward ? at : there, to: forward ? there : at, sites, gap: off };
}

/** A part that drops in between walls stands as far off the floor as off the walls. mm */
function dropIn(host: Site, guest: Site): number {
  return host.width === null || guest.width === null ? 0 : Math.abs(host.width - guest.width) / 2;
}

/** Gap of a joint between two pieces that stand already, or how far they miss each other. mm */
function closed(
  joint: JointSpec,
  frame: ReturnType<typeof siteFrame>,
  stands: Placed,
  site: Site,
  move: { up: number; across: number },
): number | Unsaid {
  const found = misfit(frame, siteFrame(stands.part.formed, site, stands.pose), move);
  const wrong: ((say: Say) => string)[] = [];
  if (found.tilt > TILT) wrong.push(() => `the faces stand at ${plainNumber(found.tilt, 2)}° to each other`);
  else if (found.out < -RUN_IN) wrong.push((say) => `the parts run ${say.size(-found.out)} into each other`);
  else if (found.out > WIDEST_GAP)
    wrong.push((say) => `a gap of ${say.size(found.out)} stays open, ${say.most(WIDEST_GAP)} at most`);
  if (found.aside > ASIDE) wrong.push((say) => `the seats lie ${say.size(found.aside)} beside each other`);
  if (wrong.length === 0) return Math.max(0, found.out);
  const ends = `${joint.from.piece}.${joint.from.site} and ${joint.to.piece}.${joint.to.site}`;
  return {
    code: 'loop-open',
    severity: 'error',
    part: stands.part.name,
    value: Math.max(Math.abs(found.out), found.aside),
    limit: WIDEST_GAP,
    unit: 'mm',
    message: (say) =>
      `joint ${joint.name}: the joints do not close: between ${ends} ${wrong.map((w) => w(say)).join(' and ')}`,
    source: 'computed from the formed parts; common practice, no source',
    fix: `change a size of ${stands.part.name} by that much, or let it follow the other part`,
  };
}

function siteOf(part: AssemblyPart, { site }: JointEnd): Site {
  return part.part.sites.find((s) => s.name === site) as Site;
}

function endProblems(parts: readonly AssemblyPart[], joint: JointSpec): readonly Problem[] {
  const { from, to, path } = joint;
  const ends = (['from', 'to'] as const).flatMap((end) => oneEnd(parts, joint[end], [...path, end]));
  if (ends.length > 0) return ends;
  if (from.piece === to.piece)
    return [
      {
        code: 'joint-self',
        path,
        message: `${from.piece} is joined to itself`,
        fix: 'Join two different pieces',
      },
    ];
  return [];
}

function oneEnd(
  parts: readonly AssemblyPart[],
  { piece, site }: JointEnd,
  path: Problem['path'],
): readonly Problem[] {
  const part = parts.find((p) => pieceNames(p).includes(piece));
  if (part === undefined) return [unknownPiece(parts, piece, path)];
  const names = part.part.sites.map((s) => s.name);
  if (names.includes(site)) return [];
  const fix = names.length === 0 ? 'It has no sites as it is' : suggestion(site, names);
  return [{ code: 'site-unknown', path, message: `${piece} has no site ${quoted(site)}`, fix }];
}

function unknownPiece(parts: readonly AssemblyPart[], piece: string, path: Problem['path']): Problem {
  const whole = parts.find((p) => p.name === piece);
  if (whole !== undefined) {
    const message = `there are ${whole.quantity} pieces of ${quoted(piece)}`;
    return {
      code: 'piece-which',
      path,
      message,
      fix: `Say which: ${pieceNames(whole).slice(0, 4).join(', ')}`,
    };
  }
  const numbered = parts.find(
    (p) => piece.startsWith(`${p.name}-`) && /^\d+$/.test(piece.slice(p.name.length + 1)),
  );
  if (numbered !== undefined) {
    const many =
      numbered.quantity === 1
        ? `one piece of ${quoted(numbered.name)}, called just that`
        : `${numbered.quantity} pieces of ${quoted(numbered.name)}`;
    return {
      code: 'piece-unknown',
      path,
      message: `${quoted(piece)} given, there is ${many}`,
      fix: 'Raise its quantity, or join one that is there',
    };
  }
  return {
    code: 'piece-unknown',
    path,
    message: `there is no part ${quoted(piece)}`,
    fix: suggestion(piece, parts.flatMap(pieceNames)),
  };
}

function claimedTwice(joints: readonly JointSpec[]): readonly Problem[] {
  const ends = joints.flatMap((j) => [j.from, j.to].map((e) => ({ joint: j, key: `${e.piece}.${e.site}` })));
  return ends.flatMap(({ joint, key }, i) => {
    const first = ends.findIndex((e) => e.key === key);
    if (first === i || ends[first]?.joint === joint) return [];
    const message = `${key} is taken by the joint "${ends[first]?.joint.name}"`;
    return [{ code: 'site-twice', path: joint.path, message, fix: 'Give every joint a site of its own' }];
  });
}
