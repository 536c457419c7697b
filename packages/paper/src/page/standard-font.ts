/** Metrics of a standard font as pdfkit ships them, thousandths of the font size. */
export interface FontData {
  readonly glyphNames: string;
  readonly glyphWidths: readonly number[];
  readonly kernPairs: readonly (number | readonly number[])[];
}

const range = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCharCode(from + i));

/** The characters of `glyphNames`: WinAnsi in its order, less no-break space, soft hyphen and Ÿ. */
const CHARACTERS = [
  ...range(0x20, 0x7e),
  ...'€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžÿ',
  ...range(0xa1, 0xac),
  ...range(0xae, 0xfe),
];

/** Characters that look like others a standard font has. */
const ALIKE: Readonly<Record<string, string>> = {
  '\u2300': 'Ø', // diameter
  '\u2212': '–', // minus
  '\u00AD': '-', // soft hyphen
  '\u00A0': ' ', // no-break space
};

/** A standard font's measure of text. */
export interface StandardFont {
  /** Length of a text at font size 1, kerned as pdfkit sets it. Every character must be in the font. */
  readonly width: (text: string) => number;
}

const indexOf: ReadonlyMap<string, number> = new Map(CHARACTERS.map((c, i) => [c, i]));

/** True for a character that the standard fonts have. */
export const isStandard = (character: string): boolean => indexOf.has(character);

/** The same by UTF-16 unit, -1 for none: every character of the fonts is one unit. */
const GLYPH = Int16Array.from(
  { length: 1 + Math.max(...CHARACTERS.map((c) => c.charCodeAt(0))) },
  (_, code) => indexOf.get(String.fromCharCode(code)) ?? -1,
);
const glyphAt = (text: string, at: number): number => GLYPH[text.charCodeAt(at)] ?? -1;

/** True for a text of characters that the standard fonts have. */
export function isStandardText(text: string): boolean {
  for (let i = 0; i < text.length; i++) if (glyphAt(text, i) < 0) return false;
  return true;
}

/** A text with characters exchanged for those of the standard fonts that look alike. */
export const standardised = (text: string): string =>
  text.normalize('NFC').replace(/[\u2300\u2212\u00AD\u00A0]/g, (c) => ALIKE[c] as string);

/** Read a standard font's metrics. */
export function standardFont({ glyphNames, glyphWidths, kernPairs }: FontData): StandardFont {
  const count = glyphNames.split(' ').length;
  if (count !== CHARACTERS.length || count !== glyphWidths.length)
    throw new RangeError(`a font of ${glyphWidths.length} widths given, ${CHARACTERS.length} wanted`);
  const kerns = new Int16Array(count * count); // by pair: read for every letter that is laid out
  for (let i = 0; i < kernPairs.length; i += 2) {
    let pair = 0;
    for (const step of kernPairs[i + 1] as readonly number[]) {
      pair += step;
      kerns[pair] = kernPairs[i] as number;
    }
  }
  const width = (text: string) => {
    let sum = 0;
    for (let i = 0; i < text.length; i++) {
      const glyph = glyphAt(text, i);
      sum += glyphWidths[glyph] as number;
      if (i + 1 < text.length) sum += kerns[glyph * count + glyphAt(text, i + 1)] as number;
    }
    return sum / 1000;
  };
  return { width };
}
