import { create, type Font } from 'fontkit';
import type { SpareFont } from './typeface.js';

/** Read a font file (TrueType, OpenType or WOFF) for characters the standard fonts lack. @throws when it is none */
export function spareFont(file: Uint8Array): SpareFont {
  // its types ask for a Buffer, which it does not need
  const font = create(file as Parameters<typeof create>[0]) as Font;
  return {
    has: (codePoint) => font.hasGlyphForCodePoint(codePoint),
    width: (text) => font.layout(text).advanceWidth / font.unitsPerEm,
    font,
  };
}
