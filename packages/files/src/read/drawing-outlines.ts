import { MM_PER_INCH } from '@tinwright/core';
import { fail, quoted } from '@tinwright/core/internal';
import type { ReadOutline } from './chains.js';

const MM: Readonly<Record<string, number>> = { mm: 1, in: MM_PER_INCH };

/**
 * The closed outlines of a drawing by its kind of file, `.svg` or `.dxf`. The readers are loaded when they are needed.
 * @param unit of the drawing, mm or in; undefined for what it says itself
 * @throws JobError for a file of another kind, or a drawing that cannot be cut
 */
export async function drawingOutlines(
  name: string,
  text: string,
  unit?: unknown,
): Promise<readonly ReadOutline[]> {
  const perUnit = unit === undefined ? null : MM[String(unit)];
  if (perUnit === undefined)
    return fail('word-unknown', ['unit'], `${quoted(String(unit))} given`, 'Known: mm, in');
  const outlines = await read(name, text, perUnit);
  return outlines.length > 0
    ? outlines
    : fail('drawing-empty', [], 'the drawing holds no outline', 'Draw closed outlines of lines and arcs');
}

async function read(name: string, text: string, perUnit: number | null): Promise<readonly ReadOutline[]> {
  if (/\.svg$/i.test(name)) return (await import('./svg-outlines.js')).svgOutlines(text, perUnit);
  if (/\.dxf$/i.test(name)) return (await import('./dxf-outlines.js')).dxfOutlines(text, perUnit);
  return fail('drawing-kind', [], `${quoted(name)} given`, 'Give a .svg or .dxf file');
}
