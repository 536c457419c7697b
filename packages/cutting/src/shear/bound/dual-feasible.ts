/** A function on [0, 1] under which whatever fits side by side in length 1 still does. */
export type DualFeasible = (x: number) => number;

const ROUNDING = 1e-9;
/** Thresholds tried at most; more cost time and seldom give a sheet. */
const THRESHOLDS = 40;
const STEPS: readonly number[] = [1, 2, 3, 4, 5];

/** Steps of k: what is just over a step counts up to the next but one. Source: Fekete & Schepers 2001, u(k). */
function stepped(k: number): DualFeasible {
  return (x) => {
    const scaled = (k + 1) * x;
    return Math.abs(scaled - Math.round(scaled)) < ROUNDING ? x : Math.floor(scaled) / k;
  };
}

/** Pieces longer than 1 - e fill the length, those shorter than e count for nothing. Source: the same, U(e). */
function rounded(e: number): DualFeasible {
  return (x) => (x > 1 - e + ROUNDING ? 1 : x < e - ROUNDING ? 0 : x);
}

/** Lengths counted in steps of e, long ones from the far end. Source: Boschetti & Mingozzi 2003. */
function counted(e: number): DualFeasible {
  const all = Math.floor(1 / e + ROUNDING);
  return (x) => {
    if (Math.abs(x - 0.5) < ROUNDING) return 0.5;
    if (x > 0.5) return 1 - Math.floor((1 - x) / e + ROUNDING) / all;
    return Math.floor(x / e + ROUNDING) / all;
  };
}

/** Functions worth trying on lengths that are shares of the whole. */
export function dualFeasible(shares: readonly number[]): readonly DualFeasible[] {
  const halves = [...new Set(shares.map((s) => Math.min(s, 1 - s)).filter((s) => s > 0.01 && s <= 0.5))].sort(
    (a, b) => a - b,
  );
  const every = Math.ceil(halves.length / THRESHOLDS);
  const thresholds = halves.filter((_, i) => i % Math.max(1, every) === 0);
  return [(x) => x, ...STEPS.map(stepped), ...thresholds.map(rounded), ...thresholds.map(counted)];
}
