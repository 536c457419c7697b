// The only door of `write`: what puts files on the disk.

export { type Inputs, refuseInput } from './inputs.js';
export { type JobSet, refuseJobSet } from './job-set.js';
export { signed } from './own-file.js';
export type { OwnList, OwnLists } from './own-lists.js';
export { listsIn } from './own-lists.js';
export { changeFile, checkPlace, replaceFile, startFile } from './write-file.js';
export { writeFresh } from './write-fresh.js';
export { checkFolder, setsIn, updateSet, writeSet } from './write-set.js';
