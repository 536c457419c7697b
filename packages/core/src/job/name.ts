import * as z from 'zod/mini';
import { hasHidden, quoted } from '../errors/quote.js';
import type { Gives } from '../schema/kit.js';
import { textLine } from '../schema/text-line.js';

const LONGEST_NAME = 40;
const NAME = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}_-]*$/u;
const DEVICE = /^(con|prn|aux|nul|(com|lpt)[\d¹²³])$/i;

// pictures of the whole object have these names
const OBJECT = /^(assembly|exploded)$/i;

/** True for names that some systems keep for devices, where no file or folder can have them. */
export const isDeviceName = (text: string): boolean => DEVICE.test(text);

/** True for letters, digits, - and _, a letter or digit first: what a file, a folder and a reference can be called. */
export const isPlainName = (text: string): boolean => NAME.test(text);

/** True for what can be the name of a part. */
export function isName(text: string): boolean {
  return [...text].length <= LONGEST_NAME && isPlainName(text) && !isDeviceName(text) && !OBJECT.test(text);
}

const nameError = (input: unknown): string | undefined => {
  if (typeof input !== 'string') return undefined;
  const { length } = [...input];
  if (input === '') return 'an empty name given; letters, digits, - and _ allowed';
  if (length > LONGEST_NAME) return `a name of ${length} characters given, up to ${LONGEST_NAME} allowed`;
  if (isDeviceName(input)) return `${quoted(input)} given; some systems keep that name for a device`;
  if (OBJECT.test(input)) return `${quoted(input)} given; pictures of the whole object have that name`;
  return `${quoted(input)} given; letters, digits, - and _ allowed, a letter or digit first`;
};

/** Name of a part: becomes a file name and the first half of a reference, so letters, digits, - and _ only. */
export const nameSchema: z.ZodMiniType<string, string> = z
  .string()
  .check(z.refine(isName, { error: (issue) => nameError(issue.input) ?? 'not a name' }));

/** One line of plain text: no line breaks, control or direction-changing characters. */
export const lineSchema: Gives<string> = textLine().check(
  z.refine((text) => !hasHidden(text), {
    error: (issue) =>
      `${quoted(String(issue.input))} given; one line of plain text without control characters allowed`,
  }),
);
