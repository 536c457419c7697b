/** Median time of one call, ms: warmed up, in `rounds` rounds of as many calls as fill about 50 ms. */
export function perCall(work, rounds = 15) {
  const until = performance.now() + 300;
  let calls = 0;
  while (performance.now() < until || calls < 3) {
    work();
    calls += 1;
  }
  const batch = Math.max(1, Math.round(calls / 6));
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    for (let i = 0; i < batch; i++) work();
    return (performance.now() - start) / batch;
  });
  return { time: median(times), n: rounds * batch };
}

export function median(values) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}
