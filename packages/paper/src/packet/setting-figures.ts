import type { Box } from '@tinwright/core';
import { boxOfItems } from '../page/box.js';
import type { Figure } from '../page/figure.js';
import { letter } from '../page/letter.js';
import { detailFigure } from '../steps/detail-figure.js';
import { keyed } from '../steps/labelled.js';
import type { Scene } from '../steps/scene.js';
import type { PacketKit } from './kit.js';

const SIZE = [27, 14] as const; // in heights of text
const OVER = 5.5; // heights of text, that sizes stand over the picture

/** What is set at the line of each of these steps, enlarged: once for those that are set alike. */
export function settingFigures(
  scenes: readonly Scene[],
  { steps, dims, setting }: PacketKit,
): readonly Figure[] {
  const { face, height } = setting;
  const [width, high] = SIZE.map((s) => s * height) as [number, number];
  const box: Box = { min: [0, 0], max: [width, high] };
  const alike = new Map(scenes.map((s) => [keyOf(s), s]).reverse() as [string, Scene][]);
  return [...alike.values()].reverse().flatMap((scene): readonly Figure[] => {
    const own = keyed({ words: steps, dims, face, height });
    const drawn = detailFigure(scene, box, own);
    if (drawn === null) return [];
    const told = own.key.text();
    const { machineName } = scene.step;
    const caption = letter(face, `${machineName}, ${drawn.scale}`, [0, high + OVER * height], {
      height,
      bold: true,
    });
    const key = told === '' ? [] : [letter(face, told, [0, -1.6 * height], { height })];
    const items = [caption, ...drawn.items, ...key];
    return [{ alt: `${machineName}: ${steps.detail(drawn.scale)}`, items, box: boxOfItems(items) as Box }];
  });
}

/** The same for strokes with the same sheet in the same setting of the same machine. */
const keyOf = ({ step: { machineName, action, setBack, press }, part }: Scene): string =>
  JSON.stringify([machineName, action === 'close', setBack, press?.die, press?.opening, part.flat.thickness]);
