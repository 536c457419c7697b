const NUMBERS: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7 };
const LONG = 10_000; // characters after one letter
const A_RUN = 500; // groups of numbers after one letter, then

const NUMBER = String.raw`[\s,]*[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?`;
const FLAG = String.raw`[\s,]*[01]`;

/** So many segments at least has a path of this data, without reading it: an arc takes seven numbers, others fewer. */
export function leastSegments(data: string): number {
  let count = 0;
  for (const _ of data.matchAll(/[\d.]+(?:e[-+]?\d+)?/gi)) count += 1;
  return Math.floor(count / Math.max(...Object.values(NUMBERS)));
}

/**
 * Path data in which no letter is followed by very many numbers: the letter is written again (SVG 1.1, 8.3.1: it may be
 * left out where it is the same, L after M). Its reader takes time that grows with the square of their count.
 */
export function shortRuns(data: string): string {
  return data.replace(/([mlhvcsqta])([^mlhvcsqtaz]*)/gi, (run, letter: string, numbers: string) =>
    numbers.length > LONG ? dealt(letter, numbers) : run,
  );
}

/** What is no number at the end stays, for the reader to refuse. */
function dealt(letter: string, numbers: string): string {
  const kind = letter.toLowerCase();
  const group = Array.from({ length: NUMBERS[kind] as number }, (_, i) =>
    kind === 'a' && (i === 3 || i === 4) ? FLAG : NUMBER,
  );
  const next = new RegExp(group.join(''), 'y');
  const runs: string[] = [];
  let at = 0;
  for (let count = 0; ; count++) {
    const found = next.exec(numbers);
    if (found === null) break;
    if (count % A_RUN === 0) runs.push(count === 0 ? letter : again(letter));
    runs.push(found[0]);
    at = next.lastIndex;
  }
  return runs.length === 0 ? letter + numbers : runs.join('') + numbers.slice(at);
}

/** The letter that a group of numbers without one has. */
const again = (letter: string) => (letter === 'M' ? 'L' : letter === 'm' ? 'l' : letter);
