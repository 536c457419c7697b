import { remark, type Spot } from '../errors/core-findings.js';
import type { Finding } from '../errors/finding.js';
import { COMPUTED } from '../errors/source.js';
import { add3, compose3, dot3, type Pose, place3, sub3, turn3, type Vec3 } from '../fold/draft/space.js';
import { type Lump, lumpsOf } from '../fold/formed/lump.js';
import { stand } from '../fold/formed/stand.js';
import { radians } from '../units/angle.js';
import type { Bought } from './bought.js';
import { deepestPair, spotOf } from './fit.js';
import type { Placed, Seated } from './types.js';

const STEP = 1; // degrees between the places that are looked at
const FINE = 0.1; // degrees

/**
 * Hinged pieces moved through the angle they shall open by, with all that is fastened to them, against everything that
 * stays: a finding for the first place where bodies meet. The first of several hinges between two pieces is the pin.
 */
export function swingFindings(
  bought: readonly Bought[],
  placed: readonly Placed[],
  seated: readonly Seated[],
): readonly Finding[] {
  const pins = bought.filter((b) => b.body.pin !== null);
  const pair = (b: Bought) => b.holds.map((h) => h.piece).join();
  return pins
    .filter((b, i) => pins.findIndex((o) => pair(o) === pair(b)) === i)
    .flatMap((pin) => swingOf(pin, bought, placed, seated));
}

function swingOf(
  pin: Bought,
  bought: readonly Bought[],
  placed: readonly Placed[],
  seated: readonly Seated[],
): readonly Finding[] {
  const { params } = pin.spec;
  if (params.type !== 'hinge') return [];
  const goes = movingPieces(pin, seated);
  const one = bought.filter((b) => b.holds.length === 1);
  const isMoving = (p: Placed) => goes.has(one.find((b) => b === p)?.holds[0]?.piece ?? p.piece);
  const all = [...placed, ...one];
  const lumps = (list: readonly Placed[], turn: (pose: Pose) => Pose) =>
    list.map((p) => [p, lumpsOf(stand(p.part.formed, turn(p.pose)))] as const);
  const still = lumps(
    all.filter((p) => !isMoving(p)),
    (p) => p,
  );
  const meets = (angle: number): readonly [Spot, Spot] | null => {
    for (const [p, own] of lumps(all.filter(isMoving), turned(pin, radians(angle))))
      for (const [q, others] of still) {
        const worst = deepestPair(own, others as readonly Lump[]);
        if (worst !== null) return [spotOf(p, worst.u), spotOf(q, worst.v)];
      }
    return null;
  };
  const { opens } = params;
  if (meets(0) !== null) return []; // a clash as it stands is told as one
  let clear = 0;
  while (clear < opens && meets(Math.min(clear + STEP, opens)) === null)
    clear = Math.min(clear + STEP, opens);
  if (clear >= opens) return [];
  let [low, high] = [clear, Math.min(clear + STEP, opens)];
  while (high - low > FINE) {
    const half = (low + high) / 2;
    if (meets(half) === null) low = half;
    else high = half;
  }
  const between = meets(high) as readonly [Spot, Spot];
  const found = {
    value: Math.floor(low * 10) / 10,
    limit: opens,
    unit: 'deg',
    values: { hinge: pin.piece, between },
    source: COMPUTED,
  } as const;
  return [{ part: (pin.holds[1] as Placed).part.name, ...remark('hinge-swing', 'error', found) }];
}

/** The second piece of a hinge, all that is fastened to it, and what only stands on those. */
function movingPieces(pin: Bought, seated: readonly Seated[]): ReadonlySet<string> {
  const [home, lid] = pin.holds.map((h) => h.piece) as [string, string];
  const grown = (start: string, joints: readonly Seated[]) => {
    const found = new Set([start]);
    for (let size = 0; size < found.size; ) {
      size = found.size;
      for (const { from, to } of joints)
        if (found.has(from.piece) || found.has(to.piece)) found.add(from.piece).add(to.piece);
    }
    return found;
  };
  const held = seated.filter((s) => s.joint.by !== null);
  const moving = grown(lid, held);
  const still = grown(home, held);
  const loose = seated.flatMap((s) => [s.from.piece, s.to.piece]).filter((p) => !still.has(p));
  for (const piece of loose) {
    const own = seated.filter((s) => s.from.piece === piece || s.to.piece === piece);
    if (own.every((s) => moving.has(s.from.piece) || moving.has(s.to.piece))) moving.add(piece);
  }
  moving.delete(home);
  return moving;
}

/** Turned about the pin, the second piece off the face. */
function turned({ pose: frame, body }: Bought, angle: number): (pose: Pose) => Pose {
  const axis = place3(frame, [0, 0, body.pin ?? 0]);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const turn = (v: Vec3): Vec3 => {
    const [x, y, z] = [dot3(v, frame.x), dot3(v, frame.y), dot3(v, frame.z)];
    return turn3(frame, [x, y * c - z * s, y * s + z * c]);
  };
  const whole: Pose = {
    origin: add3(axis, turn(sub3([0, 0, 0], axis))),
    x: turn([1, 0, 0]),
    y: turn([0, 1, 0]),
    z: turn([0, 0, 1]),
  };
  return (pose) => compose3(whole, pose);
}
