import * as z from 'zod/mini';

/** A number from `least` to `most`, both allowed; refused with value and range. `unit` goes behind the numbers. */
export function numberBetween(
  least: number,
  most: number,
  unit = '',
  whole: 'whole' | 'any' = 'any',
): z.ZodMiniType<number, number> {
  const error = (issue: { input: unknown }) =>
    `${issue.input}${unit} given, ${least} to ${most}${unit} allowed`;
  return (whole === 'whole' ? z.int() : z.number()).check(z.gte(least, { error }), z.lte(most, { error }));
}

/** A number above `least` (itself not allowed) up to `most`. */
export function numberAbove(least: number, most: number, unit = ''): z.ZodMiniType<number, number> {
  const error = (issue: { input: unknown }) =>
    `${issue.input}${unit} given, more than ${least} to ${most}${unit} allowed`;
  return z.number().check(z.gt(least, { error }), z.lte(most, { error }));
}
