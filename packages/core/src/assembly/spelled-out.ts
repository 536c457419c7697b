import { suggestion } from '../errors/nearest.js';
import { JobError, type Wording } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import type { Seat } from '../fold/draft/tree.js';
import type { Point } from '../plane/point.js';
import { cross, dot, sub } from '../plane/point.js';
import { cutShift } from './as-cut.js';
import { namedSite } from './named-site.js';
import { type AssemblyPart, type JointPlaces, type JointSpec, pieceNames } from './types.js';

/**
 * Joints one by one: a part of several pieces that is joined to itself is so in every piece, and one that stands at
 * several places of a site brings a piece to each.
 * @throws JobError for places that are none, or more or fewer than there are pieces
 */
export function spelledOut(
  parts: readonly AssemblyPart[],
  joints: readonly JointSpec[],
): readonly JointSpec[] {
  return joints.flatMap((joint) => {
    const { from, to, places } = joint;
    const many = parts.find((p) => p.name === from.piece && p.quantity > 1);
    if (from.piece === to.piece && many !== undefined)
      return pieceNames(many).map((piece, i): JointSpec => {
        const ends = { from: { ...from, piece }, to: { ...to, piece } };
        return { ...joint, ...ends, name: `${joint.name}-${i + 1}` };
      });
    return places === null ? [joint] : placedJoints(parts, joint, places);
  });
}

function placedJoints(
  parts: readonly AssemblyPart[],
  joint: JointSpec,
  places: JointPlaces,
): readonly JointSpec[] {
  const { from, to, shift } = joint;
  const host = parts.find((p) => pieceNames(p).includes(from.piece));
  const guest = parts.find((p) => p.name === to.piece || pieceNames(p).includes(to.piece));
  const site = host === undefined ? null : namedSite(host.part, from.site);
  if (host === undefined || guest === undefined || site === null) return [joint]; // told where all ends are
  const pieces = guest.name === to.piece ? pieceNames(guest) : [to.piece];
  const at = placesAlong(host, site.seat, places, pieces.length, joint);
  if (at.length !== pieces.length)
    throw refusal(
      joint,
      `${at.length} places given for ${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'} of ${quoted(guest.name)}`,
      `Give ${guest.name} quantity: ${at.length}, or as many places as it has pieces`,
    );
  return at.map(
    (across, i): JointSpec => ({
      ...joint,
      name: at.length === 1 ? joint.name : `${joint.name}-${i + 1}`,
      to: { ...to, piece: pieces[i] as string },
      shift: { up: shift.up, across: shift.across + across },
    }),
  );
}

/** Across the site from where its seat is, mm, one for each place. */
function placesAlong(
  host: AssemblyPart,
  seat: Seat,
  { at, every, count, edge }: JointPlaces,
  pieces: number,
  joint: JointSpec,
): readonly number[] {
  const panel = host.drawn.panels.find((p) => p.id === seat.panel); // told of the part as drawn
  if (panel === undefined || typeof seat.looks !== 'string')
    throw refusal(joint, 'this site has no width to stand along', 'Join at a face of a panel');
  const right: Point = seat.looks === 'marked' ? [seat.up[1], -seat.up[0]] : [-seat.up[1], seat.up[0]];
  const along = panel.outline.map((e) => dot(e.from, right));
  const [low, high] = [Math.min(...along), Math.max(...along)];
  const [start, way] = edge === null ? [low, 1] : startAt(panel.outline, edge, right, [low, high], joint);
  const seatAt = dot(sub(seat.at, cutShift(host, seat.panel)), right);
  if (at !== null) {
    const far = at.find((d) => d > high - low + 1e-9);
    if (far !== undefined)
      throw refusal(
        joint,
        (say) => `${say.size(far)} along ${quoted(seat.panel)} given, which is ${say.size(high - low)} long`,
        (say) => `Use ${say.most(high - low)} or less`,
      );
    return at.map((d) => start + way * d - seatAt);
  }
  const n = count ?? pieces;
  const pitch = every ?? (high - low) / (n + 1);
  const middle = (low + high) / 2;
  return Array.from({ length: n }, (_, i) => middle + way * (i - (n - 1) / 2) * pitch - seatAt);
}

/** Where places along the panel are counted from, and which way. */
function startAt(
  outline: readonly { readonly name: string; readonly from: Point }[],
  edge: string,
  right: Point,
  [low, high]: readonly [number, number],
  joint: JointSpec,
): readonly [start: number, way: 1 | -1] {
  const i = outline.findIndex((e) => e.name === edge);
  const names = outline.map((e) => e.name);
  if (i < 0) throw refusal(joint, `there is no edge ${quoted(edge)}`, suggestion(edge, names));
  const [p, q] = [outline[i], outline[(i + 1) % outline.length]].map((e) => e?.from) as [Point, Point];
  const along: Point = [q[0] - p[0], q[1] - p[1]];
  if (Math.abs(cross(along, right)) < Math.abs(dot(along, right)))
    throw refusal(
      joint,
      `the edge ${quoted(edge)} runs along the places`,
      `Give one at an end: ${names.filter((n) => n !== edge).join(', ')}`,
    );
  const there = (dot(p, right) + dot(q, right)) / 2;
  return there - low < high - there ? [there, 1] : [there, -1];
}

const refusal = (joint: JointSpec, message: Wording, fix: Wording) =>
  new JobError([{ code: 'joint-places', path: joint.path, message, fix }]);
