import type { Margin } from '../machines/shop.js';

/** Kept off every tool under a part, mm. @param longest size of its blank, mm */
export const marginFor = ({ least, share }: Margin, longest: number): number => least + share * longest;

/** Folds that lie on a tool with the sheet are not in its way, mm. */
export const FLUSH = 0.05;

/** Stands for as deep, high and wide as anything, mm. */
export const TOOL_DEPTH = 400;
