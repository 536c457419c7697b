// Random parts made in mm, said in inches.
import { FAMILIES } from '@tinwright/core';
import { declaredAt, sizesIn, withValue } from '@tinwright/core/internal';

/** A part with its own sheet, as a job in mm holds it. */
export interface RandomPart {
  readonly family: string;
  readonly stock: object;
  readonly bending: object;
}

/** Every length of a part in inches: of its stock and bending by their names, of its parameters by their declarations. */
export function inInches({ family, stock, bending, ...params }: RandomPart): RandomPart {
  const values = FAMILIES.find((f) => f.name === family)?.values ?? {};
  const scaled = sizesIn(params)
    .filter(({ path }) => declaredAt(values, path)?.unit === 'mm')
    .reduce<unknown>((p, { path, given }) => withValue(p, path, given / 25.4), params);
  const lengths = (of: object) =>
    Object.fromEntries(
      Object.entries(of).map(([k, v]) => [k, typeof v === 'number' && !/^(k$|per)/.test(k) ? v / 25.4 : v]),
    );
  return { family, stock: lengths(stock), bending: lengths(bending), ...(scaled as object) };
}
