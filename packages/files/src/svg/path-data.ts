import type { Loop, Point } from '@tinwright/core';
import makerjs from 'makerjs';
import { loopModel } from '../maker/to-maker-model.js';

const JOIN = 1e-6; // mm; ends of a loop's sides are equal but for rounding
const ACCURACY = 1e-6;

/**
 * SVG path data of a closed loop, chained by makerjs; lines and true arcs. y points down from `origin`.
 * @throws RangeError when the sides do not chain up to one closed loop
 */
export function pathData(loop: Loop, origin: Point): string {
  const chains = makerjs.model.findChains(loopModel(loop), {
    pointMatchingDistance: JOIN,
  }) as readonly makerjs.IChain[];
  const [chain] = chains;
  if (chains.length !== 1 || chain === undefined || !chain.endless)
    throw new RangeError(
      `an outline of ${loop.length} sides chains up to ${chains.length} pieces, one closed loop wanted`,
    );
  return makerjs.exporter.chainToSVGPathData(chain, [...origin], ACCURACY);
}
