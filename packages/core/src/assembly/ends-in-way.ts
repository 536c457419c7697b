import { remark } from '../errors/core-findings.js';
import type { Finding } from '../errors/finding.js';
import { cite } from '../errors/source.js';
import { add3, compose3, cross3, dot3, place3, scale3, sub3, unit3, type Vec3 } from '../fold/draft/space.js';
import type { Lump } from '../fold/formed/lump.js';
import { boxDistance, type Prism, prismBetween } from '../fold/formed/prism.js';
import { overlapDepth } from '../fold/formed/prism-overlap.js';
import type { FastenerEnds } from '../joining/fastener.js';
import type { Fastener, FastenerEnd } from './fastener.js';
import { CLASH, type LumpsOf } from './fit.js';
import type { Placed, Seated } from './types.js';

const SIDES = 12; // of the prism round a head

/**
 * Heads and tails of fasteners that are in the way of a piece they do not hold: whichever way round they are set, one
 * finding a joint and piece, with the deepest.
 */
export function endsInWay(
  fasteners: readonly Fastener[],
  seated: readonly Seated[],
  placed: readonly Placed[],
  lumps: LumpsOf,
): readonly Finding[] {
  return seated.flatMap((s): readonly Finding[] => {
    const { by, name } = s.joint;
    const ends = by?.kind.ends?.(by.ask as never);
    if (by == null || ends === undefined) return [];
    const own = fasteners.filter((f) => f.joint === name).map((f) => waysOf(f, ends, placed));
    const others = placed.filter((p) => p.piece !== s.from.piece && p.piece !== s.to.piece);
    return others.flatMap((other): readonly Finding[] => {
      const depths = own.map((ways) => blocked(ways, lumps(other.piece)));
      const deepest = Math.max(0, ...depths);
      if (deepest <= CLASH) return [];
      return [
        {
          part: other.part.name,
          ...remark('fastener-in-way', 'warning', {
            value: deepest,
            limit: 0,
            unit: 'mm',
            where: { joints: [name] },
            values: { piece: other.piece, kind: by.kind.name, count: depths.filter((d) => d > CLASH).length },
            source: [cite(null, { basis: 'computed' })],
          }),
        },
      ];
    });
  });
}

/** The two ways round that a fastener may be set: its head and its tail as bodies. */
type Ways = readonly (readonly Prism[])[];

function waysOf(fastener: Fastener, { head, tail }: FastenerEnds, placed: readonly Placed[]): Ways {
  const [a, b] = fastener.on.map((end) => outside(fastener.at, end, placed)) as [Outside, Outside];
  return [
    [disc(a, head), disc(b, tail)],
    [disc(b, head), disc(a, tail)],
  ];
}

/** How deep head and tail reach into other metal, set the way round that does less. mm */
function blocked(ways: Ways, metal: readonly Lump[]): number {
  const into = (body: Prism) => {
    const near = metal.filter((lump) => boxDistance(body, lump) < 0);
    return near.flatMap((l) => l.prisms()).reduce((deep, s) => Math.max(deep, overlapDepth(body, s)), 0);
  };
  return Math.min(...ways.map((bodies) => Math.max(...bodies.map(into))));
}

/** The outer face of a sheet under a fastener's end, and the way off it. */
interface Outside {
  readonly at: Vec3;
  readonly out: Vec3;
}

function outside(at: Vec3, { piece, panel }: FastenerEnd, placed: readonly Placed[]): Outside {
  const { part, pose } = placed.find((p) => p.piece === piece) as Placed;
  const { formed } = part;
  const stands = compose3(
    pose,
    (formed.panels.find((p) => p.id === panel) as (typeof formed.panels)[number]).pose,
  );
  const height = dot3(sub3(at, stands.origin), stands.z);
  // the fastener stands where the sheets meet: the face further from there is outside
  const up = height < formed.thickness / 2;
  const off = up ? formed.thickness - height : height;
  const out = scale3(stands.z, up ? 1 : -1);
  return { at: add3(at, scale3(out, off)), out };
}

/** A round body on a face, as a prism round it. */
function disc({ at, out }: Outside, { diameter, height }: FastenerEnds['head']): Prism {
  const side = Math.abs(out[0]) < 0.9 ? ([1, 0, 0] as const) : ([0, 1, 0] as const);
  const x = unit3(cross3(side, out));
  const frame = { origin: at, x, y: cross3(out, x), z: out };
  const ring = (z: number) =>
    Array.from({ length: SIDES }, (_, i) => {
      const turn = (2 * Math.PI * i) / SIDES;
      return place3(frame, [(diameter / 2) * Math.cos(turn), (diameter / 2) * Math.sin(turn), z]);
    });
  return prismBetween(ring(0), ring(height));
}
