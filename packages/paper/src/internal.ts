// What only sister packages use: no promise to anybody else.

export { type Fraction, formatFraction } from './fraction.js';
export { markingProgram } from './marking/program.js';
export { verifyMarking } from './marking/verify-marking.js';
export { cautionsFor } from './packet/cautions.js';
export { typeface } from './page/typeface.js';
export { DIMS_NAMES } from './plan/dims.js';
export { type ShearPrint, shearPages, shearPassages } from './shear/shear-pages.js';
