// What only sister packages use: no promise to anybody else.
export { frozen } from './units/frozen.js';
