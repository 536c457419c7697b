/** A measured point of a line through the origin, y = slope·x, with the variance of y. */
export interface FitPoint {
  readonly x: number;
  readonly y: number;
  readonly variance: number;
}

/** A line through the origin, and how well the points agree on it. */
export interface Slope {
  readonly slope: number;
  /** One standard error: what the readings allow, or what the points scatter where that is more. */
  readonly error: number;
  /** Points that contradict the others, by index; all of them where two are left that do. */
  readonly odd: readonly number[];
  /** y less slope·x of every point, the odd ones too. */
  readonly residuals: readonly number[];
}

/** Standard errors a point may be off before it contradicts the others. */
export const CONTRADICTS = 3;

/**
 * Least squares by weight 1/variance. While the worst point is more than three of its own standard errors off, it is
 * set aside (data snooping after Baarda, from memory). The error is that of the weights, raised by √(χ²/(n−1)) where
 * the points scatter more than their readings do (Birge ratio, from memory).
 * @param points one or more, none at x = 0
 */
export function throughOrigin(points: readonly FitPoint[]): Slope {
  const all = points.map((_, i) => i);
  const settled = settle(points, all);
  const { kept, line } = settled ?? { kept: all, line: fitted(points, all) };
  const residuals = points.map(({ x, y }) => y - line.slope * x);
  const chi = kept.reduce(
    (sum, i) => sum + (residuals[i] as number) ** 2 / (points[i] as FitPoint).variance,
    0,
  );
  const scatter = kept.length > 1 ? Math.sqrt(chi / (kept.length - 1)) : 0;
  return {
    slope: line.slope,
    error: Math.max(1, scatter) / Math.sqrt(line.weight),
    odd: settled === null ? all : all.filter((i) => !kept.includes(i)),
    residuals,
  };
}

/** The points that agree, and their line; null where two are left that do not: nobody knows which of them is wrong. */
function settle(
  points: readonly FitPoint[],
  kept: readonly number[],
): { readonly kept: readonly number[]; readonly line: Line } | null {
  const line = fitted(points, kept);
  if (kept.length === 1) return { kept, line };
  const scores = kept.map((i) => Math.abs(score(points[i] as FitPoint, line)));
  const worst = Math.max(...scores);
  if (worst <= CONTRADICTS) return { kept, line };
  return kept.length === 2
    ? null
    : settle(
        points,
        kept.filter((_, k) => k !== scores.indexOf(worst)),
      );
}

interface Line {
  readonly slope: number;
  /** Sum of x²/variance: the weight of the slope. */
  readonly weight: number;
}

function fitted(points: readonly FitPoint[], kept: readonly number[]): Line {
  let [weight, sum] = [0, 0];
  for (const i of kept) {
    const { x, y, variance } = points[i] as FitPoint;
    weight += (x * x) / variance;
    sum += (x * y) / variance;
  }
  return { slope: sum / weight, weight };
}

/** How far a point of the fit is off, in standard errors of being off: the fit follows each point a little. */
function score({ x, y, variance }: FitPoint, { slope, weight }: Line): number {
  return (y - slope * x) / Math.sqrt(variance - (x * x) / weight);
}
