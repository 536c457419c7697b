import type { ShearPlan } from '@tinwright/cutting';
import { WriteError } from '../host/failure.js';
import { cutRackText } from '../print/offcut-text.js';
import { changeFile } from '../write/files.js';

/** A rack file to take sheets out of: as it was when the cuts were planned, and the job new offcuts are named after. */
export interface RackToCut {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly job: string;
}

/**
 * Take what plans cut out of a rack file and put their offcuts in, once `also` is written.
 * @throws WriteError where somebody changed the file meanwhile: before `also`, and nothing is written then, or after it
 */
export async function cutRack(
  { file, bytes, job }: RackToCut,
  plans: readonly ShearPlan[],
  also: () => Promise<void>,
): Promise<void> {
  let written = false;
  const change = async (content: Uint8Array) => {
    if (Buffer.compare(content, bytes) !== 0)
      throw new WriteError(file, 'was changed while the cuts were planned. Run again. Nothing was changed');
    await also();
    written = true;
    return cutRackText(
      new TextDecoder('utf-8', { ignoreBOM: true }).decode(content),
      plans,
      job === '' ? 'cut' : job,
    );
  };
  try {
    await changeFile(file, change);
  } catch (error) {
    if (!written || !(error instanceof WriteError) || !UNCHANGED.test(error.message)) throw error;
    const why = error.message.replace(UNCHANGED, '');
    throw new WriteError(
      file,
      `${why}. The cuts are written, their sheets not taken out: run again`,
      error.signal,
    );
  }
}

const UNCHANGED = /(\. Run it again)?\. Nothing was changed$/;
