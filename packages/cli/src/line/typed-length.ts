import { type ParsedLength, parseLength, type Unit } from '@tinwright/core';

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
  return `--${name}: ${text} given, ${least} to ${most} mm allowed`;
}
