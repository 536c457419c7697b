import type { Path, Problem } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import { impossible } from './impossible.js';
import type { Shop } from './shop.js';

/** Ranges that are given the wrong way round. */
export function rangeProblems({ press, spotWelder, units }: Shop): readonly Problem[] {
  const { size } = sayIn(units);
  const range = (path: Path, least: number, most: number) =>
    least <= most ? [] : [impossible(path, `${size(least)} to ${size(most)} given`, 'Give the least first')];
  return [
    ...(press === null ? [] : range(['press', 'backGauge'], press.backGauge.least, press.backGauge.most)),
    ...(spotWelder === null ? [] : range(['spotWelder', 'thickness'], ...spotWelder.thickness)),
  ];
}
