import {
  type BendInput,
  type BendRule,
  type BendTerms,
  JobError,
  type Material,
  type Problem,
  type StripBend,
  type Unit,
} from '@tinwright/core';
import { paramKit, strictGroup } from '@tinwright/core/family';
import {
  type BendingData,
  bendingSchema,
  formatApart,
  numberAbove,
  problemsOf,
  radians,
  type StockData,
  sayIn,
  sheetOf,
  stockSchema,
} from '@tinwright/core/internal';

/** One bend computed by itself. mm, degrees */
export interface BendAnswer {
  readonly bend: BendInput;
  readonly rule: BendRule;
  readonly terms: BendTerms;
  readonly material: Material;
  /** Outside legs given, and the flat length of a strip with this bend between each two of them. */
  readonly legs: readonly number[];
  readonly flatLength: number | null;
  /** How far legs reach past the outer tangent, mm; 0 where they end there. */
  readonly beyond: number;
}

/**
 * Where outside legs end at a bend over 90°: at the outer tangent, as DIN 6935 measures, or at the apex, where the
 * outside faces would meet, as FAA-H-8083-31 and AC 43.13-1B draw mould lines. Up to 90° the two are one.
 */
export type LegsTo = 'tangent' | 'apex';

/** What `readBend` is given: stock and bending as in a job file, angle, legs. */
interface BendData {
  readonly stock: StockData;
  readonly bending: BendingData;
  readonly angle: number;
  readonly legs: readonly number[];
  readonly legsTo: LegsTo;
}

/**
 * Compute one bend from plain data: `stock` and `bending` as in a job file, `angle` bent through from 0 to 270
 * degrees, `legs` outside lengths, `legsTo` where they end. `strips`: rows of the shop that `rule: test-strip` looks in. @throws JobError
 */
export function readBend(data: unknown, units: Unit, strips: readonly StripBend[] = []): BendAnswer {
  const kit = paramKit(units);
  const schema = strictGroup({
    stock: stockSchema(kit),
    bending: bendingSchema(kit),
    angle: numberAbove(0, 270, ' deg'),
    legs: kit.or(kit.list(kit.size(), 0, 100), []),
    legsTo: kit.or(kit.oneOf(['tangent', 'apex']), 'tangent'),
  });
  const read = schema.safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data));
  return answer(read.data as unknown as BendData, units, strips);
}

function answer(
  { stock, bending, angle, legs, legsTo }: BendData,
  units: Unit,
  strips: readonly StripBend[],
): BendAnswer {
  const { material, sheet } = sheetOf(stock, bending, strips);
  const { rule, thickness, insideRadius } = sheet;
  const bend: BendInput = { thickness, insideRadius, angle };
  const terms = termsIn(units, rule, bend);
  const beyond = legsTo === 'apex' ? beyondTangent(bend) : 0;
  const problems = shortLegs(legs, terms.setback + beyond, units);
  if (problems.length > 0) throw new JobError(problems);
  const sum = legs.reduce((a, b) => a + b, 0);
  const flatLength = legs.length < 2 ? null : sum - (legs.length - 1) * (terms.deduction + 2 * beyond);
  return { bend, rule, terms, material, legs, flatLength, beyond };
}

/** From the outer tangent to the apex, mm; 0 up to 90°. @throws JobError at 180° and over, where faces meet nowhere */
function beyondTangent({ angle, insideRadius, thickness }: BendInput): number {
  if (angle >= 180)
    throw new JobError([
      {
        code: 'apex-none',
        path: ['legs-to'],
        message: `apex given with ${angle}°: outside faces meet under 180° only`,
        fix: 'Give legs to the outer tangent',
      },
    ]);
  return Math.max(0, Math.tan(radians(angle) / 2) - 1) * (insideRadius + thickness);
}

/** What a rule gives; where it must not be used that is said in the unit. */
function termsIn(units: Unit, rule: BendRule, bend: BendInput): BendTerms {
  try {
    return rule.terms(bend);
  } catch (error) {
    throw error instanceof JobError ? new JobError(error.refusals, units) : error;
  }
}

const ROUNDING = 1e-9; // mm

/** A leg that ends inside the setback of a bend beside it cannot be bent. */
function shortLegs(legs: readonly number[], setback: number, units: Unit): readonly Problem[] {
  if (legs.length < 2) return [];
  return legs.flatMap((leg, i): readonly Problem[] => {
    const bends = i === 0 || i === legs.length - 1 ? 1 : 2;
    if (leg >= bends * setback - ROUNDING) return [];
    const least = sayIn(units).least(bends * setback);
    return [
      {
        code: 'leg-short',
        path: ['legs', i],
        message: `leg ${i + 1}: ${formatApart(leg, [least], units)} given, ${least} or more allowed: its ${bends === 1 ? 'bend takes' : 'two bends take'} up that much`,
        fix: `Make it ${least} or longer, or take a smaller inside radius`,
      },
    ];
  });
}
