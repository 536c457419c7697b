import { plainNumber } from './format.js';
import type { Unit } from './length.js';

/** Kilograms in an international avoirdupois pound, exact. */
export const KG_PER_POUND = 0.45359237;

/** `0.274 kg`, or pounds beside inches. */
export const massText = (kg: number, unit: Unit): string =>
  unit === 'in' ? `${plainNumber(kg / KG_PER_POUND, 2)} lb` : `${plainNumber(kg, 3)} kg`;
