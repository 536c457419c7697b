import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMMON_PRACTICE, cite } from '../errors/source.js';
import type { FastenerNeeds } from '../joining/fastener.js';
import { add, distance, type Point, size, sub, unit } from '../plane/point.js';
import { cutShift } from './as-cut.js';
import { doubtRemark } from './doubt.js';
import { type Fastener, type FastenerEnd, fastenerAt, MEET } from './fastener.js';
import { keepOffs } from './keep-off.js';
import { type Overlap, onFace, seenOn } from './overlap.js';
import { closeRemarks, narrow, type Spread } from './spread.js';
import type { Seated } from './types.js';

const APART = 0.3; // mm two holes may lie off each other and still take a rivet; common practice, no source

/**
 * Fasteners whose places are cut already on a part that is made: they are carried over to the other part, where it
 * stands now. What no longer lands on it is an error.
 * @param cut fasteners as they were when the made part was cut
 */
export function carried(
  seated: Seated,
  overlaps: readonly Overlap[],
  cut: readonly Fastener[],
  needs: FastenerNeeds,
): Spread {
  const first = seated.from.part.made ? 0 : 1;
  const both = seated.from.part.made && seated.to.part.made;
  const landed = cut.map((f) => land(seated, overlaps, f, first, both, needs));
  const lost = landed.filter((l) => l === null).length;
  const there = landed.filter((l) => l !== null);
  const least = there.reduce<Landed | null>((a, b) => (a === null || b.share < a.share ? b : a), null);
  const drilled = needs.holes.some((h) => h !== null); // what is only marked need not meet so nearly
  const apart = drilled ? Math.max(0, ...there.map((l) => l.apart)) : 0;
  const doubt = drilled ? Math.max(0, ...there.map((l) => l.doubt)) : 0;
  return {
    fasteners: there.map((l) => l.fastener),
    remarks: [
      ...(lost === 0 ? [] : [lostRemark(seated, first, lost)]),
      ...(apart <= APART ? [] : [apartRemark(seated, apart)]),
      ...(doubt <= MEET ? [] : [doubtRemark(madeOf(seated), doubt)]),
      ...(least === null || least.share >= 1 - 1e-6
        ? []
        : [narrow(least.overlap, needs, least.share, 'cut')]),
      ...closeRemarks(
        there.map((l) => l.fastener),
        needs,
        null,
      ),
    ],
  };
}

interface Landed {
  readonly fastener: Fastener;
  readonly overlap: Overlap;
  /** Part of the distances to edges and bends that is kept. */
  readonly share: number;
  /** Between the places on two parts that are both made. mm */
  readonly apart: number;
  /** How far from there a place of a measured part may lie: where along the size it came out otherwise is not known. mm */
  readonly doubt: number;
}

function land(
  seated: Seated,
  overlaps: readonly Overlap[],
  { on }: Fastener,
  first: 0 | 1,
  both: boolean,
  needs: FastenerNeeds,
): Landed | null {
  const [own, other] = [on[first], on[1 - first]] as [FastenerEnd, FastenerEnd];
  const host = first === 0 ? seated.from : seated.to;
  for (const overlap of overlaps.filter((o) => (first === 0 ? o.from : o.to).panel.id === own.panel)) {
    const onFirst = (p: Point) => (first === 0 ? p : seenOn(overlap.from, onFace(overlap.to, p)));
    const p = onFirst(add(own.at, cutShift(host.part, own.panel)));
    const share = Math.min(...keepOffs(overlap, needs).map((k) => inward(k, p) / k.keep), 1);
    if (share <= 0) continue;
    const fresh = fastenerAt(seated, overlap, p, needs.holes);
    const facing = fresh.on[1 - first] as FastenerEnd;
    const mate = both ? other : facing;
    const ends = first === 0 ? [own, mate] : [mate, own];
    const apart = both ? distance(facing.at, other.at) : 0;
    const doubt = size(cutShift(host.part, own.panel));
    return { fastener: { ...fresh, on: ends }, overlap, share, apart, doubt };
  }
  return null;
}

/** To the left of an edge, where the metal is. mm */
function inward({ from, to }: { readonly from: Point; readonly to: Point }, p: Point): number {
  const d = unit(sub(to, from));
  const r = sub(p, from);
  return d[0] * r[1] - d[1] * r[0];
}

function lostRemark({ from, to }: Seated, first: 0 | 1, lost: number): Remark {
  const [made, other] = first === 0 ? [from.piece, to.piece] : [to.piece, from.piece];
  return remark('fastener-lost', 'error', {
    value: lost,
    limit: 0,
    values: { made, other },
    source: [cite('measured', { basis: 'computed' })],
  });
}

function apartRemark({ from, to }: Seated, apart: number): Remark {
  return remark('fastener-apart', 'error', {
    value: apart,
    limit: APART,
    unit: 'mm',
    values: { pieces: [from.piece, to.piece] },
    source: [cite('measured', { basis: 'computed' }), ...COMMON_PRACTICE],
  });
}

const madeOf = ({ from, to }: Seated) => [from, to].filter((p) => p.part.made).map((p) => p.piece);
