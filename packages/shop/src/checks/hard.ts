import type { Material } from '@tinwright/core';

const HARD = ['stainless-304', 'stainless-430', 'aluminium-6061-t6'];
const LOW_CARBON = ['mild-steel', 'galvanised-steel', 'tinplate'];

/** Metals that blunt a punch and crack along the rolling direction. Judgement. */
export const isHard = ({ name }: Material): boolean => HARD.includes(name);

/** Steel that is folded flat as a matter of course, though DIN 6935 asks for a radius. */
export const isLowCarbon = ({ name }: Material): boolean => LOW_CARBON.includes(name);
