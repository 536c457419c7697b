import type { ShearPlan } from '@tinwright/cutting';
import { WriteError } from './failure.js';
import { changeFile } from './files.js';
import { cutRackText } from './offcut-text.js';

/** A rack file to take sheets out of: as it was when the cuts were planned, and the job new offcuts are named after. */
export interface RackToCut {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly job: string;
}

/**
 * Take what plans cut out of a rack file and put their offcuts in; `also` is written with it or neither is.
 * @throws WriteError where somebody changed the file meanwhile; nothing is written then
 */
export async function cutRack(
  { file, bytes, job }: RackToCut,
  plans: readonly ShearPlan[],
  also: () => Promise<void>,
): Promise<void> {
  await changeFile(file, async (content) => {
    if (Buffer.compare(content, bytes) !== 0)
      throw new WriteError(file, 'was changed while the cuts were planned. Run again. Nothing was changed');
    await also();
    return cutRackText(new TextDecoder().decode(content), plans, job === '' ? 'cut' : job);
  });
}
