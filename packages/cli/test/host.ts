import { type ExitCode, type Host, main } from '@tinwright/cli';

/** What a run printed, and its exit status. */
export interface Ran {
  readonly exit: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** Run the command line against streams that are kept, without colour unless it is asked for. */
export async function tinwright(...argv: readonly string[]): Promise<Ran> {
  return run(argv, {});
}

/** The same on a terminal that shows colours. */
export async function tinwrightInColour(...argv: readonly string[]): Promise<Ran> {
  return run(argv, { colour: true });
}

/** The same with a job on standard input. */
export async function tinwrightReading(input: string | Uint8Array, ...argv: readonly string[]): Promise<Ran> {
  return run(argv, { stdin: async () => new Uint8Array(Buffer.from(input)) });
}

/** The same where somebody watches how far it is: what was counted, of how many, and how far it was told last. */
export async function tinwrightWatched(
  ...argv: readonly string[]
): Promise<Ran & { readonly watched: readonly (readonly [string, number, number])[] }> {
  const watched: [string, number, number][] = [];
  const ran = await run(argv, {
    progress: async (what, total) => {
      const seen: [string, number, number] = [what, total, 0];
      watched.push(seen);
      const to = (done: number) => {
        seen[2] = done;
      };
      return { to, end: () => undefined };
    },
  });
  return { ...ran, watched };
}

async function run(argv: readonly string[], host: Partial<Host>): Promise<Ran> {
  let [out, err] = ['', ''];
  const exit = await main(argv, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    colour: false,
    stdin: async () => new Uint8Array(),
    ...host,
  });
  return { exit, out, err };
}
