import type { Box, Point } from '@tinwright/core';
import { boxOf, lazy } from '@tinwright/core/internal';
import { type NestPart, partOf } from './ask.js';
import { inCommon } from './facing.js';
import { apart, clear, facings, lie, liesOn, movedBy, type NestedPiece, sharing } from './lying.js';
import { movesTo } from './moves-to.js';
import type { Nest, NestedSheet } from './result.js';

/** Rounds over all pieces at most. */
const ROUNDS = 12;

/** How far a body is moved at most: so many spacings, and this share of its larger side, or of so many mm, more. */
const FAR = { spacings: 4, share: 0.5, most: 600 } as const;

/** Larger groups stay where they are. */
const MOST_PIECES = 250;

/** What has to be kept while pieces slide. mm */
interface Rules {
  readonly sheet: NestedSheet;
  readonly kerf: number;
  readonly spacing: number;
  readonly edge: number;
  readonly least: number;
}

/**
 * Slide pieces, and groups that hang together already, so that more of their straight edges lies exactly a kerf apart, as
 * cuts common to both need it. Nothing reaches further east than before, and pieces without an edge in common keep the
 * spacing. @param least shortest length in common that counts, mm
 */
export function drawTogether(nest: Nest, parts: readonly NestPart[], least: number): Nest {
  const { kerf, spacing, edge } = nest;
  const sheets = nest.sheets.map((sheet): NestedSheet => {
    const rules = { sheet, kerf, spacing, edge, least };
    const laid = settled(
      rules,
      sheet.pieces.map((p) => lie(p, partOf(parts, p), least)),
    );
    return { ...sheet, pieces: laid.map((l) => l.piece), usedTo: eastOf(laid) };
  });
  return { ...nest, sheets, commonCuts: least };
}

function settled(rules: Rules, laid: readonly NestedPiece[]): readonly NestedPiece[] {
  let now = laid;
  let moved: readonly Box[] = laid.map((l) => l.box);
  for (let round = 0; round < ROUNDS && moved.length > 0; round++) {
    const lately: Box[] = [];
    const near = (body: readonly number[]) => {
      const box = boxAround(body.map((i) => now[i] as NestedPiece));
      return [...moved, ...lately].some((m) => apart(m, box) < farOf(rules, box));
    };
    const slide = (body: readonly number[]) => {
      if (!near(body)) return;
      const next = slid(rules, now, body);
      if (next !== now)
        lately.push(...body.flatMap((i) => [now, next].map((n) => (n[i] as NestedPiece).box)));
      now = next;
    };
    for (const i of now.keys()) slide([i]);
    for (const group of groupsOf(rules, now)) slide(group);
    moved = lately;
  }
  return now;
}

const boxAround = (pieces: readonly NestedPiece[]): Box =>
  boxOf(pieces.flatMap((l) => [l.box.min, l.box.max]));

const shifted = ({ min, max }: Box, [dx, dy]: Point): Box => ({
  min: [min[0] + dx, min[1] + dy],
  max: [max[0] + dx, max[1] + dy],
});

const farOf = ({ spacing }: Rules, { min, max }: Box): number =>
  FAR.spacings * spacing + FAR.share * Math.min(FAR.most, Math.max(max[0] - min[0], max[1] - min[1]));

const eastOf = (laid: readonly NestedPiece[]): number => Math.max(0, ...laid.map((l) => l.box.max[0]));

/** The pieces with a body, given by its places in the list, where it has most in common with the others. */
function slid(rules: Rules, laid: readonly NestedPiece[], body: readonly number[]): readonly NestedPiece[] {
  const { kerf, spacing, least } = rules;
  const own = body.map((i) => laid[i] as NestedPiece);
  const box = boxAround(own);
  const far = farOf(rules, box);
  const members = new Set(body);
  const others = laid.filter((l, i) => !members.has(i) && apart(l.box, box) < far);
  const pairs = own.flatMap((l) => others.flatMap((o) => (apart(l.box, o.box) < far ? facings(l, o) : [])));
  const common = (move: Point) =>
    pairs.reduce((sum, pair) => {
      const length = inCommon(pair, move, kerf);
      return length < least ? sum : sum + length;
    }, 0);
  const now = common([0, 0]);
  const better = movesTo(pairs, kerf, far)
    .map((move) => ({ move, length: common(move) }))
    .filter(({ length }) => length > now + least / 2)
    .sort((a, b) => b.length - a.length);
  const east = eastOf(laid);
  for (const { move } of better) {
    const boxes = own.map((l) => shifted(l.box, move));
    if (boxes.some((b) => b.max[0] > east + 1e-9)) continue;
    const there = own.map((l) => lazy(() => movedBy(l, move, least)));
    const keeps = (l: NestedPiece, o: NestedPiece) =>
      clear(l, o, spacing) || (sharing(l, o, kerf, least) && clear(l, o, kerf));
    const free = boxes.every(
      (b, k) =>
        liesOn(rules.sheet, b, there[k] as () => NestedPiece, rules.edge) &&
        others.every((o) => apart(b, o.box) >= spacing || keeps((there[k] as () => NestedPiece)(), o)),
    );
    if (free) return laid.map((l, i) => there[body.indexOf(i)]?.() ?? l);
  }
  return laid;
}

/** Pieces that hang together by edges in common: groups of two or more, but for one of all. */
function groupsOf({ kerf, least }: Rules, laid: readonly NestedPiece[]): readonly (readonly number[])[] {
  const group = laid.map((_, i) => i);
  laid.forEach((one, i) => {
    laid.slice(0, i).forEach((other, j) => {
      if (apart(one.box, other.box) > kerf + 1e-6 || !sharing(one, other, kerf, least)) return;
      const [from, to] = [group[i], group[j] as number];
      group.forEach((g, k) => {
        if (g === from) group[k] = to;
      });
    });
  });
  const found = [...new Set(group)].map((g) => group.flatMap((own, i) => (own === g ? [i] : [])));
  return found.filter((f) => f.length > 1 && f.length < laid.length && f.length <= MOST_PIECES);
}
