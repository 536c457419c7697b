// What only sister packages use: no promise to anybody else.

export { markingProgram } from './marking/program.js';
export { verifyMarking } from './marking/verify-marking.js';
export { cautionsFor } from './packet/cautions.js';
export { DIMS_NAMES } from './page/dims.js';
export { type Fraction, formatFraction } from './page/fraction.js';
export { typeface } from './page/typeface.js';
export { bendNumber } from './pattern/features.js';
export type { ShearPrint } from './shear/shear-pages.js';
