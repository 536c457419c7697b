import type { Margin } from '../machines/shop.js';

/** Kept off every tool under a part, mm. @param longest size of its blank, mm */
export const marginFor = ({ least, share }: Margin, longest: number): number => least + share * longest;
