import { dirname, resolve } from 'node:path';
import { JobError, type Path } from '@tinwright/core';
import { named, ofDrawing, quoted } from '@tinwright/core/internal';
import { firstBytes } from '../text/file-bytes.js';

/**
 * The job with the outlines of the drawings its cut-outs name, read from files beside it.
 * @param reads told of every file before it is read
 * @throws JobError with the place of a drawing that cannot be read or cut
 */
export async function withDrawings(
  data: unknown,
  job: string,
  reads: (file: string) => void = () => undefined,
): Promise<unknown> {
  const { parts } = (data ?? {}) as { readonly parts?: unknown };
  if (!Array.isArray(parts)) return data;
  const fileBeside = (name: string) => {
    const file = resolve(dirname(job), name);
    reads(file);
    return file;
  };
  try {
    const read = await Promise.all(parts.map((part, i) => withOutlines(part, ['parts', i], fileBeside)));
    return { ...(data as object), parts: read };
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(named(error.refusals, parts));
  }
}

async function withOutlines(
  part: unknown,
  path: Path,
  fileBeside: (name: string) => string,
): Promise<unknown> {
  const { cutouts } = (part ?? {}) as { readonly cutouts?: unknown };
  if (!Array.isArray(cutouts) || !cutouts.some(isDrawn)) return part;
  const read = cutouts.map((c, i) =>
    isDrawn(c) ? outlined(c, [...path, 'cutouts', i, 'cut'], fileBeside(c.cut)) : c,
  );
  return { ...(part as object), cutouts: await Promise.all(read) };
}

interface Drawn {
  readonly cut: string;
  readonly unit?: unknown;
}

const isDrawn = (c: unknown): c is Drawn => typeof (c as { cut?: unknown } | null)?.cut === 'string';

async function outlined(cutout: Drawn, path: Path, file: string): Promise<object> {
  const { drawingOutlines } = await import('@tinwright/files');
  const text = await drawingText(file, cutout.cut, path);
  try {
    return { ...cutout, loops: await drawingOutlines(cutout.cut, text, cutout.unit) };
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(ofDrawing(cutout.cut, error.refusals).map((r) => ({ ...r, path })));
  }
}

const LONGEST_DRAWING = 5_000_000; // bytes

async function drawingText(file: string, name: string, path: Path): Promise<string> {
  const refuse = (message: string, fix: string) =>
    new JobError([{ code: 'drawing-missing', path, message: `${quoted(name)} ${message}`, fix }]);
  const found = await firstBytes(file, LONGEST_DRAWING).catch(() => null);
  if (found === null) throw refuse('cannot be read', 'Put the file beside the job');
  if (found.size > LONGEST_DRAWING)
    throw refuse(`has ${found.size} bytes, up to ${LONGEST_DRAWING} allowed`, 'Draw the outline alone');
  return new TextDecoder().decode(found.bytes);
}
