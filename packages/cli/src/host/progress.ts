/** Shows how far a long piece of work is. */
export interface ProgressBar {
  readonly to: (done: number) => void;
  readonly end: () => void;
}

const SOON = 1000; // ms before anybody wonders
const EVERY = 10_000; // ms between two lines

/**
 * A bar on a terminal from the first second on, a plain line every ten seconds elsewhere; on stderr. Between two pieces
 * that take long it is told again where the work leaves room for timers.
 */
export async function progressOn(
  stream: NodeJS.WriteStream,
  what: string,
  total: number,
): Promise<ProgressBar> {
  const work: Work = { stream, what, total, start: Date.now() };
  const { to, end } = stream.isTTY === true ? await barOf(work) : linesOf(work);
  let last = 0;
  const timer = setInterval(() => to(last), SOON);
  timer.unref();
  return {
    to: (done) => {
      last = done;
      to(done);
    },
    end: () => {
      clearInterval(timer);
      end();
    },
  };
}

interface Work {
  readonly stream: NodeJS.WriteStream;
  readonly what: string;
  readonly total: number;
  /** ms */
  readonly start: number;
}

async function barOf({ stream, what, total, start }: Work): Promise<ProgressBar> {
  const { default: bars } = await import('cli-progress');
  const bar = new bars.SingleBar({
    stream,
    format: `${what} {bar} {value} of {total}, {rate} a second, {eta_formatted} left`,
    hideCursor: true,
    clearOnComplete: true,
  });
  const to = (done: number) => {
    if (Date.now() - start < SOON) return;
    if (!bar.isActive) bar.start(total, done, { rate: '-' });
    bar.update(done, { rate: rateOf(done, start) });
  };
  return { to, end: () => bar.stop() };
}

function linesOf({ stream, what, total, start }: Work): ProgressBar {
  let said = start;
  const to = (done: number) => {
    const now = Date.now();
    if (now - said < EVERY) return;
    said = now;
    const far = `${what}: ${done} of ${total}`;
    const left = Math.ceil(((total - done) / done) * ((now - start) / 1000));
    const pace =
      done === 0
        ? `${Math.round((now - start) / 1000)} s so far`
        : `${rateOf(done, start)} a second, ${left} s left`;
    stream.write(`${far}, ${pace}\n`);
  };
  return { to, end: () => undefined };
}

/** Pieces a second since then, to two digits. */
const rateOf = (done: number, start: number) =>
  String(Number(((done / Math.max(1, Date.now() - start)) * 1000).toPrecision(2)));
