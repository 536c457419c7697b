import type { Finding } from '../errors/finding.js';
import { frozen } from '../units/frozen.js';
import type { Check, Subject } from './check.js';
import { edgeShort } from './edge-short.js';
import { leastRadius } from './least-radius.js';
import { noCompensation } from './no-compensation.js';

/** Every check, in the order they run. A new one is its file and a line here. */
export const CHECKS: readonly Check[] = frozen([leastRadius, noCompensation, edgeShort]);

/** All findings about one part, those of checks of one's own last. */
export function findingsOf(subject: Subject, own: readonly Check[] = []): readonly Finding[] {
  return [...CHECKS, ...own]
    .flatMap((check) => check(subject))
    .map((remark) => ({ ...remark, part: subject.name }));
}
