import { nearestSize, type PartPlan, plainNumber, withValue } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import type { Mend, Reason } from './plan.js';
import { findPlan, problemOf } from './plan-part.js';
import { beam } from './search.js';

const MOST_TRIES = 6; // sizes tried either way for each parameter
const HALVINGS = 5;
const MOST_MENDS = 3;
const MOST_SIZES = 8; // parameters tried, those that shape what is in the way
const WIDTH = 6; // states kept in a quick look

/** Something to change so that an impossible part becomes possible: sizes found by trying, then machines. */
export function mendsFor(plan: PartPlan, shop: Shop, reasons: readonly Reason[]): readonly Mend[] {
  const sizes = sizesIn(plan.params, []).filter(({ path, given }) => touches(plan, path, given, reasons));
  const found = sizes.slice(0, MOST_SIZES).flatMap(({ path, given }): readonly Mend[] => {
    const size = nearestSize(
      given,
      (v) => feasible(plan, withValue(plan.params, path, v), shop, 'quick'),
      HALVINGS,
      MOST_TRIES,
    );
    if (size === null || !feasible(plan, withValue(plan.params, path, size), shop, 'whole')) return [];
    const parameter = path.join('.');
    const mm = plainNumber(size < given ? Math.floor(size * 10) / 10 : Math.ceil(size * 10) / 10, 1);
    const message = `${parameter} of ${mm} mm or ${size < given ? 'less' : 'more'}`;
    return [{ parameter, given, found: size, message }];
  });
  const change = (m: Mend) => Math.abs(Math.log((m.found ?? 1) / (m.given ?? 1)));
  return [
    ...found.toSorted((a, b) => change(a) - change(b)).slice(0, MOST_MENDS),
    ...machineMends(shop, reasons),
  ];
}

/** True when a parameter shapes a panel that a reason names: another size of it gives that panel another outline. */
function touches(plan: PartPlan, path: Path, given: number, reasons: readonly Reason[]): boolean {
  const named = new Set(reasons.flatMap((r) => [r.panel, ...r.bends]));
  const outline = (params: unknown) => {
    if (plan.family.check(params, plan.sheet).length > 0) return null;
    try {
      return plan.family
        .part(params, plan.sheet)
        .panels.filter((p) => named.has(p.id))
        .map((p) => JSON.stringify(p.outline))
        .join('\n');
    } catch {
      return null; // corners leave nothing at this size
    }
  };
  const now = outline(plan.params);
  return [0.97, 1.03].some((f) => {
    const other = outline(withValue(plan.params, path, given * f));
    return other !== null && other !== now;
  });
}

/** True when a part of these parameters can be bent: at a quick look, or by a whole plan. */
function feasible(plan: PartPlan, params: unknown, shop: Shop, look: 'quick' | 'whole'): boolean {
  if (plan.family.check(params, plan.sheet).length > 0) return false;
  try {
    const part = plan.family.part(params, plan.sheet);
    const { material, mass, name } = plan;
    const problem = problemOf({ name, part, material, mass, blank: plan.flat.blank.max }, shop);
    return look === 'quick' ? beam(problem, WIDTH).moves !== null : findPlan(problem).moves !== null;
  } catch {
    return false; // corners leave nothing at this size
  }
}

type Path = readonly (string | number)[];

function sizesIn(value: unknown, path: Path): readonly { readonly path: Path; readonly given: number }[] {
  if (typeof value === 'number') return [{ path, given: value }];
  if (Array.isArray(value)) return value.flatMap((v, i) => sizesIn(v, [...path, i]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => sizesIn(v, [...path, k]));
}

/** What another machine, or another way of working, would have to give. */
function machineMends(shop: Shop, reasons: readonly Reason[]): readonly Mend[] {
  const say = (message: string): Mend => ({ parameter: '', given: null, found: null, message });
  return [...new Set(reasons.map((r) => r.code))].flatMap((code): readonly Mend[] => {
    const by = Math.max(...reasons.filter((r) => r.code === code).map((r) => r.by ?? 0));
    switch (code) {
      case 'beam':
        return shop.brake === null
          ? []
          : [
              say(
                `a brake with ${plainNumber(Math.ceil(shop.brake.clearHeight + by), 0)} mm clear under its beam`,
              ),
            ];
      case 'fingers':
        return [say('take out the fingers that are in the way, or join the part from two')];
      case 'hook':
      case 'opening':
        return [say('a brake whose jaw lifts higher, or join the part from two')];
      case 'angle':
      case 'length':
      case 'capacity':
        return [say('another machine, or a shop that has one')];
      default:
        return [];
    }
  });
}
