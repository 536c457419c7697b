import { createReadStream } from 'node:fs';
import { checkFile } from '../text/file-bytes.js';
import { TableError } from './row.js';

/** Longest row of a table, characters. */
export const LONGEST_ROW = 100_000;

/** What is said of a longer one. */
export const ROW_TOO_LONG: string = `a row of more than ${LONGEST_ROW} characters`;

interface Line {
  /** Counted from 1. */
  readonly line: number;
  readonly text: string;
}

/** Lines of a file as they come, whatever ends them. @throws TableError for one that is too long */
export async function* linesOf(path: string): AsyncGenerator<Line> {
  await checkFile(path);
  let [line, rest] = [1, ''];
  for await (const chunk of createReadStream(path, 'utf8')) {
    // a return at the end may have its line feed in the next chunk
    const pieces = (rest + chunk).split(/\r\n|\n|\r(?!$)/);
    rest = pieces.pop() ?? '';
    for (const text of pieces) {
      yield { line, text };
      line += 1;
    }
    if (rest.length > LONGEST_ROW) throw new TableError({ line, column: 1 }, ROW_TOO_LONG);
  }
  yield { line, text: rest };
}
