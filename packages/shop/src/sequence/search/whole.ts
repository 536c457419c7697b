/** What comes out at the end of work that is done a little at a time. */
export function whole<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value as T;
  }
}
