import { type ParsedLength, parseLength, type Unit } from '@tinwright/core';
import { formatApart, sayIn } from '@tinwright/core/internal';

/** A length as typed behind an option, mm, or a sentence about what cannot be. @param least and @param most mm */
export function typedLength(
  name: string,
  text: string,
  units: Unit,
  least: number,
  most: number,
): number | string {
  const read: ParsedLength = parseLength(text, units);
  if (!read.ok) return `--${name}: ${read.why}`;
  if (read.mm >= least - 1e-9 && read.mm <= most) return read.mm;
  const say = sayIn(units);
  const range = [say.least(least), say.most(most)] as const;
  return `--${name}: ${formatApart(read.mm, range, units)} given, ${range[0]} to ${range[1]} allowed`;
}
