// What only sister packages use: no promise to anybody else.
export { type Turn, turned, turns } from './replay/part-bent.js';
