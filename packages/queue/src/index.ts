// The only door of the package.

export type { LinkOptions } from './link.js';
export { openQueue, type QueueOptions, type SizeQueue } from './open-queue.js';
export { type ParcelFile, pack, type RowResult, unpack } from './parcel.js';
export { QueueError } from './queue-error.js';
export type { Key } from './seal.js';
export { type ServeOptions, type Serving, serveQueue } from './serve-queue.js';
export type { Needs, Task } from './task.js';
