import type { Point, Severity, Source } from '@tinwright/core';
import { assumedOf } from '../machines/assumed.js';
import type { Shop } from '../machines/shop.js';
import { changesFor } from './change.js';
import type { ShopCheck, ShopSubject } from './check.js';
import { type CheckFindings, remark } from './check-findings.js';

/** One place of a part held against a limit, in the unit of its rule. */
export interface LimitPlace {
  /** On the flat, mm. */
  readonly at: Point;
  readonly value: number;
  readonly limit: number;
  /** Panels and bends that are there. */
  readonly names: readonly string[];
  /** Weight where it is not the rule's own. */
  readonly severity?: Severity;
  /** True where joints put it: no size of the part alone moves it. */
  readonly jointed?: boolean;
  /** Which way its limit holds, where that is not the rule's own. */
  readonly bound?: 'least' | 'most';
}

/** A rule that holds numbers found on a part against limits. */
export interface LimitRule<C extends keyof CheckFindings, P extends LimitPlace> {
  readonly code: C;
  readonly severity: Severity;
  readonly unit: 'mm' | 'deg' | 'kN';
  /** Whether the limit is the least or the most allowed. */
  readonly bound: 'least' | 'most';
  /** Every place the rule looks at; those that pass too. */
  readonly places: (subject: ShopSubject, shop: Shop) => readonly P[];
  /** What the words of the worst place need. */
  readonly values: (place: P, subject: ShopSubject, shop: Shop) => CheckFindings[C];
  readonly source: (place: P, subject: ShopSubject, shop: Shop) => readonly Source[];
  /** Values of the shop it leans on that a shop file may leave out, `brake.leaf.width`: named where they are assumed. */
  readonly leansOn?: readonly string[];
}

const CLOSE = 1e-6; // rounding of the geometry

/** The check of a rule: one remark on its worst place, the others named. */
export function limitCheck<C extends keyof CheckFindings & string, P extends LimitPlace = LimitPlace>(
  rule: LimitRule<C, P>,
): ShopCheck {
  const room = ({ value, limit, bound = rule.bound }: P) =>
    bound === 'least' ? value - limit : limit - value;
  const failing = (subject: ShopSubject, shop: Shop) =>
    rule.places(subject, shop).filter((p) => room(p) < -CLOSE);
  return {
    code: rule.code,
    remarks: (subject, shop) => {
      const [worst, ...others] = failing(subject, shop).toSorted(
        (a, b) => weight(a.severity) - weight(b.severity) || room(a) - room(b),
      );
      if (worst === undefined) return [];
      const { at, value, limit, names, severity = rule.severity } = worst;
      return [
        remark(rule.code, severity, {
          where: { at, names, others: others.map((p) => p.names) },
          value,
          limit,
          unit: rule.unit,
          values: rule.values(worst, subject, shop),
          source: [...rule.source(worst, subject, shop), ...assumedOf(shop.assumed, rule.leansOn ?? [])],
        }),
      ];
    },
    changes: (subject, shop, unit) => {
      if (failing(subject, shop).some((p) => p.jointed)) return [];
      const slack = (s: ShopSubject) =>
        rule.places(s, shop).reduce((least, p) => Math.min(least, room(p)), Infinity) + CLOSE;
      return changesFor(subject, slack, unit);
    },
  };
}

const weight = (severity: Severity | undefined) =>
  severity === undefined ? 1 : ['error', 'warning', 'note'].indexOf(severity);
