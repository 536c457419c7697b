import {
  inWords,
  type Point,
  pathText,
  type Remark,
  type Say,
  type Severity,
  type SizeAdvice,
  type Wording,
} from '@tinwright/core';
import { assumedWords } from '../machines/assumed.js';
import type { Shop } from '../machines/shop.js';
import { changesFor } from './change.js';
import type { ShopCheck, Subject } from './check.js';

/** One place of a part held against a limit, in the unit of its rule. */
export interface Place {
  /** On the flat, mm. */
  readonly at: Point;
  readonly value: number;
  readonly limit: number;
  /** What is there, as a reader would call it. */
  readonly what: string;
  /** Weight where it is not the rule's own. */
  readonly severity?: Severity;
  /** True where joints put it: no size of the part alone moves it. */
  readonly jointed?: boolean;
  /** Which way its limit holds, where that is not the rule's own. */
  readonly bound?: 'least' | 'most';
}

/** A rule that holds numbers found on a part against limits. */
export interface LimitRule<P extends Place> {
  readonly code: string;
  readonly severity: Severity;
  readonly unit: 'mm' | 'deg' | '';
  /** Whether the limit is the least or the most allowed. */
  readonly bound: 'least' | 'most';
  /** Every place the rule looks at; those that pass too. */
  readonly places: (subject: Subject, shop: Shop) => readonly P[];
  /** What is found at the worst place. */
  readonly message: (place: P, say: Say, subject: Subject, shop: Shop) => string;
  readonly source: (place: P, subject: Subject, shop: Shop) => Wording;
  /** Values of the shop it leans on that a shop file may leave out, `brake.leaf.width`: told where they are assumed. */
  readonly leansOn?: readonly string[];
  /** The number that would pass, said where no size of the job by itself does. */
  readonly aim: (place: P, say: Say, subject: Subject, shop: Shop) => string;
  /** What else can be done. */
  readonly remedy?: (place: P, say: Say, subject: Subject, shop: Shop) => string;
}

const CLOSE = 1e-6; // rounding of the geometry
const NAMED = 3; // further places told by name, more are counted

/** The check of a rule: one remark on its worst place, the others named, with the size that would pass. */
export function limitCheck<P extends Place>(rule: LimitRule<P>): ShopCheck {
  const room = ({ value, limit, bound = rule.bound }: P) =>
    bound === 'least' ? value - limit : limit - value;
  const { leansOn = [] } = rule;
  const slackOf = (places: readonly P[]) => Math.min(Infinity, ...places.map(room));
  return (subject, shop) => {
    const failing = rule.places(subject, shop).filter((p) => room(p) < -CLOSE);
    const [worst, ...others] = failing.toSorted(
      (a, b) => weight(a.severity) - weight(b.severity) || room(a) - room(b),
    );
    if (worst === undefined) return [];
    const slack = (s: Subject) => slackOf(rule.places(s, shop)) + CLOSE;
    return [
      {
        code: rule.code,
        severity: worst.severity ?? rule.severity,
        at: worst.at,
        value: worst.value,
        limit: worst.limit,
        unit: rule.unit,
        message: (say) => rule.message(worst, say, subject, shop) + also(worst, others),
        source: (say) =>
          inWords(rule.source(worst, subject, shop), say) + assumedWords(shop.assumed, leansOn),
        fix: (say) => {
          const changes = failing.some((p) => p.jointed) ? [] : changesFor(subject, slack, say.unit);
          const sizes = sizesIn(changes, say);
          const aim = sizes.length > 0 ? sizes : [rule.aim(worst, say, subject, shop)];
          const remedy = rule.remedy === undefined ? [] : [rule.remedy(worst, say, subject, shop)];
          return [...aim, ...remedy].join(', or ');
        },
      } satisfies Remark,
    ];
  };
}

const weight = (severity: Severity | undefined) =>
  severity === undefined ? 1 : ['error', 'warning', 'note'].indexOf(severity);

function also(worst: Place, others: readonly Place[]): string {
  const names = [...new Set(others.map((p) => p.what))].filter((n) => n !== worst.what);
  if (others.length === 0) return '';
  if (names.length === 0) return `; ${others.length} more there`;
  return names.length > NAMED ? `; at ${names.length} more places` : `; also ${names.join(', ')}`;
}

/** Sizes that would pass, in words. */
const sizesIn = (changes: readonly SizeAdvice[], say: Say): readonly string[] =>
  changes.map(
    ({ path, found, bound }) =>
      `make ${pathText(path)} ${say.size(found)} or ${bound === 'most' ? 'less' : 'more'}`,
  );
