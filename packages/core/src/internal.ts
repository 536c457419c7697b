// What only sister packages use: no promise to anybody else.

export { LONGEST } from './schema/kit.js';
export { frozen } from './units/frozen.js';
