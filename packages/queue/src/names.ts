/** The queue of all runs in one Redis. */
export const QUEUE = 'tinwright-sizes';

/** Where the bytes of a finished task lie until they are fetched. */
export const parcelKey = (id: string): string => `tinwright:parcel:${id}`;

/** Seconds that what nobody fetches is kept. */
export const KEPT = 3600;

/** The name a worker goes by: how many tasks it takes at once. */
export const laneName = (lanes: number): string => `lanes-${lanes}`;

/** Tasks that a worker with this name takes at once. */
export const lanesOf = (name: string): number => Number(/lanes-(\d+)$/.exec(name)?.[1] ?? 1);
