// The only door of `write`: what puts files on the disk.

export { signed } from './write/own-file.js';
export type { OwnList, OwnLists } from './write/own-lists.js';
export { listsIn } from './write/own-lists.js';
export { changeFile, replaceFile, startFile } from './write/write-file.js';
export { writeFresh } from './write/write-fresh.js';
export { updateSet, writeSet } from './write/write-set.js';
