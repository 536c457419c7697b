import { placeOn } from '../cutouts/place-on.js';
import { suggestion } from '../errors/nearest.js';
import { fail, type Path, within } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { reaches } from '../fold/draft/least.js';
import { compose3, cross3, dot3, type Pose, place3, scale3, sub3, type Vec3 } from '../fold/draft/space.js';
import type { Part, PartPanel } from '../fold/settle/part.js';
import type { Body } from '../hardware/body.js';
import type { HardwareType } from '../hardware/params.js';
import { boxOf } from '../plane/loop.js';
import { add, type Point, sub } from '../plane/point.js';
import { radians } from '../units/angle.js';
import { cutShift } from './as-cut.js';
import { namedSite, siteNames } from './named-site.js';
import { onFace, outward, type StandingFace, seenOn } from './overlap.js';
import type { JointEnd, Placed } from './types.js';

const ALIKE = 1e-3; // sine of the angle between faces that lie in one plane
const LEVEL = 0.1; // mm between them; common practice, no source

/** The face a site names. @throws JobError for pieces and faces that are none */
export function faceAt({ piece, site }: JointEnd, placed: readonly Placed[], path: Path): StandingFace {
  const host = placed.find((p) => p.piece === piece);
  if (host === undefined)
    return fail(
      'piece-unknown',
      path,
      `there is no piece ${quoted(piece)}`,
      suggestion(
        piece,
        placed.map((p) => p.piece),
      ),
    );
  const [face] = namedSite(host.part.part, site)?.faces ?? [];
  const panel = host.part.formed.panels.find((p) => p.id === face?.panel);
  if (face === undefined || panel === undefined)
    return fail(
      'site-unknown',
      path,
      `${piece} has no face ${quoted(site)}`,
      suggestion(
        site,
        siteNames(host.part.part).filter((name) => (namedSite(host.part.part, name)?.faces.length ?? 0) > 0),
      ),
    );
  return { placed: host, panel, face: face.face, pose: compose3(host.pose, panel.pose) };
}

const outlineOf = ({ placed, panel }: StandingFace, { panels }: Part = placed.part.part) =>
  (panels.find((p) => p.id === panel.id) as PartPanel).outline;

/** Where a face's place lies, x to the right of who looks at it. */
export function faceFrame(
  face: StandingFace,
  at: Readonly<Record<string, number>>,
  turn: number,
  i: number,
): Pose {
  const p = placeAt(face, at, i);
  const flip = face.face === 'marked' ? 1 : -1;
  const a = radians(turn);
  const [x, y, z] = [scale3(face.pose.x, flip), face.pose.y, outward(face)];
  const both = (u: number, v: number): Vec3 => [
    x[0] * u + y[0] * v,
    x[1] * u + y[1] * v,
    x[2] * u + y[2] * v,
  ];
  const origin = onFace(face, p);
  return { origin, x: both(Math.cos(a), Math.sin(a)), y: both(-Math.sin(a), Math.cos(a)), z };
}

/** Told of the part as drawn: where its holes were cut. */
function placeAt(face: StandingFace, at: Readonly<Record<string, number>>, i: number): Point {
  const { part } = face.placed;
  const place = within(['at', i], () => placeOn(face.panel.id, outlineOf(face, part.drawn), at));
  return add(place, cutShift(part, face.panel.id));
}

/**
 * The frame on the line where two faces of one plane meet, y towards the second.
 * @throws JobError for faces that do not, and for what is longer than the line
 */
export function lineFrame(
  [on, and]: readonly StandingFace[],
  [{ along }, type]: readonly [Body, HardwareType],
  at: Readonly<Record<string, number>>,
  i: number,
): Pose {
  if (on === undefined || and === undefined)
    return fail('value-missing', [], 'it joins two parts', 'Give and: the face of the other one');
  if (on.placed === and.placed)
    return fail('hardware-one', ['and'], 'both faces are of one piece', 'Name a face of each of two pieces');
  const z = outward(on);
  const off = dot3(z, sub3(onFace(and, [0, 0]), onFace(on, [0, 0])));
  if (dot3(z, outward(and)) < 1 - ALIKE || Math.abs(off) > LEVEL)
    return fail(
      'hardware-plane',
      ['and'],
      'the two faces do not lie in one plane',
      'Name two faces beside each other, such as body.north-out and lid.north-out',
    );
  const place = placeAt(on, at, i);
  const way = sub(middle(outlineOf(and).map((e) => seenOn(on, onFace(and, e.from)))), middle(points(on)));
  const upright = Math.abs(way[1]) >= Math.abs(way[0]);
  const sign = Math.sign(upright ? way[1] : way[0]);
  const y = scale3(upright ? on.pose.y : on.pose.x, sign);
  const x = cross3(y, z);
  const home: Pose = { origin: onFace(on, place), x, y, z };
  const local = (f: StandingFace) =>
    boxOf(
      outlineOf(f).map((e): Point => {
        const d = sub3(onFace(f, e.from), home.origin);
        return [dot3(d, x), dot3(d, y)];
      }),
    );
  const [a, b] = [local(on), local(and)];
  const [low, high] = [Math.max(a.min[0], b.min[0]), Math.min(a.max[0], b.max[0])];
  if (!reaches(high - low, along))
    return fail(
      'hardware-long',
      [type === 'hinge' ? 'length' : 'width'],
      (say) => `${say.size(along)} long given, the edges that meet are ${say.size(high - low)} long`,
      (say) => `Use ${say.most(high - low)} or less`,
    );
  const past = Math.max(low + along / 2, along / 2 - high);
  if (past > 1e-6)
    return fail(
      'hardware-past',
      ['at', i],
      (say) => `it stands ${say.size(past)} past the end of the edges that meet`,
      (say) => `Move it ${say.least(past)} or more towards their middle`,
    );
  return { ...home, origin: place3(home, [0, (a.max[1] + b.min[1]) / 2, 0]) };
}

const points = (f: StandingFace) => outlineOf(f).map((e) => e.from);

function middle(list: readonly Point[]): Point {
  const { min, max } = boxOf(list);
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
}
