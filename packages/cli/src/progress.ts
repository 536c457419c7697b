/** Shows how far a long piece of work is. */
export interface Progress {
  readonly to: (done: number) => void;
  readonly end: () => void;
}

const EVERY = 10_000; // ms

/** A bar on a terminal, a plain line every ten seconds elsewhere; on stderr. */
export async function progressOn(stream: NodeJS.WriteStream, what: string, total: number): Promise<Progress> {
  if (stream.isTTY === true) {
    const { default: bars } = await import('cli-progress');
    const bar = new bars.SingleBar({
      stream,
      format: `${what} {bar} {value} of {total}, {eta_formatted} left`,
      hideCursor: true,
      clearOnComplete: true,
    });
    bar.start(total, 0);
    return { to: (done) => bar.update(done), end: () => bar.stop() };
  }
  const start = Date.now();
  let said = start;
  const to = (done: number) => {
    const now = Date.now();
    if (now - said < EVERY || done === 0) return;
    said = now;
    const rate = (done / (now - start)) * 1000;
    const left = Math.ceil((total - done) / rate);
    stream.write(`${what}: ${done} of ${total}, ${rate.toPrecision(2)} a second, ${left} s left\n`);
  };
  return { to, end: () => undefined };
}
