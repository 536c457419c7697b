/** Shows how far a long piece of work is. */
export interface ProgressBar {
  readonly to: (done: number) => void;
  readonly end: () => void;
}

const EVERY = 10_000; // ms

/** A bar on a terminal, a plain line every ten seconds elsewhere; on stderr. */
export async function progressOn(
  stream: NodeJS.WriteStream,
  what: string,
  total: number,
): Promise<ProgressBar> {
  const start = Date.now();
  if (stream.isTTY === true) {
    const { default: bars } = await import('cli-progress');
    const bar = new bars.SingleBar({
      stream,
      format: `${what} {bar} {value} of {total}, {rate} a second, {eta_formatted} left`,
      hideCursor: true,
      clearOnComplete: true,
    });
    bar.start(total, 0, { rate: '-' });
    return { to: (done) => bar.update(done, { rate: rateOf(done, start) }), end: () => bar.stop() };
  }
  let said = start;
  const to = (done: number) => {
    const now = Date.now();
    if (now - said < EVERY || done === 0) return;
    said = now;
    const left = Math.ceil(((total - done) / done) * ((now - start) / 1000));
    stream.write(`${what}: ${done} of ${total}, ${rateOf(done, start)} a second, ${left} s left\n`);
  };
  return { to, end: () => undefined };
}

/** Pieces a second since then, to two digits. */
const rateOf = (done: number, start: number) =>
  String(Number(((done / Math.max(1, Date.now() - start)) * 1000).toPrecision(2)));
