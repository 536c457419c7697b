import { remark } from '../errors/core-findings.js';
import { cite } from '../errors/source.js';
import { segmentLength, segments } from '../plane/loop.js';
import type { Check } from './check.js';

/** Edges shorter than a table cuts sharp, which taking metal off cannot help. */
export const edgeShort: Check = ({ flat, cutBy = null }) => {
  if (cutBy?.by !== 'table') return [];
  const limit = cutBy.leastEdge;
  const edges = [flat.outline, ...flat.holes].flatMap(segments);
  const short = edges.filter((e) => segmentLength(e) < limit - 1e-6);
  const worst = short.toSorted((a, b) => segmentLength(a) - segmentLength(b))[0];
  if (worst === undefined) return [];
  return [
    remark('edge-short', 'note', {
      where: { at: worst.from },
      value: segmentLength(worst),
      limit,
      unit: 'mm',
      values: { count: short.length },
      source: [cite(null, { basis: 'derived' })],
    }),
  ];
};
