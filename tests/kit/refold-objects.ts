import type { FoldedManifest } from './refold-parts.js';
import { missOf, type StandingObject, sharedThickness } from './stand-files.js';

const ROUNDING = 0.005; // mm; the files hold four decimals
const WIDEST_GAP = 0.5; // mm, the routine's own
const STRIPS = 0.03; // mm; the strips that bends are folded from stick out by two thousandths at either side
const LEAST_BESIDE = 0.01; // mm²

/**
 * Why a remark of the routine on an object comes from how it looks; null for what has to be mended.
 * @param object the same files put together by a routine of our own
 */
export function objectRemark(
  remark: string,
  manifest: FoldedManifest,
  object: StandingObject,
): string | null {
  if (remark === 'assembly without fasteners') return noTwoSheets(manifest);
  const shared = /^(\S+) and (\S+) share /.exec(remark);
  if (shared !== null) return turnsTooMuch([shared[1] as string, shared[2] as string], object);
  const gap = /^fastener (\S+): gap between faces /.exec(remark);
  return gap === null ? null : atTheLimit(gap[1] as string, object);
}

/** It counts what goes through two sheets, and knows no bought parts, whose fasteners go through one. */
function noTwoSheets({ assembly }: FoldedManifest): string | null {
  const bought = assembly?.bought ?? [];
  return bought.length > 0 && bought.every((b) => b.fasteners.length > 0)
    ? 'fasteners of bought parts go through one sheet and stand with them'
    : null;
}

/**
 * It turns with a bend whatever lies within the bend's width past the ends of its line, a neighbour's metal too. Where
 * a part has such metal and the bodies share nothing once it stays with its own bend, that is all it saw.
 */
function turnsTooMuch(names: readonly [string, string], { pieces }: StandingObject): string | null {
  const [a, b] = names.map((name) => pieces.find((p) => p.name === name));
  if (a === undefined || b === undefined || Math.max(a.beside, b.beside) < LEAST_BESIDE) return null;
  return sharedThickness(a, b) < STRIPS ? 'it turns metal that lies beside a bend' : null;
}

/** A gap of just its widest, which the files' rounding puts past it. */
function atTheLimit(id: string, { fasteners }: StandingObject): string | null {
  const fastener = fasteners.find((f) => f.id === id);
  const gap = fastener === undefined ? Number.POSITIVE_INFINITY : missOf(fastener).gap;
  return Math.abs(gap - WIDEST_GAP) < ROUNDING ? 'no room for rounding at its widest gap' : null;
}
