import { fail, type Wording } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { formatApart } from '../units/format.js';
import { LEAST, LONGEST } from './kit.js';

// What code of somebody's own gives comes through no schema: here its numbers are held to what a schema would allow.

/** Code of what only the code of a family, a rule or a fastener is to blame for. */
export const UNSOUND = 'code-unsound';

/** Whose code is to blame. */
export type Author = 'family' | 'rule' | 'fastener';

/** Refuse what somebody's own code gave. */
export const unsound = (author: Author, message: Wording): never =>
  fail(UNSOUND, [], message, `Mend the code of the ${author}`);

/** Anything that was given, to be told. */
export const shown = (value: unknown): string => (typeof value === 'string' ? quoted(value) : String(value));

/** Least and greatest value allowed, mm. */
type Range = readonly [least: number, most: number];

/** What is cut or measured. */
export const SIZE: Range = [LEAST, LONGEST];
/** What may be none. */
export const ROOM: Range = [0, LONGEST];
/** Where something lies, or how far it reaches. */
export const PLACE: Range = [-10 * LONGEST, 10 * LONGEST];

/** Refuse what is no number, or none in this range; `where` says which it is. @throws JobError `code-unsound` */
export function inRange(
  value: unknown,
  [least, most]: Range,
  where: () => string,
  author: Author = 'family',
): void {
  const known = Number.isFinite(value);
  if (known && (value as number) >= least && (value as number) <= most) return;
  unsound(author, ({ unit, size }) => {
    const low = size(least);
    const given = known ? formatApart(value as number, [low], unit) : shown(value);
    return `${where()}: ${given} given, ${low} to ${size(most)} allowed`;
  });
}
