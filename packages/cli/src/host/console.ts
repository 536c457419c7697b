import type { ProgressBar } from './progress.js';

/** Where a command prints, and what it may know of the place it runs in. Tests hand in their own. */
export interface Host {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Colour may be used on stdout. */
  readonly colour: boolean;
  /** A fault of the program is shown with the place it happened at. */
  readonly debug?: boolean;
  /** Files the run has read, filled as it reads them. */
  readonly inputs?: Set<string>;
  readonly stdin: () => Promise<Uint8Array>;
  /** Shows how far a long piece of work is; without it nothing does. */
  readonly progress?: (what: string, total: number) => Promise<ProgressBar>;
  /** Ends the program as a signal does, so that a shell's loop ends too. */
  readonly end?: (signal: NodeJS.Signals) => void;
}

const CODES = { bold: 1, red: 31, yellow: 33, blue: 34 } as const;

/** Text in a colour or bold, where the host shows it. */
export function paint(host: Host, style: keyof typeof CODES, text: string): string {
  return host.colour ? `\u001B[${CODES[style]}m${text}\u001B[0m` : text;
}

/** Rows as aligned columns, two spaces apart; numbers of columns may differ by row. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows)
    for (const [i, cell] of row.entries()) widths[i] = Math.max(widths[i] ?? 0, [...cell].length);
  const line = (row: readonly string[]) =>
    row
      .map((cell, i) =>
        i === row.length - 1 ? cell : cell + ' '.repeat((widths[i] ?? 0) - [...cell].length),
      )
      .join('  ');
  return `${rows.map((r) => line(r).trimEnd()).join('\n')}\n`;
}

/** `1 part`, `2 parts`. */
export function many(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
