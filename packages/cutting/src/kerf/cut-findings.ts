import { cite, type Point, type Source } from '@tinwright/core';
import { type CuttingFinding, cuttingFinding, type OnSheet } from '../findings/cutting-findings.js';
import type { NestedSheet, NestPiece } from '../nest/result.js';

/** Something to know about a cut of a piece; place on the sheet, mm. */
export interface CutRemark {
  readonly code:
    | 'edge-under-kerf'
    | 'slot-closes'
    | 'hole-closes'
    | 'lead-short'
    | 'lead-none'
    | 'common-cut'
    | 'ties-few';
  readonly piece: string;
  readonly at: Point;
  readonly value: number;
  readonly limit: number;
}

const SEVERITY = {
  'edge-under-kerf': 'note',
  'slot-closes': 'warning',
  'hole-closes': 'warning',
  'lead-short': 'note',
  'lead-none': 'warning',
  'common-cut': 'note',
  'ties-few': 'warning',
} as const;

const SOURCE: Readonly<Record<CutRemark['code'], readonly Source[]>> = {
  'edge-under-kerf': [cite(null, { basis: 'derived' })],
  'slot-closes': [cite(null, { basis: 'derived' })],
  'hole-closes': [cite(null, { basis: 'derived' })],
  'lead-short': [cite(null, { basis: 'memory' })],
  'lead-none': [cite(null, { basis: 'memory' })],
  'common-cut': [cite('general-practice')],
  'ties-few': [cite(null, { basis: 'derived' })],
};

/** Remarks on all sheets as findings: one a code and part, told at its worst place and with the number of all. */
export function cutFindings(
  sheets: readonly NestedSheet[],
  cuts: readonly { readonly remarks: readonly CutRemark[] }[],
): readonly CuttingFinding[] {
  const worst = new Map<
    string,
    { remark: CutRemark; sheet: NestedSheet; piece: NestPiece; places: number }
  >();
  cuts.forEach(({ remarks }, i) => {
    const sheet = sheets[i] as NestedSheet;
    const byId = new Map(sheet.pieces.map((p) => [p.id, p]));
    for (const remark of remarks) {
      const piece = byId.get(remark.piece) as NestPiece;
      const key = `${remark.code}\n${piece.part}`;
      const known = worst.get(key);
      if (known === undefined) worst.set(key, { remark, sheet, piece, places: 1 });
      else {
        known.places++;
        if (worse(remark, known.remark)) Object.assign(known, { remark, sheet, piece });
      }
    }
  });
  return [...worst.values()].map(({ remark, sheet, piece, places }) => {
    const { code, at: on, value, limit } = remark;
    const values: OnSheet = { sheet: sheet.name, piece: piece.id, on, places };
    const where = { at: flatPoint(piece, on) };
    return cuttingFinding(code, SEVERITY[code], piece.part, {
      values,
      where,
      value,
      limit,
      ...(code !== 'ties-few' && { unit: 'mm' as const }),
      source: SOURCE[code],
    });
  });
}

/** What is short is worst where it is shortest; of what is cut from the other side, most is worst. */
const worse = (a: CutRemark, b: CutRemark): boolean =>
  a.code === 'common-cut' ? a.value > b.value : a.value < b.value;

/** The same point on the piece's own flat. */
function flatPoint({ matrix: [a, b, c, d, e, f] }: NestPiece, [x, y]: Point): Point {
  const [u, v] = [x - e, y - f];
  return [a * u + b * v, c * u + d * v]; // turned only: its inverse is its transpose
}
