// Job files with slips and damage in them, through the command: it says what is wrong and ends as it should, whatever
// it is given.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { main } from '@tinwright/cli';
import fc from 'fast-check';

const TOKENS = [
  '&a',
  '*a',
  '<<: *a',
  '{',
  '}',
  '[',
  ']',
  ': ',
  '- ',
  '\t',
  '\n',
  '\u0000',
  '\u001b[31m',
  '\u202e',
  '%s',
  '!!js/function',
  "'",
  '"',
  '0x1F',
  '1e999',
  '.nan',
  '-.inf',
  '~',
  '__proto__: { x: 1 }',
  'parts: []',
  'units: ft',
  '# ',
  '---\n',
  '...\n',
  '11 5/8"',
  '😀',
];

/** The text of every example. */
const examples = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((f) => /(?<!-shop)\.yaml$/.test(f))
    .map((f) => readFileSync(join(folder, f), 'utf8'));

interface Slip {
  readonly at: number;
  readonly length: number;
  readonly by: string | number;
}

/** Put something in, take something out, or say a stretch again. */
const slip: fc.Arbitrary<Slip> = fc.record({
  at: fc.nat(4000),
  length: fc.nat(30),
  by: fc.oneof(fc.constantFrom(...TOKENS), fc.nat(4000), fc.constant('')),
});

const slipped = (text: string, { at, length, by }: Slip): string => {
  const i = at % (text.length + 1);
  const fresh = typeof by === 'number' ? text.slice(by % text.length, (by % text.length) + length) : by;
  return `${text.slice(0, i)}${fresh}${text.slice(i + (typeof by === 'number' ? 0 : length))}`;
};

/** A job file with up to four slips. */
export const texts = (folder: string): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...examples(folder)), fc.array(slip, { minLength: 1, maxLength: 4 }))
    .map(([text, slips]) => slips.reduce(slipped, text));

/** @throws Error when the command does anything but end with 0, 1 or 2 and words that can be printed */
export async function answered(text: string): Promise<number> {
  let said = '';
  const say = (t: string) => {
    said += t;
  };
  const host = { out: say, err: say, colour: false, stdin: async () => Buffer.from(text) };
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-campaign-'));
  try {
    const exit = await main(['make', '-', '--out', join(folder, 'out')], host);
    if (![0, 1, 2].includes(exit)) throw new Error(`ended with ${exit}: ${said}`);
    if (exit === 2 && readdirSync(folder).length > 0) throw new Error('refused, and something was written');
    if (said.includes('a fault of the program')) throw new Error(said);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is looked for
    if (/[\u0000-\u0008\u000b-\u001f\u202a-\u202e]/.test(said))
      throw new Error(`control characters: ${JSON.stringify(said)}`);
    return exit;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
