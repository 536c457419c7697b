import { inWords, type Refusal } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';

/** What is refused of the outlines in a file, told of the file. @param file as the job names it */
export const ofDrawing = (file: string, refusals: readonly Refusal[]): readonly Refusal[] =>
  refusals.map((r) => ({
    ...r,
    path: ['cut'],
    message: (say) => `${quoted(file)}: ${inWords(r.message, say)}`,
  }));
