const WARM = 500; // ms at a time, until the code is compiled: two in a row that gain less than a twentieth
const MOST_WARM = 8;
const ROUND = 20; // ms

/**
 * Median processor time of one call, ms: warmed up, in `rounds` rounds of about 20 ms each. A machine that is busy with
 * something else takes longer by the clock; what it counts of this process stays nearly the same.
 */
export function perCall(work, rounds = 25, warm = MOST_WARM) {
  const batch = Math.max(1, Math.round((warmed(work, warm) * ROUND) / WARM));
  const times = Array.from({ length: rounds }, () => {
    const start = processorTime();
    for (let i = 0; i < batch; i++) work();
    return (processorTime() - start) / batch;
  });
  return { time: median(times), n: rounds * batch };
}

/** Calls in a stretch of `WARM`, once that grows no more, or after so many stretches. */
function warmed(work, most) {
  let best = 0;
  for (let i = 0, still = 0; i < most && still < 2; i++) {
    const calls = callsIn(WARM, work);
    still = calls < best * 1.05 ? still + 1 : 0;
    best = Math.max(best, calls);
  }
  return best;
}

/** How many calls fill so many ms, three at least. */
function callsIn(ms, work) {
  const until = processorTime() + ms;
  let calls = 0;
  while (processorTime() < until || calls < 3) {
    work();
    calls += 1;
  }
  return calls;
}

/** Of this process so far, ms: its own and the system's for it, compiling and clearing up on other threads included. */
export function processorTime() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export function median(values) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}
