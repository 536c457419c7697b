import * as z from 'zod/mini';

/** A number from `least` to `most`, both allowed; refused with value and range. `unit` goes behind the numbers. */
export function numberBetween(least: number, most: number, unit = ''): z.ZodMiniType<number, number> {
  const error = (issue: { input: unknown }) =>
    `${issue.input}${unit} given, ${least} to ${most}${unit} allowed`;
  return z.number().check(z.gte(least, { error }), z.lte(most, { error }));
}

const whole = () =>
  z.multipleOf(1, { error: ({ input }) => `${input} given, a whole number allowed`, abort: true });

/** A whole number. */
export function wholeNumber(): z.ZodMiniType<number, number> {
  return z.number().check(whole());
}

/** A whole number from `least` to `most`, both allowed. */
export function countBetween(least: number, most: number): z.ZodMiniType<number, number> {
  const error = (issue: { input: unknown }) => `${issue.input} given, ${least} to ${most} allowed`;
  return z.number().check(whole(), z.gte(least, { error }), z.lte(most, { error }));
}

/** A number above `least` (itself not allowed) up to `most`. */
export function numberAbove(least: number, most: number, unit = ''): z.ZodMiniType<number, number> {
  const error = (issue: { input: unknown }) =>
    `${issue.input}${unit} given, more than ${least} to ${most}${unit} allowed`;
  return z.number().check(z.gt(least, { error }), z.lte(most, { error }));
}
