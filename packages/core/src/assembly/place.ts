import { remark } from '../errors/core-findings.js';
import type { Finding } from '../errors/finding.js';
import { JobError } from '../errors/problem.js';
import { COMPUTED } from '../errors/source.js';
import { homePose, type Pose } from '../fold/draft/space.js';
import type { Site } from '../fold/draft/tree.js';
import { boxOfPieces } from '../fold/formed/extent.js';
import { stand } from '../fold/formed/stand.js';
import { jointProblems } from './joint-problems.js';
import { bothFaces, namedSite } from './named-site.js';
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
  readonly open: readonly Miss[];
}

/** A joint that does not close. */
export interface Miss {
  readonly finding: Finding;
  readonly pieces: readonly [string, string];
  /** How far the pieces run into each other off the face, mm; 0 when they do not. */
  readonly into: number;
}

/** Widest gap a fastener can draw together, mm. Common practice, no source. */
export const WIDEST_GAP = 0.5;
const ASIDE = 0.1; // mm a closing joint may miss on the face
const RUN_IN = 1e-3; // mm
const TILT = 0.05; // degrees

/**
 * Place every piece from its joints: the first part stays at home, each joint brings the next piece to its site. The
 * joints that bring pieces are the earliest of the job that reach them all, whatever the order of the parts; every
 * other one joins pieces that stand already, and a misfit there is a finding. What no joint ties to the first object
 * is an object of its own, beside it.
 * @param carries pieces that bought parts stand on: they stand too, joined or not
 * @throws JobError for unknown pieces and sites, and sites claimed twice
 */
export function placePieces(
  parts: readonly AssemblyPart[],
  joints: readonly JointSpec[],
  carries: ReadonlySet<string> = new Set(),
): Placement {
  const problems = jointProblems(parts, joints);
  if (problems.length > 0) throw new JobError(problems);
  const pieces = parts.flatMap((part) => pieceNames(part).map((piece) => ({ piece, part })));
  const objects: Thing[] = [];
  const standing = (piece: string) => objects.flatMap((o) => o.placed.get(piece) ?? []);
  for (const first of pieces.filter(
    ({ piece }) => carries.has(piece) || joints.some((j) => touches(j, piece)),
  )) {
    if (standing(first.piece).length > 0) continue;
    const grown = (pose: Pose) => grow({ piece: first.piece, part: first.part, pose }, pieces, joints);
    const home = grown(homePose());
    const last = objects.at(-1);
    const x = last === undefined ? 0 : along(last)[1] + BESIDE - along(home)[0];
    objects.push(x === 0 ? home : grown(homePose([x, 0, 0])));
  }
  const order = (s: Seated) => joints.indexOf(s.joint);
  return {
    placed: pieces.flatMap(({ piece }) => standing(piece)),
    seated: objects.flatMap((o) => o.seated).toSorted((a, b) => order(a) - order(b)),
    loose: pieces.map((p) => p.piece).filter((p) => standing(p).length === 0),
    open: objects.flatMap((o) => o.open),
  };
}

/** Pieces that joints tie together. */
interface Thing extends Pick<Placement, 'seated' | 'open'> {
  readonly placed: ReadonlyMap<string, Placed>;
}

const BESIDE = 50; // mm between objects of one job
const touches = ({ from, to }: JointSpec, piece: string) => from.piece === piece || to.piece === piece;

/** Everything that joints tie to a piece that stands. */
function grow(first: Placed, pieces: readonly Piece[], joints: readonly JointSpec[]): Thing {
  const placed = new Map([[first.piece, first]]);
  const seated: Seated[] = [];
  const misses: Miss[] = [];
  for (let left = [...joints]; ; ) {
    const next = left.find((j) => placed.has(j.from.piece) || placed.has(j.to.piece));
    if (next === undefined) return { placed, seated, open: misses };
    left = left.filter((j) => j !== next);
    const done = seat(next, pieces, placed);
    if ('finding' in done) misses.push(done);
    else seated.push(done);
  }
}

/** From where to where an object reaches along x, mm. */
function along({ placed }: Thing): readonly [number, number] {
  const boxes = [...placed.values()].map(({ part, pose }) => {
    const { panels, bends, thickness } = stand(part.formed, pose);
    return boxOfPieces(panels, bends, thickness);
  });
  return [Math.min(...boxes.map((b) => b.min[0])), Math.max(...boxes.map((b) => b.max[0]))];
}

type Piece = Pick<Placed, 'piece' | 'part'>;

function seat(joint: JointSpec, pieces: readonly Piece[], placed: Map<string, Placed>): Seated | Miss {
  const find = ({ piece }: JointEnd) => pieces.find((p) => p.piece === piece) as Piece;
  const forward = placed.has(joint.from.piece);
  const [host, guest] = forward ? [joint.from, joint.to] : [joint.to, joint.from];
  const at = placed.get(host.piece) as Placed;
  if (host.piece === guest.piece) return withItself(joint, at);
  const [hostSite, guestSite] = [siteOf(at.part, host), siteOf(find(guest).part, guest)];
  const stands = placed.get(guest.piece);
  const sign = forward ? 1 : -1;
  const lift = dropIn(hostSite, guestSite);
  // seen from the other part, right is left
  const { across } = joint.shift;
  const up = joint.shift.up * sign + lift;
  const frame = siteFrame(at.part.formed, hostSite, at.pose);
  const gap = stands === undefined ? undefined : closed(joint, frame, stands, guestSite, { up, across });
  if (typeof gap === 'object') return gap;
  const { part } = find(guest);
  const own = siteFrame(part.formed, guestSite, homePose());
  const apart = () => {
    const flat = stand(part.formed, mate(frame, own, { up, across, out: 0 }));
    return standOff([stand(at.part.formed, at.pose), hostSite], [flat, guestSite], frame.normal);
  };
  const off = gap ?? apart();
  const there: Placed = stands ?? {
    piece: guest.piece,
    part,
    pose: mate(frame, own, { up, across, out: off }),
  };
  placed.set(guest.piece, there);
  const sites: readonly [Site, Site] = forward ? [hostSite, guestSite] : [guestSite, hostSite];
  return { joint, from: forward ? at : there, to: forward ? there : at, sites, gap: off };
}

/** Two sites of one piece: it stands already, and its faces meet or do not. */
function withItself(joint: JointSpec, at: Placed): Seated {
  const [a, b] = [joint.from, joint.to].map((end) => bothFaces(siteOf(at.part, end))) as [Site, Site];
  return { joint, from: at, to: at, sites: [a, b], gap: 0 };
}

/** A part that drops in between walls stands as far off the floor as off the walls: up on them, down seen from it. mm */
function dropIn(host: Site, guest: Site): number {
  return host.width === null || guest.width === null ? 0 : (host.width - guest.width) / 2;
}

/** Gap of a joint between two pieces that stand already, or how far they miss each other. mm */
function closed(
  joint: JointSpec,
  frame: ReturnType<typeof siteFrame>,
  stands: Placed,
  site: Site,
  move: { up: number; across: number },
): number | Miss {
  const found = misfit(frame, siteFrame(stands.part.formed, site, stands.pose), move);
  const { tilt, out, aside } = found;
  const wrong = {
    tilt: tilt > TILT ? tilt : null,
    into: tilt <= TILT && out < -RUN_IN ? -out : null,
    gap: tilt <= TILT && out > WIDEST_GAP + 1e-6 ? out : null,
    aside: aside > ASIDE ? aside : null,
  };
  if (Object.values(wrong).every((w) => w === null)) return Math.max(0, out);
  const finding = {
    part: stands.part.name,
    ...remark('loop-open', 'error', {
      value: Math.max(Math.abs(out), aside),
      limit: WIDEST_GAP,
      unit: 'mm',
      where: { joints: [joint.name] },
      values: {
        ends: [`${joint.from.piece}.${joint.from.site}`, `${joint.to.piece}.${joint.to.site}`],
        ...wrong,
      },
      source: COMPUTED,
    }),
  };
  return { finding, pieces: [joint.from.piece, joint.to.piece], into: Math.max(0, -out) };
}

function siteOf(part: AssemblyPart, { site }: JointEnd): Site {
  return namedSite(part.part, site) as Site;
}
