declare function setTimeout(work: () => void): unknown;

/** Let timers, messages and a page's drawing have their turn. */
export const breath = (): Promise<void> => new Promise((done) => void setTimeout(done));
