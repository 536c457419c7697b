import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMMON_PRACTICE, cite } from '../errors/source.js';
import { MEET } from './fastener.js';

/**
 * Said of holes in finished pieces, whose places are not known to better than this.
 * @param made the pieces
 * @param doubt mm, over MEET
 */
export const doubtRemark = (made: readonly string[], doubt: number): Remark =>
  remark('fastener-doubt', 'note', {
    value: doubt,
    limit: MEET,
    unit: 'mm',
    values: { made: [...new Set(made)] },
    source: [cite('measured', { basis: 'computed' }), ...COMMON_PRACTICE],
  });
