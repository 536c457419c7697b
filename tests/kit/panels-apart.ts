import { hingeOf, SKIN, stripsOf, type WrittenPart, zoneMetal } from './bend-zones.js';
import { cutLoops } from './cut-layer.js';
import { manifold } from './fold-files.js';

const LEAST_PANEL = 0.05; // mm²

/** How many pieces a part falls into where each bend takes only the metal that hangs together with its zone. */
export async function panelsApart(part: WrittenPart, dxf: string): Promise<number> {
  const { CrossSection } = await manifold();
  const blank = new CrossSection(cutLoops(dxf), 'EvenOdd');
  const pieces = zoneMetal(blank, part.bends.map(hingeOf), stripsOf(CrossSection)).reduce(
    (rest, m) => rest.subtract(m),
    blank,
  );
  // a hair at the end of a zone joins nothing
  return pieces
    .offset(-2 * SKIN, 'Miter')
    .decompose()
    .filter((p) => p.area() > LEAST_PANEL).length;
}
