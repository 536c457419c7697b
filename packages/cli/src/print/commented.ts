/** A line of a file, and what it means; '' for nothing to say. */
export type CommentedLine = readonly [text: string, comment: string];

const FURTHEST = 48; // a line that is longer has its comment right behind it

/** Lines with their comments in one column. */
export function commented(lines: readonly CommentedLine[]): readonly string[] {
  const widths = lines.flatMap(([text, comment]) => (comment === '' ? [] : [text.length]));
  const width = Math.max(0, ...widths.filter((w) => w <= FURTHEST)) + 2;
  return lines.map(([text, comment]) =>
    comment === '' ? text : `${`${text} `.padEnd(width - 1)} # ${comment}`,
  );
}
