import { JobError } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import type { Sheet } from '../fold/draft/tree.js';
import { measuredSize } from '../fold/formed/extent.js';
import { form } from '../fold/formed/form.js';
import type { Formed } from '../fold/formed/formed.js';
import type { Part } from '../fold/settle/part.js';

/** A size as it was asked for and as it will be formed. mm */
export interface FormedSize {
  readonly name: string;
  readonly asked: number;
  readonly formed: number;
}

/** Every size that a part was asked for, measured on its formed body. */
export function formedSizes({ asked }: Pick<Part, 'asked'>, formed: Formed): readonly FormedSize[] {
  return asked.map((a) => ({ name: a.name, asked: a.value, formed: measuredSize(formed, a) }));
}

/**
 * How much larger than asked each size will be formed, mm: nothing under a rule that makes up for bends, and nothing
 * known of a part that cannot be.
 */
export function grownSizes(family: AnyFamily, params: unknown, sheet: Sheet): ReadonlyMap<string, number> {
  if (sheet.rule.compensates) return new Map();
  try {
    const part = family.part(params, sheet);
    return new Map(formedSizes(part, form(part)).map(({ name, asked, formed }) => [name, formed - asked]));
  } catch (error) {
    if (error instanceof JobError) return new Map();
    throw error;
  }
}
