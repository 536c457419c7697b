import * as z from 'zod/mini';

const LONGEST_NAME = 40;
const LONGEST_LINE = 200;
const NAME = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}_-]*$/u;
// names that some file systems keep for devices
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

const nameError = (input: unknown): string | undefined => {
  if (typeof input !== 'string') return undefined;
  if (input === '') return 'an empty name given; letters, digits, - and _ allowed';
  if ([...input].length > LONGEST_NAME)
    return `a name of ${[...input].length} characters given, up to ${LONGEST_NAME} allowed`;
  if (DEVICE.test(input)) return `"${input}" given; some systems keep that name for a device`;
  return NAME.test(input)
    ? undefined
    : `${shown(input)} given; letters, digits, - and _ allowed, a letter or digit first`;
};

/** A name as it can be printed: invisible characters by their number. */
function shown(text: string): string {
  return JSON.stringify(text).replace(
    /[^\p{L}\p{M}\p{N}\p{P}\p{S}\p{Zs}]/gu,
    (c) => `U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`,
  );
}

/** Name of a part: becomes a file name and the first half of a reference, so letters, digits, - and _ only. */
export const nameSchema: z.ZodMiniType<string, string> = z.string().check(
  z.regex(NAME, { error: (issue) => nameError(issue.input) ?? 'not a name' }),
  z.maxLength(LONGEST_NAME, { error: (issue) => nameError(issue.input) ?? 'too long' }),
  z.refine((name) => !DEVICE.test(name), { error: (issue) => nameError(issue.input) ?? 'not a name' }),
);

/** One line of plain text: no line breaks, control or direction-changing characters. */
export const lineSchema: z.ZodMiniType<string, string> = z.string().check(
  z.maxLength(LONGEST_LINE, { error: `longer than ${LONGEST_LINE} characters` }),
  z.refine((text) => !/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}]/u.test(text), {
    error: (issue) =>
      `${shown(String(issue.input)).slice(0, 60)} given; one line of plain text without control characters allowed`,
  }),
);
